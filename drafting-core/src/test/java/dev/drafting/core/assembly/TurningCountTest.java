package dev.drafting.core.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.pattern.Vests;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The turning of openings against a count of angles on a sewn surface of triangles, and the
 * identities that follow from Gauss and Bonnet.
 */
class TurningCountTest {
  private static final double ROUNDING = 1e-6;

  private static double turning(Assembly sewn, String edge) {
    return sewn.openings().stream()
        .filter(opening -> opening.name().startsWith(edge))
        .mapToDouble(opening -> opening.turning().toDegrees())
        .sum();
  }

  private static void agree(Pattern pattern, String... edges) {
    Assembly sewn = Assembly.of(pattern);
    SewnMesh mesh = SewnMesh.of(pattern);
    double all = 0;
    for (String edge : edges) {
      assertEquals(mesh.turningDegrees(edge), turning(sewn, edge), ROUNDING, edge);
      all += mesh.turningDegrees(edge);
    }
    assertEquals(mesh.eulerCharacteristic(), sewn.eulerCharacteristic());
    assertEquals(-360.0 * mesh.eulerCharacteristic(), all, ROUNDING);
  }

  private static Pattern sheet(Edge right, Edge hem, Edge left, Edge waist) {
    Seam seam =
        Seam.of("seam", EdgeRef.parse("sheet right"), EdgeRef.parse("sheet left")).endToStart();
    return Pattern.of(
        "sheet", List.of(Piece.of("sheet", List.of(right, hem, left, waist))), List.of(seam));
  }

  @Test
  void aTube() {
    Point a = new Point(0, 0);
    Point b = new Point(600, 0);
    Point c = new Point(600, 300);
    Point d = new Point(0, 300);
    Pattern tube =
        sheet(
            Edge.of("right", Curve.line(b, c)),
            Edge.of("waist", Curve.line(c, d)),
            Edge.of("left", Curve.line(d, a)),
            Edge.of("hem", Curve.line(a, b)));
    agree(tube, "hem", "waist");
    assertEquals(0, turning(Assembly.of(tube), "hem"), ROUNDING);
  }

  @ParameterizedTest
  @CsvSource({"30", "90", "170"})
  void aCone(double sector) {
    Angle sweep = Angle.degrees(sector);
    Point centre = new Point(0, 0);
    Arc hem = Arc.of(centre, Length.mm(300), Angle.ZERO, sweep);
    Arc waist = Arc.of(centre, Length.mm(100), sweep, sweep.negated());
    Pattern cone =
        sheet(
            Edge.of("right", Curve.line(waist.end(), hem.start())),
            Edge.of("hem", Curve.of(hem)),
            Edge.of("left", Curve.line(hem.end(), waist.start())),
            Edge.of("waist", Curve.of(waist)));
    agree(cone, "hem", "waist");
    assertEquals(sector, turning(Assembly.of(cone), "waist"), ROUNDING);
  }

  /** The identities: neck 360 - 2 (aF + aB), armhole 180 + aF + aB + tF + tB, hem -2 (tF + tB). */
  @ParameterizedTest
  @CsvSource({"0,0,0,0", "22,22,4,4", "25,18,6,2", "20,20,-5,3"})
  void aVestWithSlopingShoulders(double front, double back, double frontFlare, double backFlare) {
    Pattern vest =
        Vests.of(
            new Vests.Half(front, frontFlare, 110, 0), new Vests.Half(back, backFlare, 30, 50));
    agree(vest, "neck", "armhole", "hem");
    Assembly sewn = Assembly.of(vest);
    double slopes = front + back;
    double flares = frontFlare + backFlare;
    assertEquals(360 - 2 * slopes, turning(sewn, "neck"), ROUNDING);
    assertEquals(2 * (180 + slopes + flares), turning(sewn, "armhole"), ROUNDING);
    assertEquals(-2 * flares, turning(sewn, "hem"), ROUNDING);
  }

  /** A V turns at its point, the neck as a whole as much as a round one. */
  @Test
  void aVNeck() {
    Pattern round = Vests.plain();
    Pattern pointed = withNeck(round, new Point(0, 420));
    agree(pointed, "neck", "armhole", "hem");
    assertEquals(
        turning(Assembly.of(round), "neck"), turning(Assembly.of(pointed), "neck"), ROUNDING);
    OpeningStation point =
        Assembly.of(pointed).opening("neck").stations().stream()
            .filter(station -> station.label().equals("centre front"))
            .findFirst()
            .orElseThrow();
    double halfAngle = Math.toDegrees(Math.atan2(75, 180));
    assertEquals(360 - 2 * halfAngle, point.angle().toDegrees(), ROUNDING);
  }

  /** A neck of straight lines from the shoulder by way of some points to the centre front. */
  static Pattern withNeck(Pattern vest, Point... towardsCentre) {
    Piece front = vest.piece("front");
    Point low = towardsCentre[towardsCentre.length - 1];
    Point[] all = new Point[towardsCentre.length + 1];
    all[0] = front.edge("neck").curve().start();
    System.arraycopy(towardsCentre, 0, all, 1, towardsCentre.length);
    List<Edge> edges =
        front.edges().stream()
            .map(
                edge ->
                    edge.isOnFold()
                        ? Edge.onFold(Curve.line(low, edge.curve().end()))
                        : edge.name().equals("neck") ? Edge.of("neck", Curve.polyline(all)) : edge)
            .toList();
    return Vests.joined(Piece.of("front", edges), vest.piece("back"));
  }

  /**
   * CV-13, the V point on an outline: at a mitred corner of turn q the finished edge is 2 w tan(q /
   * 2) shorter than the join line, elsewhere w times the turning.
   */
  @Test
  void mitredCornersAreMeasuredOnTheOutline() {
    double w = 20;
    Opening pointed = Assembly.of(withNeck(Vests.plain(), new Point(0, 420))).opening("neck");
    double v = 2 * Math.atan2(75, 180);
    assertMitred(pointed, w, Math.PI - v);
    Opening square =
        Assembly.of(withNeck(Vests.plain(), new Point(75, 480), new Point(0, 480))).opening("neck");
    assertMitred(square, w, Math.PI / 2, Math.PI / 2);
  }

  private static void assertMitred(Opening neck, double w, double... corners) {
    double expected = w * neck.turning().toRadians();
    for (double q : corners) {
      expected += 2 * w * Math.tan(q / 2) - w * q;
    }
    // a straight front edge bends at the shoulder seam as well; the back is square to it
    for (OpeningStation station : neck.stations()) {
      double bend = station.angle().toRadians() - Math.PI;
      expected += station.label().equals("shoulder") ? w * Math.tan(bend) - w * bend : 0;
    }
    double measured = neck.lengthAt(Length.mm(-w)).minus(neck.length()).toMm();
    assertEquals(expected, measured, 0.05);
    List<Length> parts = neck.lengthsAt(Length.mm(-w));
    assertEquals(neck.parts().size(), parts.size());
    assertEquals(
        neck.lengthAt(Length.mm(-w)).toMm(), parts.stream().mapToDouble(Length::toMm).sum(), 1e-9);
  }

  /**
   * A straight hem 20 mm lower on a skirt that flares by 10 degrees on either side of two pieces:
   * each of four halves is 20 tan 10 wider there; narrower where it tapers.
   */
  @Test
  void straightHemsRunOnToTheirSides() {
    for (double flare : new double[] {10, 0, -10}) {
      Opening hem = Assembly.of(skirt(Math.toRadians(flare))).opening("hem");
      assertEquals(800, hem.length().toMm(), 1e-9);
      double expected = 800 + 4 * 20 * Math.tan(Math.toRadians(flare));
      assertEquals(expected, hem.lengthAt(Length.mm(20)).toMm(), 1e-6, "flare " + flare);
    }
  }

  /** A hem that winds and turns by nothing from the fold to the side has parallels as long. */
  @Test
  void windingHemsRunOnToTheirSides() {
    Point a = new Point(0, 15);
    Point b = new Point(200, 0);
    Curve winding = Curve.of(new Cubic(a, new Point(70, 15), new Point(130, 0), b));
    for (double flare : new double[] {10, 0, -10}) {
      Opening hem = Assembly.of(skirt(winding, Math.toRadians(flare))).opening("hem");
      double expected = hem.length().toMm() + 4 * 20 * Math.tan(Math.toRadians(flare));
      assertEquals(expected, hem.lengthAt(Length.mm(20)).toMm(), 0.01, "flare " + flare);
    }
  }

  private static Pattern skirt(double flare) {
    return skirt(Curve.line(new Point(0, 0), new Point(200, 0)), flare);
  }

  private static Pattern skirt(Curve hem, double flare) {
    Point a = hem.start();
    Point b = hem.end();
    Point c = new Point(200 - 300 * Math.tan(flare), 300);
    Point d = new Point(0, 300);
    List<Edge> edges =
        List.of(
            Edge.of("hem", hem),
            Edge.of("side", Curve.line(b, c)),
            Edge.of("waist", Curve.line(c, d)),
            Edge.onFold(Curve.line(d, a)));
    return Pattern.of(
        "skirt",
        List.of(Piece.of("front", edges), Piece.of("back", edges)),
        List.of(Seam.of("side", "front side", "back side")));
  }
}
