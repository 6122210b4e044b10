package dev.drafting.core.alter;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.pattern.Pattern;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A pattern as it was first, and everything that was altered since, with notes. The altered pattern
 * is always computed from the first one, so that whatever is dropped leaves no trace, and the same
 * alterations can be made again on another pattern that has the same places.
 *
 * <pre>{@code
 * Point a = new Point(0, 0), b = new Point(200, 0), c = new Point(200, 300), d = new Point(0, 300);
 * Piece half = Piece.of("front", List.of(Edge.of("hem", Curve.line(a, b)), Edge.of("side", Curve.line(b, c)), Edge.of("top", Curve.line(c, d)), Edge.onFold(Curve.line(d, a))));
 * Pattern tube = Pattern.of("tube", List.of(half, Piece.of("back", half.edges())), List.of(Seam.of("side", "front side", "back side")));
 * AlterationRecord record = AlterationRecord.of(tube).with(Alteration.takeIn("side", Length.mm(10)), "too wide at the waist").with(Alteration.flare("side", Length.mm(5)));
 * record;  // => tube: take in 10 mm at the side seam (too wide at the waist); add 5 mm of flare at the side seam
 * record.undone().undone().result().equals(tube);  // => true
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class AlterationRecord implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final int MOST_SHOWN = 8;

  /**
   * One alteration and why it was made.
   *
   * @param alteration what is changed
   * @param note what the maker says about it; may be empty
   */
  public record Entry(Alteration alteration, String note) implements Serializable {

    /**
     * Refuses nulls.
     *
     * @param alteration what is changed
     * @param note what the maker says about it
     */
    public Entry {
      Objects.requireNonNull(alteration, "alteration");
      Objects.requireNonNull(note, "note");
    }

    @Override
    public String toString() {
      return alteration.describe() + (note.isEmpty() ? "" : " (" + note + ")");
    }
  }

  private final Pattern base;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Entry> entries;

  private AlterationRecord(Pattern base, List<Entry> entries) {
    this.base = base;
    this.entries = List.copyOf(entries);
  }

  /**
   * Nothing altered yet.
   *
   * @param base the pattern
   * @return a record without entries
   */
  public static AlterationRecord of(Pattern base) {
    return new AlterationRecord(Objects.requireNonNull(base, "base"), List.of());
  }

  /**
   * One alteration more, without a note.
   *
   * @param alteration what is changed after all the others
   * @return the longer record
   */
  public AlterationRecord with(Alteration alteration) {
    return with(alteration, "");
  }

  /**
   * One alteration more.
   *
   * @param alteration what is changed after all the others
   * @param note why
   * @return the longer record
   */
  public AlterationRecord with(Alteration alteration, String note) {
    List<Entry> more = new ArrayList<>(entries);
    more.add(new Entry(alteration, note));
    return new AlterationRecord(base, more);
  }

  /**
   * The record without its last alteration.
   *
   * @return the shorter record
   * @throws DraftingException if nothing was altered
   */
  public AlterationRecord undone() {
    return without(entries.size());
  }

  /**
   * The record without one of its alterations; those after it are made again without it.
   *
   * @param number which one, counted from 1
   * @return the shorter record
   * @throws DraftingException if there is no such entry
   */
  public AlterationRecord without(int number) {
    if (number < 1 || number > entries.size()) {
      throw DraftingException.of("there is no such alteration")
          .at(base.name())
          .value(number)
          .accepted(entries.isEmpty() ? "nothing was altered yet" : "1 to " + entries.size());
    }
    List<Entry> fewer = new ArrayList<>(entries);
    fewer.remove(number - 1);
    return new AlterationRecord(base, fewer);
  }

  /**
   * The same alterations of another pattern.
   *
   * @param other the pattern, such as the same garment in another size
   * @return the record on that pattern
   */
  public AlterationRecord on(Pattern other) {
    return new AlterationRecord(Objects.requireNonNull(other, "other"), entries);
  }

  /**
   * The pattern as it was first.
   *
   * @return the pattern
   */
  public Pattern base() {
    return base;
  }

  /**
   * What was altered, in order.
   *
   * @return an unmodifiable list
   */
  public List<Entry> entries() {
    return entries;
  }

  /**
   * Makes all alterations, one after the other.
   *
   * @return the altered pattern
   * @throws DraftingException if one of them cannot be made; it says which
   */
  public Pattern result() {
    Pattern pattern = base;
    for (int i = 0; i < entries.size(); i++) {
      try {
        pattern = entries.get(i).alteration().applyTo(pattern);
      } catch (DraftingException e) {
        throw e.at("alteration " + (i + 1) + ", " + entries.get(i).alteration().describe());
      }
    }
    return pattern;
  }

  /**
   * What all of them change together, edge by edge.
   *
   * @return the edges that differ from the first pattern's
   * @throws DraftingException as {@link #result()} does
   */
  public List<EdgeChange> changes() {
    return EdgeChange.between(base, result());
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(Pattern base, List<Entry> entries) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      AlterationRecord record = of(base);
      for (Entry entry : entries) {
        record = record.with(entry.alteration(), entry.note());
      }
      return record;
    }
  }

  private Object writeReplace() {
    return new Kept(base, entries);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("an alteration record is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof AlterationRecord that
        && that.base.equals(base)
        && that.entries.equals(entries);
  }

  @Override
  public int hashCode() {
    return Objects.hash(base, entries);
  }

  @Override
  public String toString() {
    String shown =
        entries.stream().limit(MOST_SHOWN).map(Entry::toString).collect(Collectors.joining("; "));
    return base.name()
        + ": "
        + (entries.isEmpty() ? "nothing altered" : shown)
        + (entries.size() > MOST_SHOWN ? "; and " + (entries.size() - MOST_SHOWN) + " more" : "");
  }
}
