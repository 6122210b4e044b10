package dev.drafting.knit.fabric;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Locale;
import java.util.Objects;

/**
 * One reading of the hand gauge: two pins a little way apart in the folded cloth, pulled as far as
 * it goes easily, let go.
 *
 * <p>Fold the cloth across its width in the middle of the yardage, not at the selvage or a cut
 * edge, which read high (extension leaflet "Considerations for Knit Fabrics", Utah State
 * University). Repeat two or three times; {@link Fabric#of(String, Structure, GaugeReading...)}
 * takes the mean. A reading by hand is good to about 5 points of stretch (common practice).
 *
 * <pre>{@code
 * GaugeReading reading = GaugeReading.of(Length.cm(10), Length.cm(15), Length.cm(10.2));
 * reading;  // => 10 cm pulled to 15 cm, back to 10.2 cm: stretch 50 %, growth 2 %, recovery 96 %
 * reading.stretch();  // => 0.5
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class GaugeReading implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Length rest;
  private final Length pulled;
  private final Length relaxed;

  private GaugeReading(Length rest, Length pulled, Length relaxed) {
    this.rest = rest;
    this.pulled = pulled;
    this.relaxed = relaxed;
  }

  /**
   * A reading.
   *
   * @param rest the distance of the pins before pulling, over nothing
   * @param pulled the distance when the cloth is pulled as far as it goes easily, more than at rest
   * @param relaxed the distance after letting go, from that at rest to that when pulled
   * @return the reading
   * @throws DraftingException if the three are not in that order
   */
  public static GaugeReading of(Length rest, Length pulled, Length relaxed) {
    if (!rest.isPositive()) {
      throw DraftingException.of("the pins of the gauge lie on one point")
          .value(rest)
          .accepted("a distance at rest over 0, usually 10 cm or 4 in");
    }
    if (pulled.compareTo(rest) <= 0) {
      throw DraftingException.of("the pulled length of the gauge is no longer than at rest")
          .value(pulled)
          .accepted("more than " + rest);
    }
    if (relaxed.compareTo(rest) < 0 || relaxed.compareTo(pulled) > 0) {
      throw DraftingException.of("the length of the gauge after letting go is out of range")
          .value(relaxed)
          .accepted(rest + " to " + pulled);
    }
    return new GaugeReading(rest, pulled, relaxed);
  }

  /**
   * How far the cloth gives: (pulled - rest) / rest.
   *
   * @return a share, 0.5 for 50 %
   */
  public double stretch() {
    return pulled.minus(rest).ratioTo(rest);
  }

  /**
   * How much longer the cloth stays: (relaxed - rest) / rest.
   *
   * @return a share, 0.02 for 2 %
   */
  public double growth() {
    return relaxed.minus(rest).ratioTo(rest);
  }

  /**
   * How much of the stretch goes back: (pulled - relaxed) / (pulled - rest).
   *
   * @return a share, 1 when the cloth comes back fully
   */
  public double recovery() {
    return pulled.minus(relaxed).ratioTo(pulled.minus(rest));
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(Length rest, Length pulled, Length relaxed) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return of(rest, pulled, relaxed);
    }
  }

  private Object writeReplace() {
    return new Kept(rest, pulled, relaxed);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a reading of the gauge is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof GaugeReading
        && ((GaugeReading) other).rest.equals(rest)
        && ((GaugeReading) other).pulled.equals(pulled)
        && ((GaugeReading) other).relaxed.equals(relaxed);
  }

  @Override
  public int hashCode() {
    return Objects.hash(rest, pulled, relaxed);
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%s pulled to %s, back to %s: stretch %s, growth %s, recovery %s",
        Wording.amount(rest),
        Wording.amount(pulled),
        Wording.amount(relaxed),
        Wording.percent(stretch()),
        Wording.percent(growth()),
        Wording.percent(recovery()));
  }
}
