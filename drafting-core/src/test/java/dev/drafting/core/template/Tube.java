package dev.drafting.core.template;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import java.util.List;

/** A tube; by how much the back is longer and whether it heeds its width can be spoilt. */
class Tube implements GarmentTemplate {
  private static final long serialVersionUID = 1L;
  private final double spoilt;
  private final double share;

  Tube(double spoilt, double share) {
    this.spoilt = spoilt;
    this.share = share;
  }

  @Override
  public String id() {
    return "tube";
  }

  @Override
  public String about() {
    return "a tube";
  }

  @Override
  public List<Dimension> dimensions() {
    return List.of(
        Dimension.girth("girth", "all round", Length.cm(40), Length.cm(80), Length.cm(120)),
        Dimension.length("length", "along", Length.cm(20), Length.cm(50), Length.cm(90)));
  }

  @Override
  public List<Choice> choices() {
    return List.of(new Choice("ends", List.of("straight", "any")));
  }

  @Override
  public Pattern draw(Dimensions given) {
    double width = given.length("girth").toMm() / 4 * share + (1 - share) * 100;
    double length = given.length("length").toMm();
    return Pattern.of(
        "tube",
        List.of(half("front", width, length), half("back", width, length + spoilt)),
        List.of(Seam.of("side", "front side", "back side")));
  }

  static Piece half(String name, double width, double length) {
    Point a = new Point(0, 0);
    Point b = new Point(width, 0);
    Point c = new Point(width, length);
    Point d = new Point(0, length);
    return Piece.of(
        name,
        List.of(
            Edge.of("hem", Curve.line(a, b)),
            Edge.of("side", Curve.line(b, c)),
            Edge.of("top", Curve.line(c, d)),
            Edge.onFold(Curve.line(d, a))));
  }
}
