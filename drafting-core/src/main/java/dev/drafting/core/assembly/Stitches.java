package dev.drafting.core.assembly;

import dev.drafting.core.assembly.SewnSeam.Run;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Seam;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * Divides the two sides of a seam into stretches that lie on one edge each, so that every stretch
 * has one partner. Sides of equally many edges are joined edge by edge; otherwise the ease is
 * spread evenly, and joints that fall closer together than the seam tolerance are made to meet.
 */
final class Stitches {
  private final Pattern pattern;

  private Stitches(Pattern pattern) {
    this.pattern = pattern;
  }

  /** A stretch of an edge, in millimetres along the edge as drawn. */
  record Stretch(EdgeRef edge, double from, double to) {}

  /** Two stretches sewn together, start to start or start to end. */
  record Stitch(Seam seam, Stretch first, Stretch second, boolean startToStart) {}

  /** Where both sides are cut, in millimetres from the start of each. */
  private record Cut(double first, double second) {}

  static List<Stitch> of(Pattern pattern, SewnSeam seam) {
    return new Stitches(pattern).of(seam);
  }

  private List<Stitch> of(SewnSeam seam) {
    Side first = new Side(seam.first());
    Side second = new Side(seam.second());
    List<Cut> cuts = new ArrayList<>();
    cuts.add(new Cut(0, 0));
    cuts.addAll(
        first.inner().size() == second.inner().size()
            ? oneByOne(first, second)
            : spread(first, second));
    cuts.add(new Cut(first.length(), second.length()));
    List<Stitch> stitches = new ArrayList<>();
    for (int i = 0; i + 1 < cuts.size(); i++) {
      Cut from = cuts.get(i);
      Cut to = cuts.get(i + 1);
      Run one = first.runAt((from.first + to.first) / 2);
      Run other = second.runAt((from.second + to.second) / 2);
      stitches.add(
          new Stitch(
              seam.seam(),
              first.stretch(from.first, to.first),
              second.stretch(from.second, to.second),
              one.asDrawn() == other.asDrawn()));
    }
    return stitches;
  }

  private static List<Cut> oneByOne(Side first, Side second) {
    List<Cut> cuts = new ArrayList<>();
    for (int i = 0; i < first.inner().size(); i++) {
      cuts.add(new Cut(first.inner().get(i), second.inner().get(i)));
    }
    return cuts;
  }

  private List<Cut> spread(Side first, Side second) {
    double scale = second.length() / first.length();
    double near = pattern.seamTolerance().toMm();
    TreeSet<Double> alone = new TreeSet<>(second.inner());
    List<Cut> cuts = new ArrayList<>();
    for (double joint : first.inner()) {
      double opposite = joint * scale;
      TreeSet<Double> close = new TreeSet<>(Comparator.comparing(s -> Math.abs(s - opposite)));
      close.addAll(alone.subSet(opposite - near, true, opposite + near, true));
      double partner = close.isEmpty() ? opposite : close.first();
      alone.remove(partner);
      cuts.add(new Cut(joint, partner));
    }
    alone.forEach(joint -> cuts.add(new Cut(joint / scale, joint)));
    cuts.sort(Comparator.comparingDouble(Cut::first));
    return cuts;
  }

  /** One side of a seam: edges end to end. */
  private final class Side {
    private final List<Run> runs;
    private final List<Double> ends = new ArrayList<>();

    Side(List<Run> runs) {
      this.runs = runs;
      double at = 0;
      for (Run run : runs) {
        at += lengthOf(run);
        ends.add(at);
      }
    }

    private double lengthOf(Run run) {
      return pattern.edge(run.edge()).length().toMm();
    }

    double length() {
      return ends.get(ends.size() - 1);
    }

    /** The joints between the edges, without the two ends. */
    List<Double> inner() {
      return ends.subList(0, ends.size() - 1);
    }

    private int indexAt(double along) {
      int i = 0;
      while (i + 1 < runs.size() && ends.get(i) <= along) {
        i++;
      }
      return i;
    }

    Run runAt(double along) {
      return runs.get(indexAt(along));
    }

    Stretch stretch(double from, double to) {
      int i = indexAt((from + to) / 2);
      Run run = runs.get(i);
      double length = lengthOf(run);
      double start = from - (ends.get(i) - length);
      double end = to - (ends.get(i) - length);
      return run.asDrawn()
          ? new Stretch(run.edge(), start, end)
          : new Stretch(run.edge(), length - end, length - start);
    }
  }
}
