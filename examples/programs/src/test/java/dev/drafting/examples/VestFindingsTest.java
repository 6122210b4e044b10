package dev.drafting.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.assembly.Opening;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Severity;
import dev.drafting.core.measure.Length;
import dev.drafting.core.trace.EdgeReport;
import dev.drafting.core.trace.TruedPiece;
import dev.drafting.export.source.Garment;
import dev.drafting.export.source.GarmentFolder;
import dev.drafting.knit.Draft;
import dev.drafting.knit.band.Outcome;
import dev.drafting.knit.band.Strip;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the demo is there to show. */
class VestFindingsTest {
  private static final Garment VEST = GarmentFolder.read(Vest.FOLDER);

  private static List<Finding> problems(String make) {
    return VEST.make(make).findings().stream()
        .filter(finding -> finding.severity() == Severity.PROBLEM)
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"A cotton jersey", "B interlock"})
  void aRibBandGoesOverTheHead(String make) {
    assertEquals(List.of(), problems(make));
    assertTrue(VEST.make(make).headOpening().orElseThrow().passes());
  }

  @Test
  void aBandOfStablePiqueDoesNotAndTheRemedyIsSaid() {
    List<Finding> problems = problems("C pique");
    assertEquals(1, problems.size());
    Finding head = problems.get(0);
    assertEquals("head.too-small", head.id());
    assertEquals("neck", head.place().toString());
    assertTrue(
        head.remedies().get(0).data().containsKey("neck.lower-by"), head.remedies().toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"A cotton jersey", "B interlock", "C pique"})
  void allStripsLieFlat(String make) {
    List<Strip> strips = VEST.make(make).strips();
    assertEquals(3, strips.size());
    strips.forEach(strip -> assertEquals(Outcome.LIES_FLAT, strip.outcome()));
  }

  @Test
  void theSlipOfThePencilIsLeftOutAndNothingElse() {
    List<EdgeReport> edges =
        VEST.trued().stream().flatMap(piece -> piece.report().edges().stream()).toList();
    assertEquals(
        List.of("armhole"),
        edges.stream().filter(e -> !e.refused().isEmpty()).map(EdgeReport::edge).toList());
    Length off = VEST.trued().get(0).report().edge("armhole").refused().get(0).distance();
    assertEquals(12, off.toMm(), 2);
  }

  /** The true outline is known, because it was made from formulas; the hand wandered by 2 mm. */
  @ParameterizedTest
  @CsvSource({
    "front, hem, 222.2, 3",
    "front, side, 424.1, 3",
    "front, shoulder, 64, 3",
    "front, armhole, 257.6, 3",
    "front, neck, 133.2, 3",
    "back, hem, 222.2, 3",
    "back, side, 424.1, 3",
    "back, shoulder, 64, 3",
    "back, armhole, 255.9, 3",
    "back, neck, 95.3, 3"
  })
  void theTruedEdgesComeCloseToTheTrueOnes(
      String piece, String edge, double trueLength, double within) {
    double length = VEST.pattern().piece(piece).edge(edge).length().toMm();
    assertEquals(trueLength, length, within);
  }

  @Test
  void theTailIsFiveCentimetresLonger() {
    TruedPiece front = VEST.trued().get(0);
    TruedPiece back = VEST.trued().get(1);
    double difference = height(back) - height(front);
    // necklines: 93 mm deep in front, 34 mm behind
    assertEquals(50, difference - (93 - 34), 4);
    assertFalse(back.report().lopsidedness().isEmpty());
  }

  private static double height(TruedPiece piece) {
    return piece.piece().edge("fold").length().toMm();
  }

  /** Design: K of a neck is 360 - 2 (aF + aB); a hem -2 (tF + tB); all add up to 720 for a vest. */
  @Test
  void theOpeningsTurnAsTheSlopesSay() {
    Draft draft = VEST.make("A cotton jersey");
    double sum = 0;
    for (Opening opening : draft.openings()) {
      double turning = opening.turning().toDegrees();
      sum += turning;
      if (opening.name().equals("neck")) {
        assertEquals(360 - 4 * 22, turning, 8);
      } else if (opening.name().startsWith("armhole")) {
        assertEquals(180 + 2 * 22 - 2 * 1.35, turning, 8);
      } else {
        assertEquals(4 * 1.35, turning, 4);
      }
    }
    assertEquals(720, sum, 1e-6);
  }
}
