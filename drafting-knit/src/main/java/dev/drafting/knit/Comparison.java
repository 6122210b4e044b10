package dev.drafting.knit;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * Two drafts side by side: their measures and strips, and the findings that only one of them has.
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * top.compare(top.withStripRule("neck", StripRule.ratio(0.8))).differences().size();  // => 2
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Comparison implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * One length in both drafts.
   *
   * @param name what is measured
   * @param here in the draft that was asked
   * @param there in the draft that it was compared with
   * @since 0.1
   */
  public record Row(String name, Length here, Length there) implements Serializable {

    /**
     * Refuses nulls.
     *
     * @param name what is measured
     * @param here in the draft that was asked
     * @param there in the other draft
     */
    public Row {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(here, "here");
      Objects.requireNonNull(there, "there");
    }

    /**
     * How much more it is there than here.
     *
     * @return negative when it is less
     */
    public Length difference() {
      return there.minus(here);
    }

    @Override
    public String toString() {
      Length difference = difference();
      String sign = difference.isPositive() ? "+" : "";
      return name
          + ": "
          + Wording.amount(here)
          + " here, "
          + Wording.amount(there)
          + " there ("
          + sign
          + Wording.fine(difference)
          + ")";
    }
  }

  @SuppressWarnings("serial") // always unmodifiable lists of the JDK
  private final List<Row> rows;

  @SuppressWarnings("serial")
  private final List<Finding> onlyHere;

  @SuppressWarnings("serial")
  private final List<Finding> onlyThere;

  private Comparison(List<Row> rows, List<Finding> onlyHere, List<Finding> onlyThere) {
    this.rows = rows;
    this.onlyHere = onlyHere;
    this.onlyThere = onlyThere;
  }

  static Comparison of(Draft here, Draft there) {
    return of(
        Measures.withStrips(here.measures(), here.strips()),
        Measures.withStrips(there.measures(), there.strips()),
        here.findings(),
        there.findings());
  }

  private static Comparison of(
      List<Measure> here, List<Measure> there, List<Finding> foundHere, List<Finding> foundThere) {
    Map<String, Length> others = new LinkedHashMap<>();
    there.forEach(measure -> others.put(measure.name(), measure.length()));
    List<Row> rows = new ArrayList<>();
    for (Measure measure : here) {
      Length other = others.get(measure.name());
      if (other != null) {
        rows.add(new Row(measure.name(), measure.length(), other));
      }
    }
    return new Comparison(
        List.copyOf(rows), without(foundHere, foundThere), without(foundThere, foundHere));
  }

  private static List<Finding> without(List<Finding> some, List<Finding> others) {
    return some.stream().filter(finding -> !others.contains(finding)).toList();
  }

  /**
   * The lengths that both drafts have, in the order of the draft that was asked: measures, then
   * loops, cut lengths and cut widths of strips.
   *
   * @return an unmodifiable list
   */
  public List<Row> rows() {
    return rows;
  }

  /**
   * The lengths that are not the same.
   *
   * @return an unmodifiable list
   */
  public List<Row> differences() {
    return rows.stream().filter(row -> !row.difference().isZero()).toList();
  }

  /**
   * The findings that only the draft that was asked has.
   *
   * @return an unmodifiable list
   */
  public List<Finding> onlyHere() {
    return onlyHere;
  }

  /**
   * The findings that only the draft that it was compared with has.
   *
   * @return an unmodifiable list
   */
  public List<Finding> onlyThere() {
    return onlyThere;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(List<Row> rows, List<Finding> onlyHere, List<Finding> onlyThere)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return new Comparison(List.copyOf(rows), List.copyOf(onlyHere), List.copyOf(onlyThere));
    }
  }

  private Object writeReplace() {
    return new Kept(rows, onlyHere, onlyThere);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a comparison is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Comparison
        && ((Comparison) other).rows.equals(rows)
        && ((Comparison) other).onlyHere.equals(onlyHere)
        && ((Comparison) other).onlyThere.equals(onlyThere);
  }

  @Override
  public int hashCode() {
    return Objects.hash(rows, onlyHere, onlyThere);
  }

  @Override
  public String toString() {
    List<Row> differences = differences();
    String shown =
        differences.stream().limit(6).map(Row::toString).collect(Collectors.joining("; "));
    return differences.size()
        + " of "
        + rows.size()
        + " lengths differ"
        + (shown.isEmpty() ? "" : ": " + shown)
        + (differences.size() > 6 ? "; ..." : "");
  }
}
