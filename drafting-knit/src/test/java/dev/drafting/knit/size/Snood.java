package dev.drafting.knit.size;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.template.Dimension;
import dev.drafting.core.template.Dimensions;
import java.util.List;

/** A tube to pull over the head: as wide as the head asks for, and as high as the neck is long. */
final class Snood implements FittedTemplate {
  private static final long serialVersionUID = 1L;

  @Override
  public String id() {
    return "snood";
  }

  @Override
  public String about() {
    return "a tube";
  }

  @Override
  public List<Dimension> dimensions() {
    return List.of(
        Dimension.girth("round", "all round", Length.cm(20), Length.cm(50), Length.cm(100)),
        Dimension.length("height", "along", Length.cm(10), Length.cm(25), Length.cm(60)),
        Dimension.length("turn", "folded over", Length.cm(1), Length.cm(2), Length.cm(5)));
  }

  @Override
  public List<BodyRule> bodyRules() {
    return List.of(
        BodyRule.girth(
            "round", Fit.ease(-0.1), BodyMeasure.HEAD_GIRTH, BodyMeasure.NECK_BASE_GIRTH),
        BodyRule.length("height", BodyMeasure.CERVICAL_TO_WAIST).times(0.5).plus(Length.cm(4)),
        BodyRule.length("turn", BodyMeasure.CERVICAL_TO_WAIST).times(0.05));
  }

  @Override
  public Pattern draw(Dimensions given) {
    double half = given.length("round").toMm() / 2;
    double height = given.length("height").plus(given.length("turn")).toMm();
    Point b = new Point(half, 0);
    Point c = new Point(half, height);
    Piece tube =
        Piece.of(
            "tube",
            List.of(
                Edge.of("hem", Curve.line(new Point(0, 0), b)),
                Edge.of("back", Curve.line(b, c)),
                Edge.of("top", Curve.line(c, new Point(0, height))),
                Edge.onFold(Curve.line(new Point(0, height), new Point(0, 0)))));
    return Pattern.of(
        "snood", List.of(tube), List.of(Seam.mirrored("back", EdgeRef.parse("tube back"))));
  }
}
