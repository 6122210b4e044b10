package dev.drafting.knit.garment;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Notch;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.template.Dimensions;
import java.util.List;

/**
 * Half of a front or a back on the fold, whose shoulder reaches over that of the other: its neck
 * edge runs across the shoulder line down to the armhole. The lap is straight and square to the
 * shoulder line, half of it before and half behind that.
 */
final class LappedHalf {
  private static final double INTO_ARMHOLE = 0.55;
  private static final double INTO_FLAP = 0.35;

  private final Point underarm;
  private final Point foldTop;
  private final Point neckPoint;
  private final Point lapStart;
  private final Point lapEnd;
  private final Vector upAtShoulder;

  LappedHalf(Dimensions given, String neckDepth) {
    double top = given.length("length").toMm();
    double along = given.length("shoulder").toMm();
    double drop = given.length("shoulder drop").toMm();
    double level = Math.sqrt(along * along - drop * drop);
    this.underarm =
        new Point(given.length("chest").toMm() / 4, top - given.length("armhole depth").toMm());
    this.foldTop = new Point(0, top - given.length(neckDepth).toMm());
    this.neckPoint = new Point(given.length("neck width").toMm() / 2, top);
    this.upAtShoulder = new Vector(drop / along, level / along);
    Point tip = new Point(neckPoint.x() + level, top - drop);
    Vector half = upAtShoulder.times(given.length("lap").toMm() / 2);
    this.lapStart = tip.plus(half.negated());
    this.lapEnd = tip.plus(half);
  }

  Piece piece(String name) {
    Point foot = new Point(0, 0);
    Point hem = new Point(underarm.x(), 0);
    return Piece.of(
            name,
            List.of(
                Edge.onFold(Curve.line(foldTop, foot)),
                Edge.of("hem", Curve.line(foot, hem)),
                Edge.of("side", Curve.line(hem, underarm)),
                Edge.of("armhole", armhole()),
                Edge.of("lap", Curve.line(lapStart, lapEnd)),
                Edge.of("neck", neck())))
        .withNotch(Notch.of("lap", Length.ZERO, "lap"));
  }

  /** Square to the side, and straight on into the lap. */
  private Curve armhole() {
    double rise = lapStart.y() - underarm.y();
    double in = (underarm.x() - lapStart.x()) * INTO_ARMHOLE + rise / 8;
    return Curve.of(
        new Cubic(
            underarm,
            underarm.plus(new Vector(-in, 0)),
            lapStart.plus(upAtShoulder.times(-INTO_ARMHOLE * rise)),
            lapStart));
  }

  /** Square to the lap, across the shoulder line at the neck point, then a parabola to the fold. */
  private Curve neck() {
    Point turn = new Point(neckPoint.x() / 2, foldTop.y());
    Vector down = turn.minus(neckPoint).unit();
    double flap = INTO_FLAP * lapEnd.distanceTo(neckPoint).toMm();
    return Curve.of(
        new Cubic(
            lapEnd,
            lapEnd.plus(upAtShoulder.left().times(flap)),
            neckPoint.plus(down.times(-flap)),
            neckPoint),
        new Cubic(
            neckPoint, neckPoint.between(turn, 2 / 3.0), foldTop.between(turn, 2 / 3.0), foldTop));
  }

  Length armholeLength() {
    return armhole().length();
  }
}
