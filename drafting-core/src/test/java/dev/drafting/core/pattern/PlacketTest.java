package dev.drafting.core.pattern;

import static dev.drafting.core.pattern.Refusals.refusal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.cut.CutItem;
import dev.drafting.core.cut.CutPlan;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class PlacketTest {
  private static final Pattern VEST = Vests.seamed();
  private static final Placket NECK = Placket.of("front neck", Length.mm(140), Length.mm(24));
  private static final Placket SLEEVE =
      Placket.of("sleeve hem", Length.mm(90), Length.mm(20)).at(Length.mm(70)).withFasteners(1);

  /** A sleeve as it lies, with a hem that slopes by 20 mm. */
  private static final Piece CUFFED =
      Piece.of(
              "sleeve",
              List.of(
                  Edge.of("hem", Curve.line(new Point(0, 0), new Point(240, 20))),
                  Edge.of("right", Curve.line(new Point(240, 20), new Point(280, 300))),
                  Edge.of("cap", Curve.line(new Point(280, 300), new Point(-40, 300))),
                  Edge.of("left", Curve.line(new Point(-40, 300), new Point(0, 0)))))
          .withCutting(Cutting.pairs(1));

  private static Pattern with(Piece piece) {
    List<Piece> pieces = new ArrayList<>(VEST.pieces());
    pieces.add(piece);
    return Pattern.of("vest", pieces, VEST.seams());
  }

  private static List<String> found(Pattern pattern) {
    return CutPlan.of(pattern).findings().stream()
        .map(Finding::id)
        .filter(id -> id.startsWith("placket"))
        .toList();
  }

  private static Curve marked(Pattern pattern, String piece, String words) {
    return pattern.withPlacketPieces().piece(piece).markings().stream()
        .filter(line -> line.label().contains(words))
        .findFirst()
        .orElseThrow()
        .curve();
  }

  @Test
  void aPlacketSaysWhereItOpens() {
    assertEquals(
        "placket at front / neck, 140 mm long, 24 mm wide, with 3 fasteners", NECK.toString());
    assertEquals(
        "placket at sleeve / hem, 70 mm from its start, 90 mm long, 20 mm wide, with 1 fastener",
        SLEEVE.toString());
    assertEquals(
        "vest: pieces front, back; seams shoulder, side; plackets front / neck",
        VEST.withPlacket(NECK).toString());
  }

  @Test
  void patternsThatDifferInAPlacketDiffer() {
    Pattern pattern = VEST.withPlacket(NECK);
    assertEquals(pattern, SerialCopy.of(pattern));
    assertEquals(pattern.hashCode(), SerialCopy.of(pattern).hashCode());
    assertNotEquals(pattern, VEST);
    assertEquals(SLEEVE, SerialCopy.of(SLEEVE));
    assertNotEquals(SLEEVE, SLEEVE.at(Length.mm(71)));
    assertNotEquals(NECK, NECK.withFasteners(2));
    assertNotEquals(NECK, Placket.of("back neck", Length.mm(140), Length.mm(24)));
    assertNotEquals(NECK, Placket.of("front neck", Length.mm(141), Length.mm(24)));
    assertNotEquals(NECK, Placket.of("front neck", Length.mm(140), Length.mm(25)));
  }

  /** Closed, the garment has the openings that it has without. */
  @Test
  void theOpeningsStayAsTheyAre() {
    assertEquals(Assembly.of(VEST).openings(), Assembly.of(VEST.withPlacket(NECK)).openings());
  }

  /** Half the width from the fold, down to the end; the cut forks half the width above it. */
  @Test
  void theBoxIsHalfOnTheFold() {
    Pattern pattern = VEST.withPlacket(NECK);
    Point neck = VEST.piece("front").edge("neck").curve().end();
    Curve sewn = marked(pattern, "front", "sew");
    assertEquals(12, sewn.start().x(), 1e-9);
    assertEquals(new Point(0, neck.y() - 140), sewn.end());
    Curve cut = marked(pattern, "front", "cut");
    assertEquals(0, cut.start().distanceTo(neck).toMm(), 1e-9);
    assertEquals(new Point(0, neck.y() - 128), cut.segments().get(0).end());
    assertEquals(new Point(12, neck.y() - 140), cut.end());
  }

  /** The cloth of a banded neck begins lower, by what the band shows less its allowance. */
  @Test
  void theCutBeginsWhereTheClothDoes() {
    Pattern raised = VEST.withFinish("front neck", SeamFinish.of(Length.mm(6))).withPlacket(NECK);
    Point neck = VEST.piece("front").edge("neck").curve().end();
    assertEquals(neck.y() + 6, marked(raised, "front", "cut").start().y(), 1e-9);
    assertEquals(Length.mm(140), NECK.belowFinish(raised));
  }

  @Test
  void theStripsAreCutOnTheirFold() {
    Pattern cut = VEST.withPlacket(NECK).withPlacketPieces();
    assertEquals(
        List.of("front", "back", "front overlap", "front underlap"),
        cut.pieces().stream().map(Piece::name).toList());
    assertEquals(List.of(), cut.plackets());
    Piece overlap = cut.piece("front overlap");
    assertEquals("cut 1 on the fold", overlap.cutting().toString());
    assertEquals(Length.mm(24), overlap.edge("end").length());
    assertEquals("seam with 12 mm allowance", overlap.edge("side").finish().describe());
    assertEquals(
        List.of("front", "back", "front overlap", "front underlap"),
        CutPlan.of(VEST.withPlacket(NECK)).cutList().stream().map(CutItem::name).toList());
  }

  /** 140 mm: three at a sixth, a half and five sixths of it, in the middle of the strip. */
  @Test
  void theFastenersAreSpacedEvenly() {
    Pattern cut = VEST.withPlacket(NECK).withPlacketPieces();
    List<Double> heights =
        cut.piece("front underlap").markings().stream()
            .map(line -> line.curve().start().y())
            .toList();
    assertEquals(3, heights.size());
    assertEquals(140 * 5 / 6.0, heights.get(0), 1e-9);
    assertEquals(70, heights.get(1), 1e-9);
    assertEquals(140 / 6.0, heights.get(2), 1e-9);
    Curve hole = cut.piece("front overlap").markings().get(1).curve();
    assertEquals(new Point(12, 64), hole.start());
    assertEquals(new Point(12, 76), hole.end());
    assertEquals(
        List.of(),
        VEST.withPlacket(NECK.withFasteners(0))
            .withPlacketPieces()
            .piece("front overlap")
            .markings());
  }

  /** A sleeve is opened along its grain, though its hem slopes; both sleeves alike. */
  @Test
  void aPieceWithoutAFoldIsOpenedAlongItsGrain() {
    Pattern pattern = with(CUFFED).withPlacket(SLEEVE);
    Point mouth = CUFFED.edge("hem").curve().pointAt(Length.mm(70));
    Curve slit = marked(pattern, "sleeve", "middle");
    assertEquals(0, slit.start().distanceTo(mouth).toMm(), 1e-9);
    assertEquals(0, slit.end().distanceTo(new Point(mouth.x(), mouth.y() + 80)).toMm(), 1e-9);
    Curve box = marked(pattern, "sleeve", "sew");
    assertEquals(4, box.segments().size() + 1);
    assertEquals(20, box.segments().get(1).length().toMm(), 1e-9);
    assertEquals(
        "cut 2 on the fold",
        pattern.withPlacketPieces().piece("sleeve overlap").cutting().toString());
    assertEquals(List.of(), found(pattern));
  }

  @Test
  void whatReachesOutOrLiesAcrossTheGrainIsFound() {
    assertEquals(List.of(), found(VEST.withPlacket(NECK)));
    Placket tooLong = Placket.of("front neck", Length.mm(900), Length.mm(24));
    assertEquals(List.of("placket.reaches-out"), found(VEST.withPlacket(tooLong)));
    Placket beyondCap = Placket.of("sleeve hem", Length.mm(310), Length.mm(20));
    assertEquals(
        List.of("placket.reaches-out"),
        found(with(CUFFED).withPlacket(beyondCap.at(Length.mm(70)))));
    Piece turned = VEST.piece("front").withGrain(Angle.degrees(0));
    assertEquals(List.of("placket.across-grain"), found(VEST.withPiece(turned).withPlacket(NECK)));
  }

  @Test
  void whatCannotBeOpenedIsRefused() {
    assertEquals(
        "placket at front / neck: the width of the placket is out of range. Found: 7 mm."
            + " Accepted: 8 mm to 80 mm.",
        refusal(() -> Placket.of("front neck", Length.mm(100), Length.mm(7))));
    assertTrue(
        refusal(() -> Placket.of("front neck", Length.mm(20), Length.mm(24)))
            .contains("24 mm to 1000 mm"));
    assertTrue(refusal(() -> NECK.withFasteners(31)).contains("0 to 30"));
    assertTrue(refusal(() -> NECK.at(Length.mm(-1))).contains("before its edge"));
    assertTrue(
        refusal(() -> VEST.withPlacket(Placket.of("front hip", Length.mm(90), Length.mm(20))))
            .contains("hip"));
    assertTrue(
        refusal(() -> VEST.withPlacket(Placket.of("front side", Length.mm(90), Length.mm(20))))
            .contains("sewn in a seam"));
    assertTrue(
        refusal(() -> VEST.withPlacket(Placket.of("front armhole", Length.mm(90), Length.mm(20))))
            .contains("lies on the fold"));
    assertTrue(
        refusal(() -> VEST.withPlacket(NECK.at(Length.mm(20)))).contains("lies on the fold"));
    assertTrue(refusal(() -> VEST.withPlacket(NECK).withPlacket(NECK)).contains("two plackets"));
    assertTrue(
        refusal(() -> with(CUFFED).withPlacket(SLEEVE.at(Length.mm(300))))
            .contains("0 to 240.8 mm"));
    assertTrue(
        refusal(() -> with(CUFFED).withPlacket(SLEEVE.at(Length.mm(5))))
            .contains("wider than its edge"));
    assertTrue(
        refusal(() -> with(CUFFED.withGrain(Angle.degrees(5))).withPlacket(SLEEVE))
            .contains("runs along the grain"));
    Piece taken = Piece.of("front overlap", CUFFED.edges()).withCutting(Cutting.single(1));
    assertTrue(refusal(() -> with(taken).withPlacket(NECK)).contains("called as a strip"));
  }

  /** In cloth that shrinks by a tenth along, the opening is cut longer, and its place moves. */
  @Test
  void itGrowsWithItsPiece() {
    Pattern larger =
        Reshaping.of(with(CUFFED).withPlacket(SLEEVE).withPlacket(NECK))
            .scaled("sleeve", 1.25, 1.5)
            .result();
    Placket sleeve = larger.plackets().get(0);
    assertEquals(135, sleeve.length().toMm(), 1e-9);
    assertEquals(25, sleeve.width().toMm(), 1e-9);
    double before = CUFFED.edge("hem").length().toMm();
    double after = larger.piece("sleeve").edge("hem").length().toMm();
    assertEquals(70 * after / before, sleeve.along().orElseThrow().toMm(), 1e-9);
    assertEquals(NECK, larger.plackets().get(1));
  }

  /** The sides of the box are never longer than the strips, and 10 mm of those is cut off. */
  @Property(tries = 200)
  void theStripsReachTheCloth(
      @ForAll @DoubleRange(min = 8, max = 60) double width,
      @ForAll @DoubleRange(min = 60, max = 300) double length,
      @ForAll @DoubleRange(min = 0, max = 15) double allowance) {
    Pattern pattern =
        VEST.withFinish("front neck", SeamFinish.of(Length.mm(allowance)))
            .withPlacket(Placket.of("front neck", Length.mm(length), Length.mm(width)));
    double side = marked(pattern, "front", "sew").segments().get(0).length().toMm();
    double slit = marked(pattern, "front", "cut").segments().get(0).length().toMm() + width / 2;
    double strip = pattern.withPlacketPieces().piece("front overlap").edge("side").length().toMm();
    assertEquals(strip, Math.max(side, slit) + 10, 1e-6);
  }
}
