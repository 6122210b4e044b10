package dev.drafting.core.offset;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;

/**
 * A stretch of a segment inside the convex hull of a few points: the control points of a cubic, the
 * ends and the crossing of the end tangents of an arc. The legs between these points also bound the
 * directions that the stretch takes.
 */
final class Stretch {
  private static final double WIDEST_ARC = 1;

  final double from;
  final double to;
  private final Segment whole;
  private final double[] hull;
  private final double minX;
  private final double minY;
  private final double maxX;
  private final double maxY;

  private Stretch(Segment whole, double from, double to, double[] hull) {
    this.whole = whole;
    this.from = from;
    this.to = to;
    this.hull = hull;
    double lowX = hull[0];
    double lowY = hull[1];
    double highX = hull[0];
    double highY = hull[1];
    for (int i = 2; i < hull.length; i += 2) {
      lowX = Math.min(lowX, hull[i]);
      highX = Math.max(highX, hull[i]);
      lowY = Math.min(lowY, hull[i + 1]);
      highY = Math.max(highY, hull[i + 1]);
    }
    this.minX = lowX;
    this.minY = lowY;
    this.maxX = highX;
    this.maxY = highY;
  }

  static Stretch of(Segment segment) {
    return part(segment, 0, 1);
  }

  private static Stretch part(Segment segment, double from, double to) {
    if (segment instanceof Cubic cubic) {
      CubicCoefficients c = new CubicCoefficients(cubic).between(from, to);
      return new Stretch(
          segment, from, to, new double[] {c.x0, c.y0, c.x1, c.y1, c.x2, c.y2, c.x3, c.y3});
    }
    Point a = segment.pointAt(from);
    Point b = segment.pointAt(to);
    if (!(segment instanceof Arc arc)) {
      return new Stretch(segment, from, to, new double[] {a.x(), a.y(), b.x(), b.y()});
    }
    double half = arc.sweep().toRadians() * (to - from) / 2;
    Point centre = arc.centre();
    if (Math.abs(half) > WIDEST_ARC) {
      double x = centre.x();
      double y = centre.y();
      double r = arc.radius().toMm();
      double[] square = {x - r, y - r, x + r, y - r, x + r, y + r, x - r, y + r, x - r, y - r};
      return new Stretch(segment, from, to, square);
    }
    Point middle = segment.pointAt((from + to) / 2);
    double out = 1 / Math.cos(half);
    double x = centre.x() + (middle.x() - centre.x()) * out;
    double y = centre.y() + (middle.y() - centre.y()) * out;
    return new Stretch(segment, from, to, new double[] {a.x(), a.y(), x, y, b.x(), b.y()});
  }

  Segment whole() {
    return whole;
  }

  double size() {
    return Math.max(maxX - minX, maxY - minY);
  }

  Point start() {
    return whole.pointAt(from);
  }

  Point end() {
    return whole.pointAt(to);
  }

  /** Whether a ray from the point to the right may meet it. */
  boolean reaches(Point point) {
    return point.y() >= minY && point.y() <= maxY && point.x() <= maxX;
  }

  boolean isRightOf(Point point) {
    return minX > point.x();
  }

  boolean apartFrom(Stretch other) {
    return minX > other.maxX || other.minX > maxX || minY > other.maxY || other.minY > maxY;
  }

  Stretch half(boolean first) {
    double middle = (from + to) / 2;
    return first ? part(whole, from, middle) : part(whole, middle, to);
  }

  /** Whether the stretch never turns back against a direction. */
  boolean advances(double wayX, double wayY) {
    for (int i = 2; i < hull.length; i += 2) {
      if ((hull[i] - hull[i - 2]) * wayX + (hull[i + 1] - hull[i - 1]) * wayY < 0) {
        return false;
      }
    }
    return true;
  }

  /**
   * The directions it takes, as two angles, the lesser first; more than pi apart if it has no hull.
   */
  double[] directions() {
    double low = Double.NaN;
    double high = Double.NaN;
    double first = 0;
    for (int i = 2; i < hull.length; i += 2) {
      double dx = hull[i] - hull[i - 2];
      double dy = hull[i + 1] - hull[i - 1];
      if (dx == 0 && dy == 0) {
        continue;
      }
      double angle = Math.atan2(dy, dx);
      if (Double.isNaN(low)) {
        low = angle;
        high = angle;
        first = angle;
      } else {
        double turn = Math.IEEEremainder(angle - first, 2 * Math.PI);
        low = Math.min(low, first + turn);
        high = Math.max(high, first + turn);
      }
    }
    return Double.isNaN(low) ? new double[] {0, 2 * Math.PI} : new double[] {low, high};
  }
}
