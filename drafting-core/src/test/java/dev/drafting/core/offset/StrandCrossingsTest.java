package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where chains of strands cross themselves, by hand. */
class StrandCrossingsTest {
  private static List<Strand> chain(Segment... segments) {
    List<Strand> chain = new ArrayList<>();
    for (Segment segment : segments) {
      chain.add(Strand.join(segment, 0));
    }
    return chain;
  }

  private static Line line(double x0, double y0, double x1, double y1) {
    return new Line(new Point(x0, y0), new Point(x1, y1));
  }

  private static void assertCrossing(
      StrandCrossing found, int strand, double at, int other, double atOther) {
    assertEquals(strand, found.strand());
    assertEquals(at, found.at(), 1e-9);
    assertEquals(other, found.other());
    assertEquals(atOther, found.atOther(), 1e-9);
  }

  @Test
  void aBowTieCrossesInItsMiddle() {
    List<Strand> tie =
        chain(line(0, 0, 40, 20), line(40, 20, 40, 0), line(40, 0, 0, 20), line(0, 20, 0, 0));
    List<StrandCrossing> found = StrandCrossings.of(tie, true);
    assertEquals(1, found.size());
    assertCrossing(found.get(0), 0, 0.5, 2, 0.5);
    assertEquals(0, found.get(0).point().distanceTo(new Point(20, 10)).toMm(), 1e-12);
  }

  @Test
  void jointsAreNoCrossingsInAClosedChain() {
    List<Strand> pocket =
        chain(
            line(0, 0, 80, 0),
            Outlines.cubic(80, 0, 110, 20, 60, 60, 80, 90),
            Outlines.arc(40, 90, 40, 0, 180),
            line(0, 90, 0, 0));
    assertEquals(List.of(), StrandCrossings.of(pocket, true));
    List<Strand> bows =
        chain(
            Outlines.cubic(0, 0, 20, -30, 60, 30, 80, 0),
            Outlines.cubic(80, 0, 110, 20, 60, 60, 80, 90),
            Outlines.cubic(80, 90, 40, 120, 30, 40, 0, 0));
    assertEquals(List.of(), StrandCrossings.of(bows, true));
  }

  /** The last ends where the first begins; in an open chain that is a place like any other. */
  @Test
  void inAnOpenChainTheEndsMayMeet() {
    List<Strand> loop =
        chain(line(0, 0, 80, 0), line(80, 0, 80, 60), Outlines.cubic(80, 60, 50, 60, 10, 40, 0, 0));
    assertEquals(List.of(), StrandCrossings.of(loop, true));
    List<StrandCrossing> found = StrandCrossings.of(loop, false);
    assertEquals(1, found.size());
    assertCrossing(found.get(0), 0, 0, 2, 1);
  }

  @Test
  void aStrandThatCrossesItselfIsFound() {
    List<Strand> buttonhole =
        chain(line(-40, 12, -9, 12), Outlines.cubic(-9, 12, 13, -4, -13, -4, 9, 12));
    List<StrandCrossing> found = StrandCrossings.of(buttonhole, false);
    assertEquals(1, found.size());
    assertCrossing(found.get(0), 1, 0.25, 1, 0.75);
    assertEquals(0, found.get(0).point().distanceTo(new Point(0, 3)).toMm(), 1e-12);
  }

  /** A bow that comes back over the line it began from, as well as at the joint. */
  @Test
  void aStrandCrossesTheOneItFollows() {
    List<Strand> hook = chain(line(0, 0, 60, 0), Outlines.cubic(60, 0, 80, 40, 20, 40, 20, -40));
    List<StrandCrossing> found = StrandCrossings.of(hook, false);
    assertEquals(1, found.size());
    Point at = found.get(0).point();
    assertEquals(0, at.y(), 1e-9);
    assertEquals(
        0, at.distanceTo(hook.get(1).segment().pointAt(found.get(0).atOther())).toMm(), 1e-8);
  }

  /** Only strands whose boxes touch are compared; these touch at one place each. */
  @Test
  void strandsThatTouchWithTheEdgesOfTheirBoxesCross() {
    Line upright = line(40, 0, 40, 50);
    Line far = line(0, 100, 0, 120);
    assertEquals(1, StrandCrossings.of(chain(line(0, 20, 40, 20), far, upright), false).size());
    assertEquals(1, StrandCrossings.of(chain(line(40, 20, 90, 20), far, upright), false).size());
    assertEquals(1, StrandCrossings.of(chain(line(20, 50, 60, 50), far, upright), false).size());
    assertEquals(1, StrandCrossings.of(chain(line(20, 0, 60, 0), far, upright), false).size());
    assertEquals(0, StrandCrossings.of(chain(line(0, 20, 39, 20), far, upright), false).size());
  }

  @Test
  void everyStripOfALatticeCrossesEveryOther() {
    List<Strand> lattice = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      lattice.addAll(chain(line(-5, 10 * i, 70, 10 * i), line(200 + i, 300, 200 + i, 310)));
      lattice.addAll(chain(line(10 * i, -5, 10 * i, 70), line(300 + i, 300, 300 + i, 310)));
    }
    List<StrandCrossing> found = StrandCrossings.of(lattice, false);
    assertEquals(36, found.size());
    for (StrandCrossing crossing : found) {
      assertEquals(Math.rint(crossing.point().x() / 10) * 10, crossing.point().x(), 1e-9);
      assertEquals(Math.rint(crossing.point().y() / 10) * 10, crossing.point().y(), 1e-9);
    }
  }

  /** Two strands that follow each other and close the chain meet at both ends. */
  @Test
  void aLensOfTwoBowsCrossesNowhereButAtItsTips() {
    List<Strand> lens =
        chain(
            Outlines.cubic(0, 0, 20, -30, 60, -30, 80, 0),
            Outlines.cubic(80, 0, 60, 30, 20, 30, 0, 0));
    assertEquals(List.of(), StrandCrossings.of(lens, true));
  }
}
