package dev.drafting.core.trace;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Transform;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Fits the strokes of a piece without a fold, where they lie. */
final class LyingOutline {
  private LyingOutline() {}

  static Outline of(Truing truing) {
    String piece = truing.tracing().piece();
    List<Stroke> strokes =
        truing.tracing().edges().stream().map(Stroke::of).collect(Collectors.toList());
    if (strokes.size() < 2) {
      throw DraftingException.of("a piece without a fold has one edge only")
          .at(piece)
          .accepted("two edges or more, which begin and end at corners");
    }
    List<Stroke> outline = Joining.whole(piece, strokes);
    Noise noise = truing.noise(outline);
    List<FittedEdge> edges = new ArrayList<>();
    for (Stroke stroke : outline) {
      EdgeFit fit =
          truing.fitter(stroke.name, noise, List.of(stroke.samples)).fit(stroke.samples, Ends.FREE);
      TracedSide side = new TracedSide("", stroke, fit);
      edges.add(new FittedEdge(stroke.name, Ends.FREE, fit, List.of(side), null));
    }
    return new Outline(piece, edges, noise, Transform.identity(), false, false);
  }
}
