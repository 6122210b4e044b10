package dev.drafting.core.finding;

import dev.drafting.core.Stable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Says that something cannot be drafted at all: what is wrong, where, the value found and what
 * would be accepted.
 *
 * <p>The places are put together from the inside out. Whoever notices the fault says what it is;
 * whoever knows more about the place adds it with {@link #at(String)} and throws the result on.
 *
 * <pre>{@code
 * DraftingException.of("an edge needs two points").at("neck").at("front").value(1).accepted("two points or more").getMessage();
 * // => front: neck: an edge needs two points. Found: 1. Accepted: two points or more.
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class DraftingException extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private static final int LONGEST_VALUE = 80;

  private final String what;
  private final String where;
  private final String value;
  private final String accepted;

  private DraftingException(
      String what, String where, String value, String accepted, @Nullable Throwable cause) {
    super(message(what, where, value, accepted), cause);
    this.what = what;
    this.where = where;
    this.value = value;
    this.accepted = accepted;
  }

  /**
   * Starts a complaint.
   *
   * @param what what is wrong, without a full stop: "the length is not a number"
   * @return an exception that says only that
   */
  public static DraftingException of(String what) {
    return new DraftingException(Objects.requireNonNull(what, "what"), "", "", "", null);
  }

  /**
   * Adds a place around the places already named.
   *
   * @param place a file and line, a piece, an edge, a field
   * @return an exception that names this place in front of the others
   */
  public DraftingException at(String place) {
    String all = where.isEmpty() ? place : place + ": " + where;
    return copy(what, all, value, accepted);
  }

  /**
   * Adds the value that was found; long ones are shortened to 80 characters.
   *
   * @param found the offending value
   * @return an exception that shows the value
   */
  public DraftingException value(Object found) {
    String text = String.valueOf(found).replaceAll("\\p{Cntrl}", "?");
    String shown =
        text.length() <= LONGEST_VALUE ? text : text.substring(0, LONGEST_VALUE - 3) + "...";
    return copy(what, where, shown, accepted);
  }

  /**
   * Adds what would have been accepted in its place.
   *
   * @param text for instance "a length from 0 to 100 m"
   * @return an exception that says so
   */
  public DraftingException accepted(String text) {
    return copy(what, where, value, text);
  }

  /**
   * Adds the fault underneath, for instance the one that a file reader met.
   *
   * @param cause the fault underneath
   * @return an exception with this cause
   */
  public DraftingException because(Throwable cause) {
    DraftingException copy = new DraftingException(what, where, value, accepted, cause);
    copy.setStackTrace(getStackTrace());
    return copy;
  }

  private DraftingException copy(
      String newWhat, String newWhere, String newValue, String newAccepted) {
    DraftingException copy =
        new DraftingException(newWhat, newWhere, newValue, newAccepted, getCause());
    copy.setStackTrace(getStackTrace());
    return copy;
  }

  private static String message(String what, String where, String value, String accepted) {
    StringBuilder text = new StringBuilder();
    if (!where.isEmpty()) {
      text.append(where).append(": ");
    }
    text.append(what).append('.');
    if (!value.isEmpty()) {
      text.append(" Found: ").append(value).append('.');
    }
    if (!accepted.isEmpty()) {
      text.append(" Accepted: ").append(accepted).append('.');
    }
    return text.toString();
  }

  /**
   * What is wrong.
   *
   * @return the complaint without place and value
   */
  public String what() {
    return what;
  }

  /**
   * Where it is wrong, outermost place first.
   *
   * @return the places joined with colons, or an empty text
   */
  public String where() {
    return where;
  }

  /**
   * The value that was found.
   *
   * @return its text, at most 80 characters, or an empty text
   */
  public String value() {
    return value;
  }

  /**
   * What would have been accepted.
   *
   * @return the text, or an empty text
   */
  public String accepted() {
    return accepted;
  }
}
