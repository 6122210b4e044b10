package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Nearest;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The chain of parallels before distant parts are trimmed, and what its corners cost. */
class RawOutlineTest {
  private static final double TOLERANCE = 0.01;

  private static RawOutline outline(List<OffsetEdge> edges) {
    return RawOutline.of(edges, Map.of(), true, TOLERANCE);
  }

  private static List<OffsetEdge> polygon(double distance, double... xy) {
    List<OffsetEdge> edges = new ArrayList<>();
    int n = xy.length / 2;
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      edges.add(
          Outlines.line("edge " + i, distance, xy[2 * i], xy[2 * i + 1], xy[2 * j], xy[2 * j + 1]));
    }
    return edges;
  }

  private static List<Strand> steps(List<OffsetEdge> edges) {
    return outline(edges).chain().stream().filter(s -> s.tag() == OffsetTag.STEP).toList();
  }

  /** An armhole that bends more tightly than 20 mm at the underarm, and a line beyond it. */
  private static List<OffsetEdge> underarm() {
    return List.of(
        Outlines.line("hem", 0, 0, 0, 254, 0),
        Outlines.line("side", 20, 254, 0, 254, 262),
        Outlines.edge(
            "armhole",
            20,
            Outlines.cubic(254, 262, 229, 262, 208, 344, 213, 413),
            new Line(new Point(213, 413), new Point(213, 440))),
        Outlines.line("shoulder", 0, 213, 440, 0, 440),
        Outlines.line("fold", 0, 0, 440, 0, 0));
  }

  @Test
  void whatATightStartOfAnEdgeLosesIsItsLengthUpToThePlaceBesideTheParallel() {
    List<OffsetEdge> edges = underarm();
    List<Trimming> trimmings = outline(edges).trimmings();
    assertEquals(1, trimmings.size());
    Trimming trimming = trimmings.get(0);
    assertEquals("armhole", trimming.edge());
    assertEquals(Trimming.Cause.TIGHT_CURVE, trimming.cause());
    assertEquals(foot(edges.get(2), trimming.at()), trimming.lost().toMm(), 0.1);
    assertTrue(trimming.lost().toMm() > 5);
  }

  /** The same outline mirrored: the armhole runs down to the underarm. */
  @Test
  void whatATightEndOfAnEdgeLosesIsItsLengthFromThePlaceBesideTheParallel() {
    List<OffsetEdge> edges = underarm();
    List<OffsetEdge> mirrored = new ArrayList<>();
    for (int i = edges.size() - 1; i >= 0; i--) {
      List<Segment> segments = new ArrayList<>();
      for (Segment segment : edges.get(i).curve().segments()) {
        segments.add(
            0, segment.map(Transform.mirrorIn(new Point(0, 0), new Point(0, 1))).reversed());
      }
      mirrored.add(OffsetEdge.of(edges.get(i).name(), Curve.of(segments), edges.get(i).distance()));
    }
    List<Trimming> trimmings = outline(mirrored).trimmings();
    assertEquals(1, trimmings.size());
    Trimming trimming = trimmings.get(0);
    OffsetEdge armhole = mirrored.get(2);
    double left = armhole.curve().length().toMm() - foot(armhole, trimming.at());
    assertEquals(left, trimming.lost().toMm(), 0.1);
    assertEquals(outline(edges).trimmings().get(0).lost().toMm(), left, 0.1);
    Point at = outline(edges).trimmings().get(0).at();
    assertEquals(0, trimming.at().distanceTo(new Point(-at.x(), at.y())).toMm(), 0.1);
  }

  private static double foot(OffsetEdge edge, Point at) {
    Nearest nearest = edge.curve().nearest(at);
    assertEquals(20, nearest.distance().toMm(), 0.05);
    return nearest.along().toMm();
  }

  @Test
  void whereNothingTurnsBackNothingIsLostAtCorners() {
    assertEquals(List.of(), outline(Outlines.rectangle(100, 50, 10, -7, 0, 5)).trimmings());
  }

  /** The cut corner is 12 mm long; 20 mm inside each of its ends is cut by 8.3 mm. */
  @Test
  void theCornersOfAnEdgeWithNothingLeftAreLeftUncut() {
    double leg = 12 / Math.sqrt(2);
    List<OffsetEdge> edges =
        polygon(-20, 0, 0, 100, 0, 100 + leg, leg, 100 + leg, 100 + leg, 0, 100 + leg);
    List<Strand> steps = steps(edges);
    assertEquals(4, steps.size());
    assertEquals(new Point(100, 20), steps.get(0).start());
    assertEquals(new Point(100, 0), steps.get(0).end());
    assertEquals(new Point(100 + leg, leg), steps.get(2).end());
    List<OffsetEdge> longer = polygon(-20, 0, 0, 100, 0, 112, 12, 112, 112, 0, 112);
    assertEquals(List.of(), steps(longer));
  }

  /** The edge of 10 mm from (60, 40) to (60, 50): a gap before it, and it is cut at its start. */
  @Test
  void aCornerWithAGapStaysAsItIsBesideAnEdgeWithNothingLeft() {
    List<OffsetEdge> edges = polygon(-10, 0, 0, 200, 0, 200, 40, 60, 40, 60, 50, 0, 50);
    List<Strand> chain = outline(edges).chain();
    assertEquals(2, steps(edges).size());
    assertTrue(
        chain.stream().anyMatch(strand -> strand.end().equals(new Point(50, 30))), chain::toString);
  }

  /** Each corner is mitred but the one between the last and the first segment. */
  @Test
  void theOnlyCornerOfASingleEdgeIsWhereItCloses() {
    OffsetEdge square = Outlines.line("all", 10, 0, 0, 100, 0, 100, 100, 0, 100, 0, 0);
    OffsetResult result =
        Offset.of(List.of(square)).withCorner(0, CornerTreatment.bevel()).result();
    assertEquals(120 * 120 - 10 * 10 / 2.0, result.outline().areaSquareMm(), 1e-9);
  }

  @Test
  void arcsMayBeAlmostAHundredMetresWideWithTheirDistance() {
    assertEquals(3, outline(shallow(98_985)).chain().stream().map(Strand::edge).distinct().count());
    DraftingException refused =
        assertThrows(DraftingException.class, () -> outline(shallow(98_995)));
    assertTrue(
        String.valueOf(refused.getMessage()).startsWith("shallow: an arc of the edge is too wide"));
  }

  private static List<OffsetEdge> shallow(double radius) {
    Segment arc = Outlines.arc(0, radius, radius, -90, 0.1);
    Point end = arc.end();
    return List.of(
        OffsetEdge.of("shallow", Curve.of(arc), Length.mm(10)),
        Outlines.line("side", 10, end.x(), end.y(), 0, 100),
        Outlines.line("fold", 10, 0, 100, 0, 0));
  }
}
