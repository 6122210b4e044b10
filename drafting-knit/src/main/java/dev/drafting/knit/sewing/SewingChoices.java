package dev.drafting.knit.sewing;

import dev.drafting.core.Stable;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What the maker decides about sewing: the machines, whether bands are sewn in the round or flat,
 * which seams get a tape, and what the garment has that calls for cautions.
 *
 * <pre>{@code
 * SewingChoices.of().withMachines(Machines.zigzag()).withConstruction(Construction.FLAT).withTape("waist");
 * // => seams zigzag (304), hems zigzag (304), seam allowance 10 mm; bands flat; tape at waist
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class SewingChoices implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final SewingChoices USUAL =
      new SewingChoices(Machines.overlocker(4), Construction.IN_THE_ROUND, List.of(), List.of());

  private final Machines machines;
  private final Construction construction;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<String> taped;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Detail> details;

  private SewingChoices(
      Machines machines, Construction construction, List<String> taped, List<Detail> details) {
    this.machines = machines;
    this.construction = construction;
    this.taped = taped;
    this.details = details;
  }

  /**
   * The usual: a four-thread overlocker beside a zigzag machine, bands in the round.
   *
   * @return the choices
   */
  public static SewingChoices of() {
    return USUAL;
  }

  /**
   * The same choices on other machines.
   *
   * @param newMachines what the maker has
   * @return the choices
   */
  public SewingChoices withMachines(Machines newMachines) {
    return new SewingChoices(
        Objects.requireNonNull(newMachines, "machines"), construction, taped, details);
  }

  /**
   * The same choices with bands in the round or flat.
   *
   * @param newConstruction how openings are finished
   * @return the choices
   */
  public SewingChoices withConstruction(Construction newConstruction) {
    return new SewingChoices(
        machines, Objects.requireNonNull(newConstruction, "construction"), taped, details);
  }

  /**
   * The same choices with a tape in one more seam.
   *
   * @param seam its name; shoulder seams have one by themselves
   * @return the choices
   */
  public SewingChoices withTape(String seam) {
    return new SewingChoices(machines, construction, with(taped, seam), details);
  }

  /**
   * The same choices for a garment with something that calls for cautions.
   *
   * @param detail what it has or is
   * @return the choices
   */
  public SewingChoices withDetail(Detail detail) {
    return new SewingChoices(machines, construction, taped, with(details, detail));
  }

  private static <T> List<T> with(List<T> list, T item) {
    List<T> more = new ArrayList<>(list);
    more.remove(item);
    more.add(Objects.requireNonNull(item, "choice"));
    return List.copyOf(more);
  }

  /**
   * The machines.
   *
   * @return a four-thread overlocker and a zigzag machine unless set
   */
  public Machines machines() {
    return machines;
  }

  /**
   * How bands are sewn.
   *
   * @return in the round unless set
   */
  public Construction construction() {
    return construction;
  }

  /**
   * The seams that get a tape beside the shoulders.
   *
   * @return their names, in the order of choosing
   */
  public List<String> taped() {
    return taped;
  }

  /**
   * What the garment has that calls for cautions.
   *
   * @return in the order of choosing
   */
  public List<Detail> details() {
    return details;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      Machines machines, Construction construction, List<String> taped, List<Detail> details)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      SewingChoices choices = USUAL.withMachines(machines).withConstruction(construction);
      for (String seam : taped) {
        choices = choices.withTape(seam);
      }
      for (Detail detail : details) {
        choices = choices.withDetail(detail);
      }
      return choices;
    }
  }

  private Object writeReplace() {
    return new Kept(machines, construction, taped, details);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a set of sewing choices is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SewingChoices
        && ((SewingChoices) other).machines.equals(machines)
        && ((SewingChoices) other).construction == construction
        && ((SewingChoices) other).taped.equals(taped)
        && ((SewingChoices) other).details.equals(details);
  }

  @Override
  public int hashCode() {
    return Objects.hash(machines, construction, taped, details);
  }

  @Override
  public String toString() {
    StringBuilder text =
        new StringBuilder().append(machines).append("; bands ").append(construction);
    if (!taped.isEmpty()) {
      text.append("; tape at ").append(String.join(", ", taped));
    }
    details.forEach(detail -> text.append("; ").append(detail));
    return text.toString();
  }
}
