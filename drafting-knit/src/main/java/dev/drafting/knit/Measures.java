package dev.drafting.knit;

import dev.drafting.core.assembly.Opening;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Corner;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.knit.band.Strip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The measures of the finished garment. */
final class Measures {
  private static final Length FLATTENING = Length.mm(0.01);

  private Measures() {}

  static List<Measure> of(Pattern pattern, List<Opening> openings) {
    List<Measure> measures = new ArrayList<>();
    chestGirth(pattern)
        .ifPresent(
            girth -> {
              measures.add(new Measure("chest, all round", girth));
              measures.add(new Measure("chest, lying flat", girth.dividedBy(2)));
            });
    for (Piece piece : pattern.pieces()) {
      piece.edges().stream()
          .filter(Edge::isOnFold)
          .forEach(
              fold ->
                  measures.add(
                      new Measure(piece.name() + ", length at the centre", fold.length())));
    }
    for (Seam seam : pattern.seams()) {
      measures.add(new Measure(seam.name() + " seam", length(pattern, seam)));
    }
    for (Opening opening : openings) {
      measures.add(new Measure(opening.name() + ", finished edge", opening.length()));
    }
    return List.copyOf(measures);
  }

  /** Those of the garment, then of its strips. */
  static List<Measure> withStrips(List<Measure> garment, List<Strip> strips) {
    List<Measure> lengths = new ArrayList<>(garment);
    for (Strip strip : strips) {
      lengths.add(new Measure(strip.name() + ", loop", strip.loop()));
      lengths.add(new Measure(strip.name() + ", cut length", strip.cutLength()));
      lengths.add(new Measure(strip.name() + ", cut width", strip.cutWidth()));
    }
    return lengths;
  }

  static Length length(Pattern pattern, Seam seam) {
    Length length = Length.ZERO;
    for (EdgeRef edge : seam.first()) {
      length = length.plus(pattern.edge(edge).length());
    }
    return length;
  }

  /**
   * The girth where the armholes end at the sides: the width of every piece there that has an edge
   * named armhole or raglan meeting one named side.
   */
  static Optional<Length> chestGirth(Pattern pattern) {
    return pattern.pieces().stream()
        .flatMap(piece -> chestWidth(piece).stream())
        .reduce(Length::plus);
  }

  private static Optional<Length> chestWidth(Piece piece) {
    return piece.corners().stream()
        .filter(Measures::isUnderarm)
        .findFirst()
        .map(corner -> widthAt(piece, corner.at().y()));
  }

  private static boolean isUnderarm(Corner corner) {
    return (isArmhole(corner.before()) && corner.after().contains("side"))
        || (corner.before().contains("side") && isArmhole(corner.after()));
  }

  private static boolean isArmhole(String edge) {
    return edge.contains("armhole") || edge.contains("raglan");
  }

  private static Length widthAt(Piece piece, double y) {
    Polyline outline = piece.outline().flatten(FLATTENING);
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i + 1 < outline.size(); i++) {
      double y0 = outline.y(i);
      double y1 = outline.y(i + 1);
      if (Math.min(y0, y1) <= y && y <= Math.max(y0, y1)) {
        double share = y1 == y0 ? 0 : (y - y0) / (y1 - y0);
        double x = outline.x(i) + share * (outline.x(i + 1) - outline.x(i));
        least = Math.min(least, x);
        most = Math.max(most, x);
      }
    }
    Length width = piece.isOnFold() ? Length.mm(2 * most) : Length.mm(most - least);
    return width.times(piece.cutting().pieces());
  }
}
