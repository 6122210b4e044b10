package dev.drafting.core.pattern;

import static dev.drafting.core.pattern.Refusals.refusal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Edges that are moved sideways, and edges that are turned where they begin and end. */
class SideShiftTest {
  /** 200 x 400 mm, on the fold at its left. */
  private static final Pattern PANEL =
      Pattern.of(
          "panel",
          List.of(
              Piece.of(
                  "panel",
                  List.of(
                      Edge.of("hem", Curve.line(new Point(0, 0), new Point(200, 0))),
                      Edge.of("right", Curve.line(new Point(200, 0), new Point(200, 400))),
                      Edge.of("top", Curve.line(new Point(200, 400), new Point(0, 400))),
                      Edge.onFold(Curve.line(new Point(0, 400), new Point(0, 0)))))),
          List.of());

  private static Piece shifted(String edge, double from, double at, double to, double outward) {
    return Reshaping.of(PANEL)
        .shifted(
            new EdgeRef("panel", edge),
            Length.mm(from),
            Length.mm(at),
            Length.mm(to),
            Length.mm(outward))
        .result()
        .piece("panel");
  }

  /** How far the right edge lies outside x 200 at a height. */
  private static double out(Piece panel, double height) {
    Curve level = Curve.line(new Point(-500, height), new Point(900, height));
    return panel.edge("right").curve().intersections(level).get(0).point().x() - 200;
  }

  /**
   * It is u u (3 - 2 u) of the way between the places, the usual smooth step: half of it half way.
   */
  @Property(tries = 50)
  void itGrowsAndFadesSmoothly(
      @ForAll @DoubleRange(min = 120, max = 280) double at,
      @ForAll @DoubleRange(min = -40, max = 40) double outward) {
    Piece panel = shifted("right", 100, at, 300, outward);
    assertEquals(0, out(panel, 60), 1e-9);
    assertEquals(0, out(panel, 340), 1e-9);
    assertEquals(outward / 2, out(panel, (100 + at) / 2), 1e-6);
    assertEquals(outward, out(panel, at), 1e-6);
    assertEquals(outward / 2, out(panel, (at + 300) / 2), 1e-6);
    Curve right = panel.edge("right").curve();
    for (Segment segment : right.segments()) {
      Vector up = new Vector(0, 1);
      assertEquals(0, Math.min(bend(segment, 0, up), bend(segment, 1, up)), 1e-6);
    }
    assertEquals(Curve.line(new Point(0, 0), new Point(200, 0)), panel.edge("hem").curve());
  }

  private static double bend(Segment segment, double t, Vector way) {
    return Math.abs(segment.directionAt(t).turnTo(way).toRadians());
  }

  /** At an end the corner moves, and what meets it there reaches as far. */
  @Test
  void atAnEndTheCornerMovesToo() {
    Piece foot = shifted("right", 0, 0, 400, 30);
    assertEquals(new Point(230, 0), foot.edge("hem").curve().end());
    assertEquals(new Point(230, 0), foot.edge("right").curve().start());
    assertEquals(15, out(foot, 200), 1e-6);
    assertEquals(new Point(200, 400), foot.edge("right").curve().end());
    Piece top = shifted("right", 100, 400, 400, -30);
    assertEquals(new Point(170, 400), top.edge("top").curve().start());
    assertEquals(0, out(top, 50), 1e-9);
    assertEquals(-15, out(top, 250), 1e-6);
  }

  /** On the fold the hem goes down along the fold, and the fold is that much longer. */
  @Test
  void atTheFoldItMovesAlongTheFold() {
    Piece lower = shifted("hem", 0, 0, 200, 25);
    assertEquals(new Point(0, -25), lower.edge("hem").curve().start());
    assertEquals(new Point(200, 0), lower.edge("hem").curve().end());
    assertEquals(425, lower.edge("fold").length().toMm(), 1e-9);
    Piece higher = shifted("hem", 0, 0, 200, -25);
    assertEquals(new Point(0, 25), higher.edge("hem").curve().start());
    Piece upper = shifted("top", 0, 200, 200, 25);
    assertEquals(new Point(0, 425), upper.edge("top").curve().end());
  }

  /** The end of a quarter circle of 100 mm moves along its radius; the rest follows. */
  @Test
  void arcsAreMovedLikeLines() {
    Arc quarter = Arc.of(new Point(0, 0), Length.mm(100), Angle.ZERO, Angle.degrees(90));
    Piece fan =
        Piece.of(
            "fan",
            List.of(
                Edge.of("rim", Curve.of(quarter)),
                Edge.of("left", Curve.line(new Point(0, 100), new Point(0, 0))),
                Edge.of("foot", Curve.line(new Point(0, 0), new Point(100, 0)))));
    Length all = quarter.length();
    Pattern grown =
        Reshaping.of(Pattern.of("fan", List.of(fan), List.of()))
            .shifted(EdgeRef.parse("fan rim"), Length.ZERO, all.times(0.5), all, Length.mm(12))
            .result();
    Curve rim = grown.piece("fan").edge("rim").curve();
    Point middle = new Point(112 * Math.sqrt(0.5), 112 * Math.sqrt(0.5));
    assertEquals(0, rim.nearest(middle).distance().toMm(), 0.01);
    assertEquals(quarter.start(), rim.start());
    assertEquals(quarter.end(), rim.end());
  }

  private static String refused(double from, double at, double to) {
    return refusal(() -> shifted("right", from, at, to, 5)).replaceFirst("^.*right: ", "");
  }

  @Test
  void placesAreInOrderAndOnTheEdge() {
    String order = "the places along the edge are out of order.";
    assertTrue(refused(-1, 50, 100).startsWith(order));
    assertTrue(refused(60, 50, 100).startsWith(order));
    assertTrue(refused(0, 101, 100).startsWith(order));
    assertTrue(refused(50, 50, 50).startsWith(order));
    assertEquals(
        "the place lies beyond the end of the edge. Found: 400.1 mm. Accepted: 0 mm to 400 mm.",
        refused(0, 50, 400.1));
    String jump = "the edge would jump where it begins to move.";
    assertTrue(refused(50, 50, 100).startsWith(jump));
    assertTrue(refused(50, 100, 100).startsWith(jump));
  }

  /** A straight edge that leaves by ten degrees more is a gentle curve between the same corners. */
  @Test
  void anEdgeIsTurnedAtItsEnds() {
    Piece panel = PANEL.piece("panel").withNotch(Notch.of("right", Length.mm(100), "hip"));
    Piece turned = panel.withTurnedEdge("right", Angle.degrees(10), Angle.degrees(-4));
    Curve right = turned.edge("right").curve();
    assertEquals(new Point(200, 0), right.start());
    assertEquals(new Point(200, 400), right.end());
    assertEquals(80, turned.corner("hem", "right").interiorAngle().toDegrees(), 1e-6);
    assertEquals(86, turned.corner("right", "top").interiorAngle().toDegrees(), 1e-6);
    double share = turned.notches().get(0).along().ratioTo(right.length());
    assertEquals(0.25, share, 1e-9);
    assertEquals(panel, panel.withTurnedEdge("right", Angle.ZERO, Angle.ZERO));
    Curve once = panel.withTurnedEdge("right", Angle.degrees(10), Angle.ZERO).edge("right").curve();
    assertEquals(0, bend(once.segments().get(0), 1, new Vector(0, 1)), 1e-9);
  }

  /** The hem goes down by 20 on 200 mm at its right; the side beside it turns as the hem does. */
  @Test
  void anglesAreKeptBesideAnEdgeThatTurns() {
    Reshaping lower = Reshaping.of(PANEL).moved(EdgeRef.parse("panel hem"), new Vector(0, -20));
    Piece kept = lower.keepingAnglesTo(EdgeRef.parse("panel hem")).result().piece("panel");
    assertEquals(90, kept.corner("hem", "right").interiorAngle().toDegrees(), 1e-6);
    assertEquals(90, kept.corner("right", "top").interiorAngle().toDegrees(), 1e-6);
    assertTrue(kept.edge("fold").curve().segments().get(0) instanceof Line);
    Piece bent = lower.result().piece("panel");
    double slope = Math.toDegrees(Math.atan2(20, 200));
    assertEquals(90 - slope, bent.corner("hem", "right").interiorAngle().toDegrees(), 1e-6);
  }
}
