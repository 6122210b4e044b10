package dev.drafting.knit.sewing;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.knit.fabric.Fabric;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The needle for a cloth: sizes in hundredths of a millimetre with the other usual count beside
 * them, and the point.
 *
 * <p>Sizes follow handbook lists that disagree by a size (light knit 60 to 70, T-shirt 70 to 80,
 * sweatshirt 80 to 90); knits take a ball point, SES the light and SUK the medium one (trade
 * articles). With elastane a stretch needle of 75 to 90 skips fewer stitches (common practice, no
 * source).
 *
 * <pre>{@code
 * Needle.of(Fabric.of("jersey", Structure.JERSEY, 0.3).withMass(170));  // => 70 to 80 (10 to 12), light ball point (SES)
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Needle implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Light knits weigh up to 150 g/m2, sweatshirts from 220 (trade articles, common practice). */
  private static final double LIGHT_GRAMS = 150;

  private static final double HEAVY_GRAMS = 220;

  private static final Needle LIGHT = new Needle(60, 70, 8, 10, "light ball point (SES)");
  private static final Needle MEDIUM = new Needle(70, 80, 10, 12, "light ball point (SES)");
  private static final Needle HEAVY = new Needle(80, 90, 12, 14, "medium ball point (SUK)");

  private final int finest;
  private final int thickest;
  private final int finestCount;
  private final int thickestCount;
  private final String point;

  private Needle(int finest, int thickest, int finestCount, int thickestCount, String point) {
    this.finest = finest;
    this.thickest = thickest;
    this.finestCount = finestCount;
    this.thickestCount = thickestCount;
    this.point = point;
  }

  /**
   * The needle for a fabric by its mass; a fabric of unknown mass is taken for T-shirt cloth.
   *
   * @param fabric what is sewn
   * @return the needle
   */
  public static Needle of(Fabric fabric) {
    OptionalDouble mass = fabric.mass();
    if (mass.isEmpty()) {
      return MEDIUM;
    }
    if (mass.getAsDouble() < LIGHT_GRAMS) {
      return LIGHT;
    }
    return mass.getAsDouble() <= HEAVY_GRAMS ? MEDIUM : HEAVY;
  }

  /**
   * The finest size that will do.
   *
   * @return hundredths of a millimetre, 70 for 0.7 mm
   */
  public int finest() {
    return finest;
  }

  /**
   * The thickest size that will do.
   *
   * @return hundredths of a millimetre
   */
  public int thickest() {
    return thickest;
  }

  /**
   * The point.
   *
   * @return for instance "light ball point (SES)"
   */
  public String point() {
    return point;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(int finest, int thickest, int finestCount, int thickestCount, String point)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      Needle read = new Needle(finest, thickest, finestCount, thickestCount, point);
      List<Needle> known = List.of(LIGHT, MEDIUM, HEAVY);
      int index = known.indexOf(read);
      if (index < 0) {
        throw DraftingException.of("there is no such needle")
            .value(read)
            .accepted(known.toString());
      }
      return known.get(index);
    }
  }

  private Object writeReplace() {
    return new Kept(finest, thickest, finestCount, thickestCount, point);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a needle is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Needle
        && ((Needle) other).finest == finest
        && ((Needle) other).thickest == thickest
        && ((Needle) other).point.equals(point);
  }

  @Override
  public int hashCode() {
    return Objects.hash(finest, thickest, point);
  }

  @Override
  public String toString() {
    return finest + " to " + thickest + " (" + finestCount + " to " + thickestCount + "), " + point;
  }
}
