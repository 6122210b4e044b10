package dev.drafting.examples;

import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.export.source.GarmentFolder;
import dev.drafting.knit.Draft;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Damaged files are either still a garment or refused in words; nothing else, and not for ever. */
class GarmentFolderFuzzTest {
  private static final int TIMES = 400;
  private static final Duration FOR_EVER = Duration.ofSeconds(60);

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"garment.json", "tracing.csv"})
  void aDamagedFileIsReadOrRefused(String file) throws IOException {
    Path damaged = Vest.copyTo(folder).resolve(file);
    String text = Vest.text(file);
    int read = 0;
    int refused = 0;
    for (long seed = 0; seed < TIMES; seed++) {
      Files.write(damaged, new Mutations(seed).damage(text));
      String outcome = "seed " + seed;
      boolean accepted = assertTimeoutPreemptively(FOR_EVER, this::isAccepted, outcome);
      if (accepted) {
        read++;
      } else {
        refused++;
      }
    }
    assertTrue(read > TIMES / 50, "read " + read);
    assertTrue(refused > TIMES / 50, "refused " + refused);
  }

  private boolean isAccepted() {
    try {
      for (Draft draft : GarmentFolder.read(folder).makes().values()) {
        draft.findings().forEach(finding -> assertTrue(!finding.reason().isBlank()));
        assertTrue(draft.goods().size() > 0);
      }
      return true;
    } catch (DraftingException e) {
      assertTrue(!e.what().isEmpty() && !e.accepted().isEmpty(), String.valueOf(e.getMessage()));
      return false;
    }
  }
}
