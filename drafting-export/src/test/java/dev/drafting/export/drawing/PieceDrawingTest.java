package dev.drafting.export.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.cut.CutPlan;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.SeamFinish;
import dev.drafting.core.template.Dimensions;
import dev.drafting.core.template.Templates;
import dev.drafting.export.TestGarment;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class PieceDrawingTest {
  private static Group front() {
    return drawn(CutPlan.of(TestGarment.pattern()).pieces().get(0));
  }

  private static Group drawn(CutPiece piece) {
    return PieceDrawing.of(piece).withGarment("Boathouse vest").withFabric("jersey").group();
  }

  private static String words(Group group) {
    return group.labels().stream().map(Label::text).collect(Collectors.joining(" "));
  }

  @Test
  void thePieceSaysWhatTheMakerMustKnow() {
    String words = words(front()).toLowerCase(Locale.ROOT);
    for (String expected :
        List.of(
            "front",
            "boathouse vest",
            "fabric: jersey",
            "cut 1 on the fold",
            "right side",
            "allowances included",
            "side, shoulder, neck 7 mm",
            "version 3",
            "fold of the cloth",
            "grain",
            "greatest stretch",
            "side join line",
            "waist")) {
      assertTrue(words.contains(expected), expected + " is not in: " + words);
    }
  }

  /**
   * Hem 20 mm; at the neck the cloth ends where the band is sewn on, less its allowance: 13 - 7.
   */
  @Test
  void theEdgeOnTheFoldIsFoldedAndNotCut() {
    Group front = front();
    Stroke fold =
        front.strokes(StrokeStyle.FOLD).stream()
            .filter(s -> s.name().equals("FOLD OF THE CLOTH"))
            .findFirst()
            .orElseThrow();
    assertEquals(new Box(0, -20, 0, 530 - 6), rounded(fold.bounds()));
    Curve cut = front.strokes(StrokeStyle.CUT_LINE).get(0).curve();
    assertFalse(cut.isClosed());
    assertEquals(0, cut.start().x(), 1e-9);
    assertEquals(0, cut.end().x(), 1e-9);
    assertEquals(1, front.strokes(StrokeStyle.CUT_LINE).size());
  }

  private static Box rounded(Box box) {
    return new Box(
        Math.rint(box.minX()), Math.rint(box.minY()), Math.rint(box.maxX()), Math.rint(box.maxY()));
  }

  @Test
  void everyRoleHasItsLineWithTheNameOfItsEdge() {
    Group front = front();
    assertEquals(
        List.of("armhole", "neck", "shoulder", "side"),
        front.strokes(StrokeStyle.JOIN_LINE).stream().map(Stroke::name).sorted().toList());
    assertTrue(front.strokes(StrokeStyle.FOLD).stream().anyMatch(s -> s.name().equals("hem")));
    assertFalse(front.strokes(StrokeStyle.TOPSTITCH).isEmpty());
    assertEquals("waist", front.strokes(StrokeStyle.NOTCH).get(0).name());
    assertTrue(front.strokes(StrokeStyle.NOTCH).get(0).curve().length().toMm() <= 7);
  }

  @Test
  void theGrainArrowIsUprightAndCrossedByTheStretch() {
    List<Stroke> arrows = front().strokes(StrokeStyle.GRAIN);
    Box grain = arrows.get(0).bounds();
    Box stretch = arrows.get(2).bounds();
    assertEquals(0, grain.width().toMm(), 1e-9);
    assertEquals(0, stretch.height().toMm(), 1e-9);
    assertTrue(grain.height().toMm() > 200);
    assertTrue(stretch.minX() < grain.minX() && grain.minX() < stretch.maxX());
  }

  /** Buttons and their holes, in strips so narrow that not all names find room. */
  @Test
  void theNameOfAMarkStandsAboveItAndKeepsOffTheArrows() {
    Dimensions henley = Dimensions.of().withChoice("neck", "placket");
    Pattern pattern = Templates.installed().get("childs-t-shirt").pattern(henley);
    for (String strip : List.of("front overlap", "front underlap")) {
      Group group =
          drawn(
              CutPlan.of(pattern).pieces().stream()
                  .filter(piece -> piece.name().equals(strip))
                  .findFirst()
                  .orElseThrow());
      List<Stroke> marks = group.strokes(StrokeStyle.MARKING);
      assertEquals(3, marks.size());
      for (Stroke mark : marks) {
        Box name =
            group.labels().stream()
                .filter(label -> label.text().equals(mark.name()))
                .findFirst()
                .orElseThrow()
                .bounds();
        assertTrue(name.minY() > mark.bounds().maxY(), mark.name());
        assertTrue(name.minY() < mark.bounds().maxY() + 5, mark.name());
        assertEquals(mark.bounds().centre().x(), name.centre().x(), 2);
        for (Stroke arrow : group.strokes(StrokeStyle.GRAIN)) {
          assertFalse(overlap(arrow.bounds(), name), strip + ", " + mark.name());
        }
      }
    }
  }

  @Test
  void textsLieInsideThePieceAndApart() {
    Group front = front();
    List<Box> boxes = front.labels().stream().map(Label::bounds).toList();
    Box piece = front.strokes(StrokeStyle.CUT_LINE).get(0).bounds();
    for (int i = 0; i < boxes.size(); i++) {
      assertEquals(piece, piece.union(boxes.get(i)), front.labels().get(i).text());
      for (int j = 0; j < i; j++) {
        assertFalse(overlap(boxes.get(i), boxes.get(j)), front.labels().get(i).text());
      }
    }
  }

  /** Names of lines are not taken for a line of the words: they keep 4 mm off. */
  @Test
  void namesOfLinesKeepOffTheWordsOfThePiece() {
    for (Group piece : DraftDrawing.of(TestGarment.vest("Boathouse vest")).groups()) {
      List<Label> labels = piece.labels();
      Label title =
          labels.stream().filter(l -> l.text().equals(piece.name())).findFirst().orElseThrow();
      List<Label> words = labels.stream().filter(l -> l.at().x() == title.at().x()).toList();
      for (Label name : labels) {
        for (Label word : words) {
          assertTrue(
              words.contains(name) || !overlap(name.bounds(), word.bounds().widened(Length.mm(4))),
              name + " beside " + word);
        }
      }
    }
  }

  private static boolean overlap(Box a, Box b) {
    return a.minX() < b.maxX() && b.minX() < a.maxX() && a.minY() < b.maxY() && b.minY() < a.maxY();
  }

  @Test
  void findingsAtEdgesAndCornersAreMarked() {
    CutPiece piece = CutPlan.of(TestGarment.pattern()).pieces().get(0);
    Group marked =
        PieceDrawing.of(piece)
            .withFindings(
                List.of(
                    Finding.warning("test", Place.edge("front", "hem"), "too wide"),
                    Finding.warning("test", Place.edge("front", "hem"), "twice"),
                    Finding.warning("test", Place.corner("front", "hem", "side"), "not smooth"),
                    Finding.warning("test", Place.edge("back", "hem"), "elsewhere"),
                    Finding.warning("test", Place.draft(), "everywhere")))
            .group();
    List<Stroke> marks = marked.strokes(StrokeStyle.FINDING);
    assertEquals(List.of("hem", "hem and side"), marks.stream().map(Stroke::name).toList());
    assertEquals(new Box(0, 0, 230, 0), marks.get(0).bounds());
    assertEquals(new Point(230, 0), marks.get(1).bounds().centre());
    assertEquals(
        List.of("look at hem", "look at hem and side"),
        marked.labels().stream().filter(Label::isFinding).map(Label::text).toList());
  }

  /** A patch of 40 mm has no room for its words; they stand beside it and are not lost. */
  @Test
  void aSmallPieceHasItsWordsBesideIt() {
    Piece patch =
        Piece.of(
            "patch",
            List.of(
                edge("below", 0, 0, 40, 0),
                edge("right", 40, 0, 40, 40),
                edge("above", 40, 40, 0, 40),
                edge("left", 0, 40, 0, 0)));
    Group drawn = drawn(CutPlan.of(Pattern.of("bag", List.of(patch), List.of())).pieces().get(0));
    assertTrue(words(drawn).contains("Fabric: jersey"), words(drawn));
    Stroke cut = drawn.strokes(StrokeStyle.CUT_LINE).get(0);
    assertTrue(cut.curve().isClosed());
    assertTrue(drawn.bounds().maxX() > cut.bounds().maxX());
  }

  private static Edge edge(String name, double x1, double y1, double x2, double y2) {
    return Edge.of(name, Curve.line(new Point(x1, y1), new Point(x2, y2)))
        .withFinish(SeamFinish.of(Length.mm(6)));
  }
}
