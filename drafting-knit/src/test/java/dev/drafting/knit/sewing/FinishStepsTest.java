package dev.drafting.knit.sewing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Placket;
import dev.drafting.core.pattern.RawEdge;
import dev.drafting.knit.Draft;
import dev.drafting.knit.Garments;
import dev.drafting.knit.Vest;
import dev.drafting.knit.band.Casing;
import dev.drafting.knit.band.FacedStrip;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.band.MarkSpacing;
import dev.drafting.knit.band.StripRule;
import dev.drafting.knit.band.WrappedBinding;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.garment.TShirt;
import dev.drafting.knit.hem.TurnedHem;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * How each edge is finished, in words: what is folded, tucked or overlocked, and every amount. The
 * ways of working are common practice, no source.
 */
class FinishStepsTest {
  private static final TurnedHem HEM = TurnedHem.once(Length.mm(20));

  static Draft draft(Pattern pattern) {
    return Draft.of(pattern)
        .withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.50))
        .withFabric("rib", Fabric.of("rib", Structure.RIB, 0.80));
  }

  private static Draft neck(Finish finish) {
    return draft(Vest.plain().neck(finish).pattern());
  }

  static String step(Draft draft, String title) {
    return draft.orderOfWork().stream()
        .filter(step -> step.title().startsWith(title))
        .map(Step::text)
        .findFirst()
        .orElseThrow(() -> new AssertionError(title + " is not in " + draft.orderOfWork()));
  }

  static void assertSaid(String text, String... parts) {
    for (String part : parts) {
      assertTrue(text.contains(part), part + " is not in: " + text);
    }
  }

  @Test
  void aFoldedBandHasNoThickJoin() {
    String text = step(neck(FoldedBand.of(Length.mm(15), Length.mm(7))), "Sew on the neck band");
    assertSaid(
        text,
        "Join its ends with 10 mm to a loop, open the join and mark it. Clip the join's",
        "with the join at centre back.",
        "Fold the strip in half along its length, right side out, and sew both its raw edges to"
            + " the right side of the edge, 7 mm from the cut edge. Turn the band up",
        ", and topstitch it there.",
        "Sew it on in four-thread overlock");
    assertFalse(text.contains("mitred"), text);
  }

  /** A rib that is bought by the piece, its other edge ready. */
  @Test
  void aReadyEdgeIsNotFolded() {
    FoldedBand ready = FoldedBand.cuff(Length.mm(60), Length.mm(7)).readyEdged();
    String text = step(draft(Garments.tee(HEM, ready, HEM, false)), "Sew on the sleeve hem cuff");
    assertSaid(text, "Sew its cut edge to the right side", "Turn the cuff out and press");
    assertFalse(text.contains("Fold the strip"), text);
  }

  /** A binding of 10 mm is single, or doubled with its fold inside, or flat and overlocked. */
  @Test
  void aBindingIsWrappedInOneOfThreeWays() {
    WrappedBinding single = WrappedBinding.of(Length.mm(10));
    String title = "Sew on the neck binding";
    String first = step(neck(single), title);
    assertSaid(
        first,
        "Right sides together, let the strip's edge stand ",
        " beyond the cut edge of the garment and sew 10 mm from the strip's edge. Wrap the strip"
            + " over the edge, tuck its other edge under, and stitch it down");
    assertFalse(first.contains("thick there"), "it is not folded at its join");
    assertSaid(
        step(neck(single.doubled()), title),
        "Fold the strip in half along its length, right side out. Right sides together, let its"
            + " raw edges stand ",
        "Wrap the strip over the edge, its fold to the inside, and stitch");
    assertSaid(
        step(neck(single.overlockedInside()), title),
        "Overlock one long edge of the strip. Right sides together, let the other stand ",
        "Wrap the strip over the edge, its overlocked edge flat on the inside, and stitch");
  }

  /** 20 mm deep, stitched 2 mm from its inner edge: 18 mm from the edge of the garment. */
  @Test
  void aFacedStripLiesInside() {
    FacedStrip strip = FacedStrip.of(Length.mm(20), Length.mm(6));
    String title = "Sew on the neck " + strip.noun();
    assertSaid(
        step(neck(strip), title),
        "Overlock one long edge of the strip. Right sides together, sew the other to the edge, 6 mm"
            + " from the cut edges.",
        "stitch it down from the right side, 18 mm from the edge.");
    assertSaid(
        step(neck(strip.withTuck(Length.mm(5))), title),
        "Press 5 mm of one long edge of the strip to its wrong side.");
  }

  @Test
  void aStripIsStretchedAsFarAsItIsShorter() {
    FoldedBand band = FoldedBand.of(Length.mm(15), Length.mm(7));
    Draft draft = neck(band);
    String title = "Sew on the neck band";
    Length seam = draft.strips().get(1).joinLine();
    Draft tenth = draft.withStripRule("neck", StripRule.loop(seam.dividedBy(1.1)));
    assertSaid(step(tenth, title), "Stretch the strip alone, about 10 %, and never the garment.");
    Draft same = draft.withStripRule("neck", StripRule.loop(seam));
    assertSaid(step(same, title), "Do not stretch anything.");
    Draft curves =
        draft.withStripRule("neck", StripRule.recommended().withMarks(MarkSpacing.MORE_ON_CURVES));
    assertSaid(step(curves, title), "until it meets the edge, which is more on curves, and never");
  }

  @Test
  void aHemIsTurnedOnceOrTwice() {
    Draft once = draft(Vest.plain().hem(HEM).pattern());
    assertEquals(
        "Turn up 20 mm and press. Stitch from the right side, 18 mm from the fold, in zigzag, so"
            + " that the cut edge is covered.",
        step(once, "Turn up the hem"));
    TurnedHem twice = TurnedHem.twice(Length.mm(10), Length.mm(20));
    assertSaid(
        step(draft(Vest.plain().hem(twice).pattern()), "Turn up the hem"),
        "Turn up 10 mm, then 20 mm, and press.");
    Draft rows = draft(Vest.plain().hem(HEM.withTwinNeedle(Length.mm(4))).pattern());
    assertSaid(
        step(rows, "Turn up the hem"), ", its second row 4 mm nearer the fold, so that the cut");
  }

  /** Of 76 cm of waist, and where nobody has measured. */
  @Test
  void aCasingTellsItsElastic() {
    Casing casing = Casing.of(Length.mm(25), Length.mm(7)).withGirth(Length.cm(76));
    String title = "Make the casing of the waist";
    String text = step(draft(Garments.skirt(casing, HEM)), title);
    assertSaid(
        text,
        "Turn in 7 mm, then 25 mm, and press. Stitch 25 mm from the fold",
        "leave 4 cm open. Cut the elastic ",
        " long, draw it through, lap its ends by ");
    Casing plain = Casing.of(Length.mm(25), Length.ZERO);
    assertSaid(
        step(draft(Garments.skirt(plain, HEM)), title),
        "Overlock the edge, turn in 25 mm, and press.",
        "Cut the elastic to what is comfortable on the body and its overlap");
  }

  /** What is neither bound nor turned is described, and a raw edge needs no thread. */
  @Test
  void aRawEdgeIsNotSewn() {
    Draft raw = draft(Vest.plain().hem(RawEdge.of()).pattern());
    assertTrue(raw.sewing().lines().stream().noneMatch(line -> line.name().equals("hem")));
    assertTrue(raw.orderOfWork().stream().noneMatch(step -> step.title().contains("the hem")));
  }

  /** One snap is one; the lower edge of a pair of sleeves is made twice. */
  @Test
  void aPlacketIsClosedByWhatItHas() {
    Placket neck = Placket.of("front neck", Length.mm(128), Length.mm(26)).withFasteners(3);
    Pattern tee = new TShirt().pattern();
    String close = "Close the placket";
    assertSaid(step(draft(tee.withPlacket(neck)), close), "Set 3 snaps, or work the buttonholes");
    String one = step(draft(tee.withPlacket(neck.withFasteners(1))), close);
    assertSaid(one, "Set the snap, or work the buttonhole and sew on the button, where it is");
    String sewn = step(draft(tee.withPlacket(neck)), "Sew the placket into the front");
    assertSaid(sewn, "52 mm wide and 143 mm long");
    assertFalse(sewn.contains("made alike"), sewn);
    Placket slit = Placket.of("sleeve hem", Length.mm(70), Length.mm(20)).at(Length.mm(80));
    assertSaid(
        step(draft(tee.withPlacket(slit)), "Sew the placket into the sleeve"),
        "All 2 are made alike.");
  }

  /** Only single jersey is weighted, and what has no strips has none to mark. */
  @Test
  void whatIsCutIsNamed() {
    Draft skirt = draft(Garments.skirt(HEM, HEM));
    assertSaid(step(skirt, "Cut"), "Single jersey curls at its cut edges");
    assertFalse(step(skirt, "Cut").contains("Cut the strips"), step(skirt, "Cut"));
    assertEquals("Transfer the notches and the centre front and back.", step(skirt, "Mark"));
    Draft interlock = skirt.withFabric("body", Fabric.of("interlock", Structure.INTERLOCK, 0.5));
    assertFalse(step(interlock, "Cut").contains("curls"), step(interlock, "Cut"));
    Draft banded = neck(FoldedBand.of(Length.mm(15), Length.mm(7)));
    assertSaid(
        step(banded, "Cut"), "Cut the strips along the greatest stretch: armhole (right) binding ");
    assertSaid(step(banded, "Mark"), "Mark each strip in four equal lengths");
  }

  /**
   * Rows 4 mm apart on a hem stitched 7 mm from its fold leave 3 mm, which is enough; on one
   * stitched 6.9 mm from it they do not, and on one of 3 mm the lower one runs off.
   */
  @Test
  void theLowerRowKeepsOffTheFold() {
    assertEquals(List.of(), rows(9));
    assertEquals(
        List.of(
            "The hem is too narrow for two rows 4 mm apart: the lower one would run 2.9 mm from the"
                + " fold."),
        rows(8.9));
    assertEquals(
        List.of(
            "The hem is too narrow for two rows 4 mm apart: the lower one would run off the fold."),
        rows(5));
  }

  private static List<String> rows(double depth) {
    Machines twin = Machines.overlocker(4).withTwinNeedle(Length.mm(4));
    return draft(Vest.plain().hem(TurnedHem.once(Length.mm(depth))).pattern())
        .withSewing(SewingChoices.of().withMachines(twin))
        .findings()
        .stream()
        .filter(finding -> finding.id().equals("sewing.rows-miss-the-hem"))
        .map(Finding::reason)
        .toList();
  }
}
