package dev.drafting.knit.band;

import dev.drafting.core.Stable;

/**
 * What a strip is meant to do at its edge. A strip that goes round a bend can lie flat; on an edge
 * that is nearly straight or turns outward it is mostly meant to draw in.
 *
 * <p>The loops for each, F being the length of the finished edge:
 *
 * <ul>
 *   <li>lies flat: those of the {@link FlatWindow};
 *   <li>hugs: shorter than that, down to 0.90 F. For strips that are turned in 0.90 to 0.97 of the
 *       edge is common practice, without a source;
 *   <li>draws in: 0.90 to 0.95 F for a stable cloth, 0.85 to 0.90 F for a moderately stretchy one,
 *       0.80 to 0.88 F for a stretchy one, 0.60 to 0.78 F for a very stretchy one such as rib.
 *       Common practice without a source; of the last, two thirds to three quarters is also in the
 *       leaflet "Using ribbing for a cuff or neckline opening" of a home-sewing trade association.
 * </ul>
 *
 * <pre>{@code
 * FoldedBand.of(Length.mm(20), Length.mm(7)).withIntent(Intent.HUGS).intent().plainName();  // => hugs
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public enum Intent {
  /** To lie flat, neither waving nor puckering. */
  LIES_FLAT("lies flat"),
  /** To hold the edge a little closer to the body than it was cut. */
  HUGS("hugs"),
  /** To gather the edge in, as a cuff or a waist rib does. */
  DRAWS_IN("draws in");

  private final String plainName;

  Intent(String plainName) {
    this.plainName = plainName;
  }

  /**
   * The intent in words.
   *
   * @return for instance "draws in"
   */
  public String plainName() {
    return plainName;
  }
}
