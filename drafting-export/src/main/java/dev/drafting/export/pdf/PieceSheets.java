package dev.drafting.export.pdf;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.drawing.Stroke;
import dev.drafting.export.drawing.StrokeStyle;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The sheets of one piece: paper upright or across, whichever needs fewer sheets, and those sheets
 * left out on which there is neither a line nor the inside of an outline.
 */
final class PieceSheets {
  private static final Length FLATNESS = Length.mm(0.1);

  /** White paper around the piece, so that no line runs along the edge of a sheet. */
  private static final double AROUND = 2;

  private final Group piece;
  private final boolean across;
  private final Tiling tiling;
  private final Set<Cell> cells;

  private PieceSheets(Group piece, boolean across, Tiling tiling, Set<Cell> cells) {
    this.piece = piece;
    this.across = across;
    this.tiling = tiling;
    this.cells = cells;
  }

  static PieceSheets of(Group piece, Paper paper, double margin, double overlap) {
    double narrow = paper.width().toMm() - 2 * margin;
    double tall = paper.height().toMm() - 2 * margin;
    List<Path2D> shapes = piece.elements().stream().map(PieceSheets::shape).toList();
    Box box = piece.bounds();
    Box room =
        new Box(box.minX() - AROUND, box.minY() - AROUND, box.maxX() + AROUND, box.maxY() + AROUND);
    Tiling uprightTiling = new Tiling(room, narrow, tall, overlap);
    Tiling acrossTiling = new Tiling(room, tall, narrow, overlap);
    Set<Cell> uprightCells = used(uprightTiling, shapes);
    Set<Cell> acrossCells = used(acrossTiling, shapes);
    return acrossCells.size() < uprightCells.size()
        ? laidOut(piece, true, acrossTiling, acrossCells)
        : laidOut(piece, false, uprightTiling, uprightCells);
  }

  private static PieceSheets laidOut(Group piece, boolean across, Tiling tiling, Set<Cell> cells) {
    Group readable = SheetTexts.offJoints(piece, tiling, List.copyOf(cells));
    return new PieceSheets(readable, across, tiling, cells);
  }

  private static Set<Cell> used(Tiling tiling, List<Path2D> shapes) {
    Set<Cell> cells = new LinkedHashSet<>();
    for (int row = 0; row < tiling.rows(); row++) {
      for (int column = 0; column < tiling.columns(); column++) {
        Cell cell = new Cell(row, column);
        Box box = tiling.window(cell);
        if (shapes.stream().anyMatch(shape -> touches(shape, box))) {
          cells.add(cell);
        }
      }
    }
    return cells;
  }

  private static boolean touches(Path2D shape, Box box) {
    return shape.intersects(box.minX(), box.minY(), box.width().toMm(), box.height().toMm());
  }

  /** A cut line is filled, closed by the fold if it is open; other lines are only lines. */
  private static Path2D shape(Element element) {
    Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
    if (element instanceof Label label) {
      Box box = label.bounds();
      double width = box.width().toMm();
      double height = box.height().toMm();
      path.append(new Rectangle2D.Double(box.minX(), box.minY(), width, height), false);
    } else if (element instanceof Stroke stroke) {
      Polyline points = stroke.curve().flatten(FLATNESS);
      path.moveTo(points.x(0), points.y(0));
      for (int i = 1; i < points.size(); i++) {
        path.lineTo(points.x(i), points.y(i));
      }
      if (stroke.style() != StrokeStyle.CUT_LINE) {
        for (int i = points.size() - 2; i >= 0; i--) {
          path.lineTo(points.x(i), points.y(i));
        }
      }
      path.closePath();
    }
    return path;
  }

  /** Its texts where they can be read on one sheet each. */
  Group piece() {
    return piece;
  }

  /** The lines, and the texts that are read on this sheet and not on the one laid on it. */
  List<Element> on(Cell cell) {
    List<Element> elements = new ArrayList<>(piece.strokes());
    for (Label label : piece.labels()) {
      if (shows(cell, label) || cells.stream().noneMatch(other -> shows(other, label))) {
        elements.add(label);
      }
    }
    return elements;
  }

  private boolean shows(Cell cell, Label label) {
    Box sheet = tiling.visible(cell);
    return sheet.union(label.bounds()).equals(sheet);
  }

  /** Whether the paper lies across (its longer side horizontal). */
  boolean across() {
    return across;
  }

  Tiling tiling() {
    return tiling;
  }

  boolean has(Cell cell) {
    return cells.contains(cell);
  }

  /** The sheets in the order of printing: row by row from the top. */
  List<Cell> cells() {
    return new ArrayList<>(cells);
  }
}
