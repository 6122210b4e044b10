package dev.drafting.examples;

import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.examples.damage.DamagedDraft;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** Damaged stored drafts are either still a draft or refused in words; nothing else. */
class StoredDraftFuzzTest {
  private static final int TIMES = 1_000;
  private static final Duration FOR_EVER = Duration.ofSeconds(60);

  @Test
  void aDamagedDraftIsReadOrRefused() {
    DamagedDraft stored = DamagedDraft.of(Vest.FOLDER);
    int read = 0;
    for (long seed = 0; seed < TIMES; seed++) {
      long damage = seed;
      boolean drafted =
          assertTimeoutPreemptively(
              FOR_EVER, () -> stored.isDrafted(damage), () -> "seed " + damage);
      read += drafted ? 1 : 0;
    }
    assertTrue(read > TIMES / 50 && read < TIMES - TIMES / 50, "read " + read);
  }
}
