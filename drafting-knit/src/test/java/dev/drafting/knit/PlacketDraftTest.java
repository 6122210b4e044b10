package dev.drafting.knit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Placket;
import dev.drafting.core.template.Dimensions;
import dev.drafting.core.template.GarmentTemplate;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.band.StripRule;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.garment.ChildsTShirt;
import dev.drafting.knit.garment.TShirt;
import dev.drafting.knit.sewing.Step;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** A T-shirt that opens at the front, drafted. */
class PlacketDraftTest {
  private static final Fabric JERSEY =
      Fabric.of("jersey", Structure.JERSEY, 0.30).withWidth(Length.cm(170));

  private static Draft draft(Pattern pattern) {
    return Draft.of(pattern)
        .withFabric("body", JERSEY)
        .withFabric("rib", Fabric.of("rib", Structure.RIB, 0.60).withWidth(Length.cm(170)));
  }

  private static Draft draft(String neck) {
    return draft(new TShirt().pattern(Dimensions.of().withChoice("neck", neck)));
  }

  private static List<String> ids(Draft draft) {
    return draft.findings().stream().map(Finding::id).toList();
  }

  private static String step(Draft draft, String title) {
    return draft.orderOfWork().stream()
        .filter(step -> step.title().contains(title))
        .map(Step::text)
        .findFirst()
        .orElseThrow();
  }

  /** The band is as long as without, and its ends lap by the 25 mm of the placket. */
  @Test
  void theBandStaysOpenAndLaps() {
    Strip closed = draft("band").strips().get(0);
    Strip open = draft("placket").strips().get(0);
    assertEquals(closed.loop(), open.loop());
    assertEquals(closed.cutLength().plus(Length.mm(25)), open.cutLength());
    assertEquals("middle of the lap: centre front", open.marks().get(0).label());
    assertEquals(12.5, open.marks().get(0).along().toMm(), 1e-9);
    assertEquals(open.loop().toMm() / 2 + 12.5, half(open), 1e-9);
  }

  private static double half(Strip strip) {
    return strip.marks().stream()
        .filter(mark -> mark.label().startsWith("half"))
        .findFirst()
        .orElseThrow()
        .along()
        .toMm();
  }

  /** What laps is taken from a strip that is cut already. */
  @Test
  void aStripCutBeforeLapsToo() {
    Draft cut = draft("placket").withStripRule("neck", StripRule.alreadyCut(Length.cm(60)));
    assertEquals(Length.mm(600 - 20 - 25), cut.strips().get(0).loop());
    assertEquals(Length.cm(60), cut.strips().get(0).cutLength());
  }

  /** A placket of 128 mm that is seen 108 mm below its band of 20 mm: 216 mm more. */
  @Test
  void theHeadHasBothSidesOfTheOpening() {
    Wearer head = Wearer.of().withHead(Length.cm(58));
    Length closed = draft("band").withWearer(head).headOpening().orElseThrow().stretchedOpening();
    Length open = draft("placket").withWearer(head).headOpening().orElseThrow().stretchedOpening();
    assertEquals(216, open.minus(closed).toMm(), 1e-9);
  }

  /** A stiff cloth: 2 x (needed - stretched) / 2 more of the placket lets the head through. */
  @Test
  void aPlacketTooShortForTheHeadSaysByHowMuch() {
    Fabric stiff = Fabric.of("stiff", Structure.OTHER, 0.02);
    GarmentTemplate tee = new TShirt();
    Dimensions small =
        Dimensions.of()
            .with("neck width", Length.mm(150))
            .with("front neck depth", Length.mm(60))
            .with("back neck depth", Length.mm(15));
    Pattern plain = tee.pattern(small);
    Wearer head = Wearer.of().withHead(Length.cm(58));
    Placket shorter = Placket.of("front neck", Length.mm(40), Length.mm(25));
    Draft tight =
        Draft.of(plain.withPlacket(shorter))
            .withFabric("body", stiff)
            .withFabric("rib", stiff)
            .withWearer(head);
    Finding finding =
        tight.findings().stream()
            .filter(found -> found.id().equals("head.too-small"))
            .findFirst()
            .orElseThrow();
    Length by =
        Length.parse(
            Objects.requireNonNull(finding.remedies().get(0).data().get("placket.longer-by")));
    Placket longer = Placket.of("front neck", Length.mm(40).plus(by), Length.mm(25));
    Draft passes =
        Draft.of(plain.withPlacket(longer))
            .withFabric("body", stiff)
            .withFabric("rib", stiff)
            .withWearer(head);
    assertTrue(passes.headOpening().orElseThrow().passes());
    assertTrue(passes.headOpening().orElseThrow().margin().toMm() < 2);
    assertTrue(!ids(passes).contains("head.too-small"));
  }

  @Test
  void theOrderOfWorkStaysOpensAndCloses() {
    Draft open = draft("placket");
    List<String> titles = open.orderOfWork().stream().map(Step::title).toList();
    int placket = titles.indexOf("Sew the placket into the front");
    assertTrue(
        placket >= 0 && placket < titles.indexOf("Sew the shoulder seams"), titles.toString());
    assertTrue(
        titles.indexOf("Close the placket of the front") > titles.indexOf("Sew on the neck band"));
    String sewn = step(open, "Sew the placket");
    assertTrue(sewn.startsWith("Press a stay that does not stretch"), sewn);
    assertTrue(sewn.contains("143 mm long"), sewn);
    assertTrue(step(open, "Sew on the neck").contains("turn in 10 mm at each"), sewn);
    assertTrue(step(open, "Cut").contains("front overlap (1 on the fold)"));
    assertTrue(step(open, "Mark").contains("Of the neck band leave 12.5 mm"));
    assertTrue(
        open.goods().stream()
            .anyMatch(
                goods ->
                    goods.toString().startsWith("buttons or snaps")
                        && goods.toString().endsWith(": 3")));
    assertTrue(open.sewing().lines().stream().anyMatch(l -> l.name().equals("front placket")));
  }

  /** Buttons are small parts: no child under three, and cautions for every other child. */
  @Test
  void buttonsAreSmallParts() {
    Pattern tee = new ChildsTShirt().pattern(Dimensions.of().withChoice("neck", "placket"));
    Draft baby = draft(tee).withWearer(Wearer.of().withAge(2));
    assertTrue(ids(baby).contains("child.small-parts"));
    Draft child = draft(tee).withWearer(Wearer.of().withAge(6));
    assertTrue(!ids(child).contains("child.small-parts"));
    assertTrue(
        child.cautions().stream().anyMatch(caution -> caution.topic().equals("Small parts")));
    Pattern without = new ChildsTShirt().pattern();
    assertTrue(
        !ids(draft(without).withWearer(Wearer.of().withAge(2))).contains("child.small-parts"));
  }

  @Test
  void aPlacketWithinItsBandIsFound() {
    Placket tiny = Placket.of("front neck", Length.mm(20), Length.mm(18));
    Draft draft = draft(new TShirt().pattern().withPlacket(tiny));
    assertTrue(ids(draft).contains("placket.too-short"));
    assertEquals(0, draft.cutPieces().get(3).markings().size());
  }

  /** A sleeve has no fold to count from: its marks stay where they are, and that is said. */
  @Test
  void theMarksOfASleevesStripAreCountedElsewhere() {
    Pattern tee =
        new TShirt()
            .pattern()
            .withFinish("sleeve hem", FoldedBand.cuff(Length.mm(40), Length.mm(7)));
    Placket slit = Placket.of("sleeve hem", Length.mm(70), Length.mm(20)).at(Length.mm(80));
    Draft open = draft(tee.withPlacket(slit.withFasteners(1)));
    assertEquals(2, ids(open).stream().filter("placket.marks"::equals).count());
    Strip cuff =
        open.strips().stream()
            .filter(strip -> strip.name().contains("cuff"))
            .findFirst()
            .orElseThrow();
    assertEquals(Length.mm(20), cuff.rule().lap());
    assertTrue(!ids(draft("placket")).contains("placket.marks"), "the neck's lies at its fold");
    assertEquals(0, cuff.marks().get(0).along().toMm(), 1e-9);
    assertTrue(cuff.marks().get(0).label().startsWith("join: underarm"), cuff.marks().toString());
  }
}
