package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RepeatedTracingTest {
  private static final int SEEDS = 20;

  private static Tracing half(long seed) {
    return new Vest.Pencil(seed, 1, 10).half();
  }

  private static double squares(Tracing tracing) {
    TruedPiece trued = Truing.of(tracing).result();
    double squares = 0;
    for (String name : Vest.EDGES) {
      double off = Vest.rms(trued.piece().edge(name).curve(), Vest.edge(name));
      squares += off * off / Vest.EDGES.size();
    }
    return squares;
  }

  /** Errors of four that know nothing of each other: half as large together. */
  @Test
  void fourTracingsAreTwiceAsGoodAsOne() {
    double one = 0;
    double four = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      one += squares(half(seed));
      Tracing first = half(seed);
      four +=
          squares(
              RepeatedTracing.of(first, half(seed + 100), half(seed + 200), half(seed + 300))
                  .together());
    }
    double ratio = Math.sqrt(four / one);
    assertTrue(ratio < 0.65, "ratio " + ratio);
  }

  /** A vest that lies anywhere, its edges named right and left. */
  private static Tracing lying(long seed, Transform lying) {
    List<TracedEdge> edges = new ArrayList<>();
    Vest.Pencil pencil = new Vest.Pencil(seed, 0.5, 10);
    int i = 0;
    for (Vest.Stroke stroke : Vest.whole()) {
      edges.add(TracedEdge.of(stroke.name() + i++, pencil.trace(stroke.curve().map(lying))));
    }
    return Tracing.of("front", Extent.AS_IT_LIES, edges);
  }

  @Test
  void tracingsThatLieAnywhereAreLaidOnTheFirst() {
    Transform elsewhere =
        Transform.rotation(new Point(0, 0), Angle.degrees(140))
            .then(Transform.translation(new Vector(900, -300)));
    RepeatedTracing twice = RepeatedTracing.of(lying(1, Transform.identity()), lying(2, elsewhere));
    assertTrue(twice.deviation(0).toMm() < 0.5, twice.toString());
    assertTrue(twice.deviation(1).toMm() < 0.5, twice.toString());
    assertEquals(List.of(), twice.findings());
    TruedPiece trued = Truing.of(twice.together()).result();
    double off = Vest.rms(trued.piece().edge("side1").curve(), Vest.edge("side"));
    assertTrue(off < 0.7, "off " + off);
  }

  @Test
  void theOtherSideIsTurnedOver() {
    Transform over = Transform.mirrorIn(new Point(30, 0), new Point(80, 200));
    RepeatedTracing twice = RepeatedTracing.of(lying(1, Transform.identity()), lying(2, over));
    assertTrue(twice.deviation(1).toMm() < 0.5, twice.toString());
    assertEquals("trace.other-side", twice.findings().get(0).id());
    assertEquals(
        "tracing 2 shows the other side of the piece; it was turned over",
        twice.findings().get(0).reason());
  }

  /** Four straight edges, named from the lowest on. */
  private static Tracing four(long seed, double top, String... names) {
    Vest.Pencil pencil = new Vest.Pencil(seed, 0.5, 10);
    Point[] corners = {
      new Point(-110, 0), new Point(110, 0), new Point(top, 300), new Point(-top, 300)
    };
    List<TracedEdge> edges = new ArrayList<>();
    for (int i = 0; i < corners.length; i++) {
      Curve edge = Curve.line(corners[i], corners[(i + 1) % corners.length]);
      edges.add(TracedEdge.of(names[i], pencil.trace(edge)));
    }
    return Tracing.of("sleeve", Extent.AS_IT_LIES, edges);
  }

  @Test
  void namesThatBeginAtAnotherCornerAreRefused() {
    Tracing first = four(1, 170, "hem", "front seam", "cap", "back seam");
    Tracing shifted = four(2, 170, "front seam", "cap", "back seam", "hem");
    DraftingException refused =
        assertThrows(DraftingException.class, () -> RepeatedTracing.of(first, shifted));
    assertEquals(
        "sleeve: the edges of one tracing are named from another corner. Found: a front seam as"
            + " long as the hem of the first tracing. Accepted: the same names for the same edges.",
        refused.getMessage());
  }

  /** A strip that was turned end to end looks as it did before. */
  @Test
  void namesThatFitFromTwoCornersAreTaken() {
    Tracing first = four(1, 110, "hem", "front seam", "cap", "back seam");
    Tracing turned = four(2, 110, "cap", "back seam", "hem", "front seam");
    assertTrue(RepeatedTracing.of(first, turned).deviation(1).toMm() < 0.5);
  }

  private static Tracing scaled(Tracing tracing, double acrossScale, double alongScale) {
    List<TracedEdge> edges = new ArrayList<>();
    for (TracedEdge edge : tracing.edges()) {
      double[] xy = edge.points().toArray();
      for (int i = 0; i < xy.length; i += 2) {
        xy[i] *= acrossScale;
        xy[i + 1] *= alongScale;
      }
      edges.add(TracedEdge.of(edge.name(), xy));
    }
    return Tracing.of(tracing.piece(), tracing.extent(), edges);
  }

  /** Of four tracings the middle is between two: those 4 % off it are said, those 1 % off not. */
  @Test
  void eachTracingIsHeldAgainstTheMiddleOfAll() {
    Tracing exact = new Vest.Pencil(1, 0, 10).half();
    RepeatedTracing four =
        RepeatedTracing.of(
            scaled(exact, 1.01, 1), scaled(exact, 0.99, 0.96), scaled(exact, 1.04, 1), exact);
    assertEquals(
        List.of(
            "tracing 2 is 4.0 % shorter than the tracings in the middle: the piece was pushed"
                + " together as it lay",
            "tracing 3 is 3.5 % wider than the tracings in the middle: the piece was stretched as"
                + " it lay"),
        four.findings().stream().map(finding -> finding.reason()).toList());
  }

  /** The mean lies where the first tracing lies, its points in order along each edge. */
  @Test
  void theMeanLiesOnTheFirstTracing() {
    Tracing exact = new Vest.Pencil(1, 0, 10).half();
    Tracing higher = Vest.map(exact, Transform.translation(new Vector(0, 40)));
    RepeatedTracing three = RepeatedTracing.of(exact, higher, higher);
    for (int i = 0; i < 3; i++) {
      assertEquals(0, three.deviation(i).toMm(), 1e-6);
    }
    for (TracedEdge edge : three.together().edges()) {
      Curve truth = Vest.edge(edge.name());
      Length before = Length.ZERO;
      for (int i = 0; i < edge.points().size(); i++) {
        var nearest = truth.nearest(edge.points().point(i));
        assertEquals(0, nearest.distance().toMm(), 1e-6, edge.name());
        assertTrue(nearest.along().plus(Length.mm(1e-6)).compareTo(before) >= 0, edge.name());
        before = nearest.along();
      }
    }
  }

  @Test
  void aStretchedLayIsSaid() {
    Tracing stretched = scaled(half(3), 1.04, 1);
    RepeatedTracing three = RepeatedTracing.of(half(1), stretched, half(2));
    assertEquals(1, three.findings().size(), three.findings().toString());
    String said = three.findings().get(0).toString();
    assertTrue(said.contains("tracing 2 is ") && said.contains("stretched as it lay"), said);
    assertTrue(three.deviation(1).compareTo(three.deviation(0)) > 0);
  }

  @Test
  void wholeTracingsAndHalvesGoTogether() {
    Transform lying = Transform.rotation(new Point(0, 300), Angle.degrees(12));
    Tracing whole = new Vest.Pencil(9, 1, 10).whole(lying);
    RepeatedTracing twice = RepeatedTracing.of(half(1), whole);
    assertEquals(Extent.HALF_ON_FOLD, twice.together().extent());
    assertEquals(List.of(half(1), whole), twice.tracings());
    assertTrue(Math.sqrt(squares(twice.together())) < 0.6);
  }

  @Test
  void aBackHasTheFrontsEdgesAndItsOwnNeckline() {
    Tracing front = new Vest.Pencil(1, 0, 10).half();
    Tracing back = front.withLine("back", TracedEdge.of("neck", 96, 657, 70, 640, 40, 632, 0, 630));
    TruedPiece trued = Truing.of(back).result();
    assertEquals("back", trued.piece().name());
    assertEquals(
        Vest.edge("armhole").length().toMm(), trued.piece().edge("armhole").length().toMm(), 1e-6);
    assertTrue(trued.piece().edge("neck").length().toMm() < 105);
    assertThrows(
        DraftingException.class, () -> front.withLine("back", TracedEdge.of("yoke", 0, 0, 10, 10)));
  }

  @Test
  void whatIsNotTheSamePieceIsRefused() {
    Tracing front = half(1);
    assertEquals(
        "front: a piece that was traced once cannot be compared. Found: 1 tracing. "
            + "Accepted: two tracings or more.",
        assertThrows(DraftingException.class, () -> RepeatedTracing.of(front)).getMessage());
    Tracing renamed =
        Tracing.of(
            "front",
            Extent.HALF_ON_FOLD,
            front.edges().stream()
                .map(e -> TracedEdge.of(e.name().replace("neck", "collar"), e.points()))
                .toList());
    DraftingException other =
        assertThrows(DraftingException.class, () -> RepeatedTracing.of(front, renamed));
    assertEquals("two tracings of a piece have other edges", other.what());
    Tracing lying = lying(1, Transform.identity());
    assertThrows(DraftingException.class, () -> RepeatedTracing.of(front, lying));
    RepeatedTracing twice = RepeatedTracing.of(front, half(2));
    assertThrows(DraftingException.class, () -> twice.deviation(2));
  }

  @Test
  void valuesAreReadBackAndReadWell() {
    RepeatedTracing twice = RepeatedTracing.of(half(1), half(1));
    Object read = SerialCopy.of(twice);
    assertEquals(twice, read);
    assertEquals(twice.hashCode(), read.hashCode());
    assertEquals(twice.together(), ((RepeatedTracing) read).together());
    assertEquals(Length.ZERO, twice.deviation(1));
    assertEquals("front, traced 2 times, off their mean 0 mm, 0 mm", twice.toString());
  }
}
