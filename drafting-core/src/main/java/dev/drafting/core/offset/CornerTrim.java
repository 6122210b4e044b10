package dev.drafting.core.offset;

import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Finds where two neighbouring parallels that overrun each other really meet. */
final class CornerTrim {
  private static final int NEWTON_STEPS = 12;
  private static final double MET = 1e-10;

  /** Parallels are looked at for a crossing as far from the corner as this many distances. */
  private static final double FAR = 10;

  /** A place on a run and the point there. */
  record Place(double at, Point point) {}

  private CornerTrim() {}

  /**
   * Cuts both runs at their meeting nearest to the corner, continuing the one that is too short.
   *
   * @return null if they do not meet
   */
  static @Nullable CornerPlan trim(ParallelRun a, ParallelRun b, CornerShape shape) {
    CornerPlan continued = null;
    if (shape.reachA() > CornerPlanner.TOUCHING && !a.endsTurnedBack()) {
      continued = continueA(a, b, shape, shape.reachA());
    } else if (shape.reachB() > CornerPlanner.TOUCHING && !b.startsTurnedBack()) {
      continued = continueB(a, b, shape, shape.reachB());
    }
    if (continued == null) {
      continued = crossing(a, b, shape);
    }
    return continued != null ? continued : reach(a, b, shape);
  }

  /**
   * Where one run ends turned back and the other does not: that is continued until it meets the
   * part of the turned one that runs forwards.
   *
   * @return null if they do not meet
   */
  static @Nullable CornerPlan pastCusp(ParallelRun a, ParallelRun b, CornerShape shape) {
    boolean turnedA = a.endsTurnedBack();
    boolean turnedB = b.startsTurnedBack();
    if (turnedA && !turnedB && shape.reachB() > CornerPlanner.TOUCHING) {
      return continueB(a, b, shape, shape.reachB());
    }
    return turnedB && !turnedA && shape.reachA() > CornerPlanner.TOUCHING
        ? continueA(a, b, shape, shape.reachA())
        : null;
  }

  /**
   * A curve may bend away from where its neighbour's parallel ought to begin on it, or end: that is
   * continued until it meets the curve.
   */
  private static @Nullable CornerPlan reach(ParallelRun a, ParallelRun b, CornerShape shape) {
    CornerPlan reached = null;
    if (shape.reachA() < -CornerPlanner.TOUCHING && !b.startsTurnedBack()) {
      reached = continueB(a, b, shape, shape.wider());
    }
    if (reached == null && shape.reachB() < -CornerPlanner.TOUCHING && !a.endsTurnedBack()) {
      reached = continueA(a, b, shape, shape.wider());
    }
    return reached;
  }

  private static @Nullable CornerPlan continueA(
      ParallelRun a, ParallelRun b, CornerShape shape, double reach) {
    Place place = firstOn(b, continuation(a.end(), shape.wayA(), reach));
    return place == null
        ? null
        : new CornerPlan(
            a.strands().size(),
            List.of(a.continuation(a.end(), place.point(), true)),
            List.of(),
            List.of(),
            place.at());
  }

  private static @Nullable CornerPlan continueB(
      ParallelRun a, ParallelRun b, CornerShape shape, double reach) {
    Line back = continuation(b.start(), shape.wayB().negated(), reach);
    Place place = firstOn(a.reversed(), back);
    return place == null
        ? null
        : new CornerPlan(
            a.strands().size() - place.at(),
            List.of(),
            List.of(),
            List.of(b.continuation(place.point(), b.start(), false)),
            0);
  }

  /**
   * Twice as long as it must be beside straight neighbours, to reach a curved one too; up to 1 m.
   */
  private static Line continuation(Point from, Vector way, double reach) {
    return new Line(from, from.plus(way.times(Math.min(1000, 2 * reach))));
  }

  /** The first place from the start of a run that lies on a line. */
  static @Nullable Place firstOn(ParallelRun run, Line line) {
    for (int i = 0; i < run.strands().size(); i++) {
      Strand strand = run.strands().get(i);
      if (strand.turnedBack()) {
        continue;
      }
      double[] met = meet(strand.segment(), 0.1, line, 0.5, false);
      if (met != null) {
        return new Place(i + met[0], strand.segment().pointAt(met[0]));
      }
    }
    return null;
  }

  /**
   * Cuts both runs where they cross nearest to the corner: what crosses much farther away is for
   * the whole outline to find.
   *
   * @return null if they do not cross
   */
  static @Nullable CornerPlan crossing(ParallelRun a, ParallelRun b, CornerShape shape) {
    double far = FAR * shape.wider();
    int last = a.strands().size() - 1;
    int first = last - strandsWithin(far, a.reversed());
    int end = strandsWithin(far, b);
    double best = Double.POSITIVE_INFINITY;
    CornerPlan plan = null;
    for (int i = last; i > first && last - i < best; i--) {
      Strand one = a.strands().get(i);
      if (one.turnedBack()) {
        continue;
      }
      for (int j = 0; j < end && last - i + j < best; j++) {
        Strand two = b.strands().get(j);
        if (two.turnedBack()) {
          continue;
        }
        double[] met = meet(one.segment(), 0.95, two.segment(), 0.05, true);
        if (met != null && last - i + 1 - met[0] + j + met[1] < best) {
          best = last - i + 1 - met[0] + j + met[1];
          plan = new CornerPlan(i + met[0], List.of(), List.of(), List.of(), j + met[1]);
        }
      }
    }
    return plan;
  }

  /** How many strands a run has before the first one that begins farther away from its start. */
  private static int strandsWithin(double far, ParallelRun run) {
    List<Strand> strands = run.strands();
    int count = 1;
    while (count < strands.size()
        && run.sourceStart().distanceTo(strands.get(count).start()).toMm() <= far) {
      count++;
    }
    return count;
  }

  /**
   * Parameters at which two segments meet: by Newton's method from a guess, or failing that by the
   * crossing nearest to the corner.
   */
  static double @Nullable [] meet(
      Segment a, double guessA, Segment b, double guessB, boolean fromEndOfA) {
    if (!overlap(a, b)) {
      return null;
    }
    double[] met = newton(a, guessA, b, guessB);
    return met != null ? met : search(a, b, fromEndOfA);
  }

  private static boolean overlap(Segment a, Segment b) {
    var one = a.bounds();
    var two = b.bounds();
    return one.minX() <= two.maxX()
        && two.minX() <= one.maxX()
        && one.minY() <= two.maxY()
        && two.minY() <= one.maxY();
  }

  private static double @Nullable [] newton(Segment a, double guessA, Segment b, double guessB) {
    double u = guessA;
    double v = guessB;
    for (int i = 0; i < NEWTON_STEPS; i++) {
      Vector off = b.pointAt(v).minus(a.pointAt(u));
      Vector alongA = a.derivativeAt(u);
      Vector alongB = b.derivativeAt(v);
      double cross = alongA.cross(alongB);
      if (cross == 0) {
        return null;
      }
      double stepA = off.cross(alongB) / cross;
      double stepB = off.cross(alongA) / cross;
      if (off.dot(off) <= MET * MET) {
        return new double[] {u, v};
      }
      double nextA = u + stepA;
      double nextB = v + stepB;
      if (nextA < -0.5 || nextA > 1.5 || nextB < -0.5 || nextB > 1.5) {
        return null;
      }
      u = Math.max(0, Math.min(1, nextA));
      v = Math.max(0, Math.min(1, nextB));
    }
    return null;
  }

  private static double @Nullable [] search(Segment a, Segment b, boolean fromEndOfA) {
    double[] best = null;
    for (double[] met : SegmentMeetings.of(a, b)) {
      if (best == null || (fromEndOfA ? met[0] > best[0] : met[0] < best[0])) {
        best = met;
      }
    }
    return best;
  }
}
