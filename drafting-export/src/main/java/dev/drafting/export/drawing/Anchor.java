package dev.drafting.export.drawing;

import dev.drafting.core.Stable;

/**
 * Which part of a text sits at its point.
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
