package dev.drafting.core.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.LineRole;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Placket;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlacketFindingsTest {
  private static final Piece SLEEVE = Rectangles.piece("sleeve", 200, 300);

  /** What is found about a placket in the bottom of a piece, so far from its left edge. */
  private static List<Finding> opened(Piece piece, double at, double length, double width) {
    Placket placket =
        Placket.of(piece.name() + " bottom", Length.mm(length), Length.mm(width)).at(Length.mm(at));
    return CutPlan.of(Pattern.of("shirt", List.of(piece), List.of()).withPlacket(placket))
        .findings();
  }

  private static List<String> ids(Piece piece, double at, double length) {
    return opened(piece, at, length, 20).stream().map(Finding::id).toList();
  }

  @Test
  void aPlacketLiesOnThePieceUpToItsEdges() {
    assertEquals(List.of(), ids(SLEEVE, 100, 300));
    assertEquals(List.of(), ids(SLEEVE, 10, 90));
    assertEquals(List.of(), ids(SLEEVE, 190, 90));
    List<Finding> findings = opened(SLEEVE, 100, 301, 20);
    assertEquals(List.of("placket.reaches-out"), findings.stream().map(Finding::id).toList());
    assertEquals("sleeve / bottom", findings.get(0).place().toString());
    assertEquals(
        "the placket, 301 mm long and 20 mm wide, reaches beyond sleeve or across a seam of it",
        findings.get(0).reason());
    assertEquals(
        List.of("Make it shorter or narrower, or open the edge farther in."), texts(findings));
  }

  private static List<String> texts(List<Finding> findings) {
    return findings.stream().flatMap(f -> f.remedies().stream()).map(Remedy::text).toList();
  }

  /** Half of its 20 mm lie to either side of the slit; the band is sewn 13 mm inside the edge. */
  @Test
  void aPlacketDoesNotLieAcrossTheSeamOfAnotherEdge() {
    Piece banded = SLEEVE.withFinish("left", Finishes.foldedBand(13, 7));
    assertEquals(List.of("placket.reaches-out"), ids(banded, 22, 90));
    assertEquals(List.of(), ids(banded, 23.1, 90));
    Finish stitched = Finishes.oneLine("stitched inside", 5, -13, LineRole.TOPSTITCH);
    assertEquals(List.of(), ids(SLEEVE.withFinish("left", stitched), 20, 90));
    Piece cuffed = SLEEVE.withFinish("bottom", Finishes.foldedBand(13, 7));
    assertEquals(List.of(), ids(cuffed, 100, 90), "the seam of the edge itself is opened");
  }

  /** Trimmed 15 mm inside its finished edge the cloth itself ends there. */
  @Test
  void aPlacketLiesOnTheClothUpToTheCutLine() {
    Finish trimmed = Finishes.oneLine("trimmed", -15, -15, LineRole.TOPSTITCH);
    Piece faced = SLEEVE.withFinish("left", trimmed);
    assertEquals(List.of("placket.reaches-out"), ids(faced, 24, 90));
    assertEquals(List.of(), ids(faced, 25.1, 90));
  }

  /** The band shows 13 mm: 13 mm of opening end in it, 8 mm more are its width. */
  @Test
  void aPlacketEndsBelowWhatIsSewnOnItsEdge() {
    Piece cuffed = SLEEVE.withFinish("bottom", Finishes.foldedBand(13, 7));
    List<Finding> findings = opened(cuffed, 100, 13, 8);
    assertEquals(List.of("placket.too-short"), findings.stream().map(Finding::id).toList());
    assertEquals(
        "the placket is 13 mm long and ends within what is sewn on the edge, which shows 13 mm",
        findings.get(0).reason());
    assertEquals(List.of("Make it longer than 21 mm."), texts(findings));
    assertEquals("21 mm", findings.get(0).remedies().get(0).data().get("placket.length"));
    assertEquals(List.of(), opened(cuffed, 100, 13.1, 8));
  }

  /** On the fold it runs along the fold, whatever the grain; a knit gives most across the grain. */
  @Test
  void aPlacketAcrossTheGrainIsFound() {
    Placket neck = Placket.of("front neck", Length.mm(140), Length.mm(24));
    assertEquals(List.of(), found(90, neck));
    List<Finding> findings = found(0, neck);
    assertEquals(List.of("placket.across-grain"), findings.stream().map(Finding::id).toList());
    assertEquals(
        List.of(
            "Turn the grain of front along it.",
            "Press a stay that does not stretch on the piece and on both strips, before anything"
                + " is cut."),
        texts(findings));
  }

  private static List<Finding> found(double grain, Placket placket) {
    Pattern vest = Finishes.vest();
    Piece front = vest.piece("front").withGrain(Angle.degrees(grain));
    return CutPlan.of(vest.withPiece(front).withPlacket(placket)).findings();
  }

  /** Where a piece cannot be cut, that is the finding, and not what is opened in it. */
  @Test
  void nothingIsSaidAboutAPlacketInAPieceThatCannotBeCut() {
    Piece low = Rectangles.piece("cuff", 300, 8).withFinish("top", Finishes.foldedBand(20, 5));
    assertEquals(
        List.of("piece.cannot-be-cut"),
        opened(low, 150, 12, 10).stream().map(Finding::id).toList());
  }
}
