package dev.drafting.core.assembly;

import static dev.drafting.core.pattern.Refusals.refusal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.RawEdge;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.pattern.SeamFinish;
import dev.drafting.core.pattern.Vests;
import java.util.List;
import org.junit.jupiter.api.Test;

class AssemblyTest {

  private static Piece rectangle(String name, double width, double height) {
    Point a = new Point(0, 0);
    Point b = new Point(width, 0);
    Point c = new Point(width, height);
    Point d = new Point(0, height);
    return Piece.of(
        name,
        List.of(
            Edge.of("foot", Curve.line(a, b)),
            Edge.of("right", Curve.line(b, c)),
            Edge.of("top", Curve.line(c, d)),
            Edge.of("left", Curve.line(d, a))));
  }

  private static EdgeRef ref(String text) {
    return EdgeRef.parse(text);
  }

  private static List<String> names(Assembly assembly) {
    return assembly.openings().stream().map(Opening::name).toList();
  }

  @Test
  void aVestHasANeckTwoArmholesAndAHem() {
    Assembly vest = Assembly.of(Vests.plain());
    assertEquals(List.of("hem", "armhole (right)", "neck", "armhole (left)"), names(vest));
    assertEquals(-2, vest.eulerCharacteristic());
    assertEquals(List.of(), vest.findings());
    assertEquals(
        "vest: openings hem, armhole (right), neck, armhole (left); 0 findings", vest.toString());
    Opening neck = vest.opening("neck");
    assertEquals(
        List.of("shoulder", "centre front", "shoulder", "centre back"),
        neck.stations().stream().map(OpeningStation::label).toList());
    assertEquals(4, neck.parts().size());
    assertEquals(neck.parts().get(0).curve(), Vests.plain().edge(ref("front neck")).curve());
    assertEquals(RawEdge.of(), neck.finish());
  }

  @Test
  void aLoopRunsOnFromPartToPartWithTheClothOnItsLeft() {
    Opening neck = Assembly.of(Vests.plain()).opening("neck");
    Length at = Length.ZERO;
    for (OpeningPart part : neck.parts()) {
      assertEquals(at.toMm(), part.from().toMm(), 1e-9);
      at = at.plus(part.curve().length());
    }
    assertEquals(neck.length(), at);
    // drawn front half, its image, then the back seen from its own right side
    assertEquals(
        List.of(false, true, true, false),
        neck.parts().stream().map(OpeningPart::mirrored).toList());
    assertEquals(neck.parts().get(0).curve().end(), neck.parts().get(1).curve().start());
    assertEquals(neck.parts().get(2).curve().end(), neck.parts().get(3).curve().start());
  }

  @Test
  void aTubeHasTwoOpeningsThatDoNotTurn() {
    Pattern tube =
        Pattern.of(
            "tube",
            List.of(rectangle("tube", 600, 300)),
            List.of(Seam.of("back seam", ref("tube right"), ref("tube left")).endToStart()));
    Assembly sewn = Assembly.of(tube);
    assertEquals(0, sewn.eulerCharacteristic());
    assertEquals(List.of("foot", "top"), names(sewn));
    for (Opening opening : sewn.openings()) {
      assertEquals(0, opening.turning().toDegrees(), 1e-9);
      assertEquals(600, opening.lengthAt(Length.mm(-20)).toMm(), 1e-9);
      assertEquals(1, opening.stations().size());
    }
    assertEquals(List.of(), sewn.findings());
  }

  @Test
  void aTubeSewnTheWrongWayRoundHasATwist() {
    Pattern band =
        Pattern.of(
            "band",
            List.of(rectangle("band", 600, 60)),
            List.of(Seam.of("back seam", ref("band right"), ref("band left"))));
    Assembly sewn = Assembly.of(band);
    assertEquals(0, sewn.eulerCharacteristic());
    assertEquals(1, sewn.openings().size()); // a band with a twist has one edge (Moebius)
    assertEquals("seam.twists", sewn.findings().get(0).id());
    assertEquals(1, sewn.findings().get(0).remedies().size());
  }

  @Test
  void theOpeningsOfAConeDifferByItsTurning() {
    // a quarter of a ring, radii 100 and 300: K = the angle of the sector, by elementary geometry
    Point inner = new Point(100, 0);
    Point outer = new Point(300, 0);
    Point outerTop = new Point(0, 300);
    Point innerTop = new Point(0, 100);
    var centre = new Point(0, 0);
    var quarter = Angle.degrees(90);
    Piece flare =
        Piece.of(
            "flare",
            List.of(
                Edge.of("right", Curve.line(inner, outer)),
                Edge.of("hem", Curve.of(Arc.of(centre, Length.mm(300), Angle.ZERO, quarter))),
                Edge.of("left", Curve.line(outerTop, innerTop)),
                Edge.of(
                    "waist",
                    Curve.of(Arc.of(centre, Length.mm(100), quarter, quarter.negated())))));
    Assembly sewn =
        Assembly.of(
            Pattern.of(
                "skirt",
                List.of(flare),
                List.of(Seam.of("seam", ref("flare right"), ref("flare left")).endToStart())));
    assertEquals(90, sewn.opening("waist").turning().toDegrees(), 1e-6);
    assertEquals(-90, sewn.opening("hem").turning().toDegrees(), 1e-6);
    assertEquals(Math.PI / 2 * 110, sewn.opening("waist").lengthAt(Length.mm(-10)).toMm(), 0.001);
    assertEquals(Math.PI / 2 * 310, sewn.opening("hem").lengthAt(Length.mm(10)).toMm(), 0.001);
  }

  /** A T-shirt of rectangles with drop shoulders and a pair of sleeves. */
  private static Pattern shirt() {
    Point a = new Point(0, 0);
    Point b = new Point(250, 0);
    Point c = new Point(250, 400);
    Point d = new Point(250, 600);
    Point e = new Point(90, 600);
    Point f = new Point(90, 560);
    Point g = new Point(0, 560);
    Piece front =
        Piece.of(
            "front",
            List.of(
                Edge.of("hem", Curve.line(a, b)),
                Edge.of("side", Curve.line(b, c)),
                Edge.of("armhole", Curve.line(c, d)),
                Edge.of("shoulder", Curve.line(d, e)),
                Edge.of("neck", Curve.polyline(e, f, g)),
                Edge.onFold(Curve.line(g, a))));
    Piece back = Piece.of("back", front.edges());
    Piece sleeve =
        Piece.of(
                "sleeve",
                List.of(
                    Edge.of("cuff", Curve.line(new Point(0, 0), new Point(400, 0))),
                    Edge.of("fore", Curve.line(new Point(400, 0), new Point(400, 150))),
                    Edge.of("cap", Curve.line(new Point(400, 150), new Point(0, 150))),
                    Edge.of("hind", Curve.line(new Point(0, 150), new Point(0, 0)))))
            .withCutting(Cutting.pairs(1));
    return Pattern.of(
        "shirt",
        List.of(front, back, sleeve),
        List.of(
            Seam.of(
                "sleeve seam",
                List.of(ref("sleeve cap")),
                List.of(ref("front armhole"), ref("back armhole"))),
            Seam.of("underarm", ref("sleeve fore"), ref("sleeve hind")).endToStart(),
            Seam.of("shoulder", ref("front shoulder"), ref("back shoulder")),
            Seam.of("side", ref("front side"), ref("back side"))));
  }

  @Test
  void aShirtWithSleevesHasFourOpenings() {
    Assembly shirt = Assembly.of(shirt());
    assertEquals(List.of("hem", "neck", "cuff (right)", "cuff (left)"), names(shirt));
    assertEquals(-2, shirt.eulerCharacteristic());
    // 540 degrees of cloth meet at each underarm: there the sum loses 180 (Gauss and Bonnet)
    double sum = shirt.openings().stream().mapToDouble(o -> o.turning().toDegrees()).sum();
    assertEquals(720 - 2 * 180, sum, 1e-9);
    assertEquals(0, shirt.opening("cuff (left)").turning().toDegrees(), 1e-9);
    assertEquals(400, shirt.opening("cuff (right)").length().toMm(), 1e-9);
  }

  @Test
  void aChainWaitsForTheSeamsThatItCrosses() {
    Pattern shirt = shirt(); // the sleeve seam comes before the shoulder seam
    assertEquals(List.of(), Assembly.of(shirt).findings());
    Pattern open = Pattern.of("shirt", shirt.pieces(), shirt.seams().subList(0, 1));
    assertTrue(
        refusal(() -> Assembly.of(open))
            .startsWith(
                "shirt: seam sleeve seam: the edges of one side do not follow one another"));
  }

  @Test
  void leggingsOfOnePieceHaveAWaistAndTwoHems() {
    Point[] p = {
      new Point(-120, 0),
      new Point(120, 0),
      new Point(200, 700),
      new Point(160, 950),
      new Point(-160, 980),
      new Point(-210, 700)
    };
    Piece leg =
        Piece.of(
                "leg",
                List.of(
                    Edge.of("hem", Curve.line(p[0], p[1])),
                    Edge.of("front inseam", Curve.line(p[1], p[2])),
                    Edge.of("front crotch", Curve.line(p[2], p[3])),
                    Edge.of("waist", Curve.line(p[3], p[4])),
                    Edge.of("back crotch", Curve.line(p[4], p[5])),
                    Edge.of("back inseam", Curve.line(p[5], p[0]))))
            .withCutting(Cutting.pairs(1));
    Pattern leggings =
        Pattern.of(
                "leggings",
                List.of(leg),
                List.of(
                    Seam.of("inseam", ref("leg front inseam"), ref("leg back inseam")).endToStart(),
                    Seam.mirrored("front crotch", ref("leg front crotch")),
                    Seam.mirrored("back crotch", ref("leg back crotch"))))
            .withSeamTolerance(Length.mm(20));
    Assembly sewn = Assembly.of(leggings);
    assertEquals(List.of("hem (right)", "waist", "hem (left)"), names(sewn));
    assertEquals(-1, sewn.eulerCharacteristic());
    assertEquals(
        List.of("front crotch", "back crotch"),
        sewn.opening("waist").stations().stream().map(OpeningStation::label).toList());
    assertTrue(sewn.findings().stream().noneMatch(f -> f.id().equals("seam.twists")));
  }

  @Test
  void onePieceByItselfIsFlat() {
    Assembly flat =
        Assembly.of(Pattern.of("scarf", List.of(rectangle("scarf", 300, 200)), List.of()));
    assertEquals(1, flat.eulerCharacteristic());
    assertEquals(List.of("foot and right and top and left"), names(flat));
    Opening rim = flat.openings().get(0);
    assertEquals(-360, rim.turning().toDegrees(), 1e-9);
    assertEquals(1000 + 8 * 10, rim.lengthAt(Length.mm(10)).toMm(), 1e-9);
  }

  @Test
  void aVNeckIsShorterByItsMitre() {
    // design.md: at a mitred corner of turn q the edge is 2 w tan(q/2) shorter, not w q
    Point a = new Point(0, 0);
    Point b = new Point(200, 0);
    Point c = new Point(200, 400);
    Point d = new Point(80, 400);
    Point e = new Point(0, 300);
    List<Edge> edges =
        List.of(
            Edge.of("hem", Curve.line(a, b)),
            Edge.of("side", Curve.line(b, c)),
            Edge.of("shoulder", Curve.line(c, d)),
            Edge.of("neck", Curve.line(d, e)),
            Edge.onFold(Curve.line(e, a)));
    Opening neck =
        Assembly.of(Vests.joined(Piece.of("front", edges), Piece.of("back", edges)))
            .opening("neck");
    double w = 13;
    double q = Math.PI - 2 * Math.atan2(80, 100); // the turn at each point of the two Vs
    double r = Math.PI - 2 * Math.atan2(100, 80); // the turn at each shoulder
    double grown = 2 * 2 * w * Math.tan(q / 2) + 2 * 2 * w * Math.tan(r / 2);
    assertEquals(neck.length().toMm() + grown, neck.lengthAt(Length.mm(-w)).toMm(), 1e-6);
  }

  @Test
  void noRoomForAParallelIsSaidByTheOpening() {
    Opening neck = Assembly.of(Vests.plain()).opening("neck");
    assertTrue(refusal(() -> neck.lengthAt(Length.mm(-50_000))).contains("opening neck"));
    assertTrue(
        refusal(() -> Assembly.of(Vests.plain()).opening("pocket"))
            .contains("Found: pocket. Accepted: hem, armhole (right), neck, armhole (left)"));
  }

  @Test
  void assembliesAreValues() {
    Assembly one = Assembly.of(Vests.seamed());
    assertEquals(one, SerialCopy.of(one));
    assertEquals(one.hashCode(), SerialCopy.of(one).hashCode());
    assertEquals(one.openings(), SerialCopy.of(one).openings());
    assertEquals(one.openings(), Assembly.of(Vests.seamed()).openings());
    Opening neck = one.opening("neck");
    assertEquals(
        "neck: "
            + neck.length().text(LengthUnit.MM)
            + ", turning 272°, by shoulder, centre front, shoulder, centre back",
        neck.toString());
    assertEquals(SeamFinish.of(Length.mm(7)), one.pattern().edge(ref("front side")).finish());
  }
}
