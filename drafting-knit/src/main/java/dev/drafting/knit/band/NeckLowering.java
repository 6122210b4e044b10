package dev.drafting.knit.band;

import dev.drafting.core.assembly.Opening;
import dev.drafting.core.assembly.OpeningPart;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.measure.Length;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How far a front neck must be lowered at its centre to become longer by some length. */
final class NeckLowering {
  private static final Length FLATTENING = Length.mm(0.05);
  private static final double DEEPEST_MM = 200;

  private NeckLowering() {}

  /**
   * The drop, found on the front's own edge: its points go down in proportion to their depth below
   * the shoulder.
   *
   * @return whole millimetres, or empty if there is no front or 20 cm are not enough
   */
  static Optional<Length> by(Opening opening, Length longer) {
    List<Polyline> front =
        opening.parts().stream()
            .filter(part -> part.edge().piece().toLowerCase(Locale.ROOT).contains("front"))
            .map(OpeningPart::curve)
            .map(curve -> curve.flatten(FLATTENING))
            .toList();
    double wanted = longer.toMm();
    if (front.isEmpty() || growth(front, DEEPEST_MM) < wanted) {
      return Optional.empty();
    }
    int drop = 1;
    while (growth(front, drop) < wanted) {
      drop++;
    }
    return Optional.of(Length.mm(drop));
  }

  private static double growth(List<Polyline> edges, double drop) {
    double top = Double.NEGATIVE_INFINITY;
    double bottom = Double.POSITIVE_INFINITY;
    for (Polyline edge : edges) {
      for (int i = 0; i < edge.size(); i++) {
        top = Math.max(top, edge.y(i));
        bottom = Math.min(bottom, edge.y(i));
      }
    }
    if (top - bottom < 1) {
      return 0;
    }
    double factor = 1 + drop / (top - bottom);
    return edges.stream().mapToDouble(edge -> length(edge, factor) - length(edge, 1)).sum();
  }

  private static double length(Polyline edge, double factor) {
    double length = 0;
    for (int i = 1; i < edge.size(); i++) {
      length += Math.hypot(edge.x(i) - edge.x(i - 1), factor * (edge.y(i) - edge.y(i - 1)));
    }
    return length;
  }
}
