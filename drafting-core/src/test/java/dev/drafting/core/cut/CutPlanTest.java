package dev.drafting.core.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.CornerTreatment;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.LineRole;
import dev.drafting.core.pattern.Notch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.SeamFinish;
import dev.drafting.core.pattern.SharedPaper;
import dev.drafting.core.pattern.Vests;
import java.util.List;
import org.junit.jupiter.api.Test;

class CutPlanTest {

  /** Half a skirt on the fold, 200 mm wide at the hem, its side leaning in at 80 degrees. */
  private static Piece skirt(Finish hem) {
    double lean = 300 / Math.tan(Math.toRadians(80));
    Point a = new Point(0, 0);
    Point b = new Point(200, 0);
    Point c = new Point(200 - lean, 300);
    Point d = new Point(0, 300);
    return Piece.of(
        "skirt",
        List.of(
            Edge.of("hem", Curve.line(a, b)).withFinish(hem),
            Edge.of("side", Curve.line(b, c)).withFinish(SeamFinish.of(Length.mm(7))),
            Edge.of("waist", Curve.line(c, d)),
            Edge.onFold(Curve.line(d, a))));
  }

  private static CutPiece cut(Piece piece) {
    return CutPlan.of(Pattern.of("garment", List.of(piece), List.of())).pieces().get(0);
  }

  private static DerivedLine line(CutPiece cut, String label) {
    return cut.lines().stream().filter(l -> l.label().equals(label)).findFirst().orElseThrow();
  }

  /** Two edges in one line: the join line of each ends where that of the other starts. */
  @Test
  void joinLinesEndWhereTheEdgeGoesStraightOn() {
    SeamFinish seam = SeamFinish.of(Length.mm(7));
    Piece half =
        Piece.of(
            "half",
            List.of(
                Edge.of("hem", Curve.line(new Point(0, 0), new Point(200, 0))).withFinish(seam),
                Edge.of("side", Curve.line(new Point(200, 0), new Point(200, 120)))
                    .withFinish(seam),
                Edge.of("lap", Curve.line(new Point(200, 120), new Point(200, 300)))
                    .withFinish(seam),
                Edge.of("top", Curve.line(new Point(200, 300), new Point(0, 300))).withFinish(seam),
                Edge.onFold(Curve.line(new Point(0, 300), new Point(0, 0)))));
    CutPiece cut = cut(half);
    assertEquals(120 + 7, line(cut, "side: join line").curve().length().toMm(), 1e-9);
    assertEquals(180 + 7, line(cut, "lap: join line").curve().length().toMm(), 1e-9);
  }

  /** The top bends so tightly before the fold that its parallel turns back there. */
  @Test
  void theCutLineStaysOnItsSideOfTheFold() {
    Point corner = new Point(200, 300);
    Point bend = new Point(21.6, 302.7);
    Point centre = new Point(0, 300);
    Curve top =
        Curve.of(
            new Cubic(corner, new Point(140, 300), new Point(81.6, 302.7), bend),
            new Cubic(bend, new Point(14.4, 302.7), new Point(7.2, 300), centre));
    Piece half =
        Piece.of(
            "half",
            List.of(
                Edge.of("hem", Curve.line(new Point(0, 0), new Point(200, 0))),
                Edge.of("side", Curve.line(new Point(200, 0), corner)),
                Edge.of("top", top).withFinish(SeamFinish.of(Length.mm(52))),
                Edge.onFold(Curve.line(centre, new Point(0, 0)))));
    CutPiece cut = cut(half);
    assertEquals(0, cut.cutLine().bounds().minX(), 1e-9);
    double upper =
        cut.cutLine().segments().stream()
            .filter(segment -> Math.abs(segment.start().x()) < 1e-9)
            .mapToDouble(segment -> segment.start().y())
            .max()
            .orElseThrow();
    assertEquals(52, top.nearest(new Point(0, upper)).distance().toMm(), 0.01);
  }

  @Test
  void aVestIsReadyToBeCut() {
    CutPlan plan = CutPlan.of(Finishes.vest());
    assertEquals("vest: paper front, back; 0 findings", plan.toString());
    CutPiece front = plan.pieces().get(0);
    assertEquals(
        List.of(
            "side: join line",
            "armhole: join line",
            "shoulder: join line",
            "neck: join line",
            "fold of the cloth",
            "hem: fold",
            "hem: fold",
            "hem: topstitching"),
        front.lines().stream().map(DerivedLine::label).toList());
    assertEquals(
        "{hem=28 mm, side=7 mm, armhole=0 mm, shoulder=7 mm, neck=7 mm}",
        front.allowances().toString());
    assertEquals(
        List.of(
            "cut 1 on the fold from body cloth",
            "cloth doubled, right side inside",
            "allowances included: hem 28 mm; side, shoulder, neck 7 mm; armhole none"),
        front.labels());
    assertEquals(Angle.degrees(90), front.grain());
    assertEquals(Finishes.vest().piece("front").outline(), front.outline());
    assertEquals(
        "front: 1 from body cloth, 633 x 497 mm, cut 1 on the fold",
        plan.cutList().get(0).toString());
  }

  @Test
  void everyLineLiesAtItsDistanceAndRunsFromCutEdgeToCutEdge() {
    for (CutPiece cut : CutPlan.of(Finishes.vest()).pieces()) {
      for (DerivedLine line : cut.lines()) {
        Curve curve = line.curve();
        for (Point end : List.of(curve.start(), curve.end())) {
          assertEquals(0, cut.cutLine().nearest(end).distance().toMm(), 1e-6, line.toString());
        }
        Edge edge = cut.piece().edge(line.edge());
        Point middle = curve.pointAt(curve.length().times(0.5));
        List<Double> distances =
            edge.finish().profile().lines().stream()
                .filter(l -> l.role() == line.role())
                .map(l -> Math.abs(l.distance().toMm()))
                .toList();
        double found = edge.curve().nearest(middle).distance().toMm();
        assertTrue(
            distances.stream().anyMatch(d -> Math.abs(d - found) < 0.01),
            line + " at " + found + ", wanted " + distances);
      }
    }
  }

  @Test
  void theFoldStaysStraightOnXZero() {
    for (CutPiece cut : CutPlan.of(Finishes.vest()).pieces()) {
      assertEquals(0, cut.cutLine().bounds().minX(), 1e-9);
      Curve fold = line(cut, "fold of the cloth").curve();
      assertEquals(0, fold.bounds().maxX(), 1e-9);
      assertEquals(0, cut.cutLine().nearest(fold.end()).distance().toMm(), 1e-9);
      double foot = cut.piece().edge("fold").curve().end().y();
      assertEquals(foot - 28, fold.end().y(), 1e-6, "the hem is square to the fold");
    }
  }

  @Test
  void aTurnedHemIsMirroredAtItsFold() {
    // CV-20, mathematics: at 80 degrees and a depth of 20 mm the side moves in by 20/tan 80 = 3.527
    double shift = 20 / Math.tan(Math.toRadians(80));
    assertEquals(3.527, shift, 0.0005);
    CutPiece cut = cut(skirt(Finishes.hemOnce(20)));
    Curve side = line(cut, "side: join line").curve();
    assertEquals(200 - shift, side.start().x(), 1e-6);
    assertEquals(-20, side.start().y(), 1e-6);
    double beyond = 7 / Math.sin(Math.toRadians(80)); // the allowance, measured along the hem
    Point corner = new Point(200 - shift + beyond, -20);
    assertEquals(0, cut.cutLine().nearest(corner).distance().toMm(), 1e-6);
    assertEquals(200 + beyond, line(cut, "hem: fold").length().toMm(), 1e-6);
  }

  @Test
  void aHemTurnedTwiceIsMirroredTwice() {
    CutPiece cut = cut(skirt(Finishes.hemTwice(8, 20)));
    double beyond = 7 / Math.sin(Math.toRadians(80));
    double perMm = 1 / Math.tan(Math.toRadians(80));
    // folded at 20 mm as well: from there the side leans out again
    Point corner = new Point(200 - 20 * perMm + 8 * perMm + beyond, -28);
    assertEquals(0, cut.cutLine().nearest(corner).distance().toMm(), 1e-6);
    List<Double> folds =
        cut.lines().stream()
            .filter(l -> l.label().equals("hem: fold"))
            .map(l -> l.curve().end().y())
            .toList();
    assertEquals(0, folds.get(0), 1e-9);
    assertEquals(-20, folds.get(1), 1e-9);
    assertEquals(18, line(cut, "hem: topstitching").curve().end().y(), 1e-9);
  }

  @Test
  void everyLineTellsItsLengthBesideThatOfItsEdge() {
    CutPiece cut = cut(skirt(Finishes.hemOnce(20)));
    double beyond = 7 / Math.sin(Math.toRadians(80));
    DerivedLine fold = line(cut, "hem: fold");
    assertEquals(200, fold.edgeLength().toMm(), 1e-9);
    assertEquals(200 + beyond, fold.length().toMm(), 1e-6);
    assertEquals(beyond, fold.longerBy().toMm(), 1e-6);
    assertEquals("hem: fold, 207.1 mm beside 200 mm of edge", fold.toString());
    DerivedLine stitched = line(cut, "hem: topstitching");
    double up = stitched.curve().end().y();
    double narrower = up / Math.tan(Math.toRadians(80));
    assertEquals(beyond - narrower, stitched.longerBy().toMm(), 1e-6);
  }

  @Test
  void aCornerMayBeTreatedOtherwise() {
    Piece plain = skirt(Finishes.hemOnce(20));
    Piece mitred = plain.withCorner("hem", "side", CornerTreatment.mitre());
    double beyond = 7 / Math.sin(Math.toRadians(80));
    Point straightOn = new Point(200 + 20 / Math.tan(Math.toRadians(80)) + beyond, -20);
    assertEquals(0, cut(mitred).cutLine().nearest(straightOn).distance().toMm(), 1e-6);
    assertTrue(cut(plain).cutLine().nearest(straightOn).distance().toMm() > 6);
  }

  @Test
  void theFoldOfABindingOutsideTheClothIsNotDrawn() {
    CutPiece front = CutPlan.of(Finishes.vest()).pieces().get(0);
    assertTrue(
        front.lines().stream()
            .noneMatch(l -> l.edge().equals("armhole") && l.role() == LineRole.FOLD));
  }

  @Test
  void aNotchIsASlitAtTheCutLine() {
    // 3 mm at most and half the allowance at most: common practice, no source
    Piece piece = skirt(Finishes.hemOnce(20)).withNotch(Notch.of("side", Length.mm(100), "hip"));
    CutNotch notch = cut(piece).notches().get(0);
    assertEquals(Length.mm(3), notch.depth());
    assertEquals(0, cut(piece).cutLine().nearest(notch.at()).distance().toMm(), 1e-9);
    Point on = piece.edge("side").curve().pointAt(Length.mm(100));
    assertEquals(7, notch.at().distanceTo(on).toMm(), 1e-9);
    assertEquals(0, notch.at().plus(notch.inward().times(7)).distanceTo(on).toMm(), 1e-9);
    Piece narrow = piece.withFinish("side", SeamFinish.of(Length.mm(4)));
    assertEquals(Length.mm(2), cut(narrow).notches().get(0).depth());
    Piece raw = piece.withNotch(Notch.of("waist", Length.mm(40), "quarter"));
    assertEquals(Length.ZERO, cut(raw).notches().get(1).depth());
  }

  @Test
  void twoPiecesMayShareOnePaper() {
    Pattern vest =
        Finishes.vest().withSharedPaper(SharedPaper.of("front and back", "back", "front"));
    CutPlan plan = CutPlan.of(vest);
    assertEquals(List.of("front and back"), plan.pieces().stream().map(CutPiece::name).toList());
    assertEquals(List.of("front", "back"), plan.cutList().stream().map(CutItem::name).toList());
    assertEquals(List.of(), plan.findings());
    CutPiece paper = plan.pieces().get(0);
    CutPiece front = plan.clothPieces().get(0);
    CutPiece back = plan.clothPieces().get(1);
    assertEquals(back.cutLine(), paper.cutLine());
    assertEquals(
        List.of("neck of front: transfer", "hem of front: transfer"),
        paper.markings().stream()
            .map(m -> m.label())
            .sorted(java.util.Comparator.reverseOrder())
            .toList());
    double marked = paper.markings().stream().mapToDouble(m -> m.curve().length().toMm()).sum();
    double own = front.offset().length("neck").plus(front.offset().length("hem")).toMm();
    assertTrue(marked >= own - 0.01, marked + " of " + own);
    assertTrue(paper.labels().contains("back: cut 1 on the fold from body cloth"));
    assertTrue(paper.labels().contains("front: cut 1 on the fold from body cloth"));
    assertEquals(1, paper.notches().size(), "the notch of both sides is cut once");
  }

  @Test
  void aPaperThatIsTooSmallIsFound() {
    Pattern vest = Finishes.vest().withSharedPaper(SharedPaper.of("both", "front", "back"));
    Finding finding = CutPlan.of(vest).findings().get(0);
    assertEquals("paper.too-small", finding.id());
    assertEquals(1, finding.remedies().size());
  }

  @Test
  void anAllowanceThatDoesNotFitIntoACurveIsFound() {
    // an inner corner rounded with a radius of 5 mm: there is no parallel further out than that
    Arc inner = Arc.of(new Point(105, 55), Length.mm(5), Angle.degrees(-90), Angle.degrees(-90));
    Curve top =
        Curve.of(
            List.of(
                new Line(new Point(200, 50), inner.start()),
                inner,
                new Line(inner.end(), new Point(100, 100))));
    Piece pocket =
        Piece.of(
            "pocket",
            List.of(
                Edge.of("foot", List.of(new Point(0, 0), new Point(200, 0))),
                Edge.of("right", List.of(new Point(200, 0), new Point(200, 50))),
                Edge.of("top", top).withFinish(SeamFinish.of(Length.mm(7))),
                Edge.of("rim", List.of(new Point(100, 100), new Point(0, 100))),
                Edge.of("left", List.of(new Point(0, 100), new Point(0, 0)))));
    List<Finding> findings = CutPlan.of(Pattern.of("apron", List.of(pocket), List.of())).findings();
    assertEquals(1, findings.size());
    assertEquals("allowance.too-wide", findings.get(0).id());
    assertEquals("pocket / top", findings.get(0).place().toString());
    assertEquals(
        "Let the cut line lie 4 mm from the finished edge at most.",
        findings.get(0).remedies().get(0).text());
    Piece narrower = pocket.withFinish("top", SeamFinish.of(Length.mm(4)));
    assertEquals(
        List.of(), CutPlan.of(Pattern.of("apron", List.of(narrower), List.of())).findings());
  }

  @Test
  void aSewnEdgeWithoutAnAllowanceIsFound() {
    List<Finding> findings = CutPlan.of(Vests.plain()).findings();
    assertEquals(4, findings.size());
    assertEquals("seam.no-allowance", findings.get(0).id());
    assertEquals("front / shoulder", findings.get(0).place().toString());
    assertFalse(findings.get(0).remedies().isEmpty());
  }

  @Test
  void apieceWithoutACutLineIsAFindingAndNotAnException() {
    Piece narrow =
        Piece.of(
            "loop",
            List.of(
                Edge.of("foot", List.of(new Point(0, 0), new Point(200, 0))),
                Edge.of("rim", List.of(new Point(200, 0), new Point(200, 8), new Point(0, 8)))
                    .withFinish(Finishes.foldedBand(20, 5)),
                Edge.of("left", List.of(new Point(0, 8), new Point(0, 0)))));
    CutPlan plan = CutPlan.of(Pattern.of("apron", List.of(narrow), List.of()));
    assertEquals(List.of(), plan.pieces());
    assertEquals("piece.cannot-be-cut", plan.findings().get(0).id());
  }

  @Test
  void theCutListMeasuresAlongTheGrain() {
    Piece whole = skirt(Finishes.hemOnce(20)).unfolded();
    CutItem upright = CutItem.ofPiece(cut(whole));
    CutItem across = CutItem.ofPiece(cut(whole.withGrain(Angle.ZERO)));
    assertEquals(320, upright.length().toMm(), 1e-6);
    assertEquals(upright.length().toMm(), across.width().toMm(), 1e-6);
    assertEquals(upright.width().toMm(), across.length().toMm(), 1e-6);
    CutItem pair = CutItem.ofPiece(cut(whole.withCutting(Cutting.pairs(1)).withCloth("rib")));
    assertEquals(2, pair.count());
    assertTrue(pair.toString().startsWith("skirt: 2 from rib cloth, 320 x "), pair.toString());
    CutItem onFold = CutItem.ofPiece(cut(skirt(Finishes.hemOnce(20))));
    assertEquals(upright.width().toMm(), onFold.width().toMm(), 1e-6);
  }

  @Test
  void plansAreValues() {
    Pattern vest = Finishes.vest().withVersion("2");
    CutPlan plan = CutPlan.of(vest);
    CutPlan copy = SerialCopy.of(plan);
    assertEquals(plan, copy);
    assertEquals(plan.hashCode(), copy.hashCode());
    assertEquals(plan.pieces(), copy.pieces());
    assertEquals(plan.pieces().get(0).hashCode(), copy.pieces().get(0).hashCode());
    assertEquals(plan.cutList(), copy.cutList());
    assertEquals(plan.cutList().hashCode(), copy.cutList().hashCode());
    assertNotEquals(plan, CutPlan.of(Finishes.vest()));
    assertNotEquals(plan.pieces().get(0), plan.pieces().get(1));
    assertTrue(plan.pieces().get(0).labels().contains("version 2"));
    assertTrue(plan.pieces().get(0).toString().startsWith("front: cut line "));
    assertNotEquals(
        plan.pieces(),
        CutPlan.of(vest.withFinish(EdgeRef.parse("front neck"), Finishes.foldedBand(20, 7)))
            .pieces());
  }
}
