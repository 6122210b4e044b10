package dev.drafting.core.lay;

import static dev.drafting.core.Values.differ;
import static dev.drafting.core.lay.RemnantProperties.laid;
import static dev.drafting.core.lay.RemnantProperties.plan;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Cloths, laid pieces and plans that are told rather than searched for. */
class LayValuesTest {
  private static final Length TEN = Length.mm(10);
  private static final Cloth METRE = Cloth.of(Length.cm(100));

  private static String accepted(Executable refused) {
    return assertThrows(DraftingException.class, refused).accepted();
  }

  @Test
  void whatDiffersIsNotEqual() {
    Cloth.Flaw flaw = new Cloth.Flaw(TEN, TEN, TEN, TEN);
    differ(
        METRE,
        Cloth.of(Length.cm(100)),
        Cloth.of(Length.cm(101)),
        METRE.withEdge(TEN),
        METRE.withLength(TEN),
        METRE.foldedLengthwise(),
        METRE.foldedOver(TEN),
        METRE.bothWays(),
        METRE.withSpacing(TEN),
        METRE.withRepeat(TEN, Length.ZERO),
        METRE.withRepeat(Length.ZERO, TEN),
        METRE.withFlaw(flaw));
    assertNotEquals(METRE.foldedOver(TEN), METRE.foldedOver(Length.mm(11)));
    LaidPiece piece = laid("yoke", 0, 0, 300, 200);
    differ(
        piece,
        laid("yoke", 0, 0, 300, 200),
        laid("back", 0, 0, 300, 200),
        laid("yoke", 1, 0, 300, 200),
        LaidPiece.of("yoke", piece.cutLine(), laid("", 5, 5, 10, 10).cutLine(), 1),
        LaidPiece.of("yoke", piece.cutLine(), piece.toCut(), 2),
        piece.onFold(),
        piece.turned(),
        piece.offGrain(Angle.degrees(1)));
    Lay lay = Lay.on(METRE);
    differ(
        lay,
        Lay.on(METRE),
        Lay.on(METRE.bothWays()),
        lay.withStrip("band", TEN, TEN),
        lay.withGrainWithin(Angle.degrees(1)),
        lay.matching("front", "waist"));
    assertNotEquals(lay.withStrip("band", TEN, TEN), lay.withStripAlong("band", TEN, TEN));
    LayPlan plan = plan(METRE, 300, List.of(piece));
    differ(
        plan,
        plan(METRE, 300, List.of(piece)),
        plan(METRE.bothWays(), 300, List.of(piece)),
        plan(METRE, 300, List.of(piece.onFold())),
        plan(METRE, 301, List.of(piece)),
        LayPlan.of(plan.lay(), plan.pieces(), plan.length(), List.of("pieced")));
  }

  @Test
  void clothsReadWell() {
    assertEquals("100 cm wide, in one layer, one way", METRE.toString());
    assertEquals(
        "100 cm wide, folded crosswise, both ways", METRE.bothWays().foldedCrosswise().toString());
    assertEquals(
        "100 cm wide, tubular, one way, with a repeat, 2 flaws",
        METRE
            .tubular()
            .withRepeat(Length.ZERO, TEN)
            .withFlaw(new Cloth.Flaw(TEN, TEN, TEN, TEN))
            .withFlaw(new Cloth.Flaw(Length.ZERO, Length.ZERO, TEN, TEN))
            .toString());
  }

  /** Of 100 cm with 2 cm of selvage 96 can be used: half lies on the table, or 96 less the turn. */
  @Test
  void theTableIsAsWideAsTheFoldedCloth() {
    Cloth cloth = METRE.withEdge(Length.cm(2)).bothWays();
    assertEquals(Length.cm(96), cloth.usableWidth());
    assertEquals(Length.cm(96), cloth.tableWidth());
    assertEquals(Length.cm(48), cloth.foldedLengthwise().tableWidth());
    assertEquals(Length.cm(48), cloth.foldedToTheMiddle().tableWidth());
    assertEquals(Length.cm(76), cloth.foldedOver(Length.cm(20)).tableWidth());
    assertEquals(Length.cm(20), cloth.foldedOver(Length.cm(20)).turnedOver());
    assertEquals(Length.cm(96), cloth.foldedCrosswise().tableWidth());
    assertEquals(Length.cm(96), cloth.tubular().tableWidth());
    assertTrue(cloth.foldedOver(TEN).fold().isBelow() && !cloth.foldedOver(TEN).fold().isAbove());
    assertTrue(cloth.tubular().fold().isBelow() && cloth.tubular().fold().isAbove());
    assertFalse(cloth.fold().isBelow() || cloth.foldedCrosswise().fold().isBelow());
  }

  @Test
  void boundsOfAClothAreInclusive() {
    Length most = Length.cm(10_000);
    assertEquals(most, Cloth.of(most).width());
    assertEquals("over 0 mm, to 100 m", accepted(() -> Cloth.of(Length.ZERO)));
    assertEquals(Length.ZERO, METRE.withEdge(Length.ZERO).edge());
    assertEquals("less than half of 100 cm", accepted(() -> METRE.withEdge(Length.cm(50))));
    assertEquals("less than half of 100 cm", accepted(() -> METRE.withEdge(Length.mm(-1))));
    assertEquals(Length.cm(50), METRE.foldedOver(Length.cm(50)).turnedOver());
    assertEquals("up to half of 100 cm", accepted(() -> METRE.foldedOver(Length.mm(501))));
    assertEquals("over 0 mm, to 100 m", accepted(() -> METRE.foldedOver(Length.ZERO)));
    assertEquals(TEN, METRE.withSpacing(TEN).spacing());
    assertEquals(Length.ZERO, METRE.withSpacing(TEN).withSpacing(Length.ZERO).spacing());
    Cloth striped = METRE.withRepeat(TEN, Length.cm(2));
    assertEquals(TEN, striped.repeatAlong());
    assertEquals(Length.cm(2), striped.repeatAcross());
    assertEquals(METRE, striped.withRepeat(Length.ZERO, Length.ZERO));
    assertEquals("zero or more", accepted(() -> METRE.withRepeat(Length.ZERO, Length.mm(-1))));
    assertEquals(
        "zero or more from the end and from the side",
        accepted(() -> new Cloth.Flaw(Length.ZERO, Length.mm(-1), TEN, TEN)));
    assertEquals(
        "over 0 mm, to 100 m",
        accepted(() -> new Cloth.Flaw(Length.ZERO, Length.ZERO, Length.ZERO, TEN)));
    assertEquals(
        "over 0 mm, to 100 m",
        accepted(() -> new Cloth.Flaw(Length.ZERO, Length.ZERO, TEN, Length.ZERO)));
  }

  @Test
  void laidPiecesTellWhereTheyLie() {
    LaidPiece piece = laid("yoke", 20, 50, 300, 200);
    assertEquals(
        "yoke: 2 cm from the cut end, 5 cm from the side, 30 cm long, 20 cm wide",
        piece.toString());
    assertEquals(
        "yoke: 2 cm from the cut end, on the fold, 30 cm long, 20 cm wide, turned, 2° off the"
            + " grain",
        piece.onFold().turned().offGrain(Angle.degrees(2)).toString());
    LaidPiece both = LaidPiece.of("yoke", piece.cutLine(), piece.toCut(), 2);
    assertTrue(both.toString().endsWith("20 cm wide, through both layers"), both.toString());
    assertFalse(both.onFold().toString().contains("both layers"));
    assertEquals(
        "1 or more", accepted(() -> LaidPiece.of("yoke", piece.cutLine(), piece.toCut(), 0)));
  }

  /** 60 000 square millimetres of pieces on 40 cm of a cloth 100 cm wide, and of a tube of both. */
  @Test
  void useIsTheShareOfTheClothThatIsCut() {
    LaidPiece one = laid("yoke", 0, 0, 100, 200);
    LaidPiece both = LaidPiece.of("back", laid("", 0, 300, 100, 200).cutLine(), one.toCut(), 2);
    LayPlan plan = plan(METRE, 400, List.of(one, both));
    assertEquals(0.15, plan.use(), 1e-12);
    assertEquals(
        "2 pieces on 40 cm of cloth 100 cm wide, in one layer, one way; 15 % of it used",
        plan.toString());
    assertEquals(0.075, plan(METRE.tubular(), 400, List.of(one, both)).use(), 1e-12);
  }

  @Test
  void aPlanEndsWhereTheClothDoes() {
    List<LaidPiece> pieces = List.of(laid("yoke", 0, 0, 300, 200), laid("back", 0, 200, 301, 200));
    LayPlan endless = plan(METRE, 301, pieces);
    assertTrue(endless.fits());
    assertEquals(Length.ZERO, endless.remainder());
    assertEquals(List.of(), endless.beyond());
    LayPlan exact = plan(METRE.withLength(Length.mm(301)), 301, pieces);
    assertTrue(exact.fits());
    assertEquals(List.of(), exact.beyond());
    assertEquals(exact, exact.withShortage());
    LayPlan tooShort = plan(METRE.withLength(Length.mm(300)), 301, pieces);
    assertFalse(tooShort.fits());
    assertEquals(Length.ZERO, tooShort.remainder());
    assertEquals(List.of("back"), tooShort.beyond());
    assertEquals(
        List.of(
            "the cloth is 0.1 cm too short for back; cut less from it, fold it otherwise or piece"
                + " it"),
        tooShort.withShortage().notes());
    Cloth folded = METRE.bothWays().withLength(Length.mm(601)).foldedCrosswise();
    assertEquals(List.of("back"), plan(folded, 602, pieces).beyond(), "300.5 mm on the table");
  }

  /** Pieces may touch each other, the selvages and a flaw, and reach beyond the end of a plan. */
  @Test
  void whatLiesWrongIsTold() {
    Cloth cloth =
        METRE.withFlaw(new Cloth.Flaw(Length.mm(300), Length.mm(200), TEN, Length.mm(50)));
    LaidPiece yoke = laid("yoke", 0, 0, 300, 300);
    assertEquals(List.of(), faults(cloth, yoke, laid("back", 0, 300, 300, 700)));
    assertEquals(List.of("back lies on yoke"), faults(cloth, yoke, laid("back", 290, 0, 30, 150)));
    assertEquals(List.of("yoke lies on a flaw"), faults(cloth, laid("yoke", 5, 0, 300, 300)));
    assertEquals(List.of(), faults(cloth, laid("yoke", 310, 0, 300, 300)));
    assertTrue(faults(cloth, laid("yoke", 0, 701, 200, 300)).get(0).startsWith("yoke lies off"));
    assertTrue(faults(cloth, laid("yoke", -1, 0, 200, 200)).get(0).startsWith("yoke lies off"));
    assertTrue(faults(cloth, laid("yoke", 0, -1, 200, 200)).get(0).startsWith("yoke lies off"));
    assertThrows(
        IllegalStateException.class,
        () -> LayCheck.of(plan(cloth, 300, List.of(yoke, yoke))).requireNone());
    LayCheck.of(plan(cloth, 300, List.of(yoke))).requireNone();
  }

  private static List<String> faults(Cloth cloth, LaidPiece... pieces) {
    return LayCheck.of(plan(cloth, 610, List.of(pieces))).faults();
  }

  /** At half the cloth lost in the wash twice as much is bought, and half as much again at most. */
  @Test
  void sharesOfWhatIsBoughtAreWithinBounds() {
    LayPlan plan = plan(METRE, 300, List.of(laid("yoke", 0, 0, 300, 200)));
    assertEquals(Length.mm(600), plan.toBuy(0.5, 0));
    assertEquals(Length.mm(500), plan.toBuy(0, 0.5));
    assertEquals("0 to 0.5", accepted(() -> plan.toBuy(0.501, 0)));
    assertEquals("0 to 0.5", accepted(() -> plan.toBuy(0, -0.001)));
    assertEquals(
        "one piece or more on some length of cloth",
        accepted(() -> LayPlan.of(plan.lay(), List.of(), plan.length(), List.of())));
    assertEquals(
        "one piece or more on some length of cloth",
        accepted(() -> LayPlan.of(plan.lay(), plan.pieces(), Length.ZERO, List.of())));
  }
}
