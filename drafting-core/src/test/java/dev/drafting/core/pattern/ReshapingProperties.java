package dev.drafting.core.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** What a reshaping leaves as it was. */
class ReshapingProperties {

  private static Pattern tee(double frontSlope, double backSlope, double depth) {
    return Tees.of(new Vests.Half(frontSlope, 3, depth, 0), new Vests.Half(backSlope, 5, 30, 40));
  }

  /** First side less second side, over all seams. */
  private static List<Double> differences(Pattern pattern) {
    return pattern.seams().stream()
        .map(seam -> length(pattern, seam.first()) - length(pattern, seam.second()))
        .toList();
  }

  private static double length(Pattern pattern, List<EdgeRef> edges) {
    return edges.stream().mapToDouble(edge -> pattern.edge(edge).length().toMm()).sum();
  }

  private static void assertSeamsAsBefore(Pattern before, Pattern after) {
    List<Double> wanted = differences(before);
    List<Double> found = differences(after);
    for (int i = 0; i < wanted.size(); i++) {
      assertEquals(wanted.get(i), found.get(i), 1e-6, before.seams().get(i).name());
    }
  }

  @Property(tries = 30)
  void seamsMatchAsBeforeWhenPiecesAreScaled(
      @ForAll @DoubleRange(min = 10, max = 30) double frontSlope,
      @ForAll @DoubleRange(min = 10, max = 30) double backSlope,
      @ForAll @DoubleRange(min = 0.9, max = 1.2) double across,
      @ForAll @DoubleRange(min = 0.9, max = 1.2) double along) {
    Pattern tee = tee(frontSlope, backSlope, 100);
    Reshaping scaled = Reshaping.of(tee);
    for (Piece piece : tee.pieces()) {
      scaled = scaled.scaled(piece.name(), across, along);
    }
    assertSeamsAsBefore(tee, scaled.result());
  }

  @Property(tries = 30)
  void aStretchedNeckAndStretchedSidesAreTakenBack(
      @ForAll @DoubleRange(min = 0, max = 0.12) double neck,
      @ForAll @DoubleRange(min = 0, max = 0.05) double sides) {
    Pattern tee = tee(24, 18, 110);
    Map<EdgeRef, Double> shares = new LinkedHashMap<>();
    shares.put(EdgeRef.parse("front neck"), 1 / (1 + neck));
    shares.put(EdgeRef.parse("front side"), 1 / (1 + sides));
    shares.put(EdgeRef.parse("back side"), 1 / (1 + sides));
    Reshaping taken = Reshaping.of(tee);
    for (Map.Entry<EdgeRef, Double> share : shares.entrySet()) {
      Length wanted = tee.edge(share.getKey()).length().times(share.getValue());
      taken = taken.withLength(share.getKey(), wanted);
    }
    Pattern result = taken.result();
    assertSeamsAsBefore(tee, result);
    shares.forEach(
        (edge, share) ->
            assertEquals(
                tee.edge(edge).length().toMm() * share,
                result.edge(edge).length().toMm(),
                1e-6,
                edge.toString()));
  }

  @Property(tries = 30)
  void aSleeveFollowsItsArmholeWhenTheSidesAreMoved(
      @ForAll @DoubleRange(min = 60, max = 140) double depth,
      @ForAll @DoubleRange(min = -20, max = 20) double move) {
    Pattern tee = tee(24, 18, depth);
    Pattern wider = moved(tee, move).result();
    assertSeamsAsBefore(tee, wider);
    for (String still : List.of("front shoulder", "front neck", "front fold", "back neck")) {
      assertEquals(tee.edge(EdgeRef.parse(still)), wider.edge(EdgeRef.parse(still)));
    }
    assertEquals(
        tee.edge(EdgeRef.parse("front side")).curve().start().x() + move,
        wider.edge(EdgeRef.parse("front side")).curve().start().x());
  }

  private static Reshaping moved(Pattern tee, double move) {
    Reshaping moved = Reshaping.of(tee);
    for (String corner : List.of("front hem", "front side", "back hem", "back side")) {
      moved = moved.moved(EdgeRef.parse(corner), new Vector(move, 0));
    }
    for (String right : List.of("sleeve hem", "sleeve underarm front")) {
      moved = moved.moved(EdgeRef.parse(right), new Vector(move, 0)).yielding(EdgeRef.parse(right));
    }
    for (String left : List.of("sleeve cap", "sleeve underarm back")) {
      moved = moved.moved(EdgeRef.parse(left), new Vector(-move, 0)).yielding(EdgeRef.parse(left));
    }
    return moved;
  }

  @Property(tries = 30)
  void curvedEdgesKeepTheirDirectionsAndStaySmooth(
      @ForAll @DoubleRange(min = -25, max = 25) double move) {
    Pattern tee = tee(24, 18, 110);
    Pattern wider = moved(tee, move).result();
    for (Piece piece : tee.pieces()) {
      for (Edge edge : piece.edges()) {
        Edge after = wider.piece(piece.name()).edge(edge.name());
        if (edge.curve().segments().size() > 1 || edge.name().equals("armhole")) {
          assertSameEnds(edge, after);
          assertSmooth(after);
        }
      }
    }
  }

  private static void assertSameEnds(Edge before, Edge after) {
    List<Segment> was = before.curve().segments();
    List<Segment> is = after.curve().segments();
    double start = was.get(0).directionAt(0).cross(is.get(0).directionAt(0));
    double end = was.get(was.size() - 1).directionAt(1).cross(is.get(is.size() - 1).directionAt(1));
    assertEquals(0, start, 1e-9);
    assertEquals(0, end, 1e-9);
  }

  private static void assertSmooth(Edge edge) {
    List<Segment> segments = edge.curve().segments();
    for (int i = 1; i < segments.size(); i++) {
      double kink = segments.get(i - 1).directionAt(1).cross(segments.get(i).directionAt(0));
      assertEquals(0, kink, 1e-9);
    }
  }

  @Property(tries = 30)
  void areaGrowsByBothFactors(
      @ForAll @DoubleRange(min = 0.5, max = 2) double across,
      @ForAll @DoubleRange(min = 0.5, max = 2) double along) {
    Piece front = Vests.piece("front", Vests.FRONT);
    Pattern alone = Pattern.of("front alone", List.of(front), List.of());
    Piece scaled = Reshaping.of(alone).scaled("front", across, along).result().piece("front");
    double wanted = front.outline().areaSquareMm() * across * along;
    assertEquals(wanted, scaled.outline().areaSquareMm(), 1e-9 * wanted);
  }

  @Property(tries = 30)
  void notchesThatMetStillMeet(
      @ForAll @DoubleRange(min = 1, max = 349) double along,
      @ForAll @DoubleRange(min = 1, max = 1.1) double across) {
    Pattern vest = Vests.of(Vests.FRONT, Vests.BACK);
    for (String piece : List.of("front", "back")) {
      Notch notch = Notch.of("side", Length.mm(along), "waist");
      vest = vest.withPiece(vest.piece(piece).withNotch(notch));
    }
    Pattern scaled =
        Reshaping.of(vest).scaled("front", across, 1.05).scaled("back", across, 1.05).result();
    assertEquals(
        scaled.piece("front").notches().get(0).along().toMm(),
        scaled.piece("back").notches().get(0).along().toMm(),
        1e-6);
  }
}
