package dev.drafting.knit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.cut.CutItem;
import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Placket;
import dev.drafting.core.template.Dimensions;
import dev.drafting.knit.band.Casing;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.garment.RaglanSweatshirt;
import dev.drafting.knit.garment.TShirt;
import dev.drafting.knit.hem.TurnedHem;
import dev.drafting.knit.sewing.Caution;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a garment needs beside its cloth: elastic, fasteners, stays. */
class DraftGoodsTest {
  private static final TurnedHem HEM = TurnedHem.once(Length.mm(20));
  private static final Casing WAIST =
      Casing.of(Length.mm(25), Length.mm(7)).withGirth(Length.cm(76));
  private static final Casing ANKLE =
      Casing.of(Length.mm(15), Length.mm(7)).withGirth(Length.cm(24));

  private static Draft draft(Pattern pattern) {
    return Draft.of(pattern)
        .withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.50))
        .withFabric("rib", Fabric.of("rib", Structure.RIB, 0.80));
  }

  private static List<String> goods(Draft draft, String what) {
    return draft.goods().stream()
        .map(Goods::toString)
        .filter(goods -> goods.startsWith(what))
        .toList();
  }

  private static Length elastic(Casing casing) {
    return casing.elasticCutLength().orElseThrow();
  }

  /** Each width is bought by itself, both ankles together, in steps of 10 cm, none too short. */
  @Test
  void elasticIsBoughtInEachWidth() {
    Draft leggings = draft(Garments.leggings(WAIST, ANKLE));
    Length waist = elastic(WAIST);
    Length ankles = elastic(ANKLE).times(2);
    assertEquals(
        List.of("elastic, 12 mm wide: " + metres(ankles), "elastic, 22 mm wide: " + metres(waist)),
        goods(leggings, "elastic").stream().sorted().toList());
    List<CutItem> cut =
        leggings.cutList().stream().filter(item -> item.name().endsWith(" elastic")).toList();
    assertEquals(3, cut.size());
    for (CutItem item : cut) {
      Casing casing = item.name().startsWith("waist") ? WAIST : ANKLE;
      assertEquals(elastic(casing), item.length());
      assertEquals(casing.elasticWidth(), item.width());
    }
  }

  /** The tenths of a metre that are enough, counted up from none. */
  private static String metres(Length needed) {
    int tenths = 0;
    while (Length.cm(10.0 * tenths).compareTo(needed.minus(Length.mm(1e-6))) < 0) {
      tenths++;
    }
    return tenths / 10 + "." + tenths % 10 + " m";
  }

  /** Elastic of exactly 70 cm is bought as 0.7 m. */
  @Test
  void aLengthThatIsAStepIsNotRoundedUp() {
    Casing even = WAIST.withShortening(0).withOverlap(Length.ZERO).withGirth(Length.cm(70));
    assertEquals(Length.cm(70), elastic(even));
    assertEquals(
        List.of("elastic, 22 mm wide: 0.7 m"), goods(draft(Garments.skirt(even, HEM)), "elastic"));
  }

  private static List<String> topics(Draft draft) {
    return draft.withWearer(Wearer.of().withAge(4)).cautions().stream()
        .map(Caution::topic)
        .toList();
  }

  /** A band has none, and so its garment has no caution about elastic. */
  @Test
  void onlyACasingHasElastic() {
    FoldedBand band = FoldedBand.waistRib(Length.mm(40), Length.mm(7));
    Draft banded = draft(Garments.skirt(band, HEM));
    Draft cased = draft(Garments.skirt(WAIST, HEM));
    assertEquals(List.of(), goods(banded, "elastic"));
    List<String> more =
        topics(cased).stream().filter(topic -> !topics(banded).contains(topic)).toList();
    assertEquals(List.of("Elastic"), more);
  }

  /** Three of a placket: a stay for either edge and one for what lies under. */
  @Test
  void aPlacketNeedsStaysAndItsFasteners() {
    Pattern tee = new TShirt().pattern();
    Placket placket = Placket.of("front neck", Length.mm(128), Length.mm(26)).withFasteners(4);
    Draft buttoned = draft(tee.withPlacket(placket));
    assertEquals(List.of("buttons or snaps, at most 13 mm wide: 4"), goods(buttoned, "buttons"));
    assertEquals(Length.mm(143), placket.stayLength());
    assertEquals(List.of("stay to press on, cut 52 mm wide: 42.9 cm"), goods(buttoned, "stay"));
    Draft open = draft(tee.withPlacket(placket.withFasteners(0)));
    assertEquals(List.of(), goods(open, "buttons"));
    assertEquals(1, goods(open, "stay").size());
    assertTrue(isForAToddler(open));
    assertFalse(isForAToddler(buttoned), "what can come off is no toy for a mouth");
  }

  private static boolean isForAToddler(Draft draft) {
    return draft.withWearer(Wearer.of().withAge(2)).findings().stream()
        .noneMatch(finding -> finding.id().equals("child.small-parts"));
  }

  /** A pair of sleeves has two of them. */
  @Test
  void whatIsCutTwiceIsFastenedTwice() {
    Placket slit =
        Placket.of("sleeve hem", Length.mm(70), Length.mm(20)).at(Length.mm(80)).withFasteners(1);
    Draft cuffed =
        draft(
            new TShirt()
                .pattern()
                .withFinish("sleeve hem", FoldedBand.cuff(Length.mm(40), Length.mm(7)))
                .withPlacket(slit));
    assertEquals(List.of("buttons or snaps, at most 10 mm wide: 2"), goods(cuffed, "buttons"));
    assertEquals(Length.mm(85), slit.stayLength());
    assertEquals(List.of("stay to press on, cut 40 mm wide: 51 cm"), goods(cuffed, "stay"));
  }

  private static Draft pocketed(Finish mouth) {
    Pattern pattern =
        new RaglanSweatshirt()
            .pattern(Dimensions.of().withChoice("pocket", "front"))
            .withFinish("pocket mouth", mouth);
    return draft(pattern);
  }

  /** Strips are worked out for the openings of the garment, and a pocket's mouth is none. */
  @Test
  void aBandAtThePocketsMouthIsCutByHand() {
    Finding finding =
        pocketed(FoldedBand.of(Length.mm(20), Length.mm(7))).findings().stream()
            .filter(found -> found.id().equals("patch.no-strip"))
            .findFirst()
            .orElseThrow();
    assertEquals("pocket / mouth", finding.place().toString());
    assertTrue(finding.remedies().toString().contains("Turn the edge up"), finding.toString());
    assertFalse(
        pocketed(HEM).findings().stream().anyMatch(found -> found.id().equals("patch.no-strip")));
  }

  /** In rows across the cloth, the longest first, in whatever order the pieces are drawn. */
  @Test
  void theOrderOfThePiecesDoesNotMatter() {
    Pattern tee = new TShirt().pattern();
    Fabric jersey = Fabric.of("jersey", Structure.JERSEY, 0.5).withWidth(Length.cm(120));
    for (int first = 1; first < tee.pieces().size(); first++) {
      List<Piece> turned = new ArrayList<>(tee.pieces());
      Collections.rotate(turned, first);
      Pattern other = Pattern.of("T-shirt", turned, tee.seams());
      assertEquals(
          goods(draft(tee).withFabric("body", jersey), "jersey"),
          goods(draft(other).withFabric("body", jersey), "jersey"));
    }
  }

  /** On so narrow a cloth every piece lies by itself; a twentieth is lost at the ends. */
  @Test
  void narrowClothIsAsLongAsAllItsPieces() {
    Fabric narrow = Fabric.of("jersey", Structure.JERSEY, 0.5).withWidth(Length.cm(60));
    Draft tee = draft(new TShirt().pattern()).withFabric("body", narrow);
    double rows = 0;
    for (CutPiece cut : tee.cutPieces()) {
      double height = cut.cutLine().bounds().height().toMm();
      rows += cut.piece().cutting().pieces() * height;
    }
    String bought = metres(Length.mm(rows * 1.05)) + ", 60 cm wide (estimate)";
    assertEquals(List.of("jersey: " + bought), goods(tee, "jersey"));
  }

  /** Seams are taped at the shoulders, and what has none needs no tape. */
  @Test
  void tapeIsBoughtWhereThereIsAShoulder() {
    assertEquals(
        List.of("tape or clear elastic, 6 mm wide: 0.2 m"),
        goods(draft(Vest.plain().pattern()), "tape"));
    assertEquals(List.of(), goods(draft(Garments.skirt(WAIST, HEM)), "tape"));
  }
}
