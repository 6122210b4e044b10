package dev.drafting.core.pattern;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * How often a piece is cut, and how.
 *
 * <pre>{@code
 * Cutting.onFold(1);  // => cut 1 on the fold
 * Cutting.pairs(1);  // => cut 1 pair
 * Cutting.pairs(1).pieces();  // => 2
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Cutting implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final int MOST = 1000;

  private final Kind kind;
  private final int times;

  /**
   * What one laying of the paper gives.
   *
   * @since 0.1
   */
  public enum Kind {
    /** The paper is half a piece; its edge lies on the fold of the cloth. */
    ON_FOLD,
    /** Two pieces, one the mirror image of the other: on doubled cloth, right sides together. */
    PAIRS,
    /** One piece as drawn, on single cloth with the right side up. */
    SINGLE
  }

  private Cutting(Kind kind, int times) {
    this.kind = kind;
    this.times = times;
  }

  /**
   * Half a piece on the fold.
   *
   * @param times how many whole pieces, 1 to 1000
   * @return the cutting
   * @throws DraftingException if the number is out of range
   */
  public static Cutting onFold(int times) {
    return checked(Kind.ON_FOLD, times);
  }

  /**
   * Mirrored pairs.
   *
   * @param times how many pairs, 1 to 1000
   * @return the cutting
   * @throws DraftingException if the number is out of range
   */
  public static Cutting pairs(int times) {
    return checked(Kind.PAIRS, times);
  }

  /**
   * As drawn.
   *
   * @param times how many pieces, 1 to 1000
   * @return the cutting
   * @throws DraftingException if the number is out of range
   */
  public static Cutting single(int times) {
    return checked(Kind.SINGLE, times);
  }

  private static Cutting checked(Kind kind, int times) {
    if (times < 1 || times > MOST) {
      throw DraftingException.of("the number of times to cut a piece is out of range")
          .value(times)
          .accepted("1 to " + MOST);
    }
    return new Cutting(kind, times);
  }

  /**
   * What one laying of the paper gives.
   *
   * @return on the fold, pairs or single
   */
  public Kind kind() {
    return kind;
  }

  /**
   * How often the paper is laid: a pair counts once.
   *
   * @return 1 or more
   */
  public int times() {
    return times;
  }

  /**
   * How many pieces of cloth there are in the end: a pair counts twice.
   *
   * @return 1 or more
   */
  public int pieces() {
    return kind == Kind.PAIRS ? 2 * times : times;
  }

  /**
   * What is printed on the piece.
   *
   * @return for instance "cut 1 on the fold"
   */
  public String describe() {
    switch (kind) {
      case ON_FOLD:
        return "cut " + times + " on the fold";
      case PAIRS:
        return "cut " + times + (times == 1 ? " pair" : " pairs");
      default:
        return "cut " + times;
    }
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(Kind kind, int times) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return checked(Objects.requireNonNull(kind, "kind"), times);
    }
  }

  private Object writeReplace() {
    return new Kept(kind, times);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a way of cutting is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Cutting
        && ((Cutting) other).kind == kind
        && ((Cutting) other).times == times;
  }

  @Override
  public int hashCode() {
    return Objects.hash(kind.name(), times);
  }

  @Override
  public String toString() {
    return describe();
  }
}
