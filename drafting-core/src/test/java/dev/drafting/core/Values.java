package dev.drafting.core;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

/** The contract of all values, to test with. */
public final class Values {
  private Values() {}

  /** A value equals its like and differs from all others, and it equals its stored copy. */
  public static void differ(Object one, Object same, Object... others) {
    assertEquals(one, same);
    assertEquals(one.hashCode(), same.hashCode());
    assertEquals(one, SerialCopy.of(one));
    assertNotEquals(one, "something else");
    for (Object other : others) {
      assertNotEquals(one, other);
      assertNotEquals(one.hashCode(), other.hashCode());
    }
  }
}
