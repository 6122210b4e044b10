package dev.drafting.knit.garment;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.template.Dimensions;
import java.util.List;

/**
 * Half of a front or a back on the fold. Neck and armhole meet the shoulder squarely and the
 * armhole and the hem meet the side squarely, so that both run on smoothly beyond the seams.
 */
final class TopHalf {
  private static final double SHORTER = 0.6;
  private static final double INTO_ARMHOLE = 0.55;
  private static final double INTO_HEM = 0.4;

  private final Point foldFoot = new Point(0, 0);
  private final Point foldTop;
  private final Point hemSide;
  private final Point underarm;
  private final Point tip;
  private final Point neckPoint;
  private final Vector outOfSide;
  private final Vector upAtShoulder;

  TopHalf(Dimensions given, String neckDepth) {
    double length = mm(given, "length");
    double quarter = mm(given, "chest") / 4;
    double side = length - mm(given, "armhole depth");
    double flare = mm(given, "flare");
    double strap = mm(given, "shoulder");
    double drop = mm(given, "shoulder drop");
    double along = Math.sqrt(strap * strap - drop * drop);
    neckPoint = new Point(mm(given, "neck width") / 2, length);
    tip = new Point(neckPoint.x() + along, length - drop);
    underarm = new Point(quarter, side);
    foldTop = new Point(0, length - mm(given, neckDepth));
    double sin = flare / side;
    double cos = Math.sqrt(1 - sin * sin);
    hemSide = new Point(quarter + flare, side - side * cos);
    outOfSide = new Vector(cos, sin);
    upAtShoulder = new Vector(drop / strap, along / strap);
  }

  private static double mm(Dimensions given, String name) {
    return given.length(name).toMm();
  }

  Piece piece(String name) {
    return Piece.of(
        name,
        List.of(
            Edge.onFold(Curve.line(foldTop, foldFoot)),
            Edge.of("hem", hem()),
            Edge.of("side", Curve.line(hemSide, underarm)),
            Edge.of("armhole", armhole()),
            Edge.of("shoulder", Curve.line(tip, neckPoint)),
            Edge.of("neck", neck())));
  }

  private Curve hem() {
    double handle = hemSide.x() * INTO_HEM;
    return smooth(foldFoot, new Vector(1, 0), handle, hemSide, outOfSide, handle);
  }

  private Curve armhole() {
    double out = (underarm.x() - tip.x()) * INTO_ARMHOLE + (tip.y() - underarm.y()) / 8;
    double up = (tip.y() - underarm.y()) * INTO_ARMHOLE;
    return smooth(underarm, outOfSide.negated(), out, tip, upAtShoulder, up);
  }

  private Curve neck() {
    double down = (neckPoint.y() - foldTop.y()) * INTO_ARMHOLE;
    double across = neckPoint.x() * SHORTER;
    return smooth(neckPoint, upAtShoulder.negated(), down, foldTop, new Vector(-1, 0), across);
  }

  private static Curve smooth(
      Point from, Vector out, double first, Point to, Vector in, double second) {
    return Curve.of(new Cubic(from, from.plus(out.times(first)), to.plus(in.times(-second)), to));
  }

  /** How long the armhole is. */
  Length armholeLength() {
    return armhole().length();
  }
}
