package dev.drafting.core.grade;

import static dev.drafting.core.grade.VestRules.rule;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Notch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GradingTest {
  private static double x(Pattern pattern, String piece, String before, String after) {
    return pattern.piece(piece).corner(before, after).at().x();
  }

  private static double length(Pattern pattern, String piece, String edge) {
    return pattern.piece(piece).edge(edge).length().toMm();
  }

  /**
   * Worked by hand: a quarter of 4 cm is 1 cm at each of four sides, so that 92 cm round become 96,
   * 100 and, a step and a half further, 106 (common practice, no source).
   */
  @ParameterizedTest
  @CsvSource({"S,88", "M,92", "L,96", "XL,100", "3XL,106"})
  void aQuarterOfTheGirthIsAddedAtEachSide(String size, double girth) {
    Pattern pattern = VestRules.grading().pattern(size);
    double quarters =
        x(pattern, "front", "side", "armhole") + x(pattern, "back", "side", "armhole");
    assertEquals(girth, 2 * quarters / 10, 1e-9);
  }

  /**
   * Worked by hand: the shoulder runs from 100 to 167.082 mm and falls 20; a step later its ends
   * are at 102.5 and 173.082 and it falls 20.5. It is 3 to 5 mm longer, as is usual.
   */
  @Test
  void theShoulderGrowsWithItsEnds() {
    Pattern large = VestRules.grading().pattern("L");
    double across = Math.sqrt(70 * 70 - 20 * 20) + 3.5;
    assertEquals(Math.hypot(across, 20.5), length(large, "front", "shoulder"), 1e-9);
    assertEquals(3.499, length(large, "front", "shoulder") - 70, 0.001);
    assertEquals(102.5, x(large, "back", "shoulder", "neck"), 1e-9);
  }

  @Test
  void seamsThatGrowAlikeRaiseNothing() {
    assertEquals(List.of(), VestRules.grading().findings());
    assertEquals(8, VestRules.grading().growths().size());
    assertEquals(
        "shoulder, size S: first side 3.5 mm shorter, second side 3.5 mm shorter",
        VestRules.grading().growths().get(0).toString());
  }

  @Test
  void aSeamThatGrowsOnOneSideIsNamedWithBothGrowths() {
    List<GradeRule> rules = new ArrayList<>(VestRules.rules("front"));
    rules.add(rule("back", "hem", "side", 10, 0));
    rules.add(rule("back", "side", "armhole", 10, 0));
    Grading grading = Grading.of(VestRules.vest(), "M", rules).with("L", 1).with("XL", 2);
    List<Finding> findings = grading.findings();
    assertEquals(2, findings.size());
    Finding side = findings.get(1);
    assertEquals("grade.seam-unequal", side.id());
    assertEquals("side", side.place().toString());
    assertEquals(
        "In size XL front side is 10 mm longer than in the base size and back side 0 mm longer: the"
            + " sides no longer meet by 10 mm.",
        side.reason());
    assertEquals(
        "Move the corners at the ends of back side so that it is 10 mm longer, or those of front"
            + " side so that it is 0 mm longer.",
        side.remedies().get(1).text());
    assertEquals(
        "Let the corner move by another rule, for each size: back, side to armhole: 9.9 mm across,"
            + " 5 mm along, instead of 10 mm across and 0 mm along.",
        side.remedies().get(0).text());
  }

  /** Both seams of the half-graded vest, put right one after the other by what is proposed. */
  @Test
  void theRuleThatIsProposedPutsTheSeamRight() {
    List<GradeRule> rules = new ArrayList<>(VestRules.rules("front"));
    rules.add(rule("back", "hem", "side", 10, 0));
    rules.add(rule("back", "side", "armhole", 10, 0));
    Grading grading = Grading.of(VestRules.vest(), "M", rules).with("L", 1).with("XL", 2);
    for (int left = 2; left > 0; left--) {
      List<Finding> findings = grading.findings();
      assertEquals(left, findings.size(), findings.toString());
      grading = grading.with(VestRules.proposed(findings.get(0)));
    }
    assertEquals(List.of(), grading.findings());
  }

  @Test
  void aCornerOnTheFoldMovesOnlyAlongIt() {
    DraftingException e =
        assertThrows(
            DraftingException.class,
            () -> Grading.of(VestRules.vest(), "M", List.of(rule("front", "neck", "fold", 1, 0))));
    assertEquals("front, neck to fold", e.where());
    assertEquals("0 mm across", e.accepted());
  }

  @Test
  void edgesMayBeNamedInEitherOrder() {
    Grading one = Grading.of(VestRules.vest(), "M", List.of(rule("front", "side", "hem", 10, 0)));
    Grading other = Grading.of(VestRules.vest(), "M", List.of(rule("front", "hem", "side", 10, 0)));
    assertEquals(one.with("L", 1).pattern("L"), other.with("L", 1).pattern("L"));
    assertNotEquals(one, other);
  }

  @Test
  void whatCannotBeMeantIsRefused() {
    Pattern vest = VestRules.vest();
    assertThrows(
        DraftingException.class,
        () -> Grading.of(vest, "M", List.of(rule("front", "hem", "neck", 1, 0))));
    assertThrows(
        DraftingException.class,
        () -> Grading.of(vest, "M", List.of(rule("sleeve", "hem", "side", 1, 0))));
    assertThrows(
        DraftingException.class,
        () ->
            Grading.of(
                vest,
                "M",
                List.of(rule("front", "hem", "side", 1, 0), rule("front", "side", "hem", 1, 0))));
    Grading grading = Grading.of(vest, "M", VestRules.rules("front"));
    assertThrows(DraftingException.class, () -> grading.with("M", 1));
    assertThrows(DraftingException.class, () -> grading.with("L", 0));
    assertThrows(DraftingException.class, () -> grading.with("L", -0.0));
    assertThrows(DraftingException.class, () -> grading.with("L", Double.NaN));
    assertThrows(DraftingException.class, () -> grading.with("L", 51));
    assertThrows(DraftingException.class, () -> grading.pattern("L"));
  }

  @Test
  void aSizeThatCannotBeDrawnIsNamed() {
    Grading tiny = Grading.of(VestRules.vest(), "M", VestRules.rules("front")).with("nothing", -40);
    DraftingException e = assertThrows(DraftingException.class, () -> tiny.pattern("nothing"));
    assertTrue(e.where().startsWith("size nothing: front"), e.where());
  }

  @Test
  void notchesKeepTheirShareOfTheEdge() {
    Pattern vest = VestRules.vest();
    Piece front = vest.piece("front");
    Length half = front.edge("side").length().times(0.5);
    Pattern notched = vest.withPiece(front.withNotch(Notch.of("side", half, "waist")));
    Pattern large = Grading.of(notched, "M", VestRules.rules("front")).with("L", 1).pattern("L");
    Piece graded = large.piece("front");
    assertEquals(
        graded.edge("side").length().toMm() / 2, graded.notches().get(0).along().toMm(), 1e-9);
  }

  @Test
  void readsWellAndIsAValue() {
    assertEquals(
        "vest in sizes S, M, L, XL, 3XL, drawn in M, 12 corners move",
        VestRules.grading().toString());
    assertEquals(VestRules.grading(), VestRules.grading());
    assertEquals(VestRules.grading().hashCode(), VestRules.grading().hashCode());
    assertEquals(VestRules.grading(), SerialCopy.of(VestRules.grading()));
    assertEquals("size XL", VestRules.grading().pattern("XL").version());
    Point fold = VestRules.grading().pattern("XL").piece("front").corner("neck", "fold").at();
    assertEquals(0, fold.x(), 0);
  }

  @Test
  void sizesStandInTheOrderOfTheirSteps() {
    Grading grading =
        Grading.of(VestRules.vest(), "M", VestRules.rules("front"))
            .with("giant", 50)
            .with("S", -1)
            .with("L", 1);
    assertEquals(List.of("S", "M", "L", "giant"), grading.names());
    assertEquals(VestRules.rules("front"), grading.rules());
    Grading least = Grading.of(VestRules.vest(), "M", List.of()).with("tiny", -50);
    assertEquals(List.of("tiny", "M"), least.names());
    assertThrows(DraftingException.class, () -> grading.with(" ", 2));
    assertThrows(DraftingException.class, () -> grading.with("tiny", -50.1));
    Grading two = Grading.of(VestRules.vest(), "M", VestRules.rules("front")).with("S", -1);
    assertEquals(List.of("S", "M"), List.copyOf(two.patterns().keySet()));
    assertEquals(two.pattern("S"), two.patterns().get("S"));
    assertThrows(UnsupportedOperationException.class, () -> two.patterns().clear());
  }

  /** The side of the vest grows with the corner at its armhole: 1 mm may be stretched in. */
  @Test
  void sidesThatDifferByAMillimetreRaiseNothing() {
    assertEquals(List.of(), lengthened(1).findings());
    Finding finding = lengthened(-1.1).findings().get(0);
    assertTrue(
        finding.reason().startsWith("In size L front side is 1.1 mm shorter than"),
        finding.reason());
    Grading two = lengthened(2).with("XL", 2);
    assertEquals(1, two.findings().size());
    assertTrue(two.findings().get(0).reason().startsWith("In size XL front side is 4 mm longer"));
  }

  /** A tube whose front is longer by so much a step. */
  private static Grading lengthened(double mm) {
    Pattern tube =
        Pattern.of(
            "tube",
            List.of(half("front"), half("back")),
            List.of(Seam.of("side", "front side", "back side")));
    return Grading.of(tube, "M", List.of(rule("front", "side", "top", 0, mm))).with("L", 1);
  }

  private static Piece half(String name) {
    Point a = new Point(0, 0);
    Point b = new Point(200, 0);
    Point c = new Point(200, 400);
    Point d = new Point(0, 400);
    return Piece.of(
        name,
        List.of(
            Edge.of("hem", Curve.line(a, b)),
            Edge.of("side", Curve.line(b, c)),
            Edge.of("top", Curve.line(c, d)),
            Edge.onFold(Curve.line(d, a))));
  }

  @Test
  void rulesAreValues() {
    GradeRule rule = rule("front", "hem", "side", 10, 5);
    assertEquals("front, hem to side: 10 mm across, 5 mm along", rule.toString());
    assertEquals("front", rule.piece());
    assertEquals(Length.mm(10), rule.across());
    assertEquals(Length.mm(5), rule.along());
    assertEquals(rule, rule("front", "hem", "side", 10, 5));
    assertNotEquals(rule, rule("front", "hem", "side", 10, 6));
    assertNotEquals(rule.hashCode(), rule("front", "hem", "side", 10, 6).hashCode());
    assertNotEquals(rule, "front");
    Grading one = Grading.of(VestRules.vest(), "M", List.of(rule));
    assertEquals("vest in sizes M, drawn in M, 1 corner moves", one.toString());
    List<Grading> others =
        List.of(
            Grading.of(VestRules.vest(), "M", List.of()),
            Grading.of(VestRules.vest(), "L", List.of(rule)),
            Grading.of(VestRules.vest().withVersion("2"), "M", List.of(rule)),
            one.with("L", 1));
    for (Grading other : others) {
      assertNotEquals(one, other);
      assertNotEquals(one.hashCode(), other.hashCode());
    }
  }
}
