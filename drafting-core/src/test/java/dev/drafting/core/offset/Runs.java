package dev.drafting.core.offset;

import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import java.util.ArrayList;
import java.util.List;

/** Parallels before they are brought together at their corner. */
final class Runs {
  private static final double TOLERANCE = 0.01;

  private Runs() {}

  /** The parallel of segments that run on smoothly, at a distance to the right. */
  static ParallelRun beside(double distance, Segment... sources) {
    List<ParallelRun> runs = new ArrayList<>();
    for (int i = 0; i < sources.length; i++) {
      runs.add(ParallelRun.of(sources[i], 0, i, distance, TOLERANCE));
    }
    return ParallelRun.joined(runs);
  }

  /** The parallel of a straight line. */
  static ParallelRun line(double distance, double x0, double y0, double x1, double y1) {
    return beside(distance, new Line(new Point(x0, y0), new Point(x1, y1)));
  }

  /** A run of straight strands along the points themselves, all running forwards. */
  static ParallelRun along(double distance, double... xy) {
    List<Strand> strands = new ArrayList<>();
    for (int i = 0; i + 3 < xy.length; i += 2) {
      Line line = new Line(new Point(xy[i], xy[i + 1]), new Point(xy[i + 2], xy[i + 3]));
      strands.add(Strand.parallel(line, 0, new Origin(line, i / 2, 0, 1)));
    }
    return of(distance, strands);
  }

  static ParallelRun of(double distance, List<Strand> strands) {
    int last = strands.size() - 1;
    return new ParallelRun(
        0,
        new ParallelRun.Source(strands.get(0).segment(), 0),
        new ParallelRun.Source(strands.get(last).segment(), last),
        distance,
        strands,
        false);
  }

  /** The same run with some of its strands turned back. */
  static ParallelRun turnedBack(ParallelRun run, Integer... turned) {
    List<Strand> strands = turnedBack(run.strands(), turned);
    return new ParallelRun(
        run.edge(), run.first(), run.last(), run.distance(), strands, run.backwards());
  }

  /** The same strands, some of them turned back. */
  static List<Strand> turnedBack(List<Strand> strands, Integer... turned) {
    List<Strand> back = new ArrayList<>();
    for (int i = 0; i < strands.size(); i++) {
      Strand strand = strands.get(i);
      back.add(
          new Strand(
              strand.segment(),
              strand.tag(),
              strand.edge(),
              strand.origin(),
              List.of(turned).contains(i)));
    }
    return back;
  }

  static CornerShape shape(ParallelRun a, ParallelRun b) {
    return CornerShape.of(a.sourceEnd(), a.endWay(), b.startWay(), a.distance(), b.distance());
  }
}
