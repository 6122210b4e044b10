package dev.drafting.knit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.lay.Cloth;
import dev.drafting.core.lay.LaidPiece;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.band.StripGrain;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What of a draft is laid on which cloth, and how that is folded for it. */
class DraftLayTest {
  private static final Fabric JERSEY = Fabric.of("jersey", Structure.JERSEY, 0.30);
  private static final Fabric RIB = Fabric.of("rib", Structure.RIB, 0.80);
  private static final Draft VEST = vest(20);

  /** A vest with a neck band so wide. */
  private static Draft vest(double band) {
    return Draft.of(Vest.plain().neck(FoldedBand.of(Length.mm(band), Length.mm(7))).pattern())
        .withFabric("body", JERSEY)
        .withFabric("rib", RIB);
  }

  private static Cloth.Fold fold(Length width) {
    return VEST.withFabric("body", JERSEY.withWidth(width)).lay("body").cloth().fold();
  }

  /** Half a vest is cut this wide; a little more is kept between and at the folds. */
  private static Length half() {
    return VEST.cutPieces().stream()
        .map(CutPiece::cutLine)
        .map(line -> line.bounds().width())
        .reduce(Length.ZERO, Length::max);
  }

  /**
   * Two folds side by side take four halves of front and back, one fold two of them: 23 cm and 7 mm
   * of allowance fit twice on 96 cm folded to the middle, and once on 50 cm.
   */
  @Test
  void theClothIsFoldedSoThatWhatIsOnTheFoldFindsRoom() {
    assertEquals(237, half().toMm(), 1e-6);
    Length four = half().times(4).plus(Length.mm(5));
    assertEquals(Cloth.Fold.TO_THE_MIDDLE, fold(four));
    assertEquals(Cloth.Fold.TO_THE_MIDDLE, fold(Length.cm(150)));
    assertEquals(Cloth.Fold.LENGTHWISE, fold(four.minus(Length.mm(2))));
    Length two = half().times(2).plus(Length.mm(5));
    assertEquals(Cloth.Fold.LENGTHWISE, fold(two));
    assertEquals(Cloth.Fold.SINGLE, fold(two.minus(Length.mm(2))));
  }

  /** Open-width jersey is 150 to 160 cm wide: common practice, no source. */
  @Test
  void aFabricOfUnknownWidthIsTakenAsUsual() {
    assertEquals(Length.cm(150), VEST.lay("body").cloth().width());
    assertEquals(Cloth.Fold.TO_THE_MIDDLE, VEST.lay("body").cloth().fold());
  }

  /** Nothing of the rib lies on its fold, so it is folded to the middle whatever its width. */
  @Test
  void whatLiesOnTheOtherClothDoesNotCount() {
    Draft narrow = VEST.withFabric("rib", RIB.withWidth(Length.cm(40)));
    assertEquals(Cloth.Fold.TO_THE_MIDDLE, narrow.lay("rib").cloth().fold());
  }

  private static List<String> laid(Draft draft, String cloth, Cloth goods) {
    return draft.lay(cloth, goods).plan(1, 0).pieces().stream()
        .map(LaidPiece::name)
        .sorted()
        .toList();
  }

  /** The bindings of the armholes are cut from the body's cloth, the band of the neck from rib. */
  @Test
  void everyClothHasItsOwnPiecesAndStrips() {
    Cloth goods = Cloth.of(Length.cm(150)).foldedToTheMiddle();
    assertEquals(
        List.of("armhole (left) binding", "armhole (right) binding", "back", "front"),
        laid(VEST, "body", goods));
    assertEquals(List.of("neck band"), laid(VEST, "rib", goods));
  }

  private static Strip neck(Draft draft) {
    return draft.strips().stream()
        .filter(strip -> strip.name().equals("neck band"))
        .findFirst()
        .orElseThrow();
  }

  /** On cloth that is too narrow for it a strip is cut twice. */
  @Test
  void aPiecedStripIsLaidAsOftenAsItIsCut() {
    Fabric narrow = RIB.withWidth(Length.cm(40));
    Draft pieced = vest(60).withFabric("rib", narrow);
    assertEquals(2, neck(pieced).lengths());
    assertEquals(List.of("neck band", "neck band"), laid(pieced, "rib", Cloth.of(Length.cm(40))));
  }

  /** Where the greatest stretch is needed round the body, a strip lies across the cloth. */
  @Test
  void stripsLieAsTheyStretch() {
    LaidPiece band = VEST.lay("rib", Cloth.of(Length.cm(90))).plan(1, 0).pieces().get(0);
    assertTrue(band.across().compareTo(band.along()) > 0, band.toString());
    Fabric stiffAcross = Fabric.of("rib", Structure.RIB, 0.20).withStretchAlong(0.80);
    Draft along = VEST.withFabric("rib", stiffAcross);
    assertEquals(StripGrain.ALONG, neck(along).fit().grain());
    LaidPiece turned = along.lay("rib", Cloth.of(Length.cm(90))).plan(1, 0).pieces().get(0);
    assertTrue(turned.along().compareTo(turned.across()) > 0, turned.toString());
  }
}
