package dev.drafting.core.lay;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.JtsBridge;
import dev.drafting.core.measure.Length;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/** Finds the largest empty rectangle of a lay, and then the largest of what is left. */
final class Remnants {
  private static final double CELL_MM = 20;
  private static final Length FLAT = Length.mm(0.1);
  private static final GeometryFactory JTS = new GeometryFactory();

  private final int least;

  /** By columns along the cloth and rows across it: nothing lies there. */
  private final boolean[][] free;

  private final int rows;

  Remnants(LayPlan plan, Length least) {
    if (least.toMm() < CELL_MM) {
      throw DraftingException.of("a remnant so small is not worth keeping")
          .value(least)
          .accepted("20 mm or more");
    }
    this.least = (int) Math.ceil(least.toMm() / CELL_MM);
    double whole = plan.cloth().length().orElse(plan.length()).max(plan.length()).toMm();
    double onTable = plan.cloth().fold() == Cloth.Fold.CROSSWISE ? whole / 2 : whole;
    this.rows = (int) (plan.cloth().tableWidth().toMm() / CELL_MM);
    this.free = new boolean[(int) (onTable / CELL_MM)][rows];
    for (boolean[] column : free) {
      Arrays.fill(column, true);
    }
    plan.pieces().forEach(piece -> take(JtsBridge.toPolygon(piece.cutLine(), FLAT)));
    for (Cloth.Flaw flaw : plan.cloth().flaws()) {
      double x = flaw.fromEnd().toMm();
      double y = flaw.fromSide().toMm();
      take(JTS.toGeometry(new Envelope(x, x + flaw.along().toMm(), y, y + flaw.across().toMm())));
    }
  }

  private void take(Geometry shape) {
    PreparedGeometry prepared = PreparedGeometryFactory.prepare(shape);
    Envelope box = shape.getEnvelopeInternal();
    int lastColumn = Math.min(free.length - 1, (int) (box.getMaxX() / CELL_MM));
    int lastRow = Math.min(rows - 1, (int) (box.getMaxY() / CELL_MM));
    for (int c = Math.max(0, (int) (box.getMinX() / CELL_MM)); c <= lastColumn; c++) {
      for (int r = Math.max(0, (int) (box.getMinY() / CELL_MM)); r <= lastRow; r++) {
        Envelope cell =
            new Envelope(c * CELL_MM, (c + 1) * CELL_MM, r * CELL_MM, (r + 1) * CELL_MM);
        free[c][r] &= !prepared.intersects(JTS.toGeometry(cell));
      }
    }
  }

  /** Cells from a column and a row on. */
  private record Cells(int column, int row, int columns, int rows) {
    int area() {
      return columns * rows;
    }
  }

  List<Remnant> all() {
    List<Remnant> found = new ArrayList<>();
    Cells largest = largest();
    while (largest.area() > 0) {
      found.add(
          new Remnant(
              Length.mm(largest.column * CELL_MM),
              Length.mm(largest.row * CELL_MM),
              Length.mm(largest.columns * CELL_MM),
              Length.mm(largest.rows * CELL_MM)));
      for (int c = largest.column; c < largest.column + largest.columns; c++) {
        Arrays.fill(free[c], largest.row, largest.row + largest.rows, false);
      }
      largest = largest();
    }
    return List.copyOf(found);
  }

  /** The largest rectangle under the free runs that end in each column, by a stack. */
  private Cells largest() {
    Cells largest = new Cells(0, 0, 0, 0);
    int[] run = new int[rows + 1];
    for (int c = 0; c < free.length; c++) {
      for (int r = 0; r < rows; r++) {
        run[r] = free[c][r] ? run[r] + 1 : 0;
      }
      Deque<Integer> open = new ArrayDeque<>();
      for (int r = 0; r <= rows; r++) {
        while (!open.isEmpty() && run[open.peek()] >= run[r]) {
          int columns = run[open.pop()];
          int from = open.isEmpty() ? 0 : open.peek() + 1;
          Cells cells = new Cells(c + 1 - columns, from, columns, r - from);
          boolean kept = cells.columns >= least && cells.rows >= least;
          largest = kept && cells.area() > largest.area() ? cells : largest;
        }
        open.push(r);
      }
    }
    return largest;
  }
}
