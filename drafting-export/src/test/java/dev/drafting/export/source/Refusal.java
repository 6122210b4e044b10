package dev.drafting.export.source;

import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.drafting.core.finding.DraftingException;
import org.junit.jupiter.api.function.Executable;

/** What is said when something is refused. */
final class Refusal {
  private Refusal() {}

  static String of(Executable work) {
    return String.valueOf(assertThrows(DraftingException.class, work).getMessage());
  }
}
