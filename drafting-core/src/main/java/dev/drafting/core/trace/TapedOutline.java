package dev.drafting.core.trace;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunction;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.jspecify.annotations.Nullable;

/** Draws a half from tape measures: right of the fold, the hem at the fold on (0, 0). */
final class TapedOutline {
  // How far curves of common practice go on in their direction, as shares of their extent.
  private static final double INTO_CURVE = 0.55;
  private static final double INTO_HEM = 0.4;
  private static final double ACROSS_NECK = 0.6;

  private final String name;
  private final Point neckPoint;
  private final Point foldTop;
  private final Point tip;
  private final Vector upAtShoulder;
  private final Curve side;
  private final @Nullable Point nearest;

  TapedOutline(
      String name,
      Length length,
      TapedHalf.Taped hem,
      TapedHalf.Taped underarm,
      TapedHalf.Taped shoulder,
      TapedHalf.Taped neck,
      TapedHalf.@Nullable Taped across,
      Map<Length, Length> widths) {
    this.name = name;
    double top = length.toMm();
    double along = shoulder.first().toMm();
    double drop = shoulder.second().toMm();
    double level = Math.sqrt(along * along - drop * drop);
    this.neckPoint = new Point(neck.first().toMm() / 2, top);
    this.foldTop = new Point(0, top - neck.second().toMm());
    this.tip = new Point(neckPoint.x() + level, top - drop);
    this.upAtShoulder = new Vector(drop / along, level / along);
    Point arm = new Point(underarm.first().toMm() / 2, top - underarm.second().toMm());
    Point foot = new Point(hem.first().toMm() / 2, hem.second().toMm());
    require(foot.y() < arm.y(), "hem", "a hem below the underarms");
    this.side = side(foot, arm, widths);
    this.nearest =
        across == null ? null : new Point(across.first().toMm() / 2, top - across.second().toMm());
    check(arm);
  }

  private void check(Point arm) {
    require(arm.y() < tip.y(), "underarm", "an underarm below the end of the shoulder");
    require(tip.x() < arm.x(), "shoulder", "a shoulder that ends inside the underarms");
    if (nearest != null) {
      boolean between = nearest.y() > arm.y() && nearest.y() < tip.y();
      require(between, "across", "a place between underarm and shoulder");
      boolean inside = nearest.x() <= Math.min(arm.x(), tip.x());
      require(inside, "across", "no more than from shoulder end to shoulder end");
    }
  }

  private void require(boolean fits, String what, String accepted) {
    if (!fits) {
      throw DraftingException.of("the measures do not fit each other")
          .at(name)
          .value(what)
          .accepted(accepted);
    }
  }

  Piece piece() {
    Point foldFoot = new Point(0, 0);
    return Piece.of(
        name,
        List.of(
            Edge.onFold(Curve.line(foldTop, foldFoot)),
            Edge.of("hem", hem(foldFoot)),
            Edge.of("side", side),
            Edge.of("armhole", armhole()),
            Edge.of("shoulder", Curve.line(tip, neckPoint)),
            Edge.of("neck", neck())));
  }

  /** A natural spline of widths over heights, which is a cubic from each height to the next. */
  private Curve side(Point hem, Point arm, Map<Length, Length> widths) {
    List<Double> heights = new ArrayList<>();
    List<Double> halves = new ArrayList<>();
    heights.add(hem.y());
    halves.add(hem.x());
    widths.forEach(
        (above, width) -> {
          require(
              above.toMm() > hem.y() && above.toMm() < arm.y(),
              "width " + above + " above the hem",
              "widths between hem and underarm");
          heights.add(above.toMm());
          halves.add(width.toMm() / 2);
        });
    heights.add(arm.y());
    halves.add(arm.x());
    if (widths.isEmpty()) {
      return Curve.of(new Line(hem, arm));
    }
    PolynomialSplineFunction spline =
        new SplineInterpolator()
            .interpolate(
                heights.stream().mapToDouble(Double::doubleValue).toArray(),
                halves.stream().mapToDouble(Double::doubleValue).toArray());
    List<Segment> cubics = new ArrayList<>();
    for (int i = 0; i < spline.getN(); i++) {
      cubics.add(cubic(spline.getPolynomials()[i], heights.get(i), heights.get(i + 1), halves, i));
    }
    return Curve.of(cubics);
  }

  private static Cubic cubic(
      PolynomialFunction width, double from, double to, List<Double> halves, int i) {
    double third = (to - from) / 3;
    double slope = width.polynomialDerivative().value(0);
    double last = width.polynomialDerivative().value(to - from);
    return new Cubic(
        new Point(halves.get(i), from),
        new Point(halves.get(i) + slope * third, from + third),
        new Point(halves.get(i + 1) - last * third, to - third),
        new Point(halves.get(i + 1), to));
  }

  private Curve hem(Point foldFoot) {
    Point end = side.start();
    Vector out = side.directionAt(Length.ZERO).left().negated();
    double handle = end.x() * INTO_HEM;
    return smooth(foldFoot, new Vector(1, 0), handle, end, out, handle);
  }

  private Curve armhole() {
    Point arm = side.end();
    Vector in = side.directionAt(side.length()).left();
    if (nearest == null) {
      double out = (arm.x() - tip.x()) * INTO_CURVE + (tip.y() - arm.y()) / 8;
      return smooth(arm, in, out, tip, upAtShoulder, (tip.y() - arm.y()) * INTO_CURVE);
    }
    Vector up = new Vector(0, 1);
    double lower = (nearest.y() - arm.y()) * INTO_CURVE;
    double upper = (tip.y() - nearest.y()) / 3;
    double inwards = Math.max(upAtShoulder.dx(), 1e-9);
    double last = Math.min(upper, (tip.x() - nearest.x()) / inwards); // nowhere nearer to the fold
    return smooth(arm, in, (arm.x() - nearest.x()) * INTO_CURVE, nearest, up, lower)
        .then(smooth(nearest, up, upper, tip, upAtShoulder, last));
  }

  private Curve neck() {
    double down = (neckPoint.y() - foldTop.y()) * INTO_CURVE;
    double across = neckPoint.x() * ACROSS_NECK;
    return smooth(neckPoint, upAtShoulder.negated(), down, foldTop, new Vector(-1, 0), across);
  }

  private static Curve smooth(
      Point from, Vector out, double first, Point to, Vector in, double second) {
    return Curve.of(new Cubic(from, from.plus(out.times(first)), to.plus(in.times(-second)), to));
  }
}
