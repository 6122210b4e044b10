package dev.drafting.core.pattern;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Map;
import java.util.Objects;

/**
 * An edge that is sewn to another: the join line lies on the finished edge, the cut line beyond it.
 *
 * <pre>{@code
 * SeamFinish.of(Length.mm(7)).profile();  // => CUT +7 mm, JOIN 0 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class SeamFinish implements Finish {
  private static final long serialVersionUID = 1L;

  private final Length allowance;

  private SeamFinish(Length allowance) {
    this.allowance = allowance;
  }

  /**
   * A seam.
   *
   * @param allowance cloth beyond the join line, 0 to 500 mm; 7 mm suits a four-thread overlock
   * @return the finish
   * @throws DraftingException if the allowance is out of range
   */
  public static SeamFinish of(Length allowance) {
    return new SeamFinish(Allowance.checked("seam allowance", allowance));
  }

  /**
   * The cloth beyond the join line.
   *
   * @return zero or more
   */
  public Length allowance() {
    return allowance;
  }

  @Override
  public String id() {
    return "seam";
  }

  @Override
  public Map<String, String> settings() {
    return Map.of("allowance", allowance.toString());
  }

  @Override
  public Profile profile() {
    return Profile.of(
        new ProfileLine(LineRole.CUT, allowance), new ProfileLine(LineRole.JOIN, Length.ZERO));
  }

  @Override
  public String describe() {
    return "seam with " + allowance + " allowance";
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(Length allowance) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return of(allowance);
    }
  }

  private Object writeReplace() {
    return new Kept(allowance);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a seam finish is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SeamFinish && ((SeamFinish) other).allowance.equals(allowance);
  }

  @Override
  public int hashCode() {
    return Objects.hash("seam", allowance);
  }

  @Override
  public String toString() {
    return describe();
  }
}
