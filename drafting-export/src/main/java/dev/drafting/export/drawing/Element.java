package dev.drafting.export.drawing;

import dev.drafting.core.Stable;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Transform;
import java.io.Serializable;

/**
 * One thing on a drawing: a line or a text.
 *
 * <pre>{@code
 * Element hem = new Stroke(StrokeStyle.CUT_LINE, "hem", Curve.line(new Point(0, 0), new Point(230, 0)));
 * hem.bounds();  // => Box((0, 0) to (230, 0))
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public sealed interface Element extends Serializable permits Stroke, Label {
  /**
   * This element moved, turned, mirrored or scaled. Line widths stay; texts stay horizontal.
   *
   * @param transform where the points go
   * @return the mapped element
   */
  Element map(Transform transform);

  /**
   * The room this element takes, line widths left out.
   *
   * @return the smallest upright box around it, in mm
   */
  Box bounds();
}
