package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Strands that are made to fit end to end. */
class ChainJointsTest {
  private static final Line SOURCE = line(0, 10, 100, 10);
  private static final Origin WHOLE = new Origin(SOURCE, 0, 0, 1);
  private static final Strand PARALLEL = Strand.parallel(line(0, 0, 100, 0), 3, WHOLE);

  private static Line line(double x0, double y0, double x1, double y1) {
    return new Line(new Point(x0, y0), new Point(x1, y1));
  }

  private static Strand beyond(Segment segment) {
    return Strand.parallel(segment, 3, WHOLE.endOnly(true));
  }

  private static void assertApart(Strand one, Strand two) {
    assertEquals(List.of(one, two), ChainJoints.merged(List.of(one, two)));
  }

  @Test
  void aLineAndItsStraightContinuationsAreOneLine() {
    Strand before = Strand.parallel(line(-20, 0, 0, 0), 3, WHOLE.endOnly(false));
    Strand beyond = beyond(line(100, 0, 130, 0));
    Strand whole = Strand.parallel(line(-20, 0, 130, 0), 3, WHOLE);
    assertEquals(List.of(whole), ChainJoints.merged(List.of(before, PARALLEL, beyond)));
    Strand part = Strand.parallel(line(0, 0, 50, 0), 3, new Origin(SOURCE, 0, 0.25, 0.75));
    Strand longer = beyond(line(50, 0, 60, 0));
    assertEquals(
        List.of(Strand.parallel(line(0, 0, 60, 0), 3, new Origin(SOURCE, 0, 0.25, 0.75))),
        ChainJoints.merged(List.of(part, longer)));
  }

  @Test
  void onlyWhatContinuesTheSameSegmentOfTheSameEdgeIsOneWithIt() {
    Line on = line(100, 0, 130, 0);
    assertApart(PARALLEL, Strand.join(on, 3));
    assertApart(Strand.join(line(0, 0, 100, 0), 3), beyond(on));
    assertApart(PARALLEL, Strand.parallel(on, 4, WHOLE.endOnly(true)));
    assertApart(PARALLEL, Strand.parallel(on, 3, new Origin(SOURCE, 1, 1, 1)));
    assertApart(PARALLEL, Strand.parallel(on, 3, WHOLE));
  }

  @Test
  void whatIsTurnedBackIsNotOneWithItsNeighbour() {
    Strand turned = new Strand(PARALLEL.segment(), OffsetTag.EDGE, 3, WHOLE, true);
    Line on = line(100, 0, 130, 0);
    assertApart(turned, beyond(on));
    assertApart(PARALLEL, new Strand(on, OffsetTag.EDGE, 3, WHOLE.endOnly(true), true));
  }

  @Test
  void curvesAndTheirContinuationsStayApart() {
    Arc arc = Outlines.arc(100, 10, 10, -90, 90);
    Origin round = new Origin(Outlines.arc(100, 10, 20, -90, 90), 0, 0, 1);
    assertApart(
        Strand.parallel(line(80, 0, 100, 0), 3, round.endOnly(false)),
        Strand.parallel(arc, 3, round));
    assertApart(
        Strand.parallel(arc, 3, round),
        Strand.parallel(line(110, 10, 110, 20), 3, round.endOnly(true)));
    assertApart(beyond(line(80, 0, 100, 0)), beyond(arc));
    assertApart(beyond(arc), beyond(line(110, 10, 110, 20)));
    assertApart(
        Strand.parallel(line(80, 0, 100, 0), 3, round.endOnly(false)),
        Strand.parallel(line(100, 0, 120, 0), 3, round.endOnly(true)));
  }

  @Test
  void aLineNoLongerThanAPointIsLeftOut() {
    Strand point = Strand.join(line(100, 0, 100 + 0x1p-30, 0), 3);
    assertEquals(List.of(PARALLEL), ChainJoints.merged(List.of(PARALLEL, point)));
    Strand exactly = Strand.join(line(0, 0, 1e-9, 0), 3);
    assertEquals(List.of(), ChainJoints.merged(List.of(exactly)));
    assertApart(PARALLEL, Strand.join(line(100, 0, 100 + 2e-9, 0), 3));
  }

  @Test
  void ofALineAndAnArcTheLineIsMoved() {
    Arc arc = Outlines.arc(100, 10, 10, -90, 90);
    Strand round = Strand.join(arc, 3);
    Strand line = Strand.join(line(0, 0, 100, 1e-6), 3);
    List<Strand> joined = ChainJoints.snapped(List.of(line, round), false);
    assertEquals(List.of(arc.start(), arc.start()), joint(joined));
    Strand up = Strand.join(new Line(new Point(110, 10 + 1e-6), new Point(110, 50)), 3);
    joined = ChainJoints.snapped(List.of(round, up), false);
    assertEquals(List.of(arc.end(), arc.end()), joint(joined));
    assertEquals(2, joined.size());
  }

  private static List<Point> joint(List<Strand> joined) {
    return List.of(joined.get(0).end(), joined.get(1).start());
  }

  @Test
  void ofTwoLinesTheSecondIsMoved() {
    Strand one = Strand.join(line(0, 0, 100, 0), 3);
    Strand two = Strand.join(line(100, 1e-6, 100, 50), 3);
    List<Strand> joined = ChainJoints.snapped(List.of(one, two), false);
    assertEquals(List.of(new Point(100, 0), new Point(100, 0)), joint(joined));
  }

  @Test
  void ofALineAndACubicTheCubicIsMovedWithItsHandle() {
    Strand one = Strand.join(line(0, 0, 100, 0), 3);
    Cubic cubic = Outlines.cubic(100, 1e-6, 120, 1e-6, 150, 20, 150, 50);
    List<Strand> joined = ChainJoints.snapped(List.of(one, Strand.join(cubic, 3)), false);
    assertEquals(Outlines.cubic(100, 0, 120, 0, 150, 20, 150, 50), joined.get(1).segment());
  }

  /** Arcs cannot be moved at one end only. */
  @Test
  void aLineIsPutBetweenTwoArcs() {
    Arc first = Outlines.arc(100, 10, 10, -90, 90);
    Arc second = Outlines.arc(120, 10 + 1e-6, 10, 180, -90);
    Origin round = new Origin(first, 2, 0, 0.5);
    Strand one = Strand.parallel(first, 3, round);
    Strand two = Strand.join(second, 4);
    List<Strand> joined = ChainJoints.snapped(List.of(one, two), false);
    assertEquals(3, joined.size());
    Line between = new Line(first.end(), second.start());
    assertEquals(
        new Strand(between, OffsetTag.EDGE, 3, new Origin(first, 2, 0.5, 0.5), false),
        joined.get(1));
    joined = ChainJoints.snapped(List.of(Strand.join(first, 3), two), false);
    assertEquals(Strand.join(between, 3), joined.get(1));
    assertNull(joined.get(1).origin());
  }

  @Test
  void whatLiesFartherApartIsNotJoined() {
    Strand one = Strand.join(line(0, 0, 100, 0), 3);
    Strand two = Strand.join(line(100, 2.1e-6, 100, 50), 3);
    assertThrows(IllegalStateException.class, () -> ChainJoints.snapped(List.of(one, two), false));
  }
}
