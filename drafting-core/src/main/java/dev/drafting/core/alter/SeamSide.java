package dev.drafting.core.alter;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import java.util.List;
import java.util.stream.Collectors;

/** One of the two edges of a seam on its piece. */
record SeamSide(Piece piece, int index) {

  /** Both edges of a seam, or the one that is sewn to its mirror image. */
  static List<SeamSide> of(Pattern pattern, String name) {
    Seam seam =
        pattern.seams().stream()
            .filter(one -> one.name().equals(name))
            .findFirst()
            .orElseThrow(
                () ->
                    DraftingException.of("there is no such seam")
                        .at(pattern.name())
                        .value(name)
                        .accepted(
                            pattern.seams().stream()
                                .map(Seam::name)
                                .collect(Collectors.joining(", "))));
    if (seam.first().size() > 1 || seam.second().size() > 1) {
      throw DraftingException.of("a seam of several edges cannot be moved as one")
          .at("seam " + name)
          .value(seam)
          .accepted("a seam with one edge on either side");
    }
    SeamSide first = of(pattern, seam.first().get(0));
    return seam.isMirrored() ? List.of(first) : List.of(first, of(pattern, seam.second().get(0)));
  }

  static SeamSide of(Pattern pattern, EdgeRef ref) {
    Piece piece = pattern.piece(ref.piece());
    return new SeamSide(piece, piece.edges().indexOf(piece.edge(ref.edge())));
  }

  Edge edge() {
    return piece.edges().get(index);
  }

  Curve curve() {
    return edge().curve();
  }

  EdgeRef ref() {
    return new EdgeRef(piece.name(), edge().name());
  }

  /** The corner at an end, by the edge that arrives there. */
  EdgeRef corner(boolean start) {
    int n = piece.edges().size();
    int arriving = start ? (index + n - 1) % n : index;
    return new EdgeRef(piece.name(), piece.edges().get(arriving).name());
  }

  Point end(boolean start) {
    return start ? curve().start() : curve().end();
  }

  /** Whether an end of the seam is where the edge starts. */
  boolean isStart(SeamEnd end) {
    return switch (end) {
      case UPPER -> up(curve().start()) > up(curve().end());
      case LOWER -> up(curve().start()) <= up(curve().end());
      case INNER -> aside(curve().start()) <= aside(curve().end());
      case OUTER -> aside(curve().start()) > aside(curve().end());
    };
  }

  /** The unit vector along the grain. */
  Vector grain() {
    return Vector.at(piece.grain());
  }

  /** How far along the grain. */
  double up(Point point) {
    return point.minus(new Point(0, 0)).dot(grain());
  }

  /** How far from the middle of the piece. */
  private double aside(Point point) {
    Box box = piece.outline().bounds();
    double middle = piece.isOnFold() ? 0 : (box.minX() + box.maxX()) / 2;
    return Math.abs(point.x() - middle);
  }

  /**
   * The unit vector out of the piece, square to the grain for an edge along it, along the grain for
   * an edge across it.
   */
  Vector outward() {
    Vector chord = curve().end().minus(curve().start());
    Vector outside = chord.left().negated();
    boolean alongGrain = Math.abs(chord.dot(grain())) >= Math.abs(chord.cross(grain()));
    Vector axis = alongGrain ? grain().left() : grain();
    return axis.times(Math.signum(outside.dot(axis)));
  }

  /** The unit vector from an end into the edge. */
  Vector inwards(boolean start) {
    Curve curve = curve();
    return start ? curve.directionAt(Length.ZERO) : curve.directionAt(curve.length()).negated();
  }
}
