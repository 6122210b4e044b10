package dev.drafting.core.template;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A garment in several sizes: the dimensions of each, and what they are drawn to.
 *
 * <p>How sizes are called is up to whoever makes them; EN 13402-3 goes by intervals of the body's
 * main dimension, 4 cm of chest for most of them, and leaves the steps of all others open.
 *
 * <pre>{@code
 * SizeRun run = SizeRun.of("S", Dimensions.of().with("chest", Length.cm(88))).then("M", Map.of("chest", Length.cm(4))).then("L", Map.of("chest", Length.cm(4)));
 * run.dimensions("L");  // => chest 96 cm
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class SizeRun implements Serializable {
  private static final long serialVersionUID = 1L;

  @SuppressWarnings("serial") // always an unmodifiable view of a LinkedHashMap
  private final Map<String, Dimensions> sizes;

  private SizeRun(Map<String, Dimensions> sizes) {
    this.sizes = Collections.unmodifiableMap(sizes);
  }

  /**
   * The first size.
   *
   * @param size what it is called
   * @param dimensions its dimensions
   * @return a run of one size
   */
  public static SizeRun of(String size, Dimensions dimensions) {
    return new SizeRun(new LinkedHashMap<>()).with(size, dimensions);
  }

  /**
   * One size more.
   *
   * @param size what it is called
   * @param dimensions its dimensions
   * @return the run
   * @throws DraftingException if there is a size of that name
   */
  public SizeRun with(String size, Dimensions dimensions) {
    if (size.isBlank() || sizes.containsKey(size)) {
      throw DraftingException.of("a size has no name of its own")
          .value(size)
          .accepted("a name beside " + String.join(", ", sizes.keySet()));
    }
    Map<String, Dimensions> more = new LinkedHashMap<>(sizes);
    more.put(size, Objects.requireNonNull(dimensions, "dimensions"));
    return new SizeRun(more);
  }

  /**
   * One size more, graded from the last one.
   *
   * @param size what it is called
   * @param steps by how much each dimension is larger; those not named stay
   * @return the run
   * @throws DraftingException if there is a size of that name, or the last one has no such
   *     dimension
   */
  public SizeRun then(String size, Map<String, Length> steps) {
    List<String> names = names();
    Dimensions last = dimensions(names.get(names.size() - 1));
    Dimensions next = last;
    for (Map.Entry<String, Length> step : steps.entrySet()) {
      next = next.with(step.getKey(), last.length(step.getKey()).plus(step.getValue()));
    }
    return with(size, next);
  }

  /**
   * What the sizes are called.
   *
   * @return in their order
   */
  public List<String> names() {
    return List.copyOf(sizes.keySet());
  }

  /**
   * The dimensions of a size.
   *
   * @param size what it is called
   * @return its dimensions
   * @throws DraftingException if there is no such size
   */
  public Dimensions dimensions(String size) {
    Dimensions dimensions = sizes.get(size);
    if (dimensions == null) {
      throw DraftingException.of("there is no such size")
          .value(size)
          .accepted(String.join(", ", sizes.keySet()));
    }
    return dimensions;
  }

  /**
   * Draws every size; each pattern has the size as its version.
   *
   * @param template the garment
   * @return the patterns by size, in their order
   * @throws DraftingException if a size cannot be drawn; it names the size
   */
  public Map<String, Pattern> patterns(GarmentTemplate template) {
    Map<String, Pattern> patterns = new LinkedHashMap<>();
    for (Map.Entry<String, Dimensions> size : sizes.entrySet()) {
      try {
        patterns.put(
            size.getKey(), template.pattern(size.getValue()).withVersion("size " + size.getKey()));
      } catch (DraftingException e) {
        throw e.at("size " + size.getKey());
      }
    }
    return Collections.unmodifiableMap(patterns);
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(String first, Dimensions dimensions, Map<String, Dimensions> others)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      SizeRun run = of(first, dimensions);
      for (Map.Entry<String, Dimensions> size : others.entrySet()) {
        run = run.with(size.getKey(), size.getValue());
      }
      return run;
    }
  }

  private Object writeReplace() {
    String first = names().get(0);
    Map<String, Dimensions> others = new LinkedHashMap<>(sizes);
    others.remove(first);
    return new Kept(first, dimensions(first), others);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a size run is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SizeRun that
        && that.sizes.equals(sizes)
        && that.names().equals(names());
  }

  @Override
  public int hashCode() {
    return sizes.hashCode();
  }

  @Override
  public String toString() {
    List<String> words = new ArrayList<>();
    sizes.forEach((size, dimensions) -> words.add(size + ": " + dimensions));
    return String.join("; ", words);
  }
}
