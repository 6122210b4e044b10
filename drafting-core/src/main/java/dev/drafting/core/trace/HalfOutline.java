package dev.drafting.core.trace;

import dev.drafting.core.geometry.Transform;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Fits the strokes of a half that was traced on the fold, where they lie. */
final class HalfOutline {
  private HalfOutline() {}

  static Outline of(Truing truing) {
    String piece = truing.tracing().piece();
    List<Stroke> outline =
        Joining.half(
            piece, truing.tracing().edges().stream().map(Stroke::of).collect(Collectors.toList()));
    Noise noise = truing.noise(outline);
    List<FittedEdge> edges = new ArrayList<>();
    for (int i = 0; i < outline.size(); i++) {
      Stroke stroke = outline.get(i);
      Ends ends = truing.ends(stroke.name, i == 0, i == outline.size() - 1);
      EdgeFitter fitter = truing.fitter(stroke.name, noise, List.of(stroke.samples));
      EdgeFit fit = fitter.fit(stroke.samples, ends);
      TracedSide side = new TracedSide("", stroke, fit);
      FittedEdge edge = new FittedEdge(stroke.name, ends, fit, List.of(side), null);
      edges.add(
          edge.isPerhapsPointed() ? edge.comparedWith(fitter.again(fit, ends.pointed())) : edge);
    }
    return new Outline(piece, edges, noise, Transform.identity(), true, false);
  }
}
