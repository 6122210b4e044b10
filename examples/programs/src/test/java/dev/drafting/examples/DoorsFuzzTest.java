package dev.drafting.examples;

import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.examples.damage.Door;
import dev.drafting.examples.damage.Doors;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is sent to a door is taken or refused in words; nothing else, and not for ever. */
class DoorsFuzzTest {
  private static final int TIMES = 250;
  private static final Duration FOR_EVER = Duration.ofSeconds(60);

  @TempDir static Path folder;
  private static Doors doors;

  @BeforeAll
  static void open() throws IOException {
    doors = Doors.open(Vest.FOLDER, folder);
  }

  @AfterAll
  static void close() {
    doors.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "garment.json",
        "tracing.csv",
        "tracing.svg",
        "stored draft",
        "cut.svg",
        "cut.dxf",
        "sizes.csv",
        "request"
      })
  void whatIsDamagedIsTakenOrRefused(String name) throws IOException {
    Door door = doors.door(name);
    assertTrue(door.takes(door.sound()), "the sound one");
    int taken = 0;
    for (long seed = 0; seed < TIMES; seed++) {
      byte[] damaged = door.damaged(seed);
      boolean took =
          assertTimeoutPreemptively(
              FOR_EVER, () -> door.takes(damaged), "seed " + seed + " takes for ever");
      taken += took ? 1 : 0;
    }
    assertTrue(taken > TIMES / 50 && taken < TIMES - TIMES / 50, "taken " + taken);
  }
}
