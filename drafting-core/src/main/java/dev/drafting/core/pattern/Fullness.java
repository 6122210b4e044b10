package dev.drafting.core.pattern;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;

/**
 * How the longer side of a seam is made as short as the other one: eased in, gathered, or laid in
 * pleats. How much longer it is, is the {@link Seam#ease() ease} of the seam; a pleat takes up
 * twice its depth.
 *
 * <pre>{@code
 * Seam waist = Seam.of("waist", "skirt waist", "yoke lower edge").withEase(Length.cm(18)).drawnIn(Fullness.pleats(3));
 * waist;  // => waist: skirt / waist to yoke / lower edge, ease 180 mm in 3 pleats
 * waist.fullness().depth(waist.ease());  // => 30 mm
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class Fullness implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final int MOST_PLEATS = 100;
  private static final int GATHERS = -1;
  private static final String EASED_TEXT = "eased";
  private static final String GATHERED_TEXT = "gathered";
  private static final Fullness EASED = new Fullness(0);
  private static final Fullness GATHERED = new Fullness(GATHERS);

  private final int pleats;

  private Fullness(int pleats) {
    this.pleats = pleats;
  }

  /**
   * Eased in, so that nothing is seen of it: for a little.
   *
   * @return what every seam has unless set
   */
  public static Fullness eased() {
    return EASED;
  }

  /**
   * Gathered evenly, from quarter to quarter.
   *
   * @return gathers
   */
  public static Fullness gathered() {
    return GATHERED;
  }

  /**
   * Laid in pleats of one depth, evenly spread.
   *
   * @param count how many, 1 to 100
   * @return pleats
   * @throws DraftingException if there are none or too many
   */
  public static Fullness pleats(int count) {
    if (count < 1 || count > MOST_PLEATS) {
      throw DraftingException.of("the number of pleats is out of range")
          .value(count)
          .accepted("1 to " + MOST_PLEATS);
    }
    return new Fullness(count);
  }

  /**
   * Reads what {@link #toString} says.
   *
   * @param text "eased", "gathered" or "3 pleats"
   * @return the fullness
   * @throws DraftingException if it says none of these
   */
  public static Fullness parse(String text) {
    return switch (text) {
      case EASED_TEXT -> EASED;
      case GATHERED_TEXT -> GATHERED;
      default -> pleats(count(text));
    };
  }

  private static int count(String text) {
    String number = text.replaceFirst(" pleats?$", "");
    if (number.equals(text) || !number.matches("\\d{1,3}")) {
      throw DraftingException.of("this is no way to draw a side in")
          .value(text)
          .accepted("eased, gathered, or a number of pleats such as 3 pleats");
    }
    return Integer.parseInt(number);
  }

  /**
   * Tells whether the side is gathered.
   *
   * @return true for {@link #gathered}
   */
  public boolean isGathered() {
    return pleats == GATHERS;
  }

  /**
   * How many pleats there are.
   *
   * @return 0 where the side is eased or gathered
   */
  public int pleatCount() {
    return Math.max(0, pleats);
  }

  /**
   * How deep each pleat is.
   *
   * @param ease how much longer the one side is; its sign does not count
   * @return half of what one pleat takes up; nothing where there are no pleats
   */
  public Length depth(Length ease) {
    return pleats > 0 ? ease.abs().dividedBy(2.0 * pleats) : Length.ZERO;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(int pleats) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return switch (pleats) {
        case GATHERS -> GATHERED;
        case 0 -> EASED;
        default -> Fullness.pleats(pleats);
      };
    }
  }

  private Object writeReplace() {
    return new Kept(pleats);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("fullness is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Fullness that && that.pleats == pleats;
  }

  @Override
  public int hashCode() {
    return pleats;
  }

  @Override
  public String toString() {
    if (pleats == 0) {
      return EASED_TEXT;
    }
    return isGathered() ? GATHERED_TEXT : pleats + (pleats == 1 ? " pleat" : " pleats");
  }
}
