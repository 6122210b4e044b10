package dev.drafting.export.drawing;

import dev.drafting.core.Stable;

/**
 * Which part of a text sits at its point.
 *
 * <pre>{@code
 * Label.of("front", new Point(0, 0), Length.mm(5)).withAnchor(Anchor.MIDDLE).anchor();  // => MIDDLE
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public enum Anchor {
  /** The text begins at the point. */
  START,
  /** The text is centred on the point. */
  MIDDLE,
  /** The text ends at the point. */
  END
}
