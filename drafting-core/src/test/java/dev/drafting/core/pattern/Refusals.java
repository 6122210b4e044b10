package dev.drafting.core.pattern;

import dev.drafting.core.finding.DraftingException;
import java.util.function.Supplier;
import org.junit.jupiter.api.Assertions;

/** Catches what is refused. */
public final class Refusals {
  private Refusals() {}

  /** The message of the refusal; fails the test if nothing is refused. */
  public static String refusal(Supplier<?> making) {
    try {
      Object made = making.get();
      return Assertions.fail("not refused: " + made);
    } catch (DraftingException e) {
      return String.valueOf(e.getMessage());
    }
  }
}
