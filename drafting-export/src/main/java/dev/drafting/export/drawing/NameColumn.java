package dev.drafting.export.drawing;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * Names of points that lie close together, one under the other in a column right of them all, each
 * with a thin line to its point. So no line crosses a name, and the order of the names is the one
 * in which no line crosses another.
 */
final class NameColumn {
  private static final double ROW = 1.5;
  private static final double ASIDE = 2;
  private static final double SHORTER = 1e-6;

  private final double letters;
  private final List<Map.Entry<String, Point>> names;

  private NameColumn(Map<String, Point> names, Length letters) {
    this.letters = letters.toMm();
    this.names = new ArrayList<>(names.entrySet());
  }

  /**
   * Names points.
   *
   * @param points by name
   * @param letters how high capitals are
   * @param others what is drawn already, to be kept clear of the names
   */
  static List<Element> of(Map<String, Point> points, Length letters, Collection<Element> others) {
    return new NameColumn(points, letters).elements(new Group("", List.copyOf(others)));
  }

  private List<Element> elements(Group others) {
    Point corner = place(others);
    names.sort(Comparator.comparingDouble(name -> -name.getValue().y()));
    untangle(corner);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      Curve line = Curve.line(names.get(i).getValue(), end(i, corner));
      elements.add(new Stroke(StrokeStyle.FRAME, "", line));
      elements.add(
          Label.of(
              names.get(i).getKey(), new Point(corner.x(), base(i, corner)), Length.mm(letters)));
    }
    return elements;
  }

  /** The upper left corner of the column: where nothing is drawn, near the points. */
  private Point place(Group others) {
    Box points =
        names.stream()
            .map(Map.Entry::getValue)
            .map(at -> Box.of(at, at))
            .reduce(Box::union)
            .orElseThrow();
    Length width =
        names.stream()
            .map(name -> Lettering.width(name.getKey(), Length.mm(letters)))
            .max(Comparator.naturalOrder())
            .orElseThrow();
    double height = names.size() * ROW * letters;
    Box drawn = others.bounds();
    double left = points.maxX() + ASIDE * letters;
    double beyond = drawn.maxX() + 2 * ASIDE * letters;
    FreeRoom room =
        FreeRoom.within(
            new Box(
                left,
                drawn.minY() - height,
                Math.max(left, beyond) + width.toMm(),
                drawn.maxY() + height));
    others.elements().forEach(room::take);
    Point near = new Point(left + width.toMm() / 2, points.centre().y() + aside(points, drawn));
    Point lower =
        room.find(width, Length.mm(height), near)
            .orElse(new Point(Math.max(left, beyond), near.y() - height / 2));
    return new Point(lower.x(), lower.y() + height);
  }

  /** From a row of points that lies flat the lines lead away from what is drawn, not along it. */
  private double aside(Box points, Box drawn) {
    if (points.height().compareTo(points.width()) >= 0) {
      return 0;
    }
    double away = names.size() * ROW * letters;
    return points.centre().y() < drawn.centre().y() ? -away : away;
  }

  /** Names change places while that makes lines shorter; two that cross would be. */
  private void untangle(Point corner) {
    boolean tangled = true;
    while (tangled) {
      tangled = false;
      for (int i = 1; i < names.size(); i++) {
        for (int j = 0; j < i; j++) {
          double before = length(i, i, corner) + length(j, j, corner);
          if (length(i, j, corner) + length(j, i, corner) < before - SHORTER) {
            names.set(i, names.set(j, names.get(i)));
            tangled = true;
          }
        }
      }
    }
  }

  private double length(int name, int row, Point corner) {
    return end(row, corner).minus(names.get(name).getValue()).length().toMm();
  }

  private Point end(int row, Point corner) {
    return new Point(corner.x() - letters / 4, base(row, corner) + letters / 2);
  }

  private double base(int row, Point corner) {
    return corner.y() - (row + 1) * ROW * letters + Lettering.DESCENT * letters;
  }
}
