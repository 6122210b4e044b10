package dev.drafting.core.finding;

import dev.drafting.core.Stable;

/**
 * How much a {@link Finding} matters.
 *
 * <pre>{@code
 * Finding.warning("neck-wide", Place.edge("front", "neck"), "The neck is wide.").severity();  // => WARNING
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public enum Severity {
  /** Worth knowing; nothing has to change. */
  NOTE,
  /** Will probably sew or fit worse than it could. */
  WARNING,
  /** Will not sew, not fit or not go on: change it before cutting. */
  PROBLEM
}
