package dev.drafting.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.export.TestDrawings;
import dev.drafting.export.TestGarment;
import dev.drafting.export.drawing.DraftDrawing;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.drawing.Stroke;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SheetTextsTest {
  private static final List<Paper> PAPERS =
      List.of(Paper.A4, Paper.LETTER, Paper.of("A3", Length.mm(297), Length.mm(420)));

  private static List<PieceSheets> sheetsOfTheVest() {
    Drawing vest = DraftDrawing.of(TestGarment.vest("Boathouse vest"));
    List<PieceSheets> all = new ArrayList<>();
    for (Paper paper : PAPERS) {
      vest.groups().forEach(piece -> all.add(PieceSheets.of(piece, paper, 10, 10)));
    }
    return all;
  }

  @Test
  void noTextIsCutByTheJointOfTwoSheets() {
    for (PieceSheets sheets : sheetsOfTheVest()) {
      for (Label label : sheets.piece().labels()) {
        Box box = label.bounds();
        assertTrue(
            sheets.cells().stream()
                .map(sheets.tiling()::visible)
                .anyMatch(sheet -> sheet.union(box).equals(sheet)),
            label.text());
      }
    }
  }

  @Test
  void noTextIsLostOrLiesOnAnother() {
    List<String> drawn = texts(DraftDrawing.of(TestGarment.vest("Boathouse vest")).groups().get(0));
    for (PieceSheets sheets : sheetsOfTheVest()) {
      List<Label> labels = sheets.piece().labels();
      if (sheets.piece().name().equals("front")) {
        assertEquals(drawn, texts(sheets.piece()));
      }
      for (int i = 0; i < labels.size(); i++) {
        for (int j = 0; j < i; j++) {
          assertTrue(apart(labels.get(i).bounds(), labels.get(j).bounds()), labels.get(i).text());
        }
      }
    }
  }

  private static List<String> texts(Group group) {
    return group.labels().stream().map(Label::text).sorted().toList();
  }

  @Test
  void marksLieOnNoText() {
    for (PieceSheets sheets : sheetsOfTheVest()) {
      JoinMarks marks = new JoinMarks(sheets);
      for (Cell cell : sheets.cells()) {
        for (Element mark : marks.on(cell)) {
          if (mark instanceof Stroke) {
            for (Label label : sheets.piece().labels()) {
              assertTrue(apart(mark.bounds(), label.bounds()), label.text());
            }
          }
        }
      }
    }
  }

  /** A block of three lines across the joint at the middle of two sheets moves as one. */
  @Test
  void linesOfABlockStayTogether() {
    List<Element> elements = new ArrayList<>(TestDrawings.rectangle("tall", 180, 500).elements());
    for (int line = 0; line < 3; line++) {
      elements.add(Label.of("line " + line, new Point(60, 256 - 6 * line), Length.mm(3.5)));
    }
    List<Label> moved =
        PieceSheets.of(new Group("tall", elements), Paper.A4, 10, 10).piece().labels();
    assertEquals(3, moved.size());
    assertTrue(Math.abs(moved.get(0).at().y() - 256) > 1, "it was moved");
    assertEquals(6, moved.get(0).at().y() - moved.get(1).at().y(), 1e-9);
    assertEquals(12, moved.get(0).at().y() - moved.get(2).at().y(), 1e-9);
    assertEquals(moved.get(0).at().x(), moved.get(2).at().x(), 0);
  }

  private static boolean apart(Box a, Box b) {
    return a.maxX() <= b.minX()
        || b.maxX() <= a.minX()
        || a.maxY() <= b.minY()
        || b.maxY() <= a.minY();
  }
}
