package dev.drafting.core.trace;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Length;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Measures how the traced points scatter about the trued edge. */
final class Measuring {
  private final FittedEdge edge;
  private final Track trued;
  private final Transform lower;

  Measuring(FittedEdge edge, Track trued, Transform lower) {
    this.edge = edge;
    this.trued = trued;
    this.lower = lower;
  }

  EdgeReport report(double lengthDeviation) {
    int counting = 0;
    double squares = 0;
    double largest = 0;
    double traced = 0;
    boolean folded = edge.lopsidedness() != null;
    Set<RefusedPoint> refused = new LinkedHashSet<>();
    Set<Point> points = new HashSet<>();
    for (TracedSide side : edge.sides()) {
      Samples samples = side.fit().samples;
      traced += way(samples, side.fit().kept);
      for (int i = 0; i < samples.size(); i++) {
        // A stroke across the fold was cut in two at one of its points: that one counts once.
        points.add(side.stroke().point(i));
        double x = folded ? Math.abs(samples.x[i]) : samples.x[i];
        double off = trued.distance(x, samples.y[i]);
        if (side.fit().kept[i]) {
          counting++;
          squares += off * off;
          largest = Math.max(largest, off);
        } else {
          Point placed = lower.apply(new Point(samples.x[i], samples.y[i]));
          refused.add(RefusedPoint.of(side.stroke().point(i), placed, Length.mm(off)));
        }
      }
    }
    return new EdgeReport(
        edge.name(),
        points.size(),
        List.copyOf(refused),
        Length.mm(edge.fit().noise.mm),
        Length.mm(Math.sqrt(squares / counting)),
        Length.mm(largest),
        Length.mm(folded ? traced / 2 : traced),
        Curve.of(trued.segments()).length(),
        Length.mm(lengthDeviation),
        edge.fit().form.cubics());
  }

  private static double way(Samples samples, boolean[] kept) {
    double way = 0;
    int before = -1;
    for (int i = 0; i < kept.length; i++) {
      if (kept[i]) {
        way +=
            before < 0
                ? 0
                : Math.hypot(samples.x[i] - samples.x[before], samples.y[i] - samples.y[before]);
        before = i;
      }
    }
    return way;
  }
}
