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
    SharedCorners.Fitter fitter =
        (edge, samples) ->
            truing.fitter(outline.get(edge).name, noise, List.of(samples)).fit(samples, Ends.FREE);
    List<EdgeFit> fits = new ArrayList<>();
    for (int i = 0; i < outline.size(); i++) {
      fits.add(fitter.fit(i, outline.get(i).samples));
    }
    fits = SharedCorners.kept(fits, true, fitter);
    List<FittedEdge> edges = new ArrayList<>();
    for (int i = 0; i < outline.size(); i++) {
      Stroke stroke = outline.get(i);
      TracedSide side = new TracedSide("", stroke, fits.get(i));
      edges.add(new FittedEdge(stroke.name, Ends.FREE, fits.get(i), List.of(side), null));
    }
    return new Outline(piece, edges, noise, Transform.identity(), false, false);
  }
}
