package dev.drafting.knit.garment;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Notch;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.template.Dimensions;
import java.util.List;

/**
 * Half of a front or a back on the fold, to which a raglan sleeve is sewn. The neck is drawn in one
 * go to the neck point on the shoulder, square to the overarm line of the sleeve; where the raglan
 * line meets it, the rest of it belongs to the sleeve.
 */
final class RaglanHalf {
  private static final double DOWN_NECK = 0.55;
  private static final double ACROSS_NECK = 0.6;
  private static final double BETWEEN_NOTCHES = 1 / 30.0;
  private static final double BULGE = Math.toRadians(5);

  private final Point underarm;
  private final Point neckPoint;
  private final double slope;
  private final Curve neck;
  private final Curve shoulderNeck;
  private final Curve raglan;

  /** The raglan line meets the neck at this share of its way from the neck point to the fold. */
  RaglanHalf(Dimensions given, String neckDepth, double share) {
    double top = given.length("length").toMm();
    this.underarm =
        new Point(given.length("chest").toMm() / 4, top - given.length("armhole depth").toMm());
    this.neckPoint = new Point(given.length("neck width").toMm() / 2, top);
    this.slope = slope(given.length("sleeve width").toMm());
    Curve whole = neck(new Point(0, top - given.length(neckDepth).toMm()));
    Length along = whole.length().times(share);
    this.shoulderNeck = whole.split(along).get(0);
    this.neck = whole.split(along).get(1);
    this.raglan = raglan(neck.start());
  }

  /** How far the overarm line falls, so that the sleeve is as wide as given at the underarm. */
  private double slope(double sleeveWidth) {
    Vector way = underarm.minus(neckPoint);
    double distance = way.length().toMm();
    return -way.angle().toRadians() - Math.asin(Math.min(1, sleeveWidth / distance));
  }

  private Curve neck(Point centre) {
    Vector down = new Vector(-Math.sin(slope), -Math.cos(slope));
    return Curve.of(
        new Cubic(
            neckPoint,
            neckPoint.plus(down.times(DOWN_NECK * (neckPoint.y() - centre.y()))),
            new Point(ACROSS_NECK * neckPoint.x(), centre.y()),
            centre));
  }

  /** Square to the side, and bulging a little before it comes to the neck. */
  private Curve raglan(Point end) {
    Vector chord = end.minus(underarm);
    return raglan(underarm, new Vector(-1, 0), end, turned(chord.unit(), BULGE));
  }

  private static Vector turned(Vector way, double radians) {
    return Transform.rotation(new Point(0, 0), Angle.radians(radians)).apply(way);
  }

  static Curve raglan(Point from, Vector out, Point to, Vector in) {
    double chord = from.distanceTo(to).toMm();
    return Curve.of(
        new Cubic(from, from.plus(out.times(0.2 * chord)), to.plus(in.times(-0.35 * chord)), to));
  }

  /** With as many notches at its raglan line as tell front and back apart. */
  Piece piece(String name, int notches) {
    Point foot = new Point(0, 0);
    Point hem = new Point(underarm.x(), 0);
    Piece piece =
        Piece.of(
            name,
            List.of(
                Edge.onFold(Curve.line(neck.end(), foot)),
                Edge.of("hem", Curve.line(foot, hem)),
                Edge.of("side", Curve.line(hem, underarm)),
                Edge.of("raglan", raglan),
                Edge.of("neck", neck)));
    return notched(piece, "raglan", notches, true);
  }

  /** Notches a third of the way up from the underarm, where the raglan edge starts or ends. */
  static Piece notched(Piece piece, String edge, int notches, boolean fromStart) {
    Length length = piece.edge(edge).length();
    Piece notched = piece;
    for (int i = 0; i < notches; i++) {
      Length up = length.times(1 / 3.0 + i * BETWEEN_NOTCHES);
      Length along = fromStart ? up : length.minus(up);
      notched = notched.withNotch(Notch.of(edge, along, "sleeve"));
    }
    return notched;
  }

  /** What of the neck belongs to the sleeve, from the overarm line on, as it lies on the sleeve. */
  Curve sleeveNeck() {
    return shoulderNeck.map(ontoSleeve());
  }

  /** The way in which the raglan line comes to the neck, as it lies on the sleeve. */
  Vector arrivingAtNeck() {
    return ontoSleeve().apply(raglan.directionAt(raglan.length()));
  }

  Length raglanLength() {
    return raglan.length();
  }

  /** Onto the right half of a sleeve that hangs down from its neck point at (0, 0). */
  private Transform ontoSleeve() {
    return Transform.translation(new Point(0, 0).minus(neckPoint))
        .then(Transform.rotation(new Point(0, 0), Angle.radians(slope - Math.PI / 2)))
        .then(Transform.mirrorInFold());
  }
}
