package dev.drafting.knit;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * The measures of the original beside those of its copy, each with the difference that makers
 * accept: 6 mm where the garment is measured flat, 13 mm all round. Measures of a finished garment
 * where its fit depends on them are kept to a quarter to half an inch in the trade.
 *
 * <pre>{@code
 * List<Measure> original = List.of(new Measure("chest, lying flat", Length.cm(46)));
 * List<Measure> copy = List.of(new Measure("chest, lying flat", Length.cm(46.8)));
 * CopyCheck.of(original, copy).rows().get(0);  // => chest, lying flat: original 46 cm, copy 46.8 cm, off by +8 mm, more than 6 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class CopyCheck implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final Length FLAT = Length.mm(6);
  private static final Length ALL_ROUND = Length.mm(13);

  /**
   * One measure of both.
   *
   * @param name what is measured
   * @param original the length at the original
   * @param copy the length at the copy
   * @param tolerance the difference that is accepted
   */
  public record Row(String name, Length original, Length copy, Length tolerance)
      implements Serializable {

    /**
     * Refuses nulls.
     *
     * @param name what is measured
     * @param original the length at the original
     * @param copy the length at the copy
     * @param tolerance the difference that is accepted
     */
    public Row {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(original, "original");
      Objects.requireNonNull(copy, "copy");
      Objects.requireNonNull(tolerance, "tolerance");
    }

    /**
     * How much longer the copy is.
     *
     * @return the difference; negative if it is shorter
     */
    public Length difference() {
      return copy.minus(original);
    }

    /**
     * Whether the difference is accepted.
     *
     * @return true if it is no larger than the tolerance
     */
    public boolean isWithin() {
      return difference().abs().compareTo(tolerance) <= 0;
    }

    @Override
    public String toString() {
      return name
          + ": original "
          + Wording.amount(original)
          + ", copy "
          + Wording.amount(copy)
          + ", off by "
          + (difference().isPositive() ? "+" : "")
          + Wording.fine(difference())
          + (isWithin() ? ", within " : ", more than ")
          + Wording.fine(tolerance);
    }
  }

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Row> rows;

  private CopyCheck(List<Row> rows) {
    this.rows = rows;
  }

  /**
   * Compares an original with its copy.
   *
   * @param original what was measured at the original, by the names of the copy's measures
   * @param copy the measures of the copy, as {@link Draft#measures()} gives them
   * @return a row for each measure of the original
   * @throws DraftingException if the copy has no measure of such a name
   */
  public static CopyCheck of(List<Measure> original, List<Measure> copy) {
    List<Row> rows = new ArrayList<>();
    for (Measure measure : original) {
      Measure other =
          copy.stream()
              .filter(one -> one.name().equals(measure.name()))
              .findFirst()
              .orElseThrow(() -> unknown(measure.name(), copy));
      boolean round = measure.name().endsWith("all round") || measure.name().endsWith("edge");
      rows.add(new Row(measure.name(), measure.length(), other.length(), round ? ALL_ROUND : FLAT));
    }
    return new CopyCheck(List.copyOf(rows));
  }

  private static DraftingException unknown(String name, List<Measure> copy) {
    return DraftingException.of("the copy has no such measure")
        .value(name)
        .accepted(copy.stream().map(Measure::name).collect(Collectors.joining(", ")));
  }

  /**
   * The measures, in the order of the original's.
   *
   * @return an unmodifiable list
   */
  public List<Row> rows() {
    return rows;
  }

  /**
   * Those that are off by more than is accepted.
   *
   * @return an unmodifiable list
   */
  public List<Row> off() {
    return rows.stream().filter(row -> !row.isWithin()).toList();
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(List<Row> rows) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return new CopyCheck(List.copyOf(rows));
    }
  }

  private Object writeReplace() {
    return new Kept(rows);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a check of a copy is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof CopyCheck && ((CopyCheck) other).rows.equals(rows);
  }

  @Override
  public int hashCode() {
    return rows.hashCode();
  }

  @Override
  public String toString() {
    return rows.size()
        + (rows.size() == 1 ? " measure, " : " measures, ")
        + off().size()
        + " off by more than is accepted";
  }
}
