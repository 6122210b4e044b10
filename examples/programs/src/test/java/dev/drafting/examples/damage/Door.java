package dev.drafting.examples.damage;

import dev.drafting.core.finding.DraftingException;
import java.io.IOException;

/** A way into the library for what anybody may have written: a file, or a request to a service. */
public interface Door {
  /**
   * What comes in here.
   *
   * @return such as "garment.json"
   */
  String name();

  /**
   * Sends something in and uses what comes of it.
   *
   * @param sent the bytes of the file or of the request
   * @return whether it was taken; else it was refused with what is wrong and what would be accepted
   * @throws IOException if it cannot be sent
   */
  boolean takes(byte[] sent) throws IOException;

  /**
   * Something that is taken.
   *
   * @return the bytes
   */
  byte[] sound();

  /**
   * The sound bytes after they were damaged.
   *
   * @param seed says how
   * @return the damaged bytes
   */
  byte[] damaged(long seed);

  /** A refusal helps only if it says what is wrong and what would be accepted. */
  static void requireHelpful(DraftingException refusal) {
    require(!refusal.what().isEmpty() && !refusal.accepted().isEmpty(), "no help: " + refusal);
  }

  /** Anything but a yes or a refusal in words is a fault. */
  static void require(boolean holds, String otherwise) {
    if (!holds) {
      throw new AssertionError(otherwise);
    }
  }
}
