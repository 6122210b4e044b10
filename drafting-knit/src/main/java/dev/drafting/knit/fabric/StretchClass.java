package dev.drafting.knit.fabric;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;

/**
 * How stretchy a knit is, in four bands. Textbooks and leaflets draw the boundaries differently;
 * these half-open bands are this library's choice, near those of the extension leaflet
 * "Considerations for Knit Fabrics" (Utah State University): stable to 18.75 %, moderate to 34.4 %,
 * very stretchy from 37.5 %. A hand reading is good to about 5 points either way (common practice),
 * so a fabric near a boundary may fall on either side of it.
 *
 * <pre>{@code
 * StretchClass.of(0.20);  // => MODERATE
 * StretchClass.of(0.1999);  // => STABLE
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public enum StretchClass {
  /** From nothing to under 20 %. */
  STABLE("stable"),
  /** From 20 % to under 35 %. */
  MODERATE("moderately stretchy"),
  /** From 35 % to under 75 %. */
  STRETCHY("stretchy"),
  /** From 75 % on. */
  SUPER("very stretchy");

  /** Where the second class begins. */
  static final double MODERATE_FROM = 0.20;

  private final String plainName;

  StretchClass(String plainName) {
    this.plainName = plainName;
  }

  /**
   * The class of a stretch.
   *
   * @param stretch the share by which the cloth gives, 0.3 for 30 %; not negative
   * @return the band that it falls in; a boundary belongs to the band above it
   * @throws DraftingException if the stretch is negative or not a number
   */
  public static StretchClass of(double stretch) {
    if (!(stretch >= 0)) {
      throw DraftingException.of("the stretch is negative or not a number")
          .value(stretch)
          .accepted("a share from 0, such as 0.3 for 30 %");
    }
    if (stretch < MODERATE_FROM) {
      return STABLE;
    }
    if (stretch < 0.35) {
      return MODERATE;
    }
    return stretch < 0.75 ? STRETCHY : SUPER;
  }

  /**
   * The name in a sentence.
   *
   * @return for instance "moderately stretchy"
   */
  public String plainName() {
    return plainName;
  }
}
