package dev.drafting.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class VestTracingTest {
  /**
   * The data can be made anew: to change the vest, change its formulas and store what they give.
   */
  @Test
  void theDemoTracingIsWhatTheFormulasGive() throws IOException {
    assertEquals(VestTracing.csv(), Files.readString(Path.of("garments/vest/tracing.csv")));
  }
}
