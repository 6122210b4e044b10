package dev.drafting.examples;

import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.examples.damage.DamagedGarment;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** Damaged files are either still a garment or refused in words; nothing else, and not for ever. */
class GarmentFolderFuzzTest {
  private static final int TIMES = 400;
  private static final Duration FOR_EVER = Duration.ofSeconds(60);

  @TempDir Path folder;

  @ParameterizedTest
  @FieldSource("dev.drafting.examples.damage.DamagedGarment#FILES")
  void aDamagedFileIsReadOrRefused(String file) throws IOException {
    DamagedGarment garment = DamagedGarment.of(Vest.FOLDER, folder, file);
    assertTrue(garment.isDrafted(), file);
    int read = 0;
    for (long seed = 0; seed < TIMES; seed++) {
      long damage = seed;
      boolean drafted =
          assertTimeoutPreemptively(
              FOR_EVER, () -> garment.isDrafted(damage), () -> "seed " + damage);
      read += drafted ? 1 : 0;
    }
    assertTrue(read > TIMES / 50 && read < TIMES - TIMES / 50, "read " + read);
  }
}
