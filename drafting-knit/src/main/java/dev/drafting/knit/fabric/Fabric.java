package dev.drafting.knit.fabric;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Length;
import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * A knit fabric as it behaves: how far it gives, how well it comes back, how it washes, how wide it
 * is sold.
 *
 * <p>Name, structure and stretch across are needed; the rest may be added when it is known. Shares
 * are numbers from 0, 0.3 for 30 %.
 *
 * <pre>{@code
 * Fabric jersey = Fabric.of("white jersey", Structure.JERSEY, 0.30).withShrinkage(0.03, 0.05).withWidth(Length.cm(150));
 * jersey;  // => white jersey: single jersey, stretch 30 % (moderately stretchy), shrinks 3 % across and 5 % along, 150 cm wide
 * jersey.beforeWashingAlong(Length.cm(100)).toCm();  // => 105.26315789473685
 * Fabric.of("rib", Structure.RIB, GaugeReading.of(Length.cm(10), Length.cm(18), Length.cm(10.2))).recoveryVerdict();  // => GOOD
 * }</pre>
 *
 * @since 0.1
 */
public final class Fabric implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Common practice, no source: the last fifth of the stretch is there on the gauge only. */
  private static final double USABLE = 0.8;

  private final String name;
  private final Structure structure;
  private final double stretchAcross;
  private final @Nullable Double stretchAlong;
  private final @Nullable Double recovery;
  private final double shrinkageAcross;
  private final double shrinkageAlong;
  private final @Nullable Length width;
  private final @Nullable Double mass;
  private final double tension;
  private final boolean prewashed;

  private Fabric(Traits traits) {
    this.name = traits.name;
    this.structure = traits.structure;
    this.stretchAcross = traits.stretchAcross;
    this.stretchAlong = traits.stretchAlong;
    this.recovery = traits.recovery;
    this.shrinkageAcross = traits.shrinkageAcross;
    this.shrinkageAlong = traits.shrinkageAlong;
    this.width = traits.width;
    this.mass = traits.mass;
    this.tension = traits.tension;
    this.prewashed = traits.prewashed;
  }

  /** What a fabric is made from while it is being changed. */
  private static final class Traits {
    private final String name;
    private final Structure structure;
    private final double stretchAcross;
    private @Nullable Double stretchAlong;
    private @Nullable Double recovery;
    private double shrinkageAcross;
    private double shrinkageAlong;
    private @Nullable Length width;
    private @Nullable Double mass;
    private double tension = 0.0075;
    private boolean prewashed;

    private Traits(String name, Structure structure, double stretchAcross) {
      this.name = name;
      this.structure = structure;
      this.stretchAcross = stretchAcross;
    }
  }

  private Traits traits() {
    Traits traits = new Traits(name, structure, stretchAcross);
    traits.stretchAlong = stretchAlong;
    traits.recovery = recovery;
    traits.shrinkageAcross = shrinkageAcross;
    traits.shrinkageAlong = shrinkageAlong;
    traits.width = width;
    traits.mass = mass;
    traits.tension = tension;
    traits.prewashed = prewashed;
    return traits;
  }

  /**
   * A fabric whose stretch is known.
   *
   * @param name what the maker calls it, not blank
   * @param structure how it is knitted
   * @param stretchAcross how far it gives across, a share from 0 to 3
   * @return the fabric
   * @throws DraftingException if the name is blank or the stretch out of range
   */
  public static Fabric of(String name, Structure structure, double stretchAcross) {
    if (name.isBlank()) {
      throw DraftingException.of("a fabric has no name").accepted("a name that is not blank");
    }
    Objects.requireNonNull(structure, "structure");
    double stretch = share(name, "stretch across", stretchAcross, 3);
    return new Fabric(new Traits(name, structure, stretch));
  }

  /**
   * A fabric from readings of the hand gauge across the cloth: stretch and recovery are their
   * means.
   *
   * @param name what the maker calls it, not blank
   * @param structure how it is knitted
   * @param across one reading or, better, three
   * @return the fabric
   * @throws DraftingException if there is no reading, the name is blank or the stretch over 300 %
   */
  public static Fabric of(String name, Structure structure, GaugeReading... across) {
    if (across.length == 0) {
      throw DraftingException.of("there is no reading of the gauge")
          .at("fabric " + name)
          .accepted("one reading or more");
    }
    return of(name, structure, mean(across, GaugeReading::stretch))
        .withRecovery(mean(across, GaugeReading::recovery));
  }

  private static double mean(GaugeReading[] readings, ToDoubleFunction<GaugeReading> value) {
    return Arrays.stream(readings).mapToDouble(value).average().orElseThrow();
  }

  private static double share(String name, String what, double share, double most) {
    if (!(share >= 0 && share <= most)) {
      throw DraftingException.of("the " + what + " is out of range")
          .at("fabric " + name)
          .value(share)
          .accepted("a share from 0 to " + most + ", such as 0.05 for 5 %");
    }
    return share + 0.0;
  }

  /**
   * The same fabric with its stretch along.
   *
   * @param share how far it gives along, from 0 to 3
   * @return a fabric that knows it
   * @throws DraftingException if the share is out of range
   */
  public Fabric withStretchAlong(double share) {
    Traits traits = traits();
    traits.stretchAlong = share(name, "stretch along", share, 3);
    return new Fabric(traits);
  }

  /**
   * The same fabric with its recovery.
   *
   * @param share how much of the stretch goes back, from 0 to 1
   * @return a fabric that knows it
   * @throws DraftingException if the share is out of range
   */
  public Fabric withRecovery(double share) {
    Traits traits = traits();
    traits.recovery = share(name, "recovery", share, 1);
    return new Fabric(traits);
  }

  /**
   * The same fabric with what it loses in the wash: (before - after) / before.
   *
   * @param across the loss across, a share from 0 to 0.3
   * @param along the loss along, a share from 0 to 0.3
   * @return a fabric that knows it
   * @throws DraftingException if a share is out of range
   */
  public Fabric withShrinkage(double across, double along) {
    Traits traits = traits();
    traits.shrinkageAcross = share(name, "shrinkage across", across, 0.3);
    traits.shrinkageAlong = share(name, "shrinkage along", along, 0.3);
    return new Fabric(traits);
  }

  /**
   * The same fabric with the width that can be cut from: without selvages and glued edges.
   *
   * @param usable from 10 cm to 5 m
   * @return a fabric that knows it
   * @throws DraftingException if the width is out of range
   */
  public Fabric withWidth(Length usable) {
    if (usable.compareTo(Length.cm(10)) < 0 || usable.compareTo(Length.cm(500)) > 0) {
      throw DraftingException.of("the usable width is out of range")
          .at("fabric " + name)
          .value(usable)
          .accepted("10 cm to 500 cm");
    }
    Traits traits = traits();
    traits.width = usable;
    return new Fabric(traits);
  }

  /**
   * The same fabric with its weight.
   *
   * @param gramsPerSquareMetre over 0, to 2000
   * @return a fabric that knows it
   * @throws DraftingException if the weight is out of range
   */
  public Fabric withMass(double gramsPerSquareMetre) {
    if (!(gramsPerSquareMetre > 0 && gramsPerSquareMetre <= 2000)) {
      throw DraftingException.of("the weight is out of range")
          .at("fabric " + name)
          .value(gramsPerSquareMetre)
          .accepted("over 0, to 2000 grams per square metre");
    }
    Traits traits = traits();
    traits.mass = gramsPerSquareMetre;
    return new Fabric(traits);
  }

  /**
   * The same fabric with the little tension that a strip of it stands at its finished edge and
   * still lies flat. The default of 0.75 % is the middle of the 0.5 to 1 % with which the one
   * recorded garment that this library is set by agrees (common practice, no source).
   *
   * @param share from 0 to 0.05
   * @return a fabric with this tension
   * @throws DraftingException if the share is out of range
   */
  public Fabric withTension(double share) {
    Traits traits = traits();
    traits.tension = share(name, "tension", share, 0.05);
    return new Fabric(traits);
  }

  /**
   * The same fabric, washed before it is cut: it has shrunk already and shrinks no more. More of it
   * must still be bought.
   *
   * @return a fabric that is cut after washing
   */
  public Fabric prewashed() {
    Traits traits = traits();
    traits.prewashed = true;
    return new Fabric(traits);
  }

  /**
   * What the maker calls it.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * How it is knitted.
   *
   * @return the structure
   */
  public Structure structure() {
    return structure;
  }

  /**
   * How far it gives across on the gauge.
   *
   * @return a share, 0.3 for 30 %
   */
  public double stretchAcross() {
    return stretchAcross;
  }

  /**
   * How far it gives along on the gauge.
   *
   * @return a share, or empty if nobody has tried
   */
  public OptionalDouble stretchAlong() {
    return optional(stretchAlong);
  }

  /**
   * The stretch across that can be counted on in sewing and wearing: 0.8 of what the gauge says
   * (common practice, no source).
   *
   * @return a share, 0.24 for a fabric of 30 %
   */
  public double usableStretch() {
    return USABLE * stretchAcross;
  }

  /**
   * The stretch to look for on the gauge when a cloth has to give some amount in use: amount / 0.8,
   * rounded up to a whole per cent.
   *
   * @param inUse a share, 0.12 for 12 %
   * @return a share, 0.15 for 15 %
   */
  public static double stretchForUse(double inUse) {
    return Math.ceil(100 * inUse / USABLE - 1e-9) / 100;
  }

  /**
   * How much of the stretch goes back.
   *
   * @return a share, or empty if nobody has tried
   */
  public OptionalDouble recovery() {
    return optional(recovery);
  }

  /**
   * What the recovery means for use.
   *
   * @return good, fair, poor or unknown
   */
  public Recovery recoveryVerdict() {
    return recovery == null ? Recovery.UNKNOWN : Recovery.of(recovery);
  }

  /**
   * What it loses across in its first wash.
   *
   * @return a share, 0 when nothing is known
   */
  public double shrinkageAcross() {
    return shrinkageAcross;
  }

  /**
   * What it loses along in its first wash.
   *
   * @return a share, 0 when nothing is known
   */
  public double shrinkageAlong() {
    return shrinkageAlong;
  }

  /**
   * The width that can be cut from.
   *
   * @return the width, or empty when it is not known
   */
  public Optional<Length> width() {
    return Optional.ofNullable(width);
  }

  /**
   * The width that is left to cut from when the cloth has been washed.
   *
   * @return the width less what it loses across, or empty when the width is not known
   */
  public Optional<Length> widthAfterWashing() {
    return width().map(sold -> sold.times(1 - shrinkageAcross));
  }

  /**
   * The weight in grams per square metre.
   *
   * @return the weight, or empty when it is not known
   */
  public OptionalDouble mass() {
    return optional(mass);
  }

  /**
   * The tension that a strip of it stands at its finished edge.
   *
   * @return a share, 0.0075 unless set
   */
  public double tension() {
    return tension;
  }

  /**
   * Tells whether the cloth is washed before it is cut.
   *
   * @return true after {@link #prewashed()}
   */
  public boolean isPrewashed() {
    return prewashed;
  }

  /**
   * The band that its stretch falls in.
   *
   * @return the class
   */
  public StretchClass stretchClass() {
    return StretchClass.of(stretchAcross);
  }

  /**
   * How much unwashed cloth makes a length across after washing: wanted / (1 - shrinkage). Not
   * wanted x (1 + shrinkage), which comes out too short.
   *
   * @param wanted the length after washing
   * @return the length before washing
   */
  public Length beforeWashingAcross(Length wanted) {
    return wanted.dividedBy(1 - shrinkageAcross);
  }

  /**
   * How much unwashed cloth makes a length along after washing: wanted / (1 - shrinkage).
   *
   * @param wanted the length after washing
   * @return the length before washing
   */
  public Length beforeWashingAlong(Length wanted) {
    return wanted.dividedBy(1 - shrinkageAlong);
  }

  /**
   * What is to be known about the cloth before it is cut, whatever is made of it.
   *
   * @return findings with the fabric as their place
   */
  public List<Finding> findings() {
    return FabricFindings.of(this);
  }

  private static OptionalDouble optional(@Nullable Double value) {
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  @Override
  public boolean equals(Object other) {
    if (!(other instanceof Fabric)) {
      return false;
    }
    Fabric that = (Fabric) other;
    return name.equals(that.name)
        && structure == that.structure
        && stretchAcross == that.stretchAcross
        && Objects.equals(stretchAlong, that.stretchAlong)
        && Objects.equals(recovery, that.recovery)
        && shrinkageAcross == that.shrinkageAcross
        && shrinkageAlong == that.shrinkageAlong
        && Objects.equals(width, that.width)
        && Objects.equals(mass, that.mass)
        && tension == that.tension
        && prewashed == that.prewashed;
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        name,
        structure.name(),
        stretchAcross,
        stretchAlong,
        recovery,
        shrinkageAcross,
        shrinkageAlong,
        width,
        mass,
        tension,
        prewashed);
  }

  @Override
  public String toString() {
    return FabricText.of(this);
  }
}
