package dev.drafting.core.offset;

import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The strands parallel to one segment of one edge, before they are joined to their neighbours.
 * Places on a run are numbers from 0 to the number of strands: 1.25 is a quarter along the second.
 *
 * @param edge the edge
 * @param index the segment's place in the edge
 * @param source the segment
 * @param distance millimetres, + to the right of the direction of travel
 * @param strands what runs beside it, end to end
 * @param backwards whether this run has been turned round; its strands then keep the origins of the
 *     run as it was
 */
record ParallelRun(
    int edge, int index, Segment source, double distance, List<Strand> strands, boolean backwards) {

  static ParallelRun of(Segment source, int edge, int index, double distance, double tolerance) {
    List<Strand> strands = Parallels.of(source, edge, index, distance, tolerance);
    return new ParallelRun(edge, index, source, distance, strands, false);
  }

  Point start() {
    return strands.get(0).start();
  }

  Point end() {
    return strands.get(strands.size() - 1).end();
  }

  Vector startWay() {
    return source.directionAt(0);
  }

  Vector endWay() {
    return source.directionAt(1);
  }

  boolean startsTurnedBack() {
    return strands.get(0).turnedBack();
  }

  boolean endsTurnedBack() {
    return strands.get(strands.size() - 1).turnedBack();
  }

  /** The place of the first strand that runs forwards; the start if there is none. */
  int firstForward() {
    int first = 0;
    while (first < strands.size() && strands.get(first).turnedBack()) {
      first++;
    }
    return first == strands.size() ? 0 : first;
  }

  /** The place after the last strand that runs forwards; the end if there is none. */
  int lastForward() {
    int last = strands.size();
    while (last > 0 && strands.get(last - 1).turnedBack()) {
      last--;
    }
    return last == 0 ? strands.size() : last;
  }

  /** The same run travelled the other way; what was outward is inward now. */
  ParallelRun reversed() {
    List<Strand> turned = new ArrayList<>();
    for (Strand strand : strands) {
      turned.add(reversed(strand));
    }
    Collections.reverse(turned);
    return new ParallelRun(edge, index, source.reversed(), -distance, turned, !backwards);
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
    Origin origin = new Origin(backwards ? source.reversed() : source, index, 0, 1).endOnly(atEnd);
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
