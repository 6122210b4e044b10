package dev.drafting.knit.sewing;

import dev.drafting.core.Stable;

/**
 * How cloth lies together at a seam, by the classes of ISO 4916.
 *
 * <pre>{@code
 * SeamClass.SUPERIMPOSED;  // => class 1, one on the other
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public enum SeamClass {
  /** Two layers one on the other: side, shoulder, a band sewn on. */
  SUPERIMPOSED(1, "one on the other"),
  /** Layers that overlap. */
  LAPPED(2, "overlapping"),
  /** An edge wrapped in a strip. */
  BOUND(3, "bound with a strip"),
  /** Edges that meet without an allowance. */
  FLAT(4, "edge to edge"),
  /** Rows that decorate one layer, topstitching among them. */
  DECORATIVE(5, "rows on the cloth"),
  /** An edge turned on itself: hems, casings. */
  EDGE_FINISHING(6, "an edge turned up"),
  /** An item laid to an edge: tape, elastic. */
  SEPARATE_ITEM(7, "an item laid to the edge"),
  /** One layer made up by itself: a belt loop, a drawn tape. */
  SINGLE_PLY(8, "one layer by itself");

  private final int number;
  private final String plainName;

  SeamClass(int number, String plainName) {
    this.number = number;
    this.plainName = plainName;
  }

  /**
   * The number of the class.
   *
   * @return 1 to 8
   */
  public int number() {
    return number;
  }

  /**
   * What it means.
   *
   * @return for instance "bound with a strip"
   */
  public String plainName() {
    return plainName;
  }

  @Override
  public String toString() {
    return "class " + number + ", " + plainName;
  }
}
