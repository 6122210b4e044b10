package dev.drafting.core.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.cut.CutPlan;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rectangles that have just room, on cloth a metre wide with a centimetre between them. */
class TightLayTest {
  private static final Cloth METRE = Cloth.of(Length.cm(100)).withSpacing(Length.cm(1));

  private static Lay lay(Cloth cloth, Piece... pieces) {
    Pattern pattern = Pattern.of("bag", List.of(pieces), List.of());
    return Lay.on(cloth).with(CutPlan.of(pattern).pieces());
  }

  private static Piece rectangle(double across, Cutting cutting) {
    return Bulging.rectangle("flap", across, 200).withCutting(cutting);
  }

  /** Half of it, with its fold on the left. */
  private static Piece onFold(double half) {
    Point[] at = {new Point(0, 200), new Point(0, 0), new Point(half, 0), new Point(half, 200)};
    return Piece.of(
        "flap",
        List.of(
            Edge.onFold(Curve.line(at[0], at[1])),
            Edge.of("hem", Curve.line(at[1], at[2])),
            Edge.of("side", Curve.line(at[2], at[3])),
            Edge.of("top", Curve.line(at[3], at[0]))));
  }

  private static String refused(Cloth cloth, Piece piece) {
    Lay lay = lay(cloth, piece);
    return String.valueOf(assertThrows(DraftingException.class, () -> lay.plan(1, 0)).getMessage());
  }

  /** Where the only piece lies, from the side and across, in mm. */
  private static void lies(double fromSide, double across, Lay lay) {
    LaidPiece piece = lay.plan(1, 0).pieces().get(0);
    assertEquals(fromSide, piece.fromSide().toMm(), 0.01, piece.toString());
    assertEquals(across, piece.across().toMm(), 1e-6, piece.toString());
  }

  @Test
  void aPieceMayBeAsWideAsTheCloth() {
    Cutting single = Cutting.single(1);
    lies(0, 1000, lay(METRE, rectangle(1000, single)));
    lies(0, 500, lay(METRE.foldedLengthwise(), rectangle(500, Cutting.pairs(1))));
    lies(0, 500, lay(METRE.foldedLengthwise(), onFold(500)));
    LaidPiece flap = lay(METRE.foldedToTheMiddle(), onFold(250)).plan(1, 0).pieces().get(0);
    assertEquals(250, flap.across().toMm(), 1e-6);
    assertEquals(
        "flap: a piece is wider than the cloth where it has to lie. Found: 100.1 cm."
            + " Accepted: up to 100 cm; another fold or a wider cloth gives more.",
        refused(METRE, rectangle(1001, single)));
    assertEquals(
        "flap: a piece on the fold is wider than what is folded over. Found: 26 cm."
            + " Accepted: up to 25 cm; cloth folded lengthwise has more.",
        refused(METRE.foldedToTheMiddle(), onFold(260)));
  }

  @Test
  void whereClothIsFoldedOverItHasRoomForWhatIsCutTwiceAndBeyondForWhatIsCutOnce() {
    Cloth partly = METRE.foldedOver(Length.cm(30));
    lies(0, 300, lay(partly, onFold(300)));
    lies(0, 300, lay(partly, rectangle(300, Cutting.pairs(1))));
    lies(300, 400, lay(partly, rectangle(400, Cutting.single(1))));
    assertTrue(
        refused(partly, rectangle(301, Cutting.pairs(1)))
            .contains("Found: 30.1 cm. Accepted: up to 30 cm;"));
    assertTrue(
        refused(partly, rectangle(401, Cutting.single(1)))
            .contains("Found: 40.1 cm. Accepted: up to 40 cm;"));
  }

  /** Two that cannot lie side by side lie a centimetre apart; so do two on one fold. */
  @Test
  void piecesLieTheirDistanceApart() {
    List<Lay> lays =
        List.of(
            lay(METRE, rectangle(600, Cutting.single(2))),
            lay(METRE.foldedLengthwise(), onFold(300).withCutting(Cutting.onFold(2))));
    for (Lay lay : lays) {
      List<LaidPiece> pieces = lay.plan(1, 2000).pieces();
      double one = pieces.get(0).fromEnd().toMm();
      double other = pieces.get(1).fromEnd().toMm();
      assertEquals(210, Math.abs(one - other), 1);
      assertTrue(Math.abs(one - other) >= 210, one + " and " + other);
    }
  }

  /**
   * Folded end on end, twice as much cloth is needed as lies on the table: a piece, and half of
   * what pieces lie apart before it.
   */
  @Test
  void whatIsToldIsWhatThePlanNeeds() {
    Cloth crosswise = METRE.bothWays().foldedCrosswise();
    for (Cloth cloth : List.of(METRE, crosswise)) {
      List<Length> told = new ArrayList<>();
      LayPlan plan =
          lay(cloth, rectangle(600, Cutting.pairs(1)))
              .plan(
                  1,
                  Duration.ofMinutes(1),
                  length -> {
                    told.add(length);
                    return false;
                  });
      assertEquals(plan.length().toMm(), told.get(0).toMm(), 0.01);
    }
    Length once = lay(crosswise, rectangle(600, Cutting.pairs(1))).plan(1, 5).length();
    assertEquals(2 * (200 + 5), once.toMm(), 1);
  }

  /** Without a notch it is the middle of the piece that lies on a stripe along the cloth. */
  @Test
  void theMiddleOfAPieceLiesOnTheRepeatAcross() {
    Cloth striped = METRE.withRepeat(Length.ZERO, Length.mm(70));
    for (LaidPiece piece : lay(striped, rectangle(310, Cutting.single(3))).plan(1, 5).pieces()) {
      double middle = (piece.fromSide().toMm() + piece.across().toMm() / 2) / 70;
      assertEquals(Math.rint(middle), middle, 1e-6, piece.toString());
    }
  }

  private static Piece wedge() {
    Point[] at = {new Point(0, 0), new Point(700, 0), new Point(0, 300)};
    return Piece.of(
        "wedge",
        List.of(
            Edge.of("hem", Curve.line(at[0], at[1])),
            Edge.of("slope", Curve.line(at[1], at[2])),
            Edge.of("side", Curve.line(at[2], at[0]))));
  }

  /** Turned end for end, one of two wedges lies along the slope of the other. */
  @Test
  void whatMayBeTurnedTakesLessCloth() {
    Piece two = wedge().withCutting(Cutting.single(2));
    LayPlan oneWay = lay(METRE, two).plan(1, 300);
    LayPlan bothWays = lay(METRE.bothWays(), two).plan(1, 300);
    assertTrue(METRE.isOneWay() && !METRE.bothWays().isOneWay());
    assertEquals(0, oneWay.pieces().stream().filter(LaidPiece::isTurned).count());
    assertEquals(1, bothWays.pieces().stream().filter(LaidPiece::isTurned).count());
    assertTrue(bothWays.length().toMm() < 330, bothWays.toString());
    assertTrue(oneWay.length().toMm() > 400, oneWay.toString());
  }
}
