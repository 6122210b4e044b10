package dev.drafting.core.trace;

import dev.drafting.core.geometry.Transform;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/** Fits the strokes of a whole piece, folds it along its best fold line and averages the halves. */
final class WholeOutline {
  private static final int FEWEST_BESIDE_FOLD = 6;

  private final Truing truing;
  private final List<Stroke> loop;
  private final FoldLine rough;
  private final Noise noise;

  private WholeOutline(Truing truing) {
    this.truing = truing;
    String piece = truing.tracing().piece();
    List<Stroke> joined =
        Joining.whole(
            piece, truing.tracing().edges().stream().map(Stroke::of).collect(Collectors.toList()));
    FoldLine first = FoldLine.fromCorners(piece, joined);
    // Whichever stroke came first, the outline now starts at the lower end of the fold.
    Collections.rotate(joined, -(int) Math.ceil(first.lowerEnd(joined)));
    this.loop = splitAtFold(joined, FoldLine.fromCorners(piece, joined));
    this.rough = FoldLine.fromCorners(piece, loop);
    this.noise = truing.noise(loop);
  }

  static Outline of(Truing truing) {
    return new WholeOutline(truing).averaged();
  }

  /**
   * A stroke across the fold is a right edge and a left one, unless it has too few points to say
   * how it curves; what comes to a point at the fold is two edges in any case.
   */
  private List<Stroke> splitAtFold(List<Stroke> joined, FoldLine fold) {
    List<Stroke> parts = new ArrayList<>();
    for (int i = 0; i < joined.size(); i++) {
      Stroke stroke = joined.get(i);
      int last = stroke.samples.size() - 1;
      int fewest = truing.isPointed(stroke.name) ? 1 : FEWEST_BESIDE_FOLD;
      if (fold.opposite(i, joined.size()) == i && last >= 2 * fewest) {
        int at = stroke.map(fold.frame).nearestToFold();
        parts.addAll(at >= fewest && last - at >= fewest ? stroke.split(at) : List.of(stroke));
      } else {
        parts.add(stroke);
      }
    }
    return parts;
  }

  private Outline averaged() {
    List<EdgeFit> fits = new ArrayList<>();
    for (Stroke stroke : loop) {
      fits.add(fitter(stroke.name).fit(stroke.map(rough.frame).samples, Ends.FREE));
    }
    fits =
        SharedCorners.kept(
            fits, true, (edge, points) -> fitter(loop.get(edge).name).fit(points, Ends.FREE));
    List<Track> roughly = fits.stream().map(EdgeFit::track).collect(Collectors.toList());
    FoldLine fold = rough.refined(roughly);
    Transform rest = rough.frame.inverse().then(fold.frame);
    List<EdgeFit> placed = new ArrayList<>();
    List<Track> edges = new ArrayList<>();
    for (int i = 0; i < loop.size(); i++) {
      placed.add(fits.get(i).placed(loop.get(i).map(fold.frame).samples));
      edges.add(roughly.get(i).map(rest::apply));
    }
    List<String> names = loop.stream().map(stroke -> stroke.name).collect(Collectors.toList());
    List<FittedEdge> half =
        fitted(new Halves(names, placed, edges, fold).averaged(fold.lowerEnd(loop)), placed);
    return new Outline(truing.tracing().piece(), half, noise, fold.frame, true, true);
  }

  private List<FittedEdge> fitted(List<Halves.Half> halves, List<EdgeFit> placed) {
    List<FittedEdge> edges = new ArrayList<>();
    for (int i = 0; i < halves.size(); i++) {
      Halves.Half half = halves.get(i);
      Ends ends = truing.ends(half.name, i == 0, i == halves.size() - 1);
      EdgeFitter fitter = fitter(half.name).vetted();
      EdgeFit fit = fitter.fit(half.samples, ends);
      List<TracedSide> sides = new ArrayList<>();
      for (int stroke : half.strokes) {
        String side = half.strokes.size() == 1 ? "" : sides.isEmpty() ? "right " : "left ";
        sides.add(new TracedSide(side, loop.get(stroke), placed.get(stroke)));
      }
      FittedEdge edge = new FittedEdge(half.name, ends, fit, sides, half.lopsidedness);
      edges.add(
          edge.isPerhapsPointed() ? edge.comparedWith(fitter.again(fit, ends.pointed())) : edge);
    }
    return edges;
  }

  private EdgeFitter fitter(String edge) {
    List<Samples> own =
        loop.stream()
            .filter(stroke -> stroke.name.equals(edge))
            .map(stroke -> stroke.samples)
            .collect(Collectors.toList());
    return truing.fitter(edge, noise, own);
  }
}
