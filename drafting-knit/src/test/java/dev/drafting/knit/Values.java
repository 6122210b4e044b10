package dev.drafting.knit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The contract of all values, to test with. */
public final class Values {
  private Values() {}

  /** A value equals its like and differs from all others, and each one equals its stored copy. */
  public static void differ(Object one, Object same, Object... others) {
    assertEquals(one, same);
    assertEquals(one.hashCode(), same.hashCode());
    assertNotEquals(one, "something else");
    List<Object> all = new ArrayList<>(Arrays.asList(others));
    for (Object other : all) {
      assertNotEquals(one, other);
      assertNotEquals(one.hashCode(), other.hashCode());
    }
    all.add(one);
    all.forEach(value -> assertEquals(value, stored(value)));
  }

  /** The value written and read back; it must be serializable with all that it holds. */
  @SuppressWarnings("unchecked") // a copy is of the type of its original
  public static <T> T stored(T value) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(value);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      return (T) in.readObject();
    } catch (IOException | ClassNotFoundException e) {
      throw new AssertionError(e);
    }
  }
}
