package dev.drafting.core.offset;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Gathers strands that follow each other along the same edge or corner into parts. */
final class PartBuilder {
  private static final double SAME_PARAMETER = 1e-9;

  private final List<OffsetEdge> edges;
  private final Map<Integer, double[]> starts = new HashMap<>();

  PartBuilder(List<OffsetEdge> edges) {
    this.edges = edges;
  }

  List<OffsetPart> parts(List<Strand> strands) {
    List<OffsetPart> parts = new ArrayList<>();
    List<Strand> run = new ArrayList<>();
    for (Strand strand : strands) {
      if (!run.isEmpty() && !continues(run.get(run.size() - 1), strand)) {
        parts.add(part(run));
        run.clear();
      }
      run.add(strand);
    }
    parts.add(part(run));
    return parts;
  }

  private static boolean continues(Strand one, Strand two) {
    if (one.tag() != two.tag() || one.edge() != two.edge()) {
      return false;
    }
    Origin a = one.origin();
    Origin b = two.origin();
    if (a == null || b == null) {
      return a == null && b == null;
    }
    return a.index() == b.index()
        ? Math.abs(b.from() - a.to()) < SAME_PARAMETER
        : b.index() > a.index() && a.to() == 1 && b.from() == 0;
  }

  private OffsetPart part(List<Strand> run) {
    Strand first = run.get(0);
    List<Segment> segments = run.stream().map(Strand::segment).toList();
    OffsetEdge edge = edges.get(first.edge());
    return new OffsetPart(
        first.tag(),
        first.edge(),
        edge.name(),
        Curve.of(segments),
        along(first.edge(), first.origin(), true),
        along(first.edge(), run.get(run.size() - 1).origin(), false));
  }

  private Length along(int edge, @Nullable Origin origin, boolean start) {
    if (origin == null) {
      return Length.ZERO;
    }
    double t = start ? origin.from() : origin.to();
    double before = starts(edge)[origin.index()];
    return Length.mm(before).plus(origin.segment().lengthTo(t));
  }

  private double[] starts(int edge) {
    return starts.computeIfAbsent(
        edge,
        number -> {
          List<Segment> segments = edges.get(number).curve().segments();
          double[] all = new double[segments.size()];
          for (int i = 1; i < all.length; i++) {
            all[i] = all[i - 1] + segments.get(i - 1).length().toMm();
          }
          return all;
        });
  }
}
