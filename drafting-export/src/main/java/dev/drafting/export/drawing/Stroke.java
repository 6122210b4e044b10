package dev.drafting.export.drawing;

import dev.drafting.core.Stable;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Transform;
import java.util.Objects;

/**
 * A drawn line.
 *
 * <pre>{@code
 * new Stroke(StrokeStyle.CUT_LINE, "hem", Curve.line(new Point(0, 0), new Point(230, 0)));  // => cut line hem
 * }</pre>
 *
 * @param style what the line means
 * @param name what it belongs to, for instance the edge "neck"; may be empty
 * @param curve where it runs, in mm
 * @since 0.1
 */
@Stable
public record Stroke(StrokeStyle style, String name, Curve curve) implements Element {
  /**
   * Checks that nothing is missing.
   *
   * @param style what the line means
   * @param name what it belongs to
   * @param curve where it runs, in mm
   */
  public Stroke {
    Objects.requireNonNull(style, "style");
    name = Lettering.oneLine(name);
    Objects.requireNonNull(curve, "curve");
  }

  @Override
  public Stroke map(Transform transform) {
    return new Stroke(style, name, curve.map(transform));
  }

  @Override
  public Box bounds() {
    return curve.bounds();
  }

  @Override
  public String toString() {
    return name.isEmpty() ? style.toString() : style + " " + name;
  }
}
