package dev.drafting.core.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.finding.Severity;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.pattern.Vests;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What is found wrong with a pattern. That edges run smoothly across seams, the two corners adding
 * up to 180 degrees, and that the fold is met square is common practice, no source; so is the 3 mm
 * by which the sides of a seam may differ.
 */
class AssemblyFindingsTest {

  private static Piece piece(String name, double sideTop, Point neckEnd) {
    Point foot = new Point(0, 0);
    Point hemSide = new Point(220, 0);
    Point underarm = new Point(220, sideTop);
    Point tip = new Point(160, 560);
    Point neck = new Point(80, 600);
    return Piece.of(
        name,
        List.of(
            Edge.of("hem", Curve.line(foot, hemSide)),
            Edge.of("side", Curve.line(hemSide, underarm)),
            Edge.of("armhole", Curve.line(underarm, tip)),
            Edge.of("shoulder", Curve.line(tip, neck)),
            Edge.of("neck", Curve.line(neck, neckEnd)),
            Edge.onFold(Curve.line(neckEnd, foot))));
  }

  private static final Point V = new Point(0, 500);

  private static Pattern pattern(Piece front, Piece back) {
    return Vests.joined(front, back).withCrossingTolerance(Angle.degrees(180));
  }

  private static List<Finding> findings(Pattern pattern) {
    return Assembly.of(pattern).findings();
  }

  @Test
  void sidesThatDifferAreMeasuredAndTheLongerOneIsNamed() {
    Pattern pattern = pattern(piece("front", 346, V), piece("back", 340, V));
    Finding finding = findings(pattern).get(0);
    assertEquals(1, findings(pattern).size());
    assertEquals(Severity.WARNING, finding.severity());
    assertEquals("seam.lengths-differ", finding.id());
    assertEquals(
        "WARNING side: front / side is 6 mm longer than back / side (346 mm to 340 mm); up to 3 mm"
            + " would do",
        finding.toString());
    assertEquals(
        "Draw front / side 6 mm shorter or back / side 6 mm longer.",
        finding.remedies().get(0).text());
    assertEquals(
        "{longer=front / side, shorter=back / side, by=6 mm}",
        finding.remedies().get(0).data().toString());
    assertEquals("{seam.ease=6 mm}", finding.remedies().get(1).data().toString());
  }

  @Test
  void intendedEaseIsLeftOut() {
    Piece front = piece("front", 346, V);
    Piece back = piece("back", 340, V);
    Seam side = Seam.of("side", EdgeRef.parse("front side"), EdgeRef.parse("back side"));
    Pattern eased = Pattern.of("vest", List.of(front, back), List.of(side.withEase(Length.mm(6))));
    assertEquals(Length.ZERO, Assembly.of(eased).seamChecks().get(0).difference());
    Pattern wrong = Pattern.of("vest", List.of(front, back), List.of(side.withEase(Length.mm(-2))));
    assertEquals(
        "side: 346 mm to 340 mm, off by 8 mm", Assembly.of(wrong).seamChecks().get(0).toString());
    Finding finding =
        findings(wrong).stream()
            .filter(f -> f.id().equals("seam.lengths-differ"))
            .findFirst()
            .orElseThrow();
    assertTrue(finding.reason().contains("with -2 mm of ease meant"), finding.reason());
  }

  @Test
  void theToleranceIsInclusive() {
    Pattern pattern = pattern(piece("front", 343, V), piece("back", 340, V));
    assertEquals(List.of(), findings(pattern));
    assertEquals(1, findings(pattern.withSeamTolerance(Length.mm(2.99))).size());
  }

  @Test
  void aFoldThatIsNotSquareIsFoundUnlessItIsPointed() {
    Piece front = piece("front", 340, V);
    Piece back = piece("back", 340, new Point(0, 599));
    Pattern pattern = Vests.joined(front, back);
    List<Finding> folds =
        findings(pattern).stream().filter(f -> f.id().equals("fold.not-square")).toList();
    assertEquals(1, folds.size());
    assertEquals(
        "WARNING front / neck / fold: neck meets the fold at 141° instead of 90°: unfolded it makes"
            + " a dent at centre front",
        folds.get(0).toString());
    assertEquals(2, folds.get(0).remedies().size());
    Pattern pointed = Vests.joined(front.withPointedCorner("neck", "fold"), back);
    assertTrue(findings(pointed).stream().noneMatch(f -> f.id().equals("fold.not-square")));
  }

  @Test
  void aCrossingThatIsNotSmoothIsFoundOnceForBothHands() {
    Piece front = piece("front", 340, new Point(0, 599));
    Piece back = piece("back", 340, new Point(0, 599));
    List<Finding> crossings =
        findings(Vests.joined(front, back)).stream()
            .filter(f -> f.id().equals("crossing.not-smooth"))
            .toList();
    List<String> places = crossings.stream().map(f -> f.place().toString()).toList();
    // underarm and shoulder of the armhole, shoulder of the neck: each once, not once for each hand
    assertEquals(List.of("armhole (right)", "armhole (right)", "neck"), places);
    assertEquals(
        "at the side seam the edge makes a dent: the corners (back 165°, front 165°) add up to 329°"
            + " instead of 180°", // 180 less atan(60 / 220) on either piece
        crossings.get(1).reason());
    assertEquals(
        List.of(
            "Lay the pieces together along the side seam and draw the edge smoothly across it;"
                + " together the corners lose 149°.",
            "If it is meant to be a point, declare the corner pointed."),
        crossings.get(1).remedies().stream().map(Remedy::text).toList());
    for (Finding finding : crossings) {
      assertEquals(2, finding.remedies().size());
    }
  }

  @Test
  void theCrossingToleranceIsWhatIsStated() {
    Piece back = Vests.piece("back", Vests.BACK);
    Piece steeper = Vests.piece("front", new Vests.Half(22, 4, 110, 0));
    assertEquals(List.of(), findings(Vests.joined(steeper, back)));
    // a hem that drops 6 degrees at the side of both pieces: 180 + 12
    Piece front = straightHem("front");
    Piece rear = straightHem("back");
    Pattern pattern = Vests.joined(front, rear);
    assertEquals(
        1, findings(pattern).stream().filter(f -> f.place().names().contains("hem")).count());
    assertEquals(
        0,
        findings(pattern.withCrossingTolerance(Angle.degrees(12.1))).stream()
            .filter(f -> f.place().names().contains("hem"))
            .count());
  }

  /** Two corners of 84 degrees make a point of 168, one of 81 at the fold a point of 163. */
  @Test
  void aPointIsToldFromADent() {
    Finding hem =
        findings(Vests.joined(straightHem("front"), straightHem("back"))).stream()
            .filter(f -> f.place().names().contains("hem"))
            .findFirst()
            .orElseThrow();
    assertTrue(hem.reason().startsWith("at the side seam the edge makes a point: "), hem.reason());
    assertTrue(hem.remedies().get(0).text().endsWith("together the corners gain 12°."));
    Point foot = new Point(0, -30);
    Point b = new Point(200, 0);
    Point c = new Point(200, 300);
    Point d = new Point(0, 300);
    Piece peaked =
        Piece.of(
            "skirt",
            List.of(
                Edge.of("hem", Curve.line(foot, b)),
                Edge.of("side", Curve.line(b, c)),
                Edge.of("waist", Curve.line(c, d)),
                Edge.onFold(Curve.line(d, foot))));
    Finding fold = findings(Pattern.of("skirt", List.of(peaked), List.of())).get(0);
    assertTrue(
        fold.reason()
            .startsWith("hem meets the fold at 81° instead of 90°: unfolded it makes a point at "),
        fold.reason());
  }

  /** Flared by 6 degrees with a straight hem: the corner at the side has 84 degrees. */
  private static Piece straightHem(String name) {
    Piece flared = Vests.piece(name, new Vests.Half(22, 6, 110, 0));
    Point side = flared.edge("hem").curve().end();
    Point foot = new Point(0, side.y());
    return Piece.of(
        name,
        List.of(
            Edge.onFold(Curve.line(flared.edge("fold").curve().start(), foot)),
            Edge.of("hem", Curve.line(foot, side)),
            flared.edge("side"),
            flared.edge("armhole"),
            flared.edge("shoulder"),
            flared.edge("neck")));
  }

  @Test
  void anOutlineThatCrossesItselfIsAProblemAndNotAnException() {
    List<Point> bow =
        List.of(
            new Point(0, 0),
            new Point(300, 0),
            new Point(300, 200),
            new Point(250, -50),
            new Point(200, 200),
            new Point(0, 200));
    Piece piece =
        Piece.of(
            "pocket",
            List.of(
                Edge.of("foot", bow.subList(0, 2)),
                Edge.of("rim", bow.subList(1, 6)),
                Edge.of("left", List.of(bow.get(5), bow.get(0)))));
    Finding finding = findings(Pattern.of("apron", List.of(piece), List.of())).get(0);
    assertEquals("outline.crosses-itself", finding.id());
    assertEquals(Severity.PROBLEM, finding.severity());
    assertTrue(finding.reason().startsWith("foot crosses rim at x "), finding.reason());
    assertEquals(
        "Redraw foot and rim so that the outline does not cross.",
        finding.remedies().get(0).text());
  }
}
