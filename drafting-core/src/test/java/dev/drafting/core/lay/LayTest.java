package dev.drafting.core.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.cut.CutPlan;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Vests;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LayTest {
  private static final Length LONG = Length.cm(60);
  private static final Length NARROW = Length.cm(4);
  private final List<CutPiece> vest = CutPlan.of(Vests.seamed()).pieces();
  private final Cloth wide = Cloth.of(Length.cm(150));

  private LayPlan planned(Cloth cloth) {
    return Lay.on(cloth).with(vest).plan(1, 20);
  }

  @Test
  void foldedToTheMiddleFrontAndBackLieBesideEachOther() {
    LayPlan plan = planned(wide.foldedToTheMiddle());
    double longest = plan.pieces().stream().mapToDouble(p -> p.along().toMm()).max().orElseThrow();
    assertEquals(longest, plan.length().toMm(), 1.5);
    assertTrue(plan.pieces().stream().allMatch(LaidPiece::isOnFold));
    assertEquals(
        0, plan.pieces().get(0).fromSide().toMm() * plan.pieces().get(1).fromSide().toMm());
  }

  @Test
  void onOneFoldTheyLieOneBehindTheOther() {
    LayPlan plan = planned(wide.foldedLengthwise());
    double sum = plan.pieces().stream().mapToDouble(p -> p.along().toMm()).sum();
    assertTrue(plan.length().toMm() > 0.9 * sum, plan.toString());
    assertTrue(plan.pieces().stream().allMatch(p -> p.fromSide().isZero()));
  }

  @Test
  void inOneLayerPiecesAreOpenedOut() {
    LayPlan plan = planned(wide);
    assertEquals(2 * 246.4, plan.pieces().get(0).across().toMm(), 1);
    assertFalse(plan.pieces().get(0).isOnFold());
    assertEquals(1, plan.pieces().get(0).layers());
  }

  @Test
  void pairsAreMirroredInOneLayerAndCutAtOnceFromTwo() {
    Piece pocket =
        Piece.of("pocket", Vests.plain().piece("front").unfolded().edges())
            .withCutting(Cutting.pairs(1));
    List<CutPiece> pieces = CutPlan.of(Pattern.of("pockets", List.of(pocket), List.of())).pieces();
    LayPlan single = Lay.on(wide).with(pieces).plan(1, 5);
    assertEquals(
        List.of("pocket", "pocket, mirrored"),
        single.pieces().stream().map(LaidPiece::name).toList());
    LayPlan doubled = Lay.on(wide.bothWays().foldedCrosswise()).with(pieces).plan(1, 5);
    assertEquals(1, doubled.pieces().size());
    assertEquals(2, doubled.pieces().get(0).layers());
  }

  @Test
  void stripsLieAcrossAndArePiecedIfTheyAreTooLong() {
    LayPlan one = Lay.on(wide).withStrip("neck band", LONG, NARROW).plan(1, 5);
    assertEquals(600, one.pieces().get(0).across().toMm(), 1e-9);
    assertTrue(one.notes().isEmpty());
    LayPlan pieced =
        Lay.on(Cloth.of(Length.cm(40))).withStrip("neck band", LONG, NARROW).plan(1, 5);
    assertEquals(2, pieced.pieces().size());
    assertEquals(307, pieced.pieces().get(0).across().toMm(), 1e-9);
    assertEquals(
        "neck band is pieced from 2 parts of 30.7 cm, 7 mm sewn in at each join",
        pieced.notes().get(0));
    LayPlan twice =
        Lay.on(wide.foldedLengthwise())
            .withStrip("binding", LONG, NARROW)
            .withStrip("binding", LONG, NARROW)
            .plan(1, 5);
    assertEquals(1, twice.pieces().size());
    assertEquals(2, twice.pieces().get(0).layers());
    LayPlan onFold =
        Lay.on(Cloth.of(Length.cm(90)).foldedLengthwise())
            .withStrip("band", LONG, NARROW)
            .plan(1, 5);
    assertTrue(onFold.pieces().get(0).isOnFold());
    assertEquals(300, onFold.pieces().get(0).across().toMm(), 1e-9);
    LayPlan along = Lay.on(wide).withStripAlong("tie", LONG, NARROW).plan(1, 5);
    assertEquals(600, along.pieces().get(0).along().toMm(), 1e-9);
  }

  /**
   * What is bought: 5 % of shrinkage makes 100 cm 105.263 cm (arithmetic, cut = wanted / (1 - r)),
   * the end loss of 2 to 5 % and rounding up to 10 cm are common practice without a source.
   */
  @Test
  void buysTheLengthBeforeTheWashRoundedUp() {
    LayPlan plan = Lay.on(wide).withStripAlong("tie", Length.cm(99.92), NARROW).plan(1, 5);
    assertEquals(1000, plan.length().toMm(), 0.8);
    assertEquals(1100, plan.toBuy(0.05, 0).toMm());
    assertEquals(1100, plan.toBuy(0.05, 0.03).toMm());
    assertEquals(1200, plan.toBuy(0.1, 0.05).toMm());
    assertThrows(DraftingException.class, () -> plan.toBuy(-0.1, 0));
    assertThrows(DraftingException.class, () -> plan.toBuy(0, 0.6));
  }

  @Test
  void saysWhatARemnantIsShortOf() {
    LayPlan plan = planned(wide.withLength(Length.cm(50)));
    assertFalse(plan.fits());
    assertEquals(List.of("front", "back"), plan.beyond());
    assertTrue(plan.notes().get(0).contains("too short for front, back"), plan.notes().toString());
    LayPlan enough = planned(wide.withLength(Length.cm(90)));
    assertTrue(enough.fits());
    assertEquals(900, enough.length().plus(enough.remainder()).toMm(), 1e-9);
  }

  @Test
  void isTheSameEveryTimeAndStopsWhenAsked() {
    Lay lay = Lay.on(wide.foldedToTheMiddle()).with(vest).withStrip("band", LONG, NARROW);
    assertEquals(lay.plan(7, 10), lay.plan(7, 10));
    assertEquals(lay, SerialCopy.of(lay));
    List<Length> told = new ArrayList<>();
    LayPlan plan =
        lay.plan(
            1,
            Duration.ofMinutes(5),
            length -> {
              told.add(length);
              return false;
            });
    assertEquals(1, told.size());
    assertEquals(plan.length().toMm(), told.get(0).toMm(), 0.1);
    assertEquals(plan, SerialCopy.of(plan));
  }

  @Test
  void refusesWhatCannotLie() {
    assertThrows(DraftingException.class, () -> Lay.on(wide).plan(1, 1));
    DraftingException narrow =
        assertThrows(DraftingException.class, () -> planned(Cloth.of(Length.cm(40))));
    assertEquals("front", narrow.where());
    assertThrows(
        DraftingException.class, () -> planned(Cloth.of(Length.cm(80)).foldedToTheMiddle()));
    assertThrows(
        DraftingException.class, () -> Lay.on(wide).withStrip("band", Length.ZERO, NARROW));
    assertThrows(DraftingException.class, wide::foldedCrosswise);
    assertThrows(DraftingException.class, () -> wide.foldedOver(Length.cm(80)));
    assertThrows(DraftingException.class, () -> wide.withEdge(Length.cm(75)));
    assertThrows(DraftingException.class, () -> wide.withSpacing(Length.mm(-1)));
    assertThrows(DraftingException.class, () -> wide.withRepeat(Length.mm(-1), Length.ZERO));
    assertThrows(DraftingException.class, () -> wide.withLength(Length.ZERO));
    assertThrows(
        DraftingException.class, () -> new Cloth.Flaw(Length.mm(-1), Length.ZERO, NARROW, NARROW));
  }

  @Test
  void readsWell() {
    Cloth cloth =
        wide.withEdge(Length.cm(1))
            .withLength(Length.cm(90))
            .withRepeat(Length.cm(4), Length.ZERO)
            .withFlaw(new Cloth.Flaw(Length.cm(10), Length.ZERO, NARROW, NARROW))
            .foldedLengthwise();
    assertEquals(
        "150 cm wide, 148 cm of it used, 90 cm long, folded lengthwise, one way, with a repeat, 1 flaw",
        cloth.toString());
    assertEquals(cloth, SerialCopy.of(cloth));
    assertEquals(Length.cm(74), cloth.tableWidth());
    assertEquals(
        "2 pieces and 0 strips on cloth 150 cm wide, in one layer, one way",
        Lay.on(wide).with(vest).toString());
  }
}
