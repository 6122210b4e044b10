package dev.drafting.export.pdf;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.export.drawing.Stroke;
import dev.drafting.export.drawing.StrokeStyle;
import java.util.Arrays;

/** The straight lines that the furniture of a page is made of. */
final class Lines {
  private Lines() {}

  static Stroke line(StrokeStyle style, String name, double x1, double y1, double x2, double y2) {
    return new Stroke(style, name, Curve.line(new Point(x1, y1), new Point(x2, y2)));
  }

  static Stroke box(StrokeStyle style, String name, Box box) {
    return closed(
        style,
        name,
        new Point(box.minX(), box.minY()),
        new Point(box.maxX(), box.minY()),
        new Point(box.maxX(), box.maxY()),
        new Point(box.minX(), box.maxY()));
  }

  static Stroke closed(StrokeStyle style, String name, Point... corners) {
    Point[] around = Arrays.copyOf(corners, corners.length + 1);
    around[corners.length] = corners[0];
    return new Stroke(style, name, Curve.polyline(around));
  }
}
