package dev.drafting.core.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.LineRole;
import dev.drafting.core.pattern.Patch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.SeamFinish;
import java.util.List;
import org.junit.jupiter.api.Test;

class CutFindingsTest {
  private static final Piece BASE =
      Rectangles.piece("base", 200, 300).withFinish("right", SeamFinish.of(Length.mm(7)));

  private static List<String> ids(Pattern pattern) {
    return CutPlan.of(pattern).findings().stream().map(Finding::id).toList();
  }

  /** A pocket of 50 x 60 mm with its lower left corner there. */
  private static List<String> laid(Piece base, double x, double y) {
    Pattern pattern =
        Pattern.of("apron", List.of(base, Rectangles.piece("pocket", 50, 60)), List.of());
    Patch patch = Patch.of("pocket", "base", new Point(x, y));
    return ids(pattern.withPatch(patch)).stream().filter(id -> id.startsWith("patch")).toList();
  }

  @Test
  void aPatchLiesOnItsPieceUpToTheEdgeAndNotOnTheAllowance() {
    assertEquals(List.of(), laid(BASE, 75, 100));
    assertEquals(List.of(), laid(BASE, 0, 0));
    assertEquals(List.of(), laid(BASE, 150, 240));
    assertEquals(List.of("patch.reaches-out"), laid(BASE, 151, 100));
    assertEquals(List.of("patch.reaches-out"), laid(BASE, -1, 100));
    assertEquals(List.of("patch.reaches-out"), laid(BASE, 75, 241));
    Finding finding =
        CutPlan.of(
                Pattern.of("apron", List.of(BASE, Rectangles.piece("pocket", 50, 60)), List.of())
                    .withPatch(Patch.of("pocket", "base", new Point(190, 100))))
            .findings()
            .get(0);
    assertEquals("pocket", finding.place().toString());
    assertEquals(
        List.of("Move it inwards on base, or draw it smaller."),
        finding.remedies().stream().map(Remedy::text).toList());
  }

  /** A band that shows 13 mm is sewn that far inside the edge; the cloth ends 6 mm inside. */
  @Test
  void aPatchDoesNotLieAcrossTheSeamOfABand() {
    Piece banded = BASE.withFinish("top", Finishes.foldedBand(13, 7));
    assertEquals(List.of(), laid(banded, 75, 226.5));
    assertEquals(List.of("patch.reaches-out"), laid(banded, 75, 228));
    assertEquals(List.of("patch.reaches-out"), laid(banded, 75, 238));
    Finish sewnInside = Finishes.oneLine("sewn inside", 5, -13, LineRole.JOIN);
    assertEquals(List.of("patch.reaches-out"), laid(BASE.withFinish("top", sewnInside), 75, 238));
    Finish stitchedInside = Finishes.oneLine("stitched inside", 5, -13, LineRole.TOPSTITCH);
    assertEquals(List.of(), laid(BASE.withFinish("top", stitchedInside), 75, 238));
  }

  /** Where a piece cannot be cut, that is the finding, and not what lies on it. */
  @Test
  void nothingIsSaidAboutAPatchOnAPieceThatCannotBeCut() {
    Piece base = Rectangles.piece("base", 300, 8).withFinish("top", Finishes.foldedBand(20, 5));
    Pattern pattern =
        Pattern.of("apron", List.of(base, Rectangles.piece("pocket", 50, 60)), List.of())
            .withPatch(Patch.of("pocket", "base", new Point(75, 100)));
    assertEquals(List.of("piece.cannot-be-cut"), ids(pattern));
    assertEquals(
        "apron: paper pocket; 1 finding", CutPlan.of(pattern).toString(), "the pocket is cut");
  }

  /** A corner rounded outwards by 4 mm has no parallel 6 mm further in. */
  @Test
  void aCutLineInsideATightCurveIsFound() {
    Finding finding = CutPlan.of(tabbed(4)).findings().get(0);
    assertEquals("allowance.too-wide", finding.id());
    assertEquals("tab / rim", finding.place().toString());
    assertTrue(
        finding.reason().startsWith("the cut line lies 6 mm inside the finished edge, and "),
        finding.reason());
    assertEquals(
        List.of(
            "Let the cut line lie 3 mm from the finished edge at most.",
            "Draw the curve of rim wider, or finish the edge with a narrower allowance or a"
                + " binding."),
        finding.remedies().stream().map(Remedy::text).toList());
    assertEquals(1, CutPlan.of(tabbed(1)).findings().get(0).remedies().size(), "0 mm is no remedy");
    assertEquals(List.of(), CutPlan.of(tabbed(7)).findings());
  }

  /** A tab with both upper corners rounded, a band round them. */
  private static Pattern tabbed(double radius) {
    Length r = Length.mm(radius);
    Angle quarter = Angle.degrees(90);
    Arc right = Arc.of(new Point(100 - radius, 80 - radius), r, Angle.ZERO, quarter);
    Arc left = Arc.of(new Point(radius, 80 - radius), r, quarter, quarter);
    Curve rim =
        Curve.of(
            List.of(
                new Line(new Point(100, 0), right.start()),
                right,
                new Line(right.end(), left.start()),
                left,
                new Line(left.end(), new Point(0, 0))));
    Piece tab = Rectangles.foot("tab", 100, rim).withFinish("rim", Finishes.foldedBand(13, 7));
    return Pattern.of("apron", List.of(tab), List.of());
  }

  /** A hem of 20 mm is stitched 18 mm up, on a piece that is 12 mm high. */
  @Test
  void aFinishThatIsDeeperThanItsPieceIsFound() {
    Piece low = Rectangles.piece("strap", 300, 12).withFinish("bottom", Finishes.hemOnce(20));
    List<Finding> findings = CutPlan.of(Pattern.of("apron", List.of(low), List.of())).findings();
    assertEquals(List.of("allowance.too-wide"), findings.stream().map(Finding::id).toList());
    assertEquals(
        "there is no room on the piece for all lines of the finish: hem turned once",
        findings.get(0).reason());
    assertEquals("Choose a narrower finish for bottom.", findings.get(0).remedies().get(0).text());
  }
}
