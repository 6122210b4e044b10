package dev.drafting.knit.fabric;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;

/**
 * Several readings of the hand gauge taken together: their mean and how far to trust it.
 *
 * <p>A reading by hand is good to 5 points of stretch either way (common practice, no source; even
 * the laboratory method ASTM D2594 is declared unfit for acceptance testing because laboratories
 * disagree). Pulling again with the same hand does not make that less, so the mean keeps the 5
 * points, and more where the readings lie further from it.
 *
 * <pre>{@code
 * GaugeMean mean = GaugeMean.of(
 *     GaugeReading.of(Length.cm(10), Length.cm(12.9), Length.cm(10.1)),
 *     GaugeReading.of(Length.cm(10), Length.cm(13.1), Length.cm(10.1)));
 * mean;  // => 2 readings: stretch 30 % (25 to 35 %), growth 1 %, recovery 96.7 %
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class GaugeMean implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Common practice, no source. */
  static final double OF_A_HAND = 0.05;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<GaugeReading> readings;

  private GaugeMean(List<GaugeReading> readings) {
    this.readings = readings;
  }

  /**
   * The mean of readings in one direction of one cloth.
   *
   * @param readings one or, better, three
   * @return their mean
   * @throws DraftingException if there is no reading
   */
  public static GaugeMean of(GaugeReading... readings) {
    if (readings.length == 0) {
      throw DraftingException.of("there is no reading of the gauge")
          .accepted("one reading or more");
    }
    return new GaugeMean(List.of(readings));
  }

  /**
   * The readings.
   *
   * @return an unmodifiable list of one or more
   */
  public List<GaugeReading> readings() {
    return readings;
  }

  /**
   * How far the cloth gives: the mean of the readings.
   *
   * @return a share, 0.5 for 50 %
   */
  public double stretch() {
    return mean(GaugeReading::stretch);
  }

  /**
   * How much longer it stays: the mean of the readings.
   *
   * @return a share, 0.02 for 2 %
   */
  public double growth() {
    return mean(GaugeReading::growth);
  }

  /**
   * How much of the stretch goes back: 1 - growth / stretch of the means.
   *
   * @return a share, 1 when the cloth comes back fully
   */
  public double recovery() {
    return 1 - growth() / stretch();
  }

  /**
   * How far the true stretch may lie from the mean, either way.
   *
   * @return a share of at least 0.05
   */
  public double uncertainty() {
    double mean = stretch();
    double farthest =
        readings.stream().mapToDouble(r -> Math.abs(r.stretch() - mean)).max().orElse(0);
    return Math.max(OF_A_HAND, farthest);
  }

  private double mean(ToDoubleFunction<GaugeReading> value) {
    return readings.stream().mapToDouble(value).average().orElseThrow();
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(List<GaugeReading> readings) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return of(readings.toArray(GaugeReading[]::new));
    }
  }

  private Object writeReplace() {
    return new Kept(readings);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a mean of readings is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof GaugeMean && ((GaugeMean) other).readings.equals(readings);
  }

  @Override
  public int hashCode() {
    return Objects.hashCode(readings);
  }

  @Override
  public String toString() {
    return (readings.size() == 1 ? "1 reading" : readings.size() + " readings")
        + ": stretch "
        + Wording.percent(stretch())
        + " ("
        + Wording.percent(Math.max(0, stretch() - uncertainty())).replace(" %", "")
        + " to "
        + Wording.percent(stretch() + uncertainty())
        + "), growth "
        + Wording.percent(growth())
        + ", recovery "
        + Wording.percent(recovery());
  }
}
