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
    List<Ends> ends = new ArrayList<>();
    List<EdgeFitter> fitters = new ArrayList<>();
    List<EdgeFit> fits = new ArrayList<>();
    for (int i = 0; i < outline.size(); i++) {
      Stroke stroke = outline.get(i);
      ends.add(truing.ends(stroke.name, i == 0, i == outline.size() - 1));
      fitters.add(truing.fitter(stroke.name, noise, List.of(stroke.samples)));
      fits.add(fitters.get(i).fit(stroke.samples, ends.get(i)));
    }
    fits =
        SharedCorners.kept(
            fits, false, (edge, samples) -> fitters.get(edge).fit(samples, ends.get(edge)));
    List<FittedEdge> edges = new ArrayList<>();
    for (int i = 0; i < outline.size(); i++) {
      Stroke stroke = outline.get(i);
      EdgeFit fit = fits.get(i);
      TracedSide side = new TracedSide("", stroke, fit);
      FittedEdge edge = new FittedEdge(stroke.name, ends.get(i), fit, List.of(side), null);
      edges.add(
          edge.isPerhapsPointed()
              ? edge.comparedWith(fitters.get(i).again(fit, ends.get(i).pointed()))
              : edge);
    }
    return new Outline(piece, edges, noise, Transform.identity(), true, false);
  }
}
