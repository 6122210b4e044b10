package dev.drafting.core.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.cut.CutPlan;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Notch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Vests;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
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

  /** Shapes whose sides bulge: what stands out between flattened corners stays on the cloth. */
  @Test
  void curvesReachTheSelvageButNotBeyond() {
    Random random = new Random(5);
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < 25; i++) {
      pieces.add(Bulging.piece("piece " + i, random).withCutting(Cutting.single(1)));
    }
    Pattern pattern = Pattern.of("bulging", pieces, List.of());
    LayPlan plan = Lay.on(wide).with(CutPlan.of(pattern).pieces()).plan(1, 0);
    assertEquals(25, plan.pieces().size());
    for (LaidPiece piece : plan.pieces()) {
      assertTrue(piece.fromSide().toMm() > -1e-6, piece.toString());
      assertTrue(piece.fromSide().plus(piece.across()).toMm() < 1500 + 1e-6, piece.toString());
    }
  }

  private static LayPlan bulging(Cloth cloth, Angle grainWithin) {
    Random random = new Random(8);
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      pieces.add(Bulging.piece("piece " + i, random).withCutting(Cutting.single(1)));
    }
    Pattern pattern = Pattern.of("bulging", pieces, List.of());
    return Lay.on(cloth)
        .with(CutPlan.of(pattern).pieces())
        .withStrip("band", LONG, NARROW)
        .withGrainWithin(grainWithin)
        .plan(1, 20);
  }

  @Test
  void piecesMayBeTurnedOffTheirGrainByALittle() {
    Angle most = Angle.degrees(3);
    LayPlan plan = bulging(wide, most);
    assertTrue(
        plan.pieces().stream().anyMatch(piece -> !piece.offGrain().equals(Angle.ZERO)),
        plan.pieces().toString());
    for (LaidPiece piece : plan.pieces()) {
      assertTrue(Math.abs(piece.offGrain().toDegrees()) <= 3 + 1e-9, piece.toString());
      boolean exact = piece.offGrain().equals(Angle.ZERO);
      assertTrue(exact || !piece.name().equals("band"), piece.toString());
      assertEquals(!exact, piece.toString().endsWith("° off the grain"));
    }
    assertTrue(
        bulging(wide.withRepeat(Length.cm(5), Length.ZERO), most).pieces().stream()
            .allMatch(piece -> piece.offGrain().equals(Angle.ZERO)));
    assertEquals(most, Lay.on(wide).withGrainWithin(most).grainWithin());
    assertEquals(
        "pieces cannot be turned off their grain so far. Found: 20°. Accepted: 0 to 15°.",
        assertThrows(DraftingException.class, () -> Lay.on(wide).withGrainWithin(Angle.degrees(20)))
            .getMessage());
  }

  /** The notches that meet lie on stripes, wherever the hems are. */
  @Test
  void aNotchLiesOnARepeat() {
    double repeat = 70;
    Cloth striped = wide.bothWays().withRepeat(Length.mm(repeat), Length.ZERO);
    Pattern notched =
        Pattern.of("notched", List.of(notched("left", 90), notched("right", 140)), List.of());
    LayPlan plan =
        Lay.on(striped)
            .with(CutPlan.of(notched).pieces())
            .matching("left", "stripe")
            .matching("right", "stripe")
            .plan(1, 10);
    for (LaidPiece piece : plan.pieces()) {
      double up = piece.name().startsWith("left") ? 90 : 140;
      double notch = piece.fromEnd().plus(piece.along()).toMm() - up;
      assertEquals(0, notch - Math.rint(notch / repeat) * repeat, 1e-6, piece.toString());
      assertFalse(piece.isTurned());
    }
    assertEquals(
        Map.of("left", "stripe"), Lay.on(striped).with(vest).matching("left", "stripe").matching());
    Lay wrong = Lay.on(striped).with(CutPlan.of(notched).pieces());
    assertEquals(
        "left: the piece has no such notch. Found: check. Accepted: stripe.",
        assertThrows(DraftingException.class, () -> wrong.matching("left", "check").plan(1, 0))
            .getMessage());
    assertEquals(
        "no such piece is laid. Found: middle. Accepted: left, right.",
        assertThrows(DraftingException.class, () -> wrong.matching("middle", "a").plan(1, 0))
            .getMessage());
    assertThrows(
        DraftingException.class, () -> wrong.matching("left", "check").foldedOtherwise(1, 0));
  }

  /** A piece that has no room to be moved to a line of the repeat is not laid beside the cloth. */
  @Test
  void aRepeatAcrossThatCannotBeMetIsRefused() {
    Cloth narrow = Cloth.of(Length.mm(310)).withRepeat(Length.ZERO, Length.mm(40));
    Pattern pockets =
        Pattern.of(
            "pockets",
            List.of(Bulging.rectangle("pocket", 303, 200).withCutting(Cutting.single(1))),
            List.of());
    Lay lay = Lay.on(narrow).with(CutPlan.of(pockets).pieces());
    assertEquals(
        "pocket: a piece cannot meet the repeat across the cloth where it lies. Found: 40 mm."
            + " Accepted: another fold, a wider cloth, or no match across.",
        assertThrows(DraftingException.class, () -> lay.plan(1, 0)).getMessage());
  }

  private static Piece notched(String name, double up) {
    return Bulging.rectangle(name, 200, 300)
        .withCutting(Cutting.pairs(1))
        .withNotch(Notch.of("side", Length.mm(up), "stripe"));
  }

  @Test
  void triesOtherFoldsAndSaysWhatIsLeft() {
    Lay lay = Lay.on(wide.foldedLengthwise().withLength(Length.cm(90))).with(vest);
    LayPlan plan = lay.plan(1, 10);
    assertFalse(plan.fits());
    List<LayPlan> others = lay.foldedOtherwise(1, 10);
    assertEquals(
        Set.of(Cloth.Fold.TO_THE_MIDDLE, Cloth.Fold.SINGLE),
        Set.copyOf(others.stream().map(other -> other.cloth().fold()).toList()));
    assertTrue(others.get(0).length().compareTo(others.get(1).length()) <= 0);
    assertTrue(others.get(0).fits(), others.toString());
    assertEquals(List.of(), Lay.on(wide.tubular()).with(vest).foldedOtherwise(1, 0));
    List<Remnant> left = others.get(0).remnants(Length.cm(8));
    assertFalse(left.isEmpty());
    for (int i = 0; i < left.size(); i++) {
      Remnant remnant = left.get(i);
      assertTrue(remnant.along().toMm() >= 80 && remnant.across().toMm() >= 80);
      assertTrue(i == 0 || area(remnant) <= area(left.get(i - 1)), left.toString());
      for (LaidPiece piece : others.get(0).pieces()) {
        assertFalse(Bulging.covers(piece, remnant), piece + " on " + remnant);
      }
      for (Remnant other : left.subList(0, i)) {
        assertFalse(Bulging.meet(remnant, other), remnant + " on " + other);
      }
    }
    assertTrue(left.get(0).toString().contains(" from the cut end, "));
    assertThrows(DraftingException.class, () -> plan.remnants(Length.mm(5)));
  }

  private static double area(Remnant remnant) {
    return remnant.along().toMm() * remnant.across().toMm();
  }
}
