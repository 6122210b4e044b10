package dev.drafting.knit.band;

import dev.drafting.core.Stable;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Shrinkage;

/**
 * Which way a strip is cut: its length always runs along the greatest stretch of its cloth.
 *
 * <pre>{@code
 * StripGrain.of(Fabric.of("jersey", Structure.JERSEY, 0.4).withStretchAlong(0.6));  // => ALONG
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public enum StripGrain {
  /** From selvage to selvage, as nearly all knits stretch most. */
  ACROSS("across the cloth"),
  /** Along the selvage, for a cloth that stretches more that way. */
  ALONG("along the cloth");

  private final String plainName;

  StripGrain(String plainName) {
    this.plainName = plainName;
  }

  /**
   * The way to cut a strip of a fabric.
   *
   * @param fabric what it is cut from
   * @return along only if that is known to stretch more
   */
  public static StripGrain of(Fabric fabric) {
    return fabric.stretchAlong().orElse(0) > fabric.stretchAcross() ? ALONG : ACROSS;
  }

  /** The fabric turned so that its greatest stretch lies across. */
  Fabric greatestAcross(Fabric fabric) {
    return this == ACROSS
        ? fabric
        : Fabric.of(fabric.name(), fabric.structure(), fabric.stretchAlong().orElseThrow());
  }

  /** How much longer a length this way is cut, so that it washes to size. */
  double larger(Shrinkage loss) {
    return this == ACROSS ? loss.factorAcross() : loss.factorAlong();
  }

  StripGrain other() {
    return this == ACROSS ? ALONG : ACROSS;
  }

  /**
   * How to lay the strip, for a cut list.
   *
   * @return "length along the greatest stretch", and that it runs along the cloth where it does
   */
  public String howToCut() {
    String usual = "length along the greatest stretch";
    return this == ACROSS ? usual : usual + ", " + plainName;
  }

  /**
   * The way in words.
   *
   * @return such as "across the cloth"
   */
  public String plainName() {
    return plainName;
  }
}
