package dev.drafting.knit.fabric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.knit.Vest;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FabricChangeTest {
  private static final Length BODY = Length.cm(98);
  private static final Length GARMENT = Length.cm(92);

  private static Fabric good(double stretch) {
    return Fabric.of("knit", Structure.OTHER, stretch).withRecovery(0.97);
  }

  private static FabricChange change(double from, double to) {
    return FabricChange.of(good(from), good(to));
  }

  private static List<String> ids(FabricChange change) {
    return change.findings().stream().map(Finding::id).toList();
  }

  /** CV-7: share = (B / G - 1) / s; G' = B / (1 + share x s'). Arithmetic. */
  @Test
  void keepsTheShareOfTheStretchThatIsUsed() {
    FabricChange change = change(0.60, 0.35).withGirth(Length.cm(92), Length.cm(84));
    assertEquals(0.15873, change.shareUsed().orElseThrow(), 5e-6);
    assertEquals(87.158, change.girth().orElseThrow().toCm(), 5e-4);
    assertEquals(3.158, change.difference().orElseThrow().toCm(), 5e-4);
  }

  /** CV-7, short form: G' = G (1 + u s) / (1 + u s'). Arithmetic. */
  @ParameterizedTest
  @CsvSource({"0.60,0.35", "0.35,0.60", "0.30,0.30", "0.80,0.45"})
  void agreesWithTheShortForm(double from, double to) {
    FabricChange change = change(from, to).withGirth(BODY, GARMENT);
    double u = change.shareUsed().orElseThrow();
    double expected = 92 * (1 + u * from) / (1 + u * to);
    assertEquals(expected, change.girth().orElseThrow().toCm(), 1e-9);
  }

  @Test
  void positiveEaseIsKept() {
    FabricChange loose = change(0.60, 0.20).withGirth(Length.cm(92), Length.cm(100));
    assertEquals(0, loose.shareUsed().orElseThrow());
    assertEquals(Length.cm(100), loose.girth().orElseThrow());
    Pattern vest = Vest.plain().pattern();
    assertSame(vest, loose.applyTo(vest));
    assertTrue(loose.explanation().get(1).contains("hangs loose"));
  }

  @Test
  void withoutTheWearersGirthThereAreBoundsOnly() {
    FabricChange change = change(0.60, 0.35).withGarment(Length.cm(84));
    assertTrue(change.girth().isEmpty());
    assertEquals("84 cm to 88.8 cm", change.bounds().orElseThrow().toString());
    Pattern vest = Vest.plain().pattern();
    assertSame(vest, change.applyTo(vest));
    assertTrue(ids(change).contains("change.girth-unknown"));
    assertTrue(change.findings().get(0).reason().endsWith("would be 84 cm to 88.8 cm round."));
    assertEquals(List.of(), ids(change(0.35, 0.35).withGarment(Length.cm(84))));
    assertTrue(change(0.60, 0.35).bounds().isEmpty());
  }

  /** Every share that a close fit uses lies within the bounds. */
  @ParameterizedTest
  @CsvSource({"0.60,0.35", "0.35,0.60", "0.30,1.00"})
  void theBoundsHoldEveryCloseFit(double from, double to) {
    GirthBounds bounds = change(from, to).withGarment(GARMENT).bounds().orElseThrow();
    for (double share = 0; share <= 0.25; share += 0.05) {
      Length body = GARMENT.times(1 + share * from);
      Length girth = change(from, to).withGirth(body, GARMENT).girth().orElseThrow();
      assertTrue(girth.toMm() >= bounds.least().toMm() - 1e-9);
      assertTrue(girth.toMm() <= bounds.most().toMm() + 1e-9);
    }
  }

  /** A fit closer than 8 % needs recovery of 95 %: common practice, no source. */
  @Test
  void recoveryCapsTheStretch() {
    FabricChange close = change(0.60, 1.00).withGirth(Length.cm(98), Length.cm(85));
    assertEquals(List.of("change.shortens", "ease.compression"), ids(close));
    Fabric fair = good(1.00).withRecovery(0.92);
    FabricChange capped = FabricChange.of(good(0.60), fair).withGirth(BODY, Length.cm(85));
    assertEquals(0.92 * 98, capped.girth().orElseThrow().toCm(), 1e-9);
    assertTrue(ids(capped).contains("change.capped"));
    Fabric poor = good(1.00).withRecovery(0.80);
    FabricChange none = FabricChange.of(good(0.60), poor).withGirth(BODY, Length.cm(85));
    assertEquals(BODY, none.girth().orElseThrow());
    assertTrue(ids(none).containsAll(List.of("fabric.refused", "change.capped")));
  }

  /** Stretching across shortens a knit: handbook on sizing (Textile Institute), p. 356. */
  @Test
  void moreStretchAcrossShortens() {
    assertEquals(List.of("change.shortens"), ids(change(0.30, 0.60).withGirth(BODY, GARMENT)));
    assertEquals(List.of(), ids(change(0.60, 0.30).withGirth(BODY, GARMENT)));
  }

  @Test
  void theSidesTakeAQuarterEachAndTheRestStays() {
    Pattern vest = Vest.plain().pattern();
    FabricChange change = change(0.60, 0.35).withGirth(BODY, GARMENT);
    Pattern wider = change.applyTo(vest);
    double quarter = change.difference().orElseThrow().toMm() / 4;
    for (String piece : List.of("front", "back")) {
      for (String still : List.of("shoulder", "neck", "fold")) {
        assertEquals(vest.piece(piece).edge(still), wider.piece(piece).edge(still));
      }
      assertEquals(
          vest.piece(piece).edge("hem").length().toMm() + quarter,
          wider.piece(piece).edge("hem").length().toMm(),
          1e-9);
    }
    assertEquals(
        wider.edge(EdgeRef.parse("front side")).length(),
        wider.edge(EdgeRef.parse("back side")).length());
  }

  @Test
  void whenAskedTheWholeWidthChanges() {
    Pattern vest = Vest.plain().pattern();
    Original original = Original.of(good(0.60)).withShoulders();
    FabricChange change = FabricChange.of(original, good(0.35)).withGirth(BODY, GARMENT);
    Pattern wider = change.applyTo(vest);
    double factor = change.girth().orElseThrow().ratioTo(GARMENT);
    assertEquals(
        factor * vest.piece("front").edge("hem").length().toMm(),
        wider.piece("front").edge("hem").length().toMm(),
        1e-9);
    assertTrue(
        wider.piece("front").edge("shoulder").length().toMm()
            > vest.piece("front").edge("shoulder").length().toMm());
    assertTrue(change.toString().endsWith("in proportion over the whole width."));
  }

  private static FabricChange at(String seam) {
    return FabricChange.of(Original.of(good(0.60)).withSeams(seam), good(0.35))
        .withGirth(BODY, GARMENT);
  }

  @Test
  void aSeamMustTakeTheChange() {
    Pattern vest = Vest.plain().pattern();
    FabricChange change = change(0.60, 0.35).withGirth(BODY, GARMENT);
    assertEquals(change.applyTo(vest), at("side").applyTo(vest));
    DraftingException unknown =
        assertThrows(DraftingException.class, () -> at("flank").applyTo(vest));
    assertTrue(String.valueOf(unknown.getMessage()).contains("shoulder, side"));
    Pattern without = Pattern.of("without sides", vest.pieces(), List.of());
    DraftingException none = assertThrows(DraftingException.class, () -> change.applyTo(without));
    assertTrue(String.valueOf(none.getMessage()).contains("no seam takes the change"));
  }

  @Test
  void saysWhatItDoesInFigures() {
    FabricChange change =
        FabricChange.of(
                Fabric.of("old jersey", Structure.JERSEY, 0.60),
                Fabric.of("new jersey", Structure.JERSEY, 0.35))
            .withGirth(Length.cm(92), Length.cm(84.6));
    assertEquals(
        "old jersey to new jersey: Adapt, beside old jersey, which the original is made of: new"
            + " jersey gives 35 % across instead of 60 %. Worn, the original is stretched 8.7 %, which is 14.6 % of what"
            + " its fabric gives. With the same share of new jersey it is stretched 5.1 % and 87.5"
            + " cm round instead of 84.6 cm. The 29.3 mm go in at the side and underarm seams and"
            + " fade to nothing at the shoulder; shoulders and neck stay.",
        change.toString());
    assertTrue(change.toString().length() < 1000);
    assertEquals(change, change.withGirth(Length.cm(92), Length.cm(84.6)));
  }
}
