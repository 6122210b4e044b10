package dev.drafting.core.offset;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import java.util.ArrayList;
import java.util.List;

/**
 * The parallel of one cubic: fitted cubics whose ends and end tangents are exact, halved until the
 * proven deviation ({@link ParallelBound}) is within the tolerance.
 *
 * <p>Where the distance exceeds the radius of curvature the true parallel runs backwards between
 * two cusps. Such stretches are found first; they are represented by short chords marked as turned
 * back.
 */
final class CubicParallel {
  private static final int CHORDS_TURNED_BACK = 8;
  private static final double NARROWEST_STRETCH = 1e-6;

  private final Cubic source;
  private final CubicCoefficients coefficients;
  private final int edge;
  private final int index;
  private final double distance;
  private final double tolerance;
  private final List<Strand> strands = new ArrayList<>();

  CubicParallel(Cubic source, int edge, int index, double distance, double tolerance) {
    this.source = source;
    this.coefficients = new CubicCoefficients(source);
    this.edge = edge;
    this.index = index;
    this.distance = distance;
    this.tolerance = tolerance;
  }

  List<Strand> strands() {
    double from = 0;
    boolean back = false;
    boolean first = true;
    for (Stretch stretch : stretches()) {
      if (first) {
        back = stretch.back;
        first = false;
      } else if (stretch.back != back) {
        add(from, stretch.from, back);
        from = stretch.from;
        back = stretch.back;
      }
    }
    add(from, 1, back);
    return strands;
  }

  private void add(double from, double to, boolean back) {
    if (back) {
      addTurnedBack(from, to);
    } else {
      fit(from, to);
    }
  }

  /** A stretch of the source on which the parallel runs forwards, or backwards, throughout. */
  private record Stretch(double from, boolean back) {}

  private List<Stretch> stretches() {
    List<Stretch> found = new ArrayList<>();
    split(0, 1, found);
    return found;
  }

  private void split(double from, double to, List<Stretch> found) {
    CurvatureRange range = CurvatureRange.of(coefficients.between(from, to));
    if (range.leastSpeedFactor(distance) > 0) {
      found.add(new Stretch(from, false));
    } else if (range.greatestSpeedFactor(distance) < 0) {
      found.add(new Stretch(from, true));
    } else if (to - from < NARROWEST_STRETCH || range.longestParallel(distance) < tolerance / 10) {
      double middle = (from + to) / 2;
      found.add(new Stretch(from, 1 + distance * coefficients.curvature(middle) < 0));
    } else {
      double middle = (from + to) / 2;
      split(from, middle, found);
      split(middle, to, found);
    }
  }

  private void addTurnedBack(double from, double to) {
    Point last = at(from);
    for (int i = 1; i <= CHORDS_TURNED_BACK; i++) {
      double t0 = from + (to - from) * (i - 1) / CHORDS_TURNED_BACK;
      double t1 = i == CHORDS_TURNED_BACK ? to : from + (to - from) * i / CHORDS_TURNED_BACK;
      Point next = at(t1);
      Origin origin = new Origin(source, index, t0, t1);
      strands.add(new Strand(new Line(last, next), OffsetTag.EDGE, edge, origin, true));
      last = next;
    }
  }

  private void fit(double from, double to) {
    CubicCoefficients stretch = coefficients.between(from, to);
    Point start = at(from);
    Point end = at(to);
    if (stretch.longestParallel(distance) <= tolerance) {
      addParallel(new Line(start, end), from, to);
      return;
    }
    Cubic fitted =
        ParallelFit.fit(
            stretch, distance, start, source.directionAt(from), end, source.directionAt(to));
    if (ParallelBound.within(tolerance, new CubicCoefficients(fitted), stretch, distance)) {
      addParallel(fitted, from, to);
      return;
    }
    double middle = (from + to) / 2;
    fit(from, middle);
    fit(middle, to);
  }

  private void addParallel(Segment segment, double from, double to) {
    strands.add(Strand.parallel(segment, edge, new Origin(source, index, from, to)));
  }

  private Point at(double t) {
    Vector across = Parallels.outward(source.directionAt(t)).times(distance);
    return source.pointAt(t).plus(across);
  }
}
