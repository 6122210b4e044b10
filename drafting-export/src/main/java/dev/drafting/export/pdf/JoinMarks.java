package dev.drafting.export.pdf;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Anchor;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.FreeRoom;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.drawing.StrokeStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The numbered marks of a piece: a triangle on either sheet, base to base on the edge where one
 * sheet is laid on the other, where they lie on nothing else. Every pair has a number of its own
 * within the piece.
 */
final class JoinMarks {
  private static final double HALF_BASE = 5;
  private static final double REACH = 8;
  private static final Length FIGURES = Length.mm(2.2);
  private static final Length ROUNDING = Length.mm(0.001);

  private final Map<Cell, List<Element>> marks = new LinkedHashMap<>();
  private final Group piece;
  private int next = 1;

  JoinMarks(PieceSheets sheets) {
    piece = sheets.piece();
    for (Cell cell : sheets.cells()) {
      Box window = sheets.tiling().window(cell);
      double overlap = sheets.tiling().overlap();
      if (sheets.has(cell.right())) {
        double x = window.maxX() - overlap;
        Box joint = new Box(x - REACH, window.minY() + overlap, x + REACH, window.maxY());
        for (Point at : free(joint, 2 * REACH, 2 * HALF_BASE, 0, -0.25)) {
          pair(cell, cell.right(), new Point(x, at.y()), -1, 0);
        }
      }
      if (sheets.has(cell.below())) {
        double y = window.minY() + overlap;
        Box joint = new Box(window.minX(), y - REACH, window.maxX() - overlap, y + REACH);
        for (Point at : free(joint, 2 * HALF_BASE, 2 * REACH, 0.25, 0)) {
          pair(cell, cell.below(), new Point(at.x(), y), 0, 1);
        }
      }
    }
  }

  /** Two places along a joint, best where it is quartered, for pairs of a width and a height. */
  private List<Point> free(Box joint, double width, double height, double dx, double dy) {
    FreeRoom room = FreeRoom.within(joint.widened(ROUNDING));
    piece.elements().forEach(room::take);
    List<Point> places = new ArrayList<>();
    for (int side = -1; side <= 1; side += 2) {
      Point best =
          new Point(
              joint.centre().x() + side * dx * joint.width().toMm(),
              joint.centre().y() + side * dy * joint.height().toMm());
      Point place =
          room.find(Length.mm(width), Length.mm(height), best)
              .map(corner -> new Point(corner.x() + width / 2, corner.y() + height / 2))
              .orElse(best);
      room.take(
          new Box(
              place.x() - width / 2,
              place.y() - height / 2,
              place.x() + width / 2,
              place.y() + height / 2));
      places.add(place);
    }
    return places;
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
