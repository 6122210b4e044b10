package dev.drafting.knit.size;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * The measures of a body, as far as they are known.
 *
 * <pre>{@code
 * Body.of().with(BodyMeasure.BUST_GIRTH, Length.cm(92)).with(BodyMeasure.HIP_GIRTH, Length.cm(98));
 * // => bust girth 92 cm, hip girth 98 cm
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class Body implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final int MOST_YEARS = 120;

  @SuppressWarnings("serial") // always an unmodifiable view of an EnumMap
  private final Map<BodyMeasure, Length> measures;

  private final @Nullable Integer age;

  private Body(Map<BodyMeasure, Length> measures, @Nullable Integer age) {
    this.measures = Collections.unmodifiableMap(measures);
    this.age = age;
  }

  /**
   * A body of which nothing is known yet.
   *
   * @return no measures
   */
  public static Body of() {
    return new Body(new EnumMap<>(BodyMeasure.class), null);
  }

  /**
   * The same body with one measure more, or with another value of one.
   *
   * @param measure what was measured
   * @param length how long it is
   * @return the body
   * @throws DraftingException if no body measures so; it says the range
   */
  public Body with(BodyMeasure measure, Length length) {
    Map<BodyMeasure, Length> more = copied();
    more.put(measure, measure.checked(length));
    return new Body(more, age);
  }

  /**
   * The same body with an age, on which cautions for children's clothing depend.
   *
   * @param years completed years, 0 to 120
   * @return the body
   * @throws DraftingException if the age is out of range
   */
  public Body withAge(int years) {
    if (years < 0 || years > MOST_YEARS) {
      throw DraftingException.of("the age is out of range")
          .value(years)
          .accepted("0 to " + MOST_YEARS + " years");
    }
    return new Body(copied(), years);
  }

  private Map<BodyMeasure, Length> copied() {
    Map<BodyMeasure, Length> copy = new EnumMap<>(BodyMeasure.class);
    copy.putAll(measures);
    return copy;
  }

  /**
   * A measure, if it is known.
   *
   * @param measure what was measured
   * @return the length, or empty
   */
  public Optional<Length> measure(BodyMeasure measure) {
    return Optional.ofNullable(measures.get(measure));
  }

  /**
   * All measures that are known.
   *
   * @return an unmodifiable map in the order of {@link BodyMeasure}
   */
  public Map<BodyMeasure, Length> measures() {
    return measures;
  }

  /**
   * The age in completed years.
   *
   * @return the age, or empty when it is not known
   */
  public OptionalInt age() {
    return age == null ? OptionalInt.empty() : OptionalInt.of(age);
  }

  /** The first of these that is known. */
  Optional<BodyMeasure> firstKnown(List<BodyMeasure> wanted) {
    return wanted.stream().filter(measures::containsKey).findFirst();
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(Map<BodyMeasure, Length> measures, @Nullable Integer age)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      Body body = of();
      for (Map.Entry<BodyMeasure, Length> measure : measures.entrySet()) {
        body = body.with(measure.getKey(), measure.getValue());
      }
      return age == null ? body : body.withAge(age);
    }
  }

  private Object writeReplace() {
    return new Kept(measures, age);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a body is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Body that
        && that.measures.equals(measures)
        && Objects.equals(that.age, age);
  }

  @Override
  public int hashCode() {
    return Objects.hash(toString(), age);
  }

  @Override
  public String toString() {
    List<String> words = new ArrayList<>();
    measures.forEach((measure, length) -> words.add(measure + " " + Wording.amount(length)));
    if (age != null) {
      words.add(age == 1 ? "1 year" : age + " years");
    }
    return words.isEmpty() ? "no measures" : String.join(", ", words);
  }
}
