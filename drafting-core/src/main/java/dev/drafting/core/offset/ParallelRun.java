package dev.drafting.core.offset;

import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The strands parallel to segments of one edge that follow each other without a corner, before they
 * are joined to their neighbours. Places on a run are numbers from 0 to the number of strands: 1.25
 * is a quarter along the second.
 *
 * @param edge the edge
 * @param first the segment it begins beside
 * @param last the segment it ends beside
 * @param distance millimetres, + to the right of the direction of travel
 * @param strands what runs beside them, end to end
 * @param backwards whether this run has been turned round; its strands then keep the origins of the
 *     run as it was
 */
record ParallelRun(
    int edge, Source first, Source last, double distance, List<Strand> strands, boolean backwards) {
  private static final int HALVINGS = 50;

  /**
   * A segment of an edge.
   *
   * @param segment the segment, in the direction in which the run is travelled
   * @param index its place in the edge
   */
  record Source(Segment segment, int index) {
    Source reversed() {
      return new Source(segment.reversed(), index);
    }
  }

  static ParallelRun of(Segment source, int edge, int index, double distance, double tolerance) {
    List<Strand> strands = Parallels.of(source, edge, index, distance, tolerance);
    Source only = new Source(source, index);
    return new ParallelRun(edge, only, only, distance, strands, false);
  }

  /** Runs of an edge that run on into each other, as one. */
  static ParallelRun joined(List<ParallelRun> runs) {
    ParallelRun one = runs.get(0);
    ParallelRun other = runs.get(runs.size() - 1);
    if (runs.size() == 1) {
      return one;
    }
    List<Strand> strands = runs.stream().flatMap(run -> run.strands.stream()).toList();
    return new ParallelRun(one.edge, one.first, other.last, one.distance, strands, false);
  }

  /** Whether the next run of the edge goes on where this one ends, without a corner between. */
  boolean runsOnInto(ParallelRun next) {
    return !endsTurnedBack()
        && !next.startsTurnedBack()
        && CornerShape.of(sourceEnd(), endWay(), next.startWay(), distance, distance).touches();
  }

  Point start() {
    return strands.get(0).start();
  }

  Point end() {
    return strands.get(strands.size() - 1).end();
  }

  Point sourceStart() {
    return first.segment.start();
  }

  Point sourceEnd() {
    return last.segment.end();
  }

  Vector startWay() {
    return first.segment.directionAt(0);
  }

  Vector endWay() {
    return last.segment.directionAt(1);
  }

  boolean startsTurnedBack() {
    return strands.get(0).turnedBack();
  }

  boolean endsTurnedBack() {
    return strands.get(strands.size() - 1).turnedBack();
  }

  /** Whether no strand of it runs forwards. */
  boolean isTurnedBack() {
    return strands.stream().allMatch(Strand::turnedBack);
  }

  /**
   * The place where the part that runs forwards begins: behind a stretch that is turned back at the
   * start, and not nearer to the start of the source than the distance.
   */
  double firstForward() {
    return strands.size() - reversed().lastForward();
  }

  /**
   * The place where the part that runs forwards ends: before a stretch that is turned back at the
   * end, and not nearer to the end of the source than the distance. The end itself if nothing would
   * be left.
   */
  double lastForward() {
    double end = endOfForward();
    return end + reversed().endOfForward() > strands.size() ? end : strands.size();
  }

  private double endOfForward() {
    int last = strands.size();
    while (last > 0 && strands.get(last - 1).turnedBack()) {
      last--;
    }
    if (last == 0 || last == strands.size()) {
      return strands.size();
    }
    int strand = last - 1;
    while (strand > 0 && !strands.get(strand).turnedBack() && !clear(strand, 0)) {
      strand--;
    }
    if (strands.get(strand).turnedBack() || !clear(strand, 0)) {
      return last;
    }
    if (clear(strand, 1)) {
      return strand + 1;
    }
    double near = 0;
    double far = 1;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (near + far) / 2;
      if (clear(strand, middle)) {
        near = middle;
      } else {
        far = middle;
      }
    }
    return strand + near;
  }

  /**
   * Asked of the parallel itself, not of the curve fitted to it: beside an end that is turned back
   * the parallel runs almost round the end, and the fit's deviation would move the place by many
   * times as much.
   */
  private boolean clear(int strand, double u) {
    Point fitted = strands.get(strand).segment().pointAt(u);
    Origin origin = strands.get(strand).origin();
    Point point =
        origin == null ? fitted : origin.parallel(fitted, backwards ? -distance : distance);
    Point end = sourceEnd();
    return Math.hypot(point.x() - end.x(), point.y() - end.y()) >= Math.abs(distance);
  }

  Point pointAt(double place) {
    int strand = (int) Math.min(place, strands.size() - 1.0);
    return strands.get(strand).segment().pointAt(place - strand);
  }

  Vector directionAt(double place) {
    int strand = (int) Math.min(place, strands.size() - 1.0);
    return strands.get(strand).segment().directionAt(place - strand);
  }

  /** The same run travelled the other way; what was outward is inward now. */
  ParallelRun reversed() {
    List<Strand> turned = new ArrayList<>();
    for (Strand strand : strands) {
      turned.add(reversed(strand));
    }
    Collections.reverse(turned);
    return new ParallelRun(edge, last.reversed(), first.reversed(), -distance, turned, !backwards);
  }

  static Strand reversed(Strand strand) {
    return new Strand(
        strand.segment().reversed(),
        strand.tag(),
        strand.edge(),
        strand.origin(),
        strand.turnedBack());
  }

  /** A straight continuation of this run, beyond its end or before its start. */
  Strand continuation(Point from, Point to, boolean beyondEnd) {
    boolean atEnd = beyondEnd != backwards;
    Source source = beyondEnd ? last : first;
    Segment own = backwards ? source.segment.reversed() : source.segment;
    Origin origin = new Origin(own, source.index, 0, 1).endOnly(atEnd);
    return Strand.parallel(new Line(from, to), edge, origin);
  }

  /** The strands from one place to another. */
  List<Strand> between(double from, double to) {
    List<Strand> kept = new ArrayList<>();
    for (int i = (int) from; i < strands.size() && i < to; i++) {
      double u0 = Math.max(0, from - i);
      double u1 = Math.min(1, to - i);
      if (u1 > u0) {
        kept.add(strands.get(i).between(u0, u1));
      }
    }
    return kept;
  }
}
