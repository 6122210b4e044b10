package dev.drafting.knit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.knit.band.BodyPart;
import dev.drafting.knit.band.BodyPassage;
import dev.drafting.knit.band.Casing;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.garment.BoxerBriefs;
import dev.drafting.knit.garment.Leggings;
import dev.drafting.knit.garment.RaglanSweatshirt;
import dev.drafting.knit.garment.SleevelessTop;
import dev.drafting.knit.garment.TShirt;
import dev.drafting.knit.hem.TurnedHem;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What each opening of a garment has to go over when it is put on. */
class DraftPassagesTest {
  private static final Casing CASING = Casing.of(Length.mm(25), Length.mm(7));
  private static final TurnedHem HEM = TurnedHem.once(Length.mm(20));

  private static final Wearer MEASURED =
      Wearer.of()
          .withHead(Length.cm(57))
          .withGirth(BodyPart.SHOULDERS, Length.cm(110))
          .withGirth(BodyPart.HIPS, Length.cm(100))
          .withGirth(BodyPart.HAND, Length.cm(22))
          .withGirth(BodyPart.FOOT, Length.cm(32));

  private static Draft draft(Pattern pattern) {
    return Draft.of(pattern)
        .withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.50))
        .withFabric("rib", Fabric.of("rib", Structure.RIB, 0.80))
        .withWearer(MEASURED);
  }

  private static Map<String, BodyPart> parts(Pattern pattern) {
    Map<String, BodyPart> parts = new TreeMap<>();
    draft(pattern)
        .passages()
        .forEach(passage -> parts.put(passage.opening().name(), passage.part()));
    return parts;
  }

  private static List<String> ids(Draft draft) {
    return draft.findings().stream().map(Finding::id).toList();
  }

  /** The armholes of a vest go over nothing. */
  @Test
  void aTopGoesOverHeadAndShoulders() {
    assertEquals(
        Map.of("hem", BodyPart.SHOULDERS, "neck", BodyPart.HEAD),
        parts(new SleevelessTop().pattern()));
  }

  @Test
  void sleevesGoOverTheHands() {
    assertEquals(
        Map.of(
            "hem", BodyPart.SHOULDERS,
            "neck", BodyPart.HEAD,
            "hem (left)", BodyPart.HAND,
            "hem (right)", BodyPart.HAND),
        parts(new TShirt().pattern()));
    assertEquals(
        Map.of(
            "hem", BodyPart.SHOULDERS,
            "neck", BodyPart.HEAD,
            "wrist (left)", BodyPart.HAND,
            "wrist (right)", BodyPart.HAND),
        parts(new RaglanSweatshirt().pattern()));
  }

  /** The waist of leggings goes over the hips, though it is cut in one with the legs. */
  @Test
  void legsGoOverTheFeetAndTheirWaistOverTheHips() {
    Map<String, BodyPart> expected =
        Map.of("hem (left)", BodyPart.FOOT, "hem (right)", BodyPart.FOOT, "waist", BodyPart.HIPS);
    assertEquals(expected, parts(new Leggings().pattern()));
    assertEquals(expected, parts(new BoxerBriefs().pattern()));
  }

  /** A waist that gives 4 % is too small for hips that are a quarter larger. */
  @Test
  void aWaistThatDoesNotGoOverTheHipsIsFound() {
    Fabric stiff = Fabric.of("stiff", Structure.OTHER, 0.05);
    Draft tight =
        draft(Garments.leggings(CASING, HEM))
            .withFabric("body", stiff)
            .withWearer(Wearer.of().withGirth(BodyPart.HIPS, Length.cm(80)));
    assertTrue(ids(tight).contains("hips.too-small"), ids(tight).toString());
    assertEquals(List.of("waist"), tight.passages().stream().map(p -> p.opening().name()).toList());
  }

  /** Whatever else it goes over. */
  @Test
  void theHeadOpeningIsTheNeck() {
    Draft tee = draft(new TShirt().pattern());
    assertTrue(tee.passages().get(0).part() != BodyPart.HEAD, tee.passages().toString());
    assertEquals("neck", tee.headOpening().orElseThrow().opening().name());
  }

  /** Nobody pulls a skirt on over the shoulders. */
  @Test
  void aSkirtGoesOverTheHipsAlone() {
    assertEquals(Map.of("waist", BodyPart.HIPS), parts(Garments.skirt(CASING, HEM)));
  }

  /** Sewn to a band an opening stretches with its strip, and every opening has its own. */
  @Test
  void eachOpeningStretchesWithItsOwnStrip() {
    Pattern banded =
        Garments.tee(
            FoldedBand.of(Length.mm(20), Length.mm(7)),
            FoldedBand.cuff(Length.mm(40), Length.mm(7)),
            HEM,
            false);
    for (BodyPassage passage : draft(banded).passages()) {
      boolean bound = passage.part() != BodyPart.SHOULDERS;
      assertEquals(bound, passage.strip().isPresent(), passage.toString());
      passage.strip().ifPresent(strip -> assertEquals(passage.opening(), strip.opening()));
    }
  }

  /** Only a garment with a neck asks for the head of a child. */
  @Test
  void aHeadFromTheTableIsSaidOnlyWhereOneGoesThrough() {
    Wearer two = Wearer.of().withAge(2);
    assertTrue(ids(draft(Vest.plain().pattern()).withWearer(two)).contains("head.not-measured"));
    Draft skirt =
        draft(Garments.skirt(CASING, HEM)).withWearer(two.withGirth(BodyPart.HIPS, Length.cm(52)));
    assertEquals(1, skirt.passages().size());
    assertTrue(skirt.headOpening().isEmpty());
    assertFalse(ids(skirt).contains("head.not-measured"));
  }
}
