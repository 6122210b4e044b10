package dev.drafting.core.trace;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One piece traced several times: the tracings are laid on each other as they fit best, and trued
 * together, so that what the pencil and the lay did at random evens out. One that was traced from
 * the other side of the paper is turned over.
 *
 * <p>Half on the fold and whole tracings go together; the result is a half, for a whole piece is
 * folded in its middle anyway. Tracings as they lie go together among themselves, wherever they
 * lie.
 *
 * <pre>{@code
 * Tracing once = Tracing.of("pocket", Extent.AS_IT_LIES, List.of(
 *     TracedEdge.of("bottom", 0, 0, 100, 0), TracedEdge.of("right", 100, 0, 100, 120),
 *     TracedEdge.of("top", 100, 120, 0, 121), TracedEdge.of("left", 0, 121, 0, 0)));
 * Tracing again = once.map(Transform.translation(new Vector(500, 20)));
 * RepeatedTracing twice = RepeatedTracing.of(once, again);
 * twice.deviation(1).text(LengthUnit.MM);  // => 0 mm
 * Truing.of(twice.together()).result().report().edge("bottom").points();  // => 4
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class RepeatedTracing implements Serializable {
  private static final long serialVersionUID = 1L;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Tracing> tracings;

  private final Tracing together;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Length> deviations;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Finding> findings;

  private RepeatedTracing(
      List<Tracing> tracings, Tracing together, List<Length> deviations, List<Finding> findings) {
    this.tracings = tracings;
    this.together = together;
    this.deviations = List.copyOf(deviations);
    this.findings = List.copyOf(findings);
  }

  /**
   * Lays tracings of one piece on each other.
   *
   * @param first one of them; the result is called like it, and lies where it does
   * @param more the others, with edges of the same names
   * @return all of them together
   * @throws DraftingException if there is no other, their edges have other names or follow each
   *     other otherwise, they are named from another corner, some lie on a fold and some do not, or
   *     one of them cannot be trued
   */
  public static RepeatedTracing of(Tracing first, Tracing... more) {
    List<Tracing> all = Stream.concat(Stream.of(first), Stream.of(more)).toList();
    if (all.size() < 2) {
      throw DraftingException.of("a piece that was traced once cannot be compared")
          .at(first.piece())
          .value("1 tracing")
          .accepted("two tracings or more");
    }
    List<LaidTracing> laid = new ArrayList<>();
    for (Tracing tracing : all) {
      laid.add(laid.isEmpty() ? LaidTracing.of(tracing) : laid.get(0).like(tracing));
    }
    TracingMean mean = new TracingMean(laid);
    return new RepeatedTracing(all, mean.together(), mean.deviations(), mean.findings());
  }

  /**
   * All tracings as one, for {@link Truing}: the strokes of every edge laid on each other, their
   * points in order along it.
   *
   * @return half on the fold, or as it lies
   */
  public Tracing together() {
    return together;
  }

  /**
   * The tracings themselves.
   *
   * @return as they were given
   */
  public List<Tracing> tracings() {
    return tracings;
  }

  /**
   * How far one tracing, trued by itself, lies off the mean of all where it fits best.
   *
   * @param tracing its number, 0 for the first
   * @return the root of the mean square along the outline
   * @throws DraftingException if there is no such tracing
   */
  public Length deviation(int tracing) {
    if (tracing < 0 || tracing >= deviations.size()) {
      throw DraftingException.of("there is no such tracing")
          .at(together.piece())
          .value(tracing)
          .accepted("0 to " + (deviations.size() - 1));
    }
    return deviations.get(tracing);
  }

  /**
   * What was seen: a tracing of the other side, one that was stretched as it lay.
   *
   * @return notes and warnings with remedies
   */
  public List<Finding> findings() {
    return findings;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(Tracing first, List<Tracing> more) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return of(first, more.toArray(Tracing[]::new));
    }
  }

  private Object writeReplace() {
    return new Kept(tracings.get(0), List.copyOf(tracings.subList(1, tracings.size())));
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a repeated tracing is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof RepeatedTracing that && tracings.equals(that.tracings);
  }

  @Override
  public int hashCode() {
    return Objects.hash(tracings);
  }

  @Override
  public String toString() {
    return together.piece()
        + ", traced "
        + tracings.size()
        + " times, off their mean "
        + deviations.stream().map(off -> off.text(LengthUnit.MM)).collect(Collectors.joining(", "));
  }
}
