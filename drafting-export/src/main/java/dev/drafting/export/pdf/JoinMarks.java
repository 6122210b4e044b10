package dev.drafting.export.pdf;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Anchor;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.drawing.StrokeStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The numbered marks of a piece: a triangle on either sheet, base to base on the edge where one
 * sheet is laid on the other. Every pair has a number of its own within the piece.
 */
final class JoinMarks {
  private static final double HALF_BASE = 5;
  private static final double REACH = 8;
  private static final Length FIGURES = Length.mm(2.2);

  private final Map<Cell, List<Element>> marks = new LinkedHashMap<>();
  private int next = 1;

  JoinMarks(PieceSheets sheets) {
    for (Cell cell : sheets.cells()) {
      Box window = sheets.tiling().window(cell);
      double overlap = sheets.tiling().overlap();
      if (sheets.has(cell.right())) {
        double x = window.maxX() - overlap;
        for (double share : new double[] {0.75, 0.25}) {
          double y = window.minY() + share * window.height().toMm();
          pair(cell, cell.right(), new Point(x, y), -1, 0);
        }
      }
      if (sheets.has(cell.below())) {
        double y = window.minY() + overlap;
        for (double share : new double[] {0.25, 0.75}) {
          double x = window.minX() + share * window.width().toMm();
          pair(cell, cell.below(), new Point(x, y), 0, 1);
        }
      }
    }
  }

  /** One half on the lower sheet, towards (dx, dy); the other on the sheet that is laid on. */
  private void pair(Cell lower, Cell upper, Point at, int dx, int dy) {
    half(lower, at, dx, dy);
    half(upper, at, -dx, -dy);
    next++;
  }

  private void half(Cell cell, Point at, int dx, int dy) {
    List<Element> list = marks.computeIfAbsent(cell, c -> new ArrayList<>());
    Point tip = new Point(at.x() + dx * REACH, at.y() + dy * REACH);
    Point one = new Point(at.x() - dy * HALF_BASE, at.y() + dx * HALF_BASE);
    Point other = new Point(at.x() + dy * HALF_BASE, at.y() - dx * HALF_BASE);
    list.add(Lines.closed(StrokeStyle.FRAME, "mark " + next, one, other, tip));
    double middle = FIGURES.toMm() / 2;
    Point base = new Point(at.x() + dx * REACH * 0.34, at.y() + dy * REACH * 0.34 - middle);
    list.add(Label.of(Integer.toString(next), base, FIGURES).withAnchor(Anchor.MIDDLE));
  }

  /** The halves on a sheet, in the drawing's millimetres. */
  List<Element> on(Cell cell) {
    return marks.getOrDefault(cell, List.of());
  }
}
