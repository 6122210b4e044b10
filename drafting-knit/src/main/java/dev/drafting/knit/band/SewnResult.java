package dev.drafting.knit.band;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * What a strip did when it was sewn. Results teach what tension a fabric stands at a finished edge.
 *
 * <p>A loop of length l on a finished edge F needs the tension F / l - 1. One that lay flat with
 * more than its fabric is given credit for raises the tension; one that puckered with less lowers
 * it; all others change nothing. Each result moves it towards what it needed by a quarter of a per
 * cent at most, all together by half a per cent at most, and never below nothing. That is this
 * library's choice: one garment is no proof.
 *
 * <pre>{@code
 * Fabric rib = Fabric.of("rib", Structure.RIB, 0.8);
 * SewnResult flat = SewnResult.of("rib", Length.cm(57.2), Length.cm(56.5), Outcome.LIES_FLAT);
 * flat;  // => rib: a loop of 56.5 cm on a finished edge of 57.2 cm lies flat
 * SewnResult.applied(rib, List.of(flat)).tension();  // => 0.01
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class SewnResult implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final double MOST_EACH = 0.0025;
  private static final double MOST_IN_ALL = 0.005;

  private final String fabric;
  private final Length finishedEdge;
  private final Length loop;
  private final Outcome seen;

  private SewnResult(String fabric, Length finishedEdge, Length loop, Outcome seen) {
    this.fabric = fabric;
    this.finishedEdge = finishedEdge;
    this.loop = loop;
    this.seen = seen;
  }

  /**
   * A result of any strip.
   *
   * @param fabric the name of what the strip was cut from
   * @param finishedEdge the edge of the finished garment, over nothing
   * @param loop the relaxed loop from seam to seam, over nothing
   * @param seen whether it gapes, lies flat or puckers
   * @return the result
   * @throws DraftingException if a length or the name is missing, or something else was seen
   */
  public static SewnResult of(String fabric, Length finishedEdge, Length loop, Outcome seen) {
    if (fabric.isBlank()) {
      throw DraftingException.of("the fabric of a sewn strip has no name")
          .accepted("a name that is not blank");
    }
    if (!finishedEdge.isPositive() || !loop.isPositive()) {
      throw DraftingException.of("an edge or loop that was sewn has no length")
          .value(finishedEdge + " and " + loop)
          .accepted("more than 0");
    }
    if (!List.of(Outcome.GAPES, Outcome.LIES_FLAT, Outcome.PUCKERS).contains(seen)) {
      throw DraftingException.of("this cannot be learnt from")
          .value(seen.plainName())
          .accepted("gapes, lies flat or puckers");
    }
    return new SewnResult(fabric, finishedEdge, loop, seen);
  }

  /**
   * The result of a strip of a draft that was meant to lie flat.
   *
   * @param strip as it was drafted and cut
   * @param seen whether it gapes, lies flat or puckers
   * @return the result
   * @throws DraftingException if the strip was meant to hug or to draw in, or something else was
   *     seen
   */
  public static SewnResult of(Strip strip, Outcome seen) {
    if (strip.finish().intent() != Intent.LIES_FLAT) {
      throw DraftingException.of("tension is learnt from strips that are meant to lie flat")
          .at(strip.name())
          .value(strip.finish().intent().plainName())
          .accepted("a strip that lies flat");
    }
    double tension = strip.fabric().tension();
    Length reached = strip.window().shortest().times(1 + tension);
    return of(strip.fabric().name(), reached, strip.loop(), seen);
  }

  /**
   * The edge of the finished garment.
   *
   * @return over zero
   */
  public Length finishedEdge() {
    return finishedEdge;
  }

  /**
   * The relaxed loop from seam to seam.
   *
   * @return over zero
   */
  public Length loop() {
    return loop;
  }

  /**
   * A fabric with the tension that results have taught.
   *
   * @param fabric what was known of it before
   * @param results in the order in which they were seen; those of other fabrics are passed over
   * @return the fabric, or the same if they change nothing
   */
  public static Fabric applied(Fabric fabric, List<SewnResult> results) {
    double own = fabric.tension();
    double tension = own;
    for (SewnResult result : results) {
      if (result.fabric.equals(fabric.name())) {
        double moved = result.moved(tension);
        tension = Math.max(own - MOST_IN_ALL, Math.min(own + MOST_IN_ALL, moved));
      }
    }
    double bounded = Math.max(0, Math.min(0.05, tension));
    return bounded == own ? fabric : fabric.withTension(bounded);
  }

  private double moved(double tension) {
    double needed = neededTension();
    boolean stoodMore = seen == Outcome.LIES_FLAT && needed > tension;
    boolean stoodLess = seen == Outcome.PUCKERS && needed < tension;
    if (!stoodMore && !stoodLess) {
      return tension;
    }
    return tension + Math.max(-MOST_EACH, Math.min(MOST_EACH, needed - tension));
  }

  /**
   * The tension that this loop needed at its finished edge.
   *
   * @return a share, 0.01 for 1 %; negative for a loop longer than its edge
   */
  public double neededTension() {
    return finishedEdge.ratioTo(loop) - 1;
  }

  /**
   * What the strip was cut from.
   *
   * @return the name of the fabric
   */
  public String fabric() {
    return fabric;
  }

  /**
   * What was seen.
   *
   * @return gapes, lies flat or puckers
   */
  public Outcome seen() {
    return seen;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(String fabric, Length finishedEdge, Length loop, Outcome seen)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return of(fabric, finishedEdge, loop, seen);
    }
  }

  private Object writeReplace() {
    return new Kept(fabric, finishedEdge, loop, seen);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a sewn result is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SewnResult
        && ((SewnResult) other).fabric.equals(fabric)
        && ((SewnResult) other).finishedEdge.equals(finishedEdge)
        && ((SewnResult) other).loop.equals(loop)
        && ((SewnResult) other).seen == seen;
  }

  @Override
  public int hashCode() {
    return Objects.hash(fabric, finishedEdge, loop, seen.name());
  }

  @Override
  public String toString() {
    return fabric
        + ": a loop of "
        + Wording.amount(loop)
        + " on a finished edge of "
        + Wording.amount(finishedEdge)
        + " "
        + seen.plainName();
  }
}
