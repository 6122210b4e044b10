package dev.drafting.knit.band;

import dev.drafting.core.Stable;

/**
 * How a strip is stretched on its way round, and with it where its marks lie.
 *
 * <pre>{@code
 * StripRule.recommended().withMarks(MarkSpacing.MORE_ON_CURVES);  // => as recommended, 10 mm at each end for the join, stretched more on curves
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public enum MarkSpacing {
  /** Evenly: the marks of the strip divide it as those of the edge divide the edge. */
  EVEN("stretched evenly"),
  /**
   * More on curves than on straights: every part of the strip is shorter than its part of the seam
   * by the same share, from a half to the whole, of what the finished edge is shorter there.
   */
  MORE_ON_CURVES("stretched more on curves");

  private final String plainName;

  MarkSpacing(String plainName) {
    this.plainName = plainName;
  }

  /**
   * The spacing in words.
   *
   * @return such as "stretched evenly"
   */
  public String plainName() {
    return plainName;
  }
}
