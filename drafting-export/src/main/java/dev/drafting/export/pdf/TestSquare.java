package dev.drafting.export.pdf;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Anchor;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.drawing.StrokeStyle;
import java.util.ArrayList;
import java.util.List;

/** Squares to be measured, with steps along two sides and their size in words. */
final class TestSquare {
  static final double INCH = 25.4;

  private final double step;
  private final int steps;
  private final String side;
  private final String stepped;

  private TestSquare(double step, int steps, String side, String stepped) {
    this.step = step;
    this.steps = steps;
    this.side = side;
    this.stepped = stepped;
  }

  static TestSquare ofCentimetres(int steps) {
    return new TestSquare(10, steps, 10 * steps + " mm", steps + " steps of 10 mm");
  }

  static TestSquare ofInches(int steps) {
    return new TestSquare(INCH, steps, steps + " in", steps + " steps of 1 in");
  }

  double size() {
    return step * steps;
  }

  /** Its lines and words, the lower left corner at a point; letters of a height in mm. */
  List<Element> at(double left, double bottom, double letters) {
    List<Element> square = new ArrayList<>();
    Box box = new Box(left, bottom, left + size(), bottom + size());
    square.add(Lines.box(StrokeStyle.FRAME, side + " square", box));
    for (int i = 1; i < steps; i++) {
      double along = i * step;
      square.add(tick(left + along, bottom, left + along, bottom + 3));
      square.add(tick(left, bottom + along, left + 3, bottom + along));
    }
    Point centre = box.centre();
    square.add(text(side, centre, letters));
    square.add(text(stepped, new Point(centre.x(), centre.y() - 1.33 * letters), 0.42 * letters));
    return square;
  }

  private static Element tick(double x1, double y1, double x2, double y2) {
    return Lines.line(StrokeStyle.FRAME, "step", x1, y1, x2, y2);
  }

  private static Element text(String words, Point at, double height) {
    return Label.of(words, at, Length.mm(height)).withAnchor(Anchor.MIDDLE);
  }
}
