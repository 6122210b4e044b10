package dev.drafting.knit.size;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.template.Dimensions;
import dev.drafting.core.template.SizeRun;
import dev.drafting.knit.fabric.GirthBounds;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A table of sizes: for each the measures of a body, and from where to where the main measure goes.
 *
 * <p>The built-in tables are this project's own, in the style of EN 13402-3: a size is an interval
 * of the bust, the chest or a child's height, and is called by the middle of it. They are for
 * drafting a run of sizes, and are not data about bodies: the intervals of women's busts are those
 * of EN 13402-3; those of men and children, and every other measure, are the project's own (common
 * practice, no source). Measure whom you sew for.
 *
 * <pre>{@code
 * BodySizes women = BodySizes.women();
 * women.names();  // => [76, 80, 84, 88, 92, 96, 100, 104, 110, 116, 122, 128]
 * women.interval("92");  // => 90 cm to 94 cm
 * women.sizeOf(Body.of().with(BodyMeasure.BUST_GIRTH, Length.cm(93)));  // => Optional[92]
 * BodySizes.children().body("98").age();  // => OptionalInt[2]
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class BodySizes implements Serializable {
  private static final long serialVersionUID = 1L;

  private final BodyMeasure main;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<SizedBody> sizes;

  BodySizes(BodyMeasure main, List<SizedBody> sizes) {
    this.main = main;
    this.sizes = List.copyOf(sizes);
  }

  /**
   * Women's sizes by the bust, every 4 cm and from 102 cm on nearly every 6 cm, for a height of 168
   * cm.
   *
   * @return the table
   */
  public static BodySizes women() {
    return OwnTables.women();
  }

  /**
   * Men's sizes by the chest, every 4 cm and from 118 cm on every 6 cm, for a height of 178 cm.
   *
   * @return the table
   */
  public static BodySizes men() {
    return OwnTables.men();
  }

  /**
   * Children's sizes by the height, every 6 cm, each with the youngest age that usually wears it,
   * so that the cautions for children's clothing come with it.
   *
   * @return the table
   */
  public static BodySizes children() {
    return OwnTables.children();
  }

  /**
   * A maker's own table. Every size reaches half way to those beside it.
   *
   * @param main the measure that it goes by
   * @param bodies the bodies by the names of their sizes; in order, the main measure growing
   * @return the table
   * @throws DraftingException if there is no size, a body has no main measure, or it does not grow
   */
  public static BodySizes of(BodyMeasure main, Map<String, Body> bodies) {
    if (bodies.isEmpty()) {
      throw DraftingException.of("the table has no sizes").accepted("one size or more");
    }
    List<String> names = List.copyOf(bodies.keySet());
    List<Length> middles = new ArrayList<>();
    bodies.forEach((name, body) -> middles.add(middle(main, name, body, middles)));
    List<SizedBody> sizes = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      Length below = halfWay(middles, i, i - 1);
      Length above = halfWay(middles, i, i + 1);
      Body body = Objects.requireNonNull(bodies.get(names.get(i)));
      sizes.add(new SizedBody(names.get(i), body, new GirthBounds(below, above)));
    }
    return new BodySizes(main, sizes);
  }

  private static Length middle(BodyMeasure main, String name, Body body, List<Length> before) {
    Length middle =
        body.measure(main)
            .orElseThrow(
                () ->
                    DraftingException.of("a size has no main measure")
                        .at("size " + name)
                        .value(body)
                        .accepted(main + " (" + main.meaning() + ")"));
    if (!before.isEmpty() && middle.compareTo(before.get(before.size() - 1)) <= 0) {
      throw DraftingException.of("the sizes do not grow")
          .at("size " + name)
          .value(main + " " + Wording.amount(middle))
          .accepted("more than " + Wording.amount(before.get(before.size() - 1)));
    }
    return middle;
  }

  /** Half way to the size beside it; as far as to the other side where there is none. */
  private static Length halfWay(List<Length> middles, int from, int to) {
    Length here = middles.get(from);
    if (to >= 0 && to < middles.size()) {
      return here.plus(middles.get(to)).dividedBy(2);
    }
    int other = 2 * from - to;
    boolean alone = other < 0 || other >= middles.size();
    return alone ? here : here.plus(here.minus(middles.get(other)).dividedBy(2));
  }

  /**
   * The measure that the sizes go by.
   *
   * @return bust, chest, height or another one
   */
  public BodyMeasure main() {
    return main;
  }

  /**
   * What the sizes are called.
   *
   * @return the smallest first
   */
  public List<String> names() {
    return sizes.stream().map(SizedBody::name).toList();
  }

  /**
   * The body that a size is drawn for.
   *
   * @param size what it is called
   * @return its measures
   * @throws DraftingException if there is no such size
   */
  public Body body(String size) {
    return find(size).body();
  }

  /**
   * From where to where a size goes.
   *
   * @param size what it is called
   * @return the interval of the main measure; its upper end belongs to the next size
   * @throws DraftingException if there is no such size
   */
  public GirthBounds interval(String size) {
    return find(size).interval();
  }

  private SizedBody find(String size) {
    return sizes.stream()
        .filter(sized -> sized.name().equals(size))
        .findFirst()
        .orElseThrow(
            () ->
                DraftingException.of("there is no such size")
                    .value(size)
                    .accepted(String.join(", ", names())));
  }

  /**
   * The size for a body.
   *
   * @param body someone who was measured
   * @return the size in whose interval the main measure lies, or empty if it is smaller or larger
   *     than all
   * @throws DraftingException if the main measure is not known
   */
  public Optional<String> sizeOf(Body body) {
    Length measured = middle(main, "wanted", body, List.of());
    return sizes.stream().filter(sized -> sized.holds(measured)).map(SizedBody::name).findFirst();
  }

  /**
   * Some of the sizes.
   *
   * @param from the smallest
   * @param to the largest
   * @return the sizes between them, with both
   * @throws DraftingException if there are no such sizes, or they are out of order
   */
  public BodySizes between(String from, String to) {
    int first = sizes.indexOf(find(from));
    int last = sizes.indexOf(find(to));
    if (first > last) {
      throw DraftingException.of("the sizes are out of order")
          .value(from + " to " + to)
          .accepted(to + " to " + from);
    }
    return new BodySizes(main, sizes.subList(first, last + 1));
  }

  /**
   * A garment's dimensions in every size.
   *
   * @param order the garment, its fits and its fabric; whom it is for does not count
   * @return the run of sizes, which can be graded further or drawn
   * @throws DraftingException if a size lacks a measure; it says which
   */
  public SizeRun run(MadeToMeasure order) {
    SizeRun run = SizeRun.of(sizes.get(0).name(), dimensions(order, sizes.get(0)));
    for (SizedBody size : sizes.subList(1, sizes.size())) {
      run = run.with(size.name(), dimensions(order, size));
    }
    return run;
  }

  private static Dimensions dimensions(MadeToMeasure order, SizedBody size) {
    try {
      return order.on(size.body()).dimensions();
    } catch (DraftingException e) {
      throw e.at("size " + size.name());
    }
  }

  /**
   * Draws a garment in every size.
   *
   * @param order the garment, its fits and its fabric; whom it is for does not count
   * @return the patterns by size, each with its size as its version
   * @throws DraftingException if a size cannot be drawn; it says which
   */
  public Map<String, Pattern> patterns(MadeToMeasure order) {
    return run(order).patterns(order.template());
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(BodyMeasure main, List<SizedBody> sizes) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return new BodySizes(Objects.requireNonNull(main, "main"), sizes);
    }
  }

  private Object writeReplace() {
    return new Kept(main, sizes);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a set of body sizes is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof BodySizes that && that.main == main && that.sizes.equals(sizes);
  }

  @Override
  public int hashCode() {
    return Objects.hash(main.toString(), sizes.size());
  }

  @Override
  public String toString() {
    return "sizes by "
        + main
        + ": "
        + sizes.stream().map(SizedBody::name).collect(Collectors.joining(", "));
  }
}
