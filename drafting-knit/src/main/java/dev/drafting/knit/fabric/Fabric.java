package dev.drafting.knit.fabric;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * A knit fabric as it behaves: how far it gives, how it comes back, washes and how wide it is sold.
 *
 * <p>Name, structure and stretch across are needed, the rest may be added. Shares: 0.3 for 30 %.
 *
 * <pre>{@code
 * Fabric jersey = Fabric.of("white jersey", Structure.JERSEY, 0.30).withShrinkage(0.03, 0.05).withWidth(Length.cm(150));
 * jersey;  // => white jersey: single jersey, stretch 30 % (moderately stretchy), shrinks 3 % across and 5 % along, 150 cm wide
 * jersey.shrinkage().beforeWashingAlong(Length.cm(100)).toCm();  // => 105.26315789473685
 * Fabric.of("rib", Structure.RIB, GaugeReading.of(Length.cm(10), Length.cm(18), Length.cm(10.2))).recoveryVerdict();  // => GOOD
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Fabric implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Common practice, no source: the last fifth of the stretch is there on the gauge only. */
  private static final double USABLE = 0.8;

  private final transient Traits traits;

  private Fabric(Traits traits) {
    this.traits = traits;
  }

  private Fabric with(Consumer<Traits> change) {
    return new Fabric(traits.changed(change));
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
    double stretch = Traits.share(name, "stretch across", stretchAcross, 3);
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
    try {
      return of(name, structure, GaugeMean.of(across));
    } catch (DraftingException e) {
      throw e.at("fabric " + name);
    }
  }

  /**
   * A fabric from readings of the hand gauge across the cloth, taken together.
   *
   * @param name what the maker calls it, not blank
   * @param structure how it is knitted
   * @param across the readings; stretch, its uncertainty and recovery are theirs
   * @return the fabric
   * @throws DraftingException if the name is blank or the stretch over 300 %
   */
  public static Fabric of(String name, Structure structure, GaugeMean across) {
    return of(name, structure, across.stretch())
        .withUncertainty(across.uncertainty())
        .withRecovery(across.recovery());
  }

  /**
   * The same fabric with its stretch along.
   *
   * @param share how far it gives along, from 0 to 3
   * @return a fabric that knows it
   * @throws DraftingException if the share is out of range
   */
  public Fabric withStretchAlong(double share) {
    double checked = Traits.share(name(), "stretch along", share, 3);
    return with(t -> t.stretchAlong = checked);
  }

  /**
   * The same fabric with another uncertainty of its stretch.
   *
   * @param points how far the true stretch may lie from the one given, either way: a share from 0
   *     to 1, 0.05 unless set
   * @return a fabric that knows it
   * @throws DraftingException if the share is out of range
   */
  public Fabric withUncertainty(double points) {
    double checked = Traits.share(name(), "uncertainty of the stretch", points, 1);
    return with(t -> t.uncertainty = checked);
  }

  /**
   * The same fabric with its recovery.
   *
   * @param share how much of the stretch goes back, from 0 to 1
   * @return a fabric that knows it
   * @throws DraftingException if the share is out of range
   */
  public Fabric withRecovery(double share) {
    double checked = Traits.share(name(), "recovery", share, 1);
    return with(t -> t.recovery = checked);
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
    try {
      return withShrinkage(new Shrinkage(across, along));
    } catch (DraftingException e) {
      throw e.at("fabric " + name());
    }
  }

  /**
   * The same fabric with what it loses in the wash.
   *
   * @param loss each way, for instance {@link Shrinkage#measured measured} on a swatch
   * @return a fabric that knows it
   */
  public Fabric withShrinkage(Shrinkage loss) {
    Objects.requireNonNull(loss, "loss");
    return with(t -> t.shrinkage = loss);
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
          .at("fabric " + name())
          .value(usable)
          .accepted("10 cm to 500 cm");
    }
    return with(t -> t.width = usable);
  }

  /**
   * The same fabric with the width that can be cut from, worked out from the whole width: the whole
   * less both edges.
   *
   * @param whole from selvage to selvage
   * @param atEachEdge what cannot be used there, glued or tentered: usually 1 to 3 cm
   * @return a fabric that knows it
   * @throws DraftingException if an edge is negative, or what is left out of range
   */
  public Fabric withWidth(Length whole, Length atEachEdge) {
    if (atEachEdge.isNegative()) {
      throw DraftingException.of("the edge that cannot be used is negative")
          .at("fabric " + name())
          .value(atEachEdge)
          .accepted("0 or more");
    }
    return withWidth(whole.minus(atEachEdge.times(2)));
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
          .at("fabric " + name())
          .value(gramsPerSquareMetre)
          .accepted("over 0, to 2000 grams per square metre");
    }
    return with(t -> t.mass = gramsPerSquareMetre);
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
    double checked = Traits.share(name(), "tension", share, 0.05);
    return with(t -> t.tension = checked);
  }

  /**
   * The same fabric, said to curl at its cut edges or not.
   *
   * @param curls what was seen; as its structure does unless set
   * @return a fabric that knows it
   */
  public Fabric withCurl(boolean curls) {
    return with(t -> t.curls = curls == structure().curls() ? null : curls);
  }

  /**
   * The same fabric, whose pieces may lie head to foot. Knits are treated as one-way otherwise,
   * because of their shading and the direction in which they ladder (common practice).
   *
   * @return a fabric that may be laid both ways
   */
  public Fabric bothWays() {
    return with(t -> t.oneWay = false);
  }

  /**
   * The same fabric, washed before it is cut: it has shrunk already and shrinks no more. More of it
   * must still be bought.
   *
   * @return a fabric that is cut after washing
   */
  public Fabric prewashed() {
    return with(t -> t.prewashed = true);
  }

  /**
   * What the maker calls it.
   *
   * @return the name
   */
  public String name() {
    return traits.name;
  }

  /**
   * How it is knitted.
   *
   * @return the structure
   */
  public Structure structure() {
    return traits.structure;
  }

  /**
   * How far it gives across on the gauge.
   *
   * @return a share, 0.3 for 30 %
   */
  public double stretchAcross() {
    return traits.stretchAcross;
  }

  /**
   * How far the true stretch across may lie from the one given, either way.
   *
   * @return a share, 0.05 for 5 points
   */
  public double uncertainty() {
    return traits.uncertainty;
  }

  /**
   * How far it gives along on the gauge.
   *
   * @return a share, or empty if nobody has tried
   */
  public OptionalDouble stretchAlong() {
    return optional(traits.stretchAlong);
  }

  /**
   * The stretch across that can be counted on in sewing and wearing: 0.8 of what the gauge says
   * (common practice, no source).
   *
   * @return a share, 0.24 for a fabric of 30 %
   */
  public double usableStretch() {
    return USABLE * stretchAcross();
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
    return optional(traits.recovery);
  }

  /**
   * How much longer it stays after it was pulled as far as the gauge went: stretch x (1 -
   * recovery).
   *
   * @return a share, or empty if nobody has tried
   */
  public OptionalDouble growth() {
    Double known = traits.recovery;
    return known == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(stretchAcross() * (1 - known));
  }

  /**
   * What the recovery means for use.
   *
   * @return good, fair, poor or unknown
   */
  public Recovery recoveryVerdict() {
    Double known = traits.recovery;
    return known == null ? Recovery.UNKNOWN : Recovery.of(known);
  }

  /**
   * What it loses in its first wash.
   *
   * @return the loss each way, none when nothing is known
   */
  public Shrinkage shrinkage() {
    return traits.shrinkage;
  }

  /**
   * What it will still lose after it is cut.
   *
   * @return its shrinkage, and none when it is prewashed
   */
  public Shrinkage shrinkageToCome() {
    return isPrewashed() ? Shrinkage.NONE : shrinkage();
  }

  /**
   * The width that can be cut from.
   *
   * @return the width, or empty when it is not known
   */
  public Optional<Length> width() {
    return Optional.ofNullable(traits.width);
  }

  /**
   * The width to cut from: of a prewashed fabric the width less what it lost across, otherwise the
   * usable width as it is sold.
   *
   * @return the width, or empty when it is not known
   */
  public Optional<Length> widthToCut() {
    return width().map(sold -> isPrewashed() ? sold.times(1 - shrinkage().across()) : sold);
  }

  /**
   * The weight in grams per square metre.
   *
   * @return the weight, or empty when it is not known
   */
  public OptionalDouble mass() {
    return optional(traits.mass);
  }

  /**
   * What a rectangle of it weighs.
   *
   * @param across one side
   * @param along the other side
   * @return grams, or empty when its weight is not known
   */
  public OptionalDouble grams(Length across, Length along) {
    double squareMetres = across.toMm() * along.toMm() / 1e6;
    return mass().isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(mass().getAsDouble() * squareMetres);
  }

  /**
   * Tells whether its cut edges roll up.
   *
   * @return what was seen, or what is usual for its structure
   */
  public boolean curls() {
    Boolean seen = traits.curls;
    return seen == null ? structure().curls() : seen;
  }

  /**
   * Tells whether all pieces must lie the same way up.
   *
   * @return true unless it was said to go {@link #bothWays()}
   */
  public boolean isOneWay() {
    return traits.oneWay;
  }

  /**
   * The tension that a strip of it stands at its finished edge.
   *
   * @return a share, 0.0075 unless set
   */
  public double tension() {
    return traits.tension;
  }

  /**
   * Tells whether the cloth is washed before it is cut.
   *
   * @return true after {@link #prewashed()}
   */
  public boolean isPrewashed() {
    return traits.prewashed;
  }

  /**
   * The band that its stretch falls in.
   *
   * @return the class
   */
  public StretchClass stretchClass() {
    return StretchClass.of(stretchAcross());
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

  private Object writeReplace() {
    return KeptFabric.of(traits);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a fabric is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Fabric && ((Fabric) other).traits.equals(traits);
  }

  @Override
  public int hashCode() {
    return traits.hashCode();
  }

  @Override
  public String toString() {
    return FabricText.of(this);
  }
}
