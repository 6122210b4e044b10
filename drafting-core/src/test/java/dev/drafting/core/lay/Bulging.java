package dev.drafting.core.lay;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.JtsBridge;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Piece;
import java.util.List;
import java.util.Random;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;

/** Pieces to be laid whose sides bulge in and out, and where they lie. Invented data. */
final class Bulging {
  private Bulging() {}

  static Piece piece(String name, Random random) {
    double w = 80 + 300 * random.nextDouble();
    double h = 80 + 400 * random.nextDouble();
    return Piece.of(
        name,
        List.of(
            Edge.of("hem", Curve.line(new Point(0, 0), new Point(w, 0))),
            Edge.of("side", cubic(w, 0, 1.1 * w, 0.3 * h, 0.8 * w, 0.6 * h, 0.9 * w, h)),
            Edge.of("top", Curve.line(new Point(0.9 * w, h), new Point(0.2 * w, 0.9 * h))),
            Edge.of(
                "other side", cubic(0.2 * w, 0.9 * h, 0.1 * w, 0.6 * h, -0.1 * w, 0.3 * h, 0, 0))));
  }

  private static Curve cubic(double... c) {
    return Curve.of(
        new Cubic(
            new Point(c[0], c[1]),
            new Point(c[2], c[3]),
            new Point(c[4], c[5]),
            new Point(c[6], c[7])));
  }

  static Piece rectangle(String name, double w, double h) {
    return Piece.of(
        name,
        List.of(
            Edge.of("hem", Curve.line(new Point(0, 0), new Point(w, 0))),
            Edge.of("side", Curve.line(new Point(w, 0), new Point(w, h))),
            Edge.of("top", Curve.line(new Point(w, h), new Point(0, h))),
            Edge.of("other side", Curve.line(new Point(0, h), new Point(0, 0)))));
  }

  static boolean covers(LaidPiece piece, Remnant remnant) {
    return JtsBridge.toPolygon(piece.cutLine(), Length.mm(0.01))
        .relate(new GeometryFactory().toGeometry(box(remnant)), "T********");
  }

  static boolean meet(Remnant one, Remnant other) {
    Envelope both = box(one).intersection(box(other));
    return !both.isNull() && both.getArea() > 1e-6;
  }

  private static Envelope box(Remnant remnant) {
    double x = remnant.fromEnd().toMm();
    double y = remnant.fromSide().toMm();
    return new Envelope(x, x + remnant.along().toMm(), y, y + remnant.across().toMm());
  }
}
