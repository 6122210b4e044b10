package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Chains beside a straight open line of 100 mm that run round a loop of their own; the same however
 * they are turned, and on the other side of the line.
 */
class OpenTrimmerTest {
  private static final double TOLERANCE = 0.01;

  /** Along y = -10, up at x = 100 and back, down at x = 50 to end on its own first strand. */
  private static final double[] ENDS_ON_ITSELF = {0, -10, 100, -10, 100, 50, 50, 50, 50, -10};

  /** The same and 15 mm farther down. */
  private static final double[] CROSSES_ITSELF = {0, -10, 100, -10, 100, 50, 50, 50, 50, -25};

  private static final double[] STARTS_ON_ITSELF = {50, -10, 50, 50, 0, 50, 0, -10, 100, -10};

  private static final List<Transform> PLACES =
      IntStream.range(0, 24)
          .mapToObj(i -> Transform.rotation(new Point(31, 17), Angle.degrees(15 * i)))
          .toList();

  private static List<Strand> chain(Transform place, boolean mirrored, double... xy) {
    Transform onto = mirrored ? mirror().then(place) : place;
    List<Strand> chain = new ArrayList<>();
    for (int i = 0; i + 3 < xy.length; i += 2) {
      Segment line =
          new Line(new Point(xy[i], xy[i + 1]), new Point(xy[i + 2], xy[i + 3])).map(onto);
      chain.add(Strand.parallel(line, 0, new Origin(line, 0, 0, 1)));
    }
    return chain;
  }

  private static Transform mirror() {
    return Transform.mirrorIn(new Point(0, 0), new Point(1, 0));
  }

  private static List<OffsetEdge> edges(Transform place, boolean mirrored) {
    Line source = new Line(new Point(0, 0), new Point(100, 0));
    Transform onto = mirrored ? mirror().then(place) : place;
    return List.of(
        OffsetEdge.of("hem", Curve.of(source.map(onto)), Length.mm(mirrored ? -10 : 10)));
  }

  private static void assertLeft(double[] from, double[] expected, Double... lost) {
    for (Transform place : PLACES) {
      for (boolean mirrored : new boolean[] {false, true}) {
        Trimmer trimmed =
            OpenTrimmer.trim(chain(place, mirrored, from), edges(place, mirrored), TOLERANCE);
        List<Strand> line = chain(place, mirrored, expected);
        assertEquals(line.size(), trimmed.strands().size());
        for (int i = 0; i < line.size(); i++) {
          assertSame(line.get(i).start(), trimmed.strands().get(i).start());
          assertSame(line.get(i).end(), trimmed.strands().get(i).end());
        }
        assertEquals(
            List.of(lost),
            trimmed.trimmings().stream().map(t -> Math.rint(t.lost().toMm() * 1e6) / 1e6).toList());
      }
    }
  }

  private static void assertSame(Point one, Point other) {
    assertEquals(one.x(), other.x(), 1e-6);
    assertEquals(one.y(), other.y(), 1e-6);
  }

  @Test
  void aLoopWhereALineEndsOnItselfIsLeftOut() {
    assertLeft(ENDS_ON_ITSELF, new double[] {0, -10, 50, -10}, 50.0, 60.0, 50.0, 60.0);
  }

  @Test
  void aLoopWhereALineStartsOnItselfIsLeftOut() {
    assertLeft(STARTS_ON_ITSELF, new double[] {50, -10, 100, -10}, 60.0, 50.0, 60.0, 50.0);
  }

  @Test
  void aLoopWhereALineCrossesItselfIsLeftOut() {
    assertLeft(CROSSES_ITSELF, new double[] {0, -10, 50, -10, 50, -25}, 50.0, 60.0, 50.0, 60.0);
  }

  @Test
  void aStraightContinuationInALoopIsNoLossOfTheEdge() {
    Transform here = Transform.identity();
    List<Strand> chain = chain(here, false, ENDS_ON_ITSELF);
    Strand up = chain.get(1);
    chain.set(
        1, Strand.parallel(up.segment(), 0, Objects.requireNonNull(up.origin()).endOnly(true)));
    Trimmer trimmed = OpenTrimmer.trim(chain, edges(here, false), TOLERANCE);
    assertEquals(3, trimmed.trimmings().size());
  }

  /** Half a millionth of a millimetre short; the upper strand is turned back. */
  @Test
  void anEndThatCannotBeToldFromTheLineLiesOnIt() {
    double almost = -10 + 5e-7;
    Trimmer atEnd = trimmed(0, -10, 100, -10, 100, 50, 50, 50, 50, almost);
    assertEquals(1, atEnd.strands().size());
    assertSame(new Point(0, -10), atEnd.strands().get(0).start());
    assertSame(new Point(50, -10), atEnd.strands().get(0).end());
    assertEquals(3, atEnd.trimmings().size());
    Trimmer atStart = trimmed(50, almost, 50, 50, 0, 50, 0, -10, 100, -10);
    assertEquals(1, atStart.strands().size());
    assertSame(new Point(50, -10), atStart.strands().get(0).start());
    assertSame(new Point(100, -10), atStart.strands().get(0).end());
    assertEquals(3, atStart.trimmings().size());
  }

  @Test
  void anEndBesideTheLineIsNotOnIt() {
    Trimmer beside = trimmed(0, -10, 100, -10, 100, 50, 50, 50, 50, -9);
    assertEquals(4, beside.strands().size());
    assertEquals(OffsetTag.JOIN, beside.strands().get(2).tag());
  }

  private static Trimmer trimmed(double... xy) {
    List<Strand> chain = new ArrayList<>();
    for (Strand strand : chain(Transform.identity(), false, xy)) {
      boolean upper = strand.start().y() == 50 && strand.end().y() == 50;
      chain.add(new Strand(strand.segment(), OffsetTag.EDGE, 0, strand.origin(), upper));
    }
    return OpenTrimmer.trim(chain, edges(Transform.identity(), false), TOLERANCE);
  }
}
