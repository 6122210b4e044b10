package dev.drafting.export.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Notch;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.trace.Extent;
import dev.drafting.core.trace.TracedEdge;
import dev.drafting.core.trace.Tracing;
import dev.drafting.export.store.sample.RandomDraft;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InvalidObjectException;
import java.io.ObjectInputFilter;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Java serialisation goes through the same checks as making a value: nothing else comes in. */
class SerializationTest {
  private static final double MARK = 1234.56789;
  private static final int LARGEST_ARRAY = 1_000_000;

  private static byte[] written(Object value) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(value);
    }
    return bytes.toByteArray();
  }

  private static Object read(byte[] bytes) throws IOException, ClassNotFoundException {
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes))) {
      in.setObjectInputFilter(
          ObjectInputFilter.Config.createFilter("maxarray=" + LARGEST_ARRAY + ";maxdepth=500"));
      return in.readObject();
    }
  }

  /** A stream in which every number that was marked is another one. */
  private static byte[] tampered(Object value, double by) throws IOException {
    byte[] bytes = written(value);
    byte[] mark = ByteBuffer.allocate(Double.BYTES).putDouble(MARK).array();
    byte[] other = ByteBuffer.allocate(Double.BYTES).putDouble(by).array();
    int found = 0;
    for (int i = 0; i + Double.BYTES <= bytes.length; i++) {
      if (java.util.Arrays.equals(bytes, i, i + Double.BYTES, mark, 0, Double.BYTES)) {
        System.arraycopy(other, 0, bytes, i, Double.BYTES);
        found++;
      }
    }
    assertTrue(found > 0, "no such number in the stream of " + value);
    return bytes;
  }

  static Stream<Object> marked() {
    Point start = new Point(0, 0);
    Point end = new Point(MARK, 0);
    return Stream.of(
        Length.mm(MARK),
        Angle.radians(MARK),
        Polyline.of(0, 0, MARK, 1),
        Arc.of(start, Length.mm(MARK), Angle.ZERO, Angle.degrees(90)),
        Transform.translation(new Vector(MARK, 0)),
        Curve.line(start, end),
        Edge.of("hem", Curve.line(start, end)),
        Notch.of("hem", Length.mm(MARK), "a"),
        TracedEdge.of("hem", 0, 0, MARK, 1));
  }

  @ParameterizedTest
  @MethodSource("marked")
  void aNumberThatIsNoneIsRefused(Object value) throws Exception {
    assertEquals(value, read(written(value)));
    assertEquals(value, read(tampered(value, MARK)));
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      assertRefused(tampered(value, bad));
    }
  }

  /** What the constructor of a record refuses is wrapped by the platform. */
  private static void assertRefused(byte[] bytes) {
    Exception refusal = assertThrows(Exception.class, () -> read(bytes));
    boolean wrapped = refusal instanceof InvalidObjectException;
    assertInstanceOf(DraftingException.class, wrapped ? refusal.getCause() : refusal);
  }

  @Test
  void aLengthBeyondAllClothIsRefused() throws IOException {
    assertRefused(tampered(Length.mm(MARK), 1e300));
  }

  @Test
  void aPieceThatDoesNotMeetIsRefused() throws IOException {
    Piece patch =
        Piece.of(
            "patch",
            List.of(
                Edge.of("below", Curve.line(new Point(0, 0), new Point(MARK, 0))),
                Edge.of("right", Curve.line(new Point(MARK, 0), new Point(0, 90))),
                Edge.of("left", Curve.line(new Point(0, 90), new Point(0, 0)))));
    byte[] turned = tampered(patch, -MARK);
    DraftingException refusal = assertThrows(DraftingException.class, () -> read(turned));
    assertEquals("patch", refusal.where());
  }

  /** Seeded damage: what comes in nevertheless is as good as if it had been made. */
  @Test
  void aDamagedTracingIsRefusedOrATracing() throws IOException {
    byte[] sound = written(Tracing.of("front", Extent.WHOLE, strokes()));
    int read = 0;
    int refused = 0;
    for (int seed = 0; seed < 500; seed++) {
      Random random = new Random(seed);
      byte[] damaged = sound.clone();
      damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
      Optional<Tracing> came = readIfSound(damaged);
      came.ifPresent(
          again -> assertEquals(again, Tracing.of(again.piece(), again.extent(), again.edges())));
      read += came.isPresent() ? 1 : 0;
      refused += came.isPresent() ? 0 : 1;
    }
    assertTrue(read > 20 && refused > 20, read + " read, " + refused + " refused");
  }

  private static List<TracedEdge> strokes() {
    return List.of(
        TracedEdge.of("hem", 0, 0, 50, 1, 100, 0),
        TracedEdge.of("side", 100, 0, 101, 50, 100, 100),
        TracedEdge.of("neck", 100, 100, 50, 90, 0, 100));
  }

  /** Over a damaged stream the platform itself may stumble, with exceptions of its own. */
  private static Optional<Tracing> readIfSound(byte[] damaged) {
    try {
      return Optional.of((Tracing) read(damaged));
    } catch (IOException | ClassNotFoundException | RuntimeException e) {
      return Optional.empty();
    }
  }

  @Test
  void draftsComeBackEqual() throws Exception {
    for (int seed = 0; seed < 60; seed++) {
      StoredDraft stored = RandomDraft.of(seed);
      StoredDraft again = (StoredDraft) read(written(stored));
      assertEquals(stored, again, "seed " + seed);
      assertEquals(stored.toJson(), again.toJson(), "seed " + seed);
      assertEquals(stored.draft().toString(), again.draft().toString());
    }
  }
}
