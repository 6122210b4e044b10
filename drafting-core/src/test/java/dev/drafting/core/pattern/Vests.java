package dev.drafting.core.pattern;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.List;

/**
 * Sleeveless vests to test with, front and back on the fold. Shoulders are 90 mm and sides 350 mm
 * long whatever their slope; every edge meets the next one square.
 */
public final class Vests {
  private Vests() {}

  /**
   * How one half is drawn: slope of the shoulder and flare of the side in degrees, depths in mm.
   */
  public record Half(double slope, double flare, double neckDepth, double tail) {}

  /** A front as usual. */
  public static final Half FRONT = new Half(22, 4, 110, 0);

  /** A back as usual: higher in the neck, longer in the tail. */
  public static final Half BACK = new Half(22, 4, 30, 50);

  /** The vest as usual, its shoulders and sides joined, all allowances still to be added. */
  public static Pattern plain() {
    return of(FRONT, BACK);
  }

  /** The vest as usual with 7 mm at its seams. */
  public static Pattern seamed() {
    Pattern pattern = plain();
    for (String edge : List.of("front shoulder", "back shoulder", "front side", "back side")) {
      pattern = pattern.withFinish(EdgeRef.parse(edge), SeamFinish.of(Length.mm(7)));
    }
    return pattern;
  }

  /** Any vest. */
  public static Pattern of(Half front, Half back) {
    return joined(piece("front", front), piece("back", back));
  }

  /** Two halves with edges shoulder and side, sewn together. */
  public static Pattern joined(Piece front, Piece back) {
    return Pattern.of(
        "vest",
        List.of(front, back),
        List.of(
            Seam.of(
                "shoulder",
                new EdgeRef(front.name(), "shoulder"),
                new EdgeRef(back.name(), "shoulder")),
            Seam.of("side", new EdgeRef(front.name(), "side"), new EdgeRef(back.name(), "side"))));
  }

  /** One half on the fold. */
  public static Piece piece(String name, Half half) {
    Corners c = new Corners(half);
    return Piece.of(
        name,
        List.of(
            Edge.onFold(Curve.line(c.foldTop, c.foldFoot)),
            Edge.of("hem", smooth(c.foldFoot, new Vector(1, 0), c.hemSide, c.intoSide, 90)),
            Edge.of("side", Curve.line(c.hemSide, c.underarm)),
            Edge.of("armhole", smooth(c.underarm, c.intoSide.negated(), c.tip, c.intoTip, 90)),
            Edge.of("shoulder", Curve.line(c.tip, c.neckPoint)),
            Edge.of(
                "neck",
                smooth(
                    c.neckPoint,
                    c.intoTip.negated(),
                    c.foldTop,
                    new Vector(-1, 0),
                    half.neckDepth() / 2))));
  }

  /** One half with any curves for its open edges, given by their control points. */
  public static Piece piece(String name, Half half, Vector... bends) {
    Corners c = new Corners(half);
    return Piece.of(
        name,
        List.of(
            Edge.onFold(Curve.line(c.foldTop, c.foldFoot)),
            Edge.of("hem", bent(c.foldFoot, c.hemSide, bends[0], bends[1])),
            Edge.of("side", Curve.of(new Line(c.hemSide, c.underarm))),
            Edge.of("armhole", bent(c.underarm, c.tip, bends[2], bends[3])),
            Edge.of("shoulder", Curve.of(new Line(c.tip, c.neckPoint))),
            Edge.of("neck", bent(c.neckPoint, c.foldTop, bends[4], bends[5]))));
  }

  private static Curve bent(Point from, Point to, Vector first, Vector second) {
    Point third = from.between(to, 1.0 / 3).plus(first);
    Point twoThirds = from.between(to, 2.0 / 3).plus(second);
    return Curve.of(new Cubic(from, third, twoThirds, to));
  }

  private static Curve smooth(Point from, Vector out, Point to, Vector in, double handle) {
    return Curve.of(
        new Cubic(from, from.plus(out.times(handle)), to.plus(in.times(-handle * 0.6)), to));
  }

  /** Where the edges of a half meet. */
  private static final class Corners {
    final Point foldFoot;
    final Point foldTop;
    final Point hemSide;
    final Point underarm = new Point(215, 350);
    final Point tip;
    final Point neckPoint = new Point(75, 600);
    final Vector intoSide;
    final Vector intoTip;

    Corners(Half half) {
      double a = Math.toRadians(half.slope());
      double t = Math.toRadians(half.flare());
      foldFoot = new Point(0, -half.tail());
      foldTop = new Point(0, 600 - half.neckDepth());
      hemSide = new Point(215 + 350 * Math.sin(t), 350 - 350 * Math.cos(t));
      tip = new Point(75 + 90 * Math.cos(a), 600 - 90 * Math.sin(a));
      intoSide = new Vector(Math.cos(t), Math.sin(t));
      intoTip = new Vector(Math.sin(a), Math.cos(a));
    }
  }
}
