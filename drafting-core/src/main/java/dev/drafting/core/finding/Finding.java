package dev.drafting.core.finding;

import dev.drafting.core.Stable;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Something that will sew, fit or lie badly: where, why, and what to do about it. Found before
 * anything is cut.
 *
 * <pre>{@code
 * Finding.warning("seam.lengths-differ", Place.seam("side"), "front is 6 mm longer than back");
 * // => WARNING side: front is 6 mm longer than back
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Finding implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Severity severity;
  private final String id;
  private final Place place;
  private final String reason;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Remedy> remedies;

  private Finding(Severity severity, String id, Place place, String reason, List<Remedy> remedies) {
    this.severity = severity;
    this.id = Objects.requireNonNull(id, "id");
    this.place = Objects.requireNonNull(place, "place");
    this.reason = Objects.requireNonNull(reason, "reason");
    this.remedies = remedies;
  }

  /**
   * Something worth knowing.
   *
   * @param id stable name of this sort of finding, such as "seam.lengths-differ"
   * @param place where it is
   * @param reason why, with the amounts
   * @return a finding without a remedy yet
   */
  public static Finding note(String id, Place place, String reason) {
    return new Finding(Severity.NOTE, id, place, reason, List.of());
  }

  /**
   * Something that will probably sew or fit worse than it could.
   *
   * @param id stable name of this sort of finding, such as "seam.lengths-differ"
   * @param place where it is
   * @param reason why, with the amounts
   * @return a finding without a remedy yet
   */
  public static Finding warning(String id, Place place, String reason) {
    return new Finding(Severity.WARNING, id, place, reason, List.of());
  }

  /**
   * Something that will not sew, not fit or not go on.
   *
   * @param id stable name of this sort of finding, such as "head.too-small"
   * @param place where it is
   * @param reason why, with the amounts
   * @return a finding without a remedy yet
   */
  public static Finding problem(String id, Place place, String reason) {
    return new Finding(Severity.PROBLEM, id, place, reason, List.of());
  }

  /**
   * Adds a remedy after those already there: the one to try first comes first.
   *
   * @param remedy what to do about it
   * @return a finding with this remedy
   */
  public Finding withRemedy(Remedy remedy) {
    List<Remedy> more = new ArrayList<>(remedies);
    more.add(Objects.requireNonNull(remedy, "remedy"));
    return new Finding(severity, id, place, reason, List.copyOf(more));
  }

  /**
   * How much it matters.
   *
   * @return note, warning or problem
   */
  public Severity severity() {
    return severity;
  }

  /**
   * The stable name of this sort of finding.
   *
   * @return for instance "seam.lengths-differ"
   */
  public String id() {
    return id;
  }

  /**
   * Where it is.
   *
   * @return the place by names
   */
  public Place place() {
    return place;
  }

  /**
   * Why it will sew, fit or lie badly.
   *
   * @return one or two sentences with the amounts
   */
  public String reason() {
    return reason;
  }

  /**
   * What to do about it, the one to try first in front.
   *
   * @return an unmodifiable list, empty when there is nothing to do
   */
  public List<Remedy> remedies() {
    return remedies;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      Severity severity, String id, Place place, String reason, List<Remedy> remedies)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      Finding finding =
          new Finding(Objects.requireNonNull(severity, "severity"), id, place, reason, List.of());
      for (Remedy remedy : remedies) {
        finding = finding.withRemedy(remedy);
      }
      return finding;
    }
  }

  private Object writeReplace() {
    return new Kept(severity, id, place, reason, remedies);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a finding is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Finding that
        && that.severity == severity
        && that.id.equals(id)
        && that.place.equals(place)
        && that.reason.equals(reason)
        && that.remedies.equals(remedies);
  }

  @Override
  public int hashCode() {
    return Objects.hash(severity.name(), id, place, reason, remedies);
  }

  @Override
  public String toString() {
    return severity + " " + place + ": " + reason;
  }
}
