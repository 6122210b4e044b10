package dev.drafting.export.pdf;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Group;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Groups in rows on sheets of one width: the first one at the upper left of the first sheet, the
 * others from the tallest to the lowest, each in the first row that has room for it.
 */
final class Shelves {
  private static final double GAP = 10;
  private static final double ROUNDING = 1e-6;

  private final double width;
  private final double height;
  private final List<Sheet> sheets = new ArrayList<>();

  private Shelves(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /** One sheet; its groups lie right of x = 0 and under y = 0. */
  static final class Sheet {
    private final List<Row> rows = new ArrayList<>();
    private final List<Group> groups = new ArrayList<>();

    List<Group> groups() {
      return groups;
    }

    /** How far down the groups reach. */
    double height() {
      Row last = rows.get(rows.size() - 1);
      return last.top + last.height;
    }

    private double nextTop() {
      return rows.isEmpty() ? 0 : height() + GAP;
    }
  }

  private static final class Row {
    private final double top;
    private final double height;
    private double used;

    Row(double top, double height) {
      this.top = top;
      this.height = height;
    }
  }

  /**
   * Puts groups on sheets.
   *
   * @throws DraftingException if one of them is larger than a sheet
   */
  static List<Sheet> of(Group first, List<Group> others, double width, double height) {
    Shelves shelves = new Shelves(width, height);
    List<Group> byHeight = new ArrayList<>(others);
    byHeight.sort(Comparator.comparing((Group group) -> group.bounds().height()).reversed());
    Length tallest = byHeight.isEmpty() ? Length.ZERO : byHeight.get(0).bounds().height();
    shelves.add(first, tallest.max(first.bounds().height()).toMm());
    for (Group group : byHeight) {
      shelves.add(group, group.bounds().height().toMm());
    }
    return shelves.sheets;
  }

  private void add(Group group, double rowHeight) {
    Box box = group.bounds();
    double wide = box.width().toMm();
    double high = box.height().toMm();
    if (wide > width + ROUNDING || rowHeight > height + ROUNDING) {
      throw DraftingException.of("the piece does not go on one sheet")
          .at(group.name())
          .value(size(wide, high))
          .accepted("up to " + size(width, height) + "; or TiledPdf, which joins sheets");
    }
    for (Sheet sheet : sheets) {
      for (Row row : sheet.rows) {
        if (high <= row.height + ROUNDING && row.used + wide <= width + ROUNDING) {
          put(group, sheet, row);
          return;
        }
      }
      if (sheet.nextTop() + rowHeight <= height + ROUNDING) {
        put(group, sheet, newRow(sheet, rowHeight));
        return;
      }
    }
    Sheet sheet = new Sheet();
    sheets.add(sheet);
    put(group, sheet, newRow(sheet, rowHeight));
  }

  private static Row newRow(Sheet sheet, double height) {
    Row row = new Row(sheet.nextTop(), height);
    sheet.rows.add(row);
    return row;
  }

  private static void put(Group group, Sheet sheet, Row row) {
    Box box = group.bounds();
    Vector move = new Vector(row.used - box.minX(), -row.top - box.maxY());
    sheet.groups.add(group.map(Transform.translation(move)));
    row.used += box.width().toMm() + GAP;
  }

  private static String size(double width, double height) {
    return Math.round(width) + " x " + Math.round(height) + " mm";
  }
}
