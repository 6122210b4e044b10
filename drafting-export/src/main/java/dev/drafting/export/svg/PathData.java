package dev.drafting.export.svg;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;

/** A curve as the path data of SVG: lines, cubics and arcs stay what they are; y turns down. */
final class PathData {
  private final double top;
  private final StringBuilder data = new StringBuilder();

  private PathData(double top) {
    this.top = top;
  }

  static String of(Curve curve, double top) {
    PathData path = new PathData(top);
    path.data.append('M').append(path.at(curve.start()));
    curve.segments().forEach(path::add);
    if (curve.isClosed()) {
      path.data.append('Z');
    }
    return path.data.toString();
  }

  private void add(Segment segment) {
    if (segment instanceof Line line) {
      data.append('L').append(at(line.end()));
    } else if (segment instanceof Cubic cubic) {
      data.append('C').append(at(cubic.control1())).append(' ').append(at(cubic.control2()));
      data.append(' ').append(at(cubic.end()));
    } else if (segment instanceof Arc arc) {
      addHalf(arc, arc.pointAt(0.5));
      addHalf(arc, arc.end());
    }
  }

  /** In halves, so that a whole circle has two different ends. */
  private void addHalf(Arc arc, Point end) {
    String radius = Decimal.of(arc.radius().toMm());
    boolean large = Math.abs(arc.sweep().toDegrees()) / 2 > 180;
    boolean clockwiseOnScreen = arc.sweep().toRadians() < 0;
    data.append('A').append(radius).append(' ').append(radius).append(" 0 ");
    data.append(large ? '1' : '0').append(' ').append(clockwiseOnScreen ? '1' : '0');
    data.append(' ').append(at(end));
  }

  private String at(Point point) {
    return Decimal.of(point.x()) + " " + Decimal.of(top - point.y());
  }
}
