package dev.drafting.knit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.cut.CutItem;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.sewing.Caution;
import dev.drafting.knit.sewing.Construction;
import dev.drafting.knit.sewing.Detail;
import dev.drafting.knit.sewing.Machines;
import dev.drafting.knit.sewing.SewingChoices;
import dev.drafting.knit.sewing.Step;
import dev.drafting.knit.sewing.Stitch;
import dev.drafting.knit.sewing.StitchType;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A draft on the machines at hand. */
class DraftSewingTest {
  private static final Draft VEST =
      Draft.of(Vest.plain().pattern())
          .withFabric("body", Fabric.of("navy jersey", Structure.JERSEY, 0.3).withMass(170))
          .withFabric("rib", Fabric.of("white rib", Structure.RIB, 0.8).withMass(230));

  private static List<String> whats(Draft draft) {
    return draft.goods().stream().map(Goods::what).toList();
  }

  @Test
  void machinesSetTheAllowancesOfTheWholeDraft() {
    Draft zigzag = VEST.withSewing(SewingChoices.of().withMachines(Machines.zigzag()));
    assertEquals(
        Length.mm(10),
        zigzag.pattern().edge(EdgeRef.parse("back side")).finish().profile().allowance());
    assertNotEquals(VEST.cutPieces(), zigzag.cutPieces());
    assertNotEquals(VEST, zigzag);
    assertEquals(VEST.measures(), zigzag.measures(), "the finished garment stays as it is");
  }

  @Test
  void everythingToBuyIsOnOneList() {
    Draft twin =
        VEST.withSewing(
            SewingChoices.of().withMachines(Machines.overlocker(4).withTwinNeedle(Length.mm(4))));
    assertEquals(
        List.of(
            "navy jersey",
            "white rib",
            "tape or clear elastic, 6 mm wide",
            "thread to match navy jersey",
            "thread to match white rib",
            "needles for navy jersey",
            "needles for white rib",
            "twin needle for stretch cloth"),
        whats(twin));
    assertEquals(
        "size 75, 4 mm (0.16 in) wide", twin.goods().get(twin.goods().size() - 1).amount());
    assertEquals("0.2 m", twin.goods().get(2).amount(), "two shoulders of 7 cm");
  }

  @Test
  void tapesAreCutAsLongAsTheirSeams() {
    CutItem tape =
        VEST.cutList().stream()
            .filter(item -> item.name().equals("shoulder tape"))
            .findFirst()
            .orElseThrow();
    assertEquals(2, tape.count());
    assertEquals(70, tape.length().toMm(), 1e-9);
  }

  /** Sewn flat a strip begins at the seam that is still open, and so do its marks. */
  @Test
  void aFlatBandBeginsAtTheOpenSeam() {
    Draft flat = VEST.withSewing(SewingChoices.of().withConstruction(Construction.FLAT));
    assertEquals("join: shoulder", flat.strips().get(1).marks().get(0).label());
    assertEquals("join: side", flat.strips().get(0).marks().get(0).label());
    String neck = text(flat, "Sew on the neck band");
    assertTrue(neck.contains("from one side of the shoulder seam to the other"), neck);
    String round = text(VEST, "Sew on the neck band");
    assertTrue(round.contains("Clip the join's allowances at mid-width"), round);
  }

  private static String text(Draft draft, String title) {
    return draft.orderOfWork().stream()
        .filter(step -> step.title().equals(title))
        .map(Step::text)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void whatTheGarmentHasDecidesAboutCautions() {
    Draft child = VEST.withWearer(Wearer.of().withHeight(Length.cm(110)));
    assertTrue(topics(child).contains("Cords"));
    Draft hooded =
        child.withSewing(SewingChoices.of().withDetail(Detail.HOOD).withDetail(Detail.CORD));
    assertTrue(topics(hooded).contains("Length of cords"));
    assertTrue(hooded.findings().stream().map(Finding::id).toList().contains("child.cord-at-hood"));
  }

  private static List<String> topics(Draft draft) {
    return draft.cautions().stream().map(Caution::topic).toList();
  }

  /** A neck in straight stitch gives 10 %, whatever the rib does. */
  @Test
  void stitchesThatDoNotGiveKeepTheHeadOut() {
    Draft head = VEST.withWearer(Wearer.of().withHead(Length.cm(58)));
    Stitch straight = Stitch.of(StitchType.LOCKSTITCH);
    Draft stiff =
        head.withSewing(
            SewingChoices.of().withMachines(Machines.overlocker(4).withStitch("neck", straight)));
    Length before = head.headOpening().orElseThrow().stretchedOpening();
    Length after = stiff.headOpening().orElseThrow().stretchedOpening();
    assertTrue(after.compareTo(before) < 0, after + " and " + before);
  }

  @Test
  void aTapeForASeamThatIsNotThereIsRefused() {
    SewingChoices wrong = SewingChoices.of().withTape("elbow");
    assertThrows(DraftingException.class, () -> VEST.withSewing(wrong));
  }

  @Test
  void choicesAreValues() {
    SewingChoices flat =
        SewingChoices.of().withConstruction(Construction.FLAT).withTape("side").withTape("side");
    assertEquals(flat, SewingChoices.of().withTape("side").withConstruction(Construction.FLAT));
    assertEquals(
        "seams four-thread overlock (514), hems zigzag (304), seam allowance 7 mm; bands flat;"
            + " tape at side",
        flat.toString());
    assertEquals(flat, VEST.withSewing(flat).sewingChoices());
  }
}
