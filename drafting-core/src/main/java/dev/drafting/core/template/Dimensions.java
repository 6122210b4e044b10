package dev.drafting.core.template;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Dimensions and choices for a template, by their names.
 *
 * <pre>{@code
 * Dimensions.of().with("chest", Length.cm(92)).with("length", Length.cm(64));  // => chest 92 cm, length 64 cm
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class Dimensions implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final int STEPS_TO_USUAL = 20;

  @SuppressWarnings("serial") // always unmodifiable views of TreeMaps
  private final Map<String, Length> lengths;

  @SuppressWarnings("serial")
  private final Map<String, String> chosen;

  private Dimensions(Map<String, Length> lengths, Map<String, String> chosen) {
    this.lengths = Collections.unmodifiableMap(lengths);
    this.chosen = Collections.unmodifiableMap(chosen);
  }

  /**
   * Nothing said yet: everything as usual.
   *
   * @return no dimensions
   */
  public static Dimensions of() {
    return new Dimensions(new TreeMap<>(), new TreeMap<>());
  }

  /**
   * These dimensions with one more, or with another value of one.
   *
   * @param name the dimension's name
   * @param length how long it is
   * @return the dimensions
   */
  public Dimensions with(String name, Length length) {
    Map<String, Length> more = new TreeMap<>(lengths);
    more.put(name, Objects.requireNonNull(length, "length"));
    return new Dimensions(more, new TreeMap<>(chosen));
  }

  /**
   * These dimensions with one choice made.
   *
   * @param name what is chosen
   * @param option the option
   * @return the dimensions
   */
  public Dimensions withChoice(String name, String option) {
    Map<String, String> more = new TreeMap<>(chosen);
    more.put(name, Objects.requireNonNull(option, "option"));
    return new Dimensions(new TreeMap<>(lengths), more);
  }

  /**
   * A dimension.
   *
   * @param name its name
   * @return the length
   * @throws DraftingException if it was not given
   */
  public Length length(String name) {
    Length length = lengths.get(name);
    if (length == null) {
      throw DraftingException.of("the dimension was not given")
          .value(name)
          .accepted(String.join(", ", lengths.keySet()));
    }
    return length;
  }

  /**
   * What was chosen.
   *
   * @param name what is chosen
   * @return the option
   * @throws DraftingException if nothing was chosen
   */
  public String choice(String name) {
    String option = chosen.get(name);
    if (option == null) {
      throw DraftingException.of("nothing was chosen")
          .value(name)
          .accepted(String.join(", ", chosen.keySet()));
    }
    return option;
  }

  /**
   * All dimensions that were given.
   *
   * @return an unmodifiable map, sorted by name
   */
  public Map<String, Length> lengths() {
    return lengths;
  }

  /**
   * The nearest dimensions that go together, on the way from these to the usual ones.
   *
   * @param template what they are for
   * @return all dimensions of the template: these, if they go together already
   * @throws DraftingException if a dimension is unknown or out of bounds
   */
  public Dimensions suitedTo(GarmentTemplate template) {
    Dimensions wanted = completed(template);
    for (int step = STEPS_TO_USUAL; step > 0; step--) {
      Dimensions nearer = wanted.towardsUsual(template, (double) step / STEPS_TO_USUAL);
      if (nearer.goTogether(template)) {
        return nearer;
      }
    }
    return wanted.towardsUsual(template, 0);
  }

  private Dimensions towardsUsual(GarmentTemplate template, double share) {
    if (share == 1) {
      return this;
    }
    Dimensions nearer = this;
    for (Dimension dimension : template.dimensions()) {
      Length usual = dimension.usual();
      Length off = length(dimension.name()).minus(usual);
      nearer = nearer.with(dimension.name(), usual.plus(off.times(share)));
    }
    return nearer;
  }

  private boolean goTogether(GarmentTemplate template) {
    try {
      template.check(this);
      return true;
    } catch (DraftingException e) {
      return false;
    }
  }

  /** What is missing as usual, everything within its bounds and known to the template. */
  Dimensions completed(GarmentTemplate template) {
    List<String> names = template.dimensions().stream().map(Dimension::name).toList();
    lengths.keySet().forEach(name -> requireKnown("dimension", name, names));
    List<String> choices = template.choices().stream().map(Choice::name).toList();
    chosen.keySet().forEach(name -> requireKnown("choice", name, choices));
    Dimensions all = this;
    for (Dimension dimension : template.dimensions()) {
      Length length = lengths.getOrDefault(dimension.name(), dimension.usual());
      dimension.check(length);
      all = all.with(dimension.name(), length);
    }
    for (Choice choice : template.choices()) {
      String option = chosen.getOrDefault(choice.name(), choice.options().get(0));
      choice.check(option);
      all = all.withChoice(choice.name(), option);
    }
    return all;
  }

  private static void requireKnown(String what, String name, List<String> names) {
    if (!names.contains(name)) {
      throw DraftingException.of("there is no such " + what)
          .value(name)
          .accepted(names.isEmpty() ? "none" : String.join(", ", names));
    }
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(Map<String, Length> lengths, Map<String, String> chosen)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      Dimensions all = of();
      for (Map.Entry<String, Length> length : lengths.entrySet()) {
        all = all.with(length.getKey(), length.getValue());
      }
      for (Map.Entry<String, String> choice : chosen.entrySet()) {
        all = all.withChoice(choice.getKey(), choice.getValue());
      }
      return all;
    }
  }

  private Object writeReplace() {
    return new Kept(lengths, chosen);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a set of dimensions is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Dimensions that
        && that.lengths.equals(lengths)
        && that.chosen.equals(chosen);
  }

  @Override
  public int hashCode() {
    return Objects.hash(lengths, chosen);
  }

  @Override
  public String toString() {
    List<String> words = new ArrayList<>();
    lengths.forEach((name, length) -> words.add(name + " " + length.text(LengthUnit.CM)));
    chosen.forEach((name, option) -> words.add(name + " " + option));
    return words.isEmpty() ? "as usual" : words.stream().collect(Collectors.joining(", "));
  }
}
