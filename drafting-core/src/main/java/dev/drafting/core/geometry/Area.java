package dev.drafting.core.geometry;

import java.util.List;

/** Area by Green's theorem: half the integral of the cross product of place and way. */
final class Area {
  private Area() {}

  static double within(List<Segment> segments) {
    Point origin = segments.get(0).start();
    double sum = 0;
    for (Segment segment : segments) {
      sum += swept(segment, origin);
    }
    return sum;
  }

  private static double swept(Segment segment, Point origin) {
    Vector start = segment.start().minus(origin);
    Vector end = segment.end().minus(origin);
    if (segment instanceof Cubic cubic) {
      Vector first = cubic.control1().minus(origin);
      Vector second = cubic.control2().minus(origin);
      return (6 * start.cross(first)
              + 3 * start.cross(second)
              + start.cross(end)
              + 3 * first.cross(second)
              + 3 * first.cross(end)
              + 6 * second.cross(end))
          / 20;
    }
    if (segment instanceof Arc arc) {
      double sector = arc.radiusMm() * arc.radiusMm() * arc.sweepRadians();
      return (arc.centre().minus(origin).cross(end.minus(start)) + sector) / 2;
    }
    return start.cross(end) / 2;
  }
}
