package dev.drafting.knit.sewing;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Place;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * A line that is sewn: a seam, a strip's seam, a row of topstitching or a hem, with its stitch, the
 * class of the seam, and the thread it takes.
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * top.sewing().lines().get(0).givesEnough();  // => true
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class SewnLine implements Serializable {
  private static final long serialVersionUID = 1L;

  /** What the thread-estimating note adds at each end of a seam: 2 to 3 cm. */
  private static final Length TAIL = Length.cm(2.5);

  /** What is sewn away on scraps and cut off: 10 to 15 % (trade articles). */
  private static final double WASTE = 0.15;

  /** For stitches that the table does not have: two layers of T-shirt cloth. */
  private static final Length THICKNESS = Length.mm(1);

  private final String name;
  private final Place place;
  private final Stitch stitch;
  private final SeamClass seamClass;
  private final Length length;
  private final int times;
  private final String cloth;
  private final double stretchOfCloth;
  private final boolean stabilised;

  private SewnLine(
      String name,
      Place place,
      Stitch stitch,
      SeamClass seamClass,
      Length length,
      int times,
      String cloth,
      double stretchOfCloth,
      boolean stabilised) {
    this.name = name;
    this.place = place;
    this.stitch = stitch;
    this.seamClass = seamClass;
    this.length = length;
    this.times = times;
    this.cloth = cloth;
    this.stretchOfCloth = stretchOfCloth;
    this.stabilised = stabilised;
  }

  static SewnLine of(
      String name,
      Place place,
      Stitch stitch,
      SeamClass seamClass,
      Length length,
      int times,
      String cloth,
      double stretchOfCloth) {
    return new SewnLine(
        name, place, stitch, seamClass, length, times, cloth, stretchOfCloth, false);
  }

  SewnLine withTape() {
    return new SewnLine(name, place, stitch, seamClass, length, times, cloth, stretchOfCloth, true);
  }

  /**
   * What is sewn.
   *
   * @return the name of a seam, a strip or an opening, with "topstitching" for a row of it; the
   *     open edge of a patch, or the patch and what it is stitched on
   */
  public String name() {
    return name;
  }

  /**
   * Where it is.
   *
   * @return a seam, a strip or an opening; the edge or the piece of a patch
   */
  public Place place() {
    return place;
  }

  /**
   * How the machine is set.
   *
   * @return type, length and width
   */
  public Stitch stitch() {
    return stitch;
  }

  /**
   * How the cloth lies together.
   *
   * @return the class of ISO 4916
   */
  public SeamClass seamClass() {
    return seamClass;
  }

  /**
   * How long the line is.
   *
   * @return the length of one
   */
  public Length length() {
    return length;
  }

  /**
   * How often it is sewn.
   *
   * @return 1, or 2 for a line on the right and on the left; more for a patch that is cut more
   *     often
   */
  public int times() {
    return times;
  }

  /**
   * The name of the fabric whose colour the thread takes.
   *
   * @return such as "white jersey"
   */
  public String cloth() {
    return cloth;
  }

  /**
   * How far the cloth gives along the line.
   *
   * @return a share, 0.3 for 30 %
   */
  public double stretchOfCloth() {
    return stretchOfCloth;
  }

  /**
   * Tells whether a tape is sewn in so that the seam does not stretch.
   *
   * @return true for shoulder seams and those that the maker chose
   */
  public boolean isStabilised() {
    return stabilised;
  }

  /**
   * Tells whether the seam gives at least as much as the cloth that it joins, as ASTM D6193 asks
   * (4.2.2: slightly more).
   *
   * @return true also for a seam that must not stretch
   */
  public boolean givesEnough() {
    return stabilised || stitch.type().stretch() >= stretchOfCloth - 1e-9;
  }

  /**
   * The thread for all of it, with a tail of 2.5 cm for each thread at each end and 15 % waste.
   *
   * @return the length of thread
   * @throws DraftingException if it is over 100 m, the longest length; {@link
   *     SewingPlan#threadMetres} is not bound by it
   */
  public Length thread() {
    return Length.mm(threadMm());
  }

  /** Of one long line as well, which may take more than the longest length. */
  double threadMm() {
    StitchType type = stitch.type();
    double perMetre =
        type.threadPerMetre()
            .orElseGet(
                () -> type.threadPerMetre(THICKNESS, stitch.width(), stitch.length()).orElse(0));
    double tails = TAIL.toMm() * 2 * type.threads();
    return (length.toMm() * perMetre + tails) * times * (1 + WASTE);
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(
      String name,
      Place place,
      Stitch stitch,
      SeamClass seamClass,
      Length length,
      int times,
      String cloth,
      double stretchOfCloth,
      boolean stabilised)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      if (times < 1
          || length.isNegative()
          || !(stretchOfCloth >= 0 && stretchOfCloth < Double.POSITIVE_INFINITY)) {
        throw DraftingException.of("a line is never sewn, shorter than nothing, or on no cloth")
            .at(name)
            .value(times + " times " + length + " on a cloth that gives " + stretchOfCloth)
            .accepted("once or more, 0 mm or more, on a cloth that gives 0 or more");
      }
      return new SewnLine(
          Objects.requireNonNull(name, "name"),
          Objects.requireNonNull(place, "place"),
          Objects.requireNonNull(stitch, "stitch"),
          Objects.requireNonNull(seamClass, "seamClass"),
          Objects.requireNonNull(length, "length"),
          times,
          Objects.requireNonNull(cloth, "cloth"),
          stretchOfCloth,
          stabilised);
    }
  }

  private Object writeReplace() {
    return new Kept(
        name, place, stitch, seamClass, length, times, cloth, stretchOfCloth, stabilised);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a sewn line is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SewnLine
        && ((SewnLine) other).name.equals(name)
        && ((SewnLine) other).place.equals(place)
        && ((SewnLine) other).stitch.equals(stitch)
        && ((SewnLine) other).seamClass == seamClass
        && ((SewnLine) other).length.equals(length)
        && ((SewnLine) other).times == times
        && ((SewnLine) other).cloth.equals(cloth)
        && ((SewnLine) other).stretchOfCloth == stretchOfCloth
        && ((SewnLine) other).stabilised == stabilised;
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, stitch, seamClass, length, times, cloth, stretchOfCloth, stabilised);
  }

  @Override
  public String toString() {
    return name + ": " + stitch + ", seam " + seamClass;
  }
}
