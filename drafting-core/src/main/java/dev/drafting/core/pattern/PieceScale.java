package dev.drafting.core.pattern;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.measure.Length;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

/**
 * A piece made wider square to its grain and longer along it, about the origin, so that a fold
 * stays on x = 0.
 */
record PieceScale(double ux, double uy, double across, double along) implements Serializable {
  /** What an arc may be off by when it becomes cubics. */
  private static final Length FITTING = Length.mm(0.001);

  private static final double ASLANT = 1e-9;

  /** The unit vector (ux, uy) is the grain. */
  static PieceScale of(Piece piece, double across, double along) {
    check(piece, "across", across);
    check(piece, "along", along);
    double cos = Math.cos(piece.grain().toRadians());
    double sin = Math.sin(piece.grain().toRadians());
    if (piece.isOnFold() && across != along && Math.min(Math.abs(cos), Math.abs(sin)) > ASLANT) {
      throw DraftingException.of("a piece on the fold with its grain aslant would lose its fold")
          .at(piece.name())
          .value(piece.grain())
          .accepted("a grain along the fold or square to it");
    }
    return new PieceScale(rounded(cos), rounded(sin), across, along);
  }

  /** The cosine of a right angle is not quite nothing. */
  private static double rounded(double part) {
    return Math.abs(part) < ASLANT ? 0 : part;
  }

  private static void check(Piece piece, String way, double factor) {
    if (!(factor >= 0.2 && factor <= 5)) {
      throw DraftingException.of("the factor " + way + " is out of range")
          .at(piece.name())
          .value(factor)
          .accepted("0.2 to 5");
    }
  }

  Piece of(Piece piece) {
    List<Edge> edges = new ArrayList<>();
    for (Edge edge : piece.edges()) {
      edges.add(edge.redrawn(edge.name(), of(edge.curve())));
    }
    PieceDetails details =
        piece
            .details()
            .withNotches(CornerMoves.notches(piece, edges))
            .withMarkings(
                piece.markings().stream()
                    .map(marking -> MarkingLine.of(marking.label(), of(marking.curve())))
                    .toList());
    return Piece.of(piece.name(), edges, details);
  }

  private Curve of(Curve curve) {
    List<Segment> segments = new ArrayList<>();
    for (Segment segment : curve.segments()) {
      if (segment instanceof Line line) {
        segments.add(new Line(of(line.start()), of(line.end())));
      } else if (segment instanceof Cubic cubic) {
        segments.add(of(cubic));
      } else {
        ((Arc) segment).toCubics(FITTING).forEach(cubic -> segments.add(of(cubic)));
      }
    }
    return Curve.of(segments);
  }

  private Cubic of(Cubic cubic) {
    return new Cubic(
        of(cubic.start()), of(cubic.control1()), of(cubic.control2()), of(cubic.end()));
  }

  /** Where a point of the piece comes to lie. */
  Point of(Point point) {
    double withGrain = along * (point.x() * ux + point.y() * uy);
    double toRight = across * (point.x() * uy - point.y() * ux);
    return new Point(withGrain * ux + toRight * uy, withGrain * uy - toRight * ux);
  }
}
