package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which stretches of a finished outline lose their tag because they come too near their edge. */
class TooNearTest {
  private static final Line LEVEL = new Line(new Point(200, 300), new Point(300, 300));

  /** From (200, 300) 100 mm to the right and 100 mm up, its parallel 10 mm off. */
  private static final OffsetEdge HEM =
      Outlines.edge("hem", 10, LEVEL, new Line(new Point(300, 300), new Point(300, 400)));

  private static Strand beside(Segment segment) {
    return Strand.parallel(segment, 0, new Origin(LEVEL, 0, 0, 1));
  }

  private static Strand line(double x0, double y0, double x1, double y1) {
    return beside(new Line(new Point(x0, y0), new Point(x1, y1)));
  }

  private static Trimmer untagged(OffsetEdge edge, boolean simple, Strand... strands) {
    return TooNear.untagged(new Trimmer(List.of(strands), List.of(), simple), List.of(edge), 0);
  }

  private static void assertParts(Trimmer result, Object... tagsAndEnds) {
    List<Strand> strands = result.strands();
    assertEquals(tagsAndEnds.length / 3, strands.size(), strands::toString);
    for (int i = 0; i < strands.size(); i++) {
      assertEquals(tagsAndEnds[3 * i], strands.get(i).tag());
      assertEquals((Double) tagsAndEnds[3 * i + 1], strands.get(i).end().x(), 1e-9);
      assertEquals((Double) tagsAndEnds[3 * i + 2], strands.get(i).end().y(), 1e-9);
    }
  }

  /** The strand comes down to 10 mm below the edge half-way. */
  @Test
  void aSlantKeepsItsTagUntilItComesNearerThanItsDistance() {
    Trimmer result = untagged(HEM, false, line(200, 280, 300, 300));
    assertParts(result, OffsetTag.EDGE, 250.0, 290.0, OffsetTag.JOIN, 300.0, 300.0);
    assertEquals(1, result.trimmings().size());
    Trimming trimming = result.trimmings().get(0);
    assertEquals("hem", trimming.edge());
    assertEquals(Trimming.Cause.OVERLAP, trimming.cause());
    assertEquals(50, trimming.lost().toMm(), 1e-9);
    assertEquals(250, trimming.at().x(), 1e-9);
  }

  @Test
  void theToleranceIsAllowedFor() {
    Trimmer slant = new Trimmer(List.of(line(200, 280, 300, 300)), List.of(), false);
    Trimmer result = TooNear.untagged(slant, List.of(HEM), 2);
    assertParts(result, OffsetTag.EDGE, 260.0, 292.0, OffsetTag.JOIN, 300.0, 300.0);
  }

  @Test
  void whatKeepsItsTagIsNowhereNearer() {
    for (int k = 1; k < 30; k++) {
      Strand down = line(200, 270 + k / 3.0, 290, 299);
      for (Strand strand : List.of(down, line(290, 299, 200, 270 + k / 3.0))) {
        for (Strand part : untagged(HEM, false, strand).strands()) {
          if (part.tag() == OffsetTag.EDGE) {
            assertTrue(distance(part.start()) >= 10 - 1e-13);
            assertTrue(distance(part.end()) >= 10 - 1e-13);
          }
        }
      }
    }
  }

  private static double distance(Point point) {
    return HEM.curve().nearest(point).distance().toMm();
  }

  @Test
  void aParallelExactlyAtItsDistanceKeepsItsTag() {
    Trimmer result = untagged(HEM, false, line(210, 290, 290, 290));
    assertParts(result, OffsetTag.EDGE, 290.0, 290.0);
  }

  @Test
  void aStrandThatComesNearerFromItsStartHasNoPartThatKeepsItsTag() {
    assertParts(untagged(HEM, false, line(200, 290, 300, 300)), OffsetTag.JOIN, 300.0, 300.0);
  }

  /** In a chain that was simple and has no steps, only the ends of edges are come near to. */
  @Test
  void awayFromTheEndsOfItsEdgeASimpleChainIsNotDoubted() {
    Strand slant = line(220, 280, 280, 295);
    assertParts(untagged(HEM, true, slant), OffsetTag.EDGE, 280.0, 295.0);
    assertTrue(untagged(HEM, true, slant).chainWasSimple());
    assertEquals(2, untagged(HEM, false, slant).strands().size());
    Strand step = Strand.step(new Line(new Point(280, 295), new Point(280, 285)), 0);
    Trimmer stepped = untagged(HEM, true, slant, step);
    assertEquals(3, stepped.strands().size());
    assertEquals(OffsetTag.JOIN, stepped.strands().get(1).tag());
    Strand join = Strand.join(step.segment(), 0);
    assertEquals(List.of(slant, join), untagged(HEM, true, slant, join).strands());
  }

  /** Upright from 280 to 320, 5 mm beside the end at 300. */
  private static void assertPassesTheEnd(Trimmer result) {
    double reach = Math.sqrt(75);
    assertParts(
        result,
        OffsetTag.EDGE,
        195.0,
        300 - reach,
        OffsetTag.JOIN,
        195.0,
        300 + reach,
        OffsetTag.EDGE,
        195.0,
        320.0);
  }

  /** Upright lines 5 mm off; within 10 mm for sqrt(75) mm above and below the end. */
  @Test
  void besideTheEndsOfItsEdgeASimpleChainIsLookedAt() {
    assertPassesTheEnd(untagged(HEM, true, line(195, 280, 195, 320)));
    double reach = Math.sqrt(75);
    assertParts(
        untagged(HEM, true, line(305, 430, 305, 370)),
        OffsetTag.EDGE,
        305.0,
        400 + reach,
        OffsetTag.JOIN,
        305.0,
        370.0);
    assertParts(
        untagged(HEM, true, line(280, 405, 320, 405)),
        OffsetTag.EDGE,
        300 - reach,
        405.0,
        OffsetTag.JOIN,
        300 + reach,
        405.0,
        OffsetTag.EDGE,
        320.0,
        405.0);
  }

  @Test
  void aCurveBesideTheEndOfItsEdgeIsLookedAt() {
    Segment straight = Outlines.cubic(195, 280, 195, 290, 195, 310, 195, 320);
    assertPassesTheEnd(untagged(HEM, true, beside(straight)));
    Segment far = Outlines.cubic(189, 280, 189, 290, 189, 310, 189, 320);
    assertParts(untagged(HEM, true, beside(far)), OffsetTag.EDGE, 189.0, 320.0);
  }

  /** The round of 50 mm about (160, -58) comes within 10 mm of y = 0 where x is 160 or almost. */
  @Test
  void aLongLineIsLookedAtTwiceForEachDistance() {
    OffsetEdge round = Outlines.edge("round", 10, Outlines.arc(160, -58, 50, 180, -180));
    double half = Math.sqrt(60 * 60 - 58 * 58);
    assertParts(
        untagged(round, false, line(0, 0, 400, 0)),
        OffsetTag.EDGE,
        160 - half,
        0.0,
        OffsetTag.JOIN,
        160 + half,
        0.0,
        OffsetTag.EDGE,
        400.0,
        0.0);
  }

  /** A point of the edge 9.9 mm off, near for 1.4 mm either way: between two places looked at. */
  @Test
  void theJointsOfTheEdgeAreLookedAt() {
    double half = Math.sqrt(100 - 9.9 * 9.9);
    for (int count : new int[] {2, 50}) {
      assertParts(
          untagged(pointed(count), false, line(0, 0, 400, 0)),
          OffsetTag.EDGE,
          164 - half,
          0.0,
          OffsetTag.JOIN,
          164 + half,
          0.0,
          OffsetTag.EDGE,
          400.0,
          0.0);
    }
  }

  /** Up to the point (164, -9.9) in one line and down again in all the others. */
  private static OffsetEdge pointed(int segments) {
    List<Point> points = new ArrayList<>(List.of(new Point(100, -100), new Point(164, -9.9)));
    for (int i = 1; i < segments; i++) {
      points.add(new Point(164 + 60.0 * i / (segments - 1), -9.9 - 90.0 * i / (segments - 1)));
    }
    return OffsetEdge.of("pointed", Curve.polyline(points.toArray(new Point[0])), Length.mm(10));
  }
}
