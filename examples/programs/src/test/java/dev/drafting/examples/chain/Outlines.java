package dev.drafting.examples.chain;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.measure.Length;
import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.Arrays;
import java.util.Comparator;

/** Judges closed outlines by their chords, with nothing of the library but its flattening. */
final class Outlines {
  private static final Length CHORDS = Length.mm(0.005);
  private static final int XY = 2;

  private Outlines() {}

  /** Whether no two chords that do not follow each other touch. */
  static boolean isSimple(Curve outline) {
    Polyline flat = outline.flatten(CHORDS);
    int n = flat.size() - 1;
    Integer[] order = new Integer[n];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, Comparator.comparingDouble(i -> least(flat, i)));
    for (int a = 0; a < n; a++) {
      double end = Math.max(flat.x(order[a]), flat.x(order[a] + 1));
      for (int b = a + 1; b < n && least(flat, order[b]) <= end; b++) {
        int apart = Math.abs(order[a] - order[b]);
        if (apart > 1 && apart < n - 1 && touch(flat, order[a], order[b])) {
          return false;
        }
      }
    }
    return true;
  }

  private static double least(Polyline flat, int chord) {
    return Math.min(flat.x(chord), flat.x(chord + 1));
  }

  private static boolean touch(Polyline flat, int a, int b) {
    return Line2D.linesIntersect(
        flat.x(a),
        flat.y(a),
        flat.x(a + 1),
        flat.y(a + 1),
        flat.x(b),
        flat.y(b),
        flat.x(b + 1),
        flat.y(b + 1));
  }

  /** How much two outlines overlap, in mm². */
  static double overlap(Curve first, Curve second) {
    Area both = new Area(path(first));
    both.intersect(new Area(path(second)));
    return Math.abs(area(both.getPathIterator(null)));
  }

  private static Path2D path(Curve outline) {
    Polyline flat = outline.flatten(CHORDS.times(4));
    Path2D path = new Path2D.Double();
    path.moveTo(flat.x(0), flat.y(0));
    for (int i = 1; i < flat.size() - 1; i++) {
      path.lineTo(flat.x(i), flat.y(i));
    }
    path.closePath();
    return path;
  }

  private static double area(PathIterator path) {
    double twice = 0;
    double[] start = new double[XY];
    double[] last = new double[XY];
    double[] next = new double[XY];
    for (; !path.isDone(); path.next()) {
      int kind = path.currentSegment(next);
      if (kind == PathIterator.SEG_MOVETO) {
        start = next.clone();
      } else {
        double[] to = kind == PathIterator.SEG_CLOSE ? start : next;
        twice += last[0] * to[1] - to[0] * last[1];
      }
      last = (kind == PathIterator.SEG_CLOSE ? start : next).clone();
    }
    return twice / 2;
  }
}
