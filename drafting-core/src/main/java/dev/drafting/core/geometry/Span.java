package dev.drafting.core.geometry;

/**
 * A part of a segment with a slanting box round it and the fan of directions in it, for finding
 * where segments meet.
 */
final class Span {
  private static final double TOO_WIDE = 0.9 * Math.PI;

  final Segment whole;
  final double from;
  final double to;
  private final Segment part;

  // the box: its centre, the direction of its length, half its length and half its width
  private double centreX;
  private double centreY;
  private double ux = 1;
  private double uy;
  private double halfLength;
  private double halfWidth;

  // the fan: its middle direction and half its width in radians
  private double middle;
  private double halfFan;

  Span(Segment whole, double from, double to) {
    this.whole = whole;
    this.from = from;
    this.to = to;
    this.part = from == 0 && to == 1 ? whole : whole.between(from, to);
    if (part instanceof Cubic cubic) {
      fit(cubic);
    } else if (part instanceof Arc arc) {
      fit(arc);
    } else {
      align(part.start(), part.end());
      frame(part.start(), part.end());
    }
  }

  Point start() {
    return part.start();
  }

  Point end() {
    return part.end();
  }

  double extent() {
    return 2 * Math.max(halfLength, halfWidth);
  }

  double width() {
    return 2 * Math.min(halfLength, halfWidth);
  }

  double halfway() {
    return (from + to) / 2;
  }

  Span firstHalf() {
    return new Span(whole, from, halfway());
  }

  Span secondHalf() {
    return new Span(whole, halfway(), to);
  }

  /** True when the directions fan out so far that the span might meet itself. */
  boolean isWide() {
    return halfFan * 2 >= TOO_WIDE;
  }

  /** True when no direction here, forwards or backwards, is a direction there. */
  boolean isTransversalTo(Span other) {
    if (isWide() || other.isWide()) {
      return false;
    }
    double between = Math.abs(Math.IEEEremainder(middle - other.middle, Math.PI));
    return between > halfFan + other.halfFan + 1e-9;
  }

  /** No direction here, forwards or backwards, is further from one there than by this sine. */
  double greatestSineTo(Span other) {
    double between = Math.abs(Math.IEEEremainder(middle - other.middle, Math.PI));
    return Math.sin(Math.min(Math.PI / 2, between + halfFan + other.halfFan));
  }

  /**
   * True when this span and the next advance together in some direction, so that they cannot meet.
   */
  boolean advancesWith(Span next) {
    double between = Math.abs(Math.IEEEremainder(middle - next.middle, 2 * Math.PI));
    double fan = Math.max(2 * Math.max(halfFan, next.halfFan), between + halfFan + next.halfFan);
    return fan < TOO_WIDE;
  }

  private void align(Point start, Point end) {
    double length = start.gap(end);
    if (length > 0) {
      ux = (end.x() - start.x()) / length;
      uy = (end.y() - start.y()) / length;
    }
    middle = Math.atan2(uy, ux);
  }

  private void frame(Point... points) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double right = Double.POSITIVE_INFINITY;
    double left = Double.NEGATIVE_INFINITY;
    Point origin = points[0];
    for (Point point : points) {
      double x = point.x() - origin.x();
      double y = point.y() - origin.y();
      low = Math.min(low, x * ux + y * uy);
      high = Math.max(high, x * ux + y * uy);
      right = Math.min(right, y * ux - x * uy);
      left = Math.max(left, y * ux - x * uy);
    }
    enclose(origin, low, high, right, left);
  }

  private void enclose(Point origin, double low, double high, double right, double left) {
    double along = (low + high) / 2;
    double across = (right + left) / 2;
    centreX = origin.x() + along * ux - across * uy;
    centreY = origin.y() + along * uy + across * ux;
    halfLength = (high - low) / 2;
    halfWidth = (left - right) / 2;
  }

  private void fit(Cubic cubic) {
    Point[] points = {cubic.start(), cubic.control1(), cubic.control2(), cubic.end()};
    align(cubic.start(), cubic.end());
    frame(points);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 1; i < 4; i++) {
      double x = points[i].x() - points[i - 1].x();
      double y = points[i].y() - points[i - 1].y();
      if (x != 0 || y != 0) {
        double angle = Math.atan2(y * ux - x * uy, x * ux + y * uy);
        low = Math.min(low, angle);
        high = Math.max(high, angle);
      }
    }
    middle += (low + high) / 2;
    halfFan = (high - low) / 2;
  }

  private void fit(Arc arc) {
    double sweep = arc.sweepRadians();
    halfFan = Math.abs(sweep) / 2;
    if (isWide()) {
      Box box = arc.bounds();
      frame(new Point(box.minX(), box.minY()), new Point(box.maxX(), box.maxY()));
      return;
    }
    align(arc.start(), arc.end());
    double sagitta = arc.radiusMm() * (1 - Math.cos(halfFan));
    double length = arc.start().gap(arc.end());
    enclose(arc.start(), 0, length, sweep > 0 ? -sagitta : 0, sweep > 0 ? 0 : sagitta);
  }

  /** True when the boxes come within a margin of each other, by the separating axes of both. */
  boolean comesWithin(double margin, Span other) {
    double x = other.centreX - centreX;
    double y = other.centreY - centreY;
    double cos = Math.abs(ux * other.ux + uy * other.uy);
    double sin = Math.abs(ux * other.uy - uy * other.ux);
    return Math.abs(x * ux + y * uy)
            <= halfLength + other.halfLength * cos + other.halfWidth * sin + margin
        && Math.abs(y * ux - x * uy)
            <= halfWidth + other.halfLength * sin + other.halfWidth * cos + margin
        && Math.abs(x * other.ux + y * other.uy)
            <= other.halfLength + halfLength * cos + halfWidth * sin + margin
        && Math.abs(y * other.ux - x * other.uy)
            <= other.halfWidth + halfLength * sin + halfWidth * cos + margin;
  }
}
