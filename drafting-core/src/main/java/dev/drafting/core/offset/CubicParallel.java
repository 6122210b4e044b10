package dev.drafting.core.offset;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import java.util.ArrayList;
import java.util.List;

/**
 * The parallel of one cubic: fitted cubics whose ends and end tangents are exact, each as long as
 * the proven deviation ({@link ParallelBound}) lets it be.
 *
 * <p>Where the distance exceeds the radius of curvature the true parallel runs backwards between
 * two cusps. Such stretches are found first; they are represented by short chords marked as turned
 * back.
 */
final class CubicParallel {
  private static final int CHORDS_TURNED_BACK = 8;
  private static final double NARROWEST_STRETCH = 1e-6;
  private static final double CUSP = 1e-9;
  private static final double MOST_GROWTH = 4;
  private static final double LEAST_SHRINKING = 0.9;
  private static final double MOST_SHRINKING = 0.2;
  private static final double WORTH_A_TRY = 1.25;
  private static final int CROSSING_STEPS = 4;
  private static final Place[] NONE = {};

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
    List<Run> runs = runs();
    Place start = place(0);
    for (int i = 0; i < runs.size(); i++) {
      Run run = runs.get(i);
      Place[] joint = i + 2 < runs.size() && !run.back ? joint(start, runs, i + 1) : NONE;
      if (joint.length > 0) {
        fit(start, joint[0]);
        start = joint[1];
        i++;
      } else {
        add(start, run);
        start = place(run.to);
      }
    }
    return strands;
  }

  private void add(Place start, Run run) {
    if (run.back) {
      addTurnedBack(run.from, run.to);
    } else {
      fit(start, place(run.to));
    }
  }

  /**
   * Where the parallel crosses itself before and behind a stretch that is turned back. Looked for
   * only where the tail between is so flat that the fitted curves on its sides might miss each
   * other.
   */
  private Place[] joint(Place start, List<Run> runs, int back) {
    Run tail = runs.get(back);
    double end = runs.get(back + 1).to;
    Place[] sides = crossing(start.t, tail, end);
    Place before = sides[0];
    Place after = sides[1];
    if (before.t <= start.t || after.t >= end) {
      return NONE;
    }
    Vector gap = after.point.minus(before.point);
    Point point = before.point.plus(gap.times(0.5));
    return meet(gap) && isFlat(point, place(tail.from).point, place(tail.to).point)
        ? new Place[] {new Place(before.t, point, before.way), new Place(after.t, point, after.way)}
        : NONE;
  }

  /**
   * With a stretch of 2 h about a middle the crossing is at ±√3 h, up to higher powers of h; from
   * there Newton's method leads near enough to it.
   */
  private Place[] crossing(double start, Run tail, double end) {
    double middle = (tail.from + tail.to) / 2;
    double beside = Math.sqrt(3) * (tail.to - tail.from) / 2;
    Place before = place(Math.max(start, middle - beside));
    Place after = place(Math.min(end, middle + beside));
    for (int i = 0; i < CROSSING_STEPS; i++) {
      Vector gap = after.point.minus(before.point);
      Vector one = velocity(before);
      Vector two = velocity(after);
      double cross = one.cross(two);
      if (cross == 0 || meet(gap)) {
        break;
      }
      double earlier = before.t + gap.cross(two) / cross;
      double later = after.t + gap.cross(one) / cross;
      before = place(Math.max(start, Math.min(tail.from, earlier)));
      after = place(Math.min(end, Math.max(tail.to, later)));
    }
    return new Place[] {before, after};
  }

  private boolean meet(Vector gap) {
    return Math.hypot(gap.dx(), gap.dy()) <= tolerance / 2;
  }

  /** How the place on the parallel moves with the parameter. */
  private Vector velocity(Place place) {
    Vector along = source.derivativeAt(place.t);
    return along.times(1 + distance * coefficients.curvature(place.t));
  }

  /** Whether two curves from a point to two cusps may lie on each other: each is a fit. */
  private boolean isFlat(Point joint, Point cusp, Point other) {
    Vector base = other.minus(cusp);
    double height = Math.abs(base.cross(joint.minus(cusp)));
    return height <= 4 * tolerance * Math.hypot(base.dx(), base.dy());
  }

  /** A place on the parallel, and the direction of travel beside it. */
  record Place(double t, Point point, Vector way) {}

  private Place place(double t) {
    Vector way = source.directionAt(t);
    return new Place(t, source.pointAt(t).plus(Parallels.outward(way).times(distance)), way);
  }

  /** A stretch of the source on which the parallel runs forwards, or backwards, throughout. */
  private record Stretch(double from, boolean back) {}

  /** As many stretches in a row as run the same way. */
  private record Run(double from, double to, boolean back) {}

  private List<Run> runs() {
    List<Run> runs = new ArrayList<>();
    List<Stretch> stretches = stretches();
    Stretch first = stretches.get(0);
    for (Stretch stretch : stretches) {
      if (stretch.back != first.back) {
        runs.add(new Run(first.from, stretch.from, first.back));
        first = stretch;
      }
    }
    runs.add(new Run(first.from, 1, first.back));
    return runs;
  }

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
    Point last = place(from).point;
    for (int i = 1; i <= CHORDS_TURNED_BACK; i++) {
      double t0 = from + (to - from) * (i - 1) / CHORDS_TURNED_BACK;
      double t1 = i == CHORDS_TURNED_BACK ? to : from + (to - from) * i / CHORDS_TURNED_BACK;
      Point next = place(t1).point;
      Origin origin = new Origin(source, index, t0, t1);
      strands.add(new Strand(new Line(last, next), OffsetTag.EDGE, edge, origin, true));
      last = next;
    }
  }

  /** A piece of the parallel, near enough or not, and how many times as long it could be. */
  private record Piece(Segment segment, Place from, Place to, double reach, boolean isNear) {
    double length() {
      return to.t - from.t;
    }

    double longer() {
      return length() * Math.max(1, Math.min(MOST_GROWTH, reach));
    }

    double shorter() {
      return length() * Math.max(MOST_SHRINKING, Math.min(LEAST_SHRINKING, reach));
    }
  }

  /** Fits piece after piece; how far the next one is tried follows from how near the last came. */
  private void fit(Place from, Place to) {
    Place last = from;
    double reach = to.t - from.t;
    while (last.t < to.t) {
      Piece piece = longPiece(last, to, reach);
      if (piece.isNear) {
        addParallel(piece.segment, last.t, piece.to.t);
      } else {
        addJump(piece);
      }
      last = piece.to;
      reach = piece.longer();
    }
  }

  /**
   * A piece that is near enough: shorter ones are tried until one is, and once a longer one where
   * that promises much. Only where the source turns on the spot no piece is near.
   */
  private Piece longPiece(Place from, Place to, double reach) {
    Piece piece = piece(from, evenly(from, to, reach));
    while (!piece.isNear && piece.length() > CUSP) {
      piece = piece(from, evenly(from, to, piece.shorter()));
    }
    if (piece.isNear && piece.reach > WORTH_A_TRY && piece.to.t < to.t) {
      Piece longer = piece(from, evenly(from, to, piece.longer()));
      return longer.isNear ? longer : piece;
    }
    return piece;
  }

  /** What is left is shared out evenly, so that no sliver remains at the end. */
  private Place evenly(Place from, Place to, double reach) {
    double rest = to.t - from.t;
    double pieces = Math.ceil(rest / reach - 1e-9);
    return pieces <= 1 ? to : place(from.t + rest / pieces);
  }

  private Piece piece(Place from, Place to) {
    CubicCoefficients stretch = coefficients.between(from.t, to.t);
    Segment chord = new Line(from.point, to.point);
    if (isPoint(from, to, stretch)) {
      return new Piece(chord, from, to, MOST_GROWTH, true);
    }
    ParallelFit fit = new ParallelFit(stretch, distance, from, to, tolerance);
    if (fit.deviation() <= tolerance) {
      Cubic fitted = fit.cubic();
      if (ParallelBound.within(tolerance, new CubicCoefficients(fitted), stretch, distance)) {
        return new Piece(fitted, from, to, fit.reach(), true);
      }
    }
    return new Piece(chord, from, to, fit.reach(), false);
  }

  private boolean isPoint(Place from, Place to, CubicCoefficients stretch) {
    double chord = Math.hypot(to.point.x() - from.point.x(), to.point.y() - from.point.y());
    return chord <= tolerance && stretch.longestParallel(distance) <= tolerance;
  }

  /** Where the source turns on the spot its parallel jumps across it. */
  private void addJump(Piece piece) {
    Origin origin = new Origin(source, index, piece.from.t, piece.to.t);
    strands.add(new Strand(piece.segment, OffsetTag.EDGE, edge, origin, true));
  }

  private void addParallel(Segment segment, double from, double to) {
    strands.add(Strand.parallel(segment, edge, new Origin(source, index, from, to)));
  }
}
