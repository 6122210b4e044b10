package dev.drafting.core.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.pattern.Vests;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class AssemblyValuesTest {
  private static final Assembly VEST = Assembly.of(Vests.plain());

  private static void differ(Object one, Object other) {
    assertNotEquals(one, other);
    assertNotEquals(one.hashCode(), other.hashCode());
    assertNotEquals(one, "something else");
  }

  @Test
  void whatDiffersIsNotEqual() {
    Opening neck = VEST.opening("neck");
    assertEquals(neck, Assembly.of(Vests.plain()).opening("neck"));
    differ(neck, VEST.opening("hem"));
    differ(neck.parts().get(0), neck.parts().get(1));
    differ(neck.parts().get(0), neck.parts().get(3));
    assertEquals(neck.parts().get(0), Assembly.of(Vests.plain()).opening("neck").parts().get(0));
    Assembly longer = Assembly.of(Vests.plain().withVersion("2"));
    differ(VEST, longer);
    assertEquals(neck.parts(), longer.opening("neck").parts());
    List<Junction> junctions = VEST.junctions();
    differ(junctions.get(0), junctions.get(1));
  }

  @Test
  void truingsDifferByAllThatIsAskedOfThem() {
    PatternTruing truing = PatternTruing.of(Vests.plain());
    Length one = Length.mm(1);
    EdgeRef side = EdgeRef.parse("front side");
    assertEquals(truing, PatternTruing.of(Vests.plain()));
    List<PatternTruing> others =
        List.of(
            PatternTruing.of(Vests.plain().withVersion("2")),
            truing.evened(one),
            truing.smoothed(Angle.degrees(3)),
            truing.withLimit(one),
            truing.withWandering("front", one),
            truing.keepingLengthOf(side),
            truing.withCornersHeld());
    for (PatternTruing other : others) {
      differ(truing, other);
      assertEquals(other, SerialCopy.of(other));
    }
    assertEquals(
        "vest trued: seams evened up to 1 mm, crossings smoothed up to 3°",
        truing.evened(one).smoothed(Angle.degrees(3)).toString());
    TruedPattern still = truing.result();
    differ(still, PatternTruing.of(Vests.plain().withVersion("2")).result());
    Pattern vest = Vests.plain();
    differ(still, new TruedPattern(vest, Map.of(side, one), List.of()));
    Finding note = Finding.note("truing.moved", Place.piece("front"), "moved");
    differ(still, new TruedPattern(vest, Map.of(), List.of(note)));
    TruedPattern moved = new TruedPattern(vest, Map.of(side, one), List.of(note));
    assertEquals(moved, SerialCopy.of(moved));
    assertEquals("vest: moved by up to 1 mm, 1 finding", moved.toString());
  }

  /** A neck that is drawn deeper has the name, the seams and the edges of the one before. */
  @Test
  void anOpeningIsEqualByItsShape() {
    Pattern deeper = Vests.joined(Vests.piece("front", new Vests.Half(22, 4, 120, 0)), back());
    Pattern plain = Vests.joined(Vests.piece("front", Vests.FRONT), back());
    Opening one = Assembly.of(plain).opening("neck");
    Opening other = Assembly.of(deeper).opening("neck");
    differ(one, other);
    differ(one.parts().get(0), other.parts().get(0));
    assertEquals(one.parts().get(3).edge(), other.parts().get(3).edge());
  }

  private static Piece back() {
    return Vests.piece("back", Vests.BACK);
  }

  @Test
  void readsWell() {
    Opening hem = VEST.opening("hem");
    OpeningPart part = hem.parts().get(1);
    String length = part.curve().length().text(LengthUnit.MM);
    String from = part.from().text(LengthUnit.MM);
    assertEquals(
        part.edge() + (part.mirrored() ? " (mirrored), " : ", ") + length + " from " + from,
        part.toString());
    assertTrue(hem.stations().get(0).toString().matches("[a-z ]+ at [0-9.]+ mm, [0-9.]+°"));
  }

  /** A round opening of one closed edge turns once: 360 degrees, like that of any flat piece. */
  @Test
  void aRoundPieceIsFlat() {
    Arc round = Arc.of(new Point(0, 0), Length.mm(100), Angle.ZERO, Angle.degrees(360));
    Piece disc = Piece.of("disc", List.of(Edge.of("rim", Curve.of(round))));
    Assembly flat = Assembly.of(Pattern.of("coaster", List.of(disc), List.of()));
    assertEquals(1, flat.eulerCharacteristic());
    Opening rim = flat.openings().get(0);
    assertEquals(-360, rim.turning().toDegrees(), 1e-6);
    assertEquals(200 * Math.PI, rim.length().toMm(), 1e-6);
  }

  /** A drop with its tip at the start of its only edge turns once as well. */
  @Test
  void aDropIsFlat() {
    Curve drop =
        Curve.of(
            new Cubic(new Point(0, 0), new Point(120, 60), new Point(-120, 60), new Point(0, 0)));
    Piece piece = Piece.of("drop", List.of(Edge.of("rim", drop)));
    Opening rim = Assembly.of(Pattern.of("charm", List.of(piece), List.of())).openings().get(0);
    assertEquals(-360, rim.turning().toDegrees(), 1e-6);
  }

  private static Finding crossing(Point... corners) {
    Point first = corners[0];
    Curve rest = Curve.polyline(Arrays.copyOfRange(corners, 1, corners.length));
    Piece piece =
        Piece.of(
            "bow",
            List.of(
                Edge.of("one", Curve.line(first, corners[1])),
                Edge.of("two", rest),
                Edge.of("three", Curve.line(corners[corners.length - 1], first))));
    return Assembly.of(Pattern.of("apron", List.of(piece), List.of())).findings().get(0);
  }

  /** The edges that cross are named, whichever they are. */
  @Test
  void anEdgeMayCrossAnotherOrItself() {
    Finding other =
        crossing(new Point(0, 0), new Point(100, 0), new Point(40, 80), new Point(60, 80));
    assertEquals(
        "two crosses three at x 5.0 cm, y 6.7 cm: no cloth can be cut like this", other.reason());
    assertEquals(
        List.of("Redraw two and three so that the outline does not cross."),
        other.remedies().stream().map(Remedy::text).toList());
    Finding itself =
        crossing(
            new Point(0, 0),
            new Point(100, 0),
            new Point(100, 60),
            new Point(40, 100),
            new Point(40, 60),
            new Point(90, 100),
            new Point(0, 120));
    assertTrue(itself.reason().startsWith("two crosses itself at x "), itself.reason());
    assertEquals("Redraw two so that the outline does not cross.", itself.remedies().get(0).text());
  }

  private static Piece half(String name, double slope) {
    Point a = new Point(0, 0);
    Point b = new Point(200, -slope);
    Point c = new Point(200, 300);
    Point d = new Point(0, 300);
    return Piece.of(
        name,
        List.of(
            Edge.of("hem", Curve.line(a, b)),
            Edge.of("side", Curve.line(b, c)),
            Edge.of("top", Curve.line(c, d)),
            Edge.onFold(Curve.line(d, a))));
  }

  private static Pattern tube(double front, double back) {
    return Pattern.of(
        "tube",
        List.of(half("front", front), half("back", back)),
        List.of(Seam.of("side", "front side", "back side")));
  }

  /** Straight hems that meet within the tolerance stay straight; beyond it both are bent alike. */
  @Test
  void straightEdgesAreBentOnlyBeyondTheTolerance() {
    Pattern within = tube(2, 2);
    assertEquals(within, Assembly.of(within).smoothed(Angle.degrees(25)));
    Pattern beyond = tube(20, 20);
    Pattern smoothed = Assembly.of(beyond).smoothed(Angle.degrees(25));
    for (String piece : List.of("front", "back")) {
      double corner = smoothed.piece(piece).corner("hem", "side").interiorAngle().toDegrees();
      assertEquals(90, corner, 1e-6, piece);
    }
    assertEquals(beyond, Assembly.of(beyond).smoothed(Angle.degrees(11)), "bends by 11.4 degrees");
  }

  @Test
  void nothingToARightAngleMayBeSmoothed() {
    Pattern tube = tube(20, 20);
    assertEquals(tube, Assembly.of(tube).smoothed(Angle.ZERO));
    assertNotEquals(tube, Assembly.of(tube).smoothed(Angle.degrees(90)));
    assertThrows(DraftingException.class, () -> Assembly.of(tube).smoothed(Angle.degrees(-0.1)));
    assertThrows(DraftingException.class, () -> Assembly.of(tube).smoothed(Angle.degrees(90.1)));
  }
}
