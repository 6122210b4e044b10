package dev.drafting.core.pattern;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Length;
import java.util.Map;

/**
 * The edge of a half piece that lies on the fold of the cloth: folded, not cut, nothing added.
 *
 * <pre>{@code
 * FoldEdge.of();  // => on the fold of the cloth
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class FoldEdge implements Finish {
  private static final long serialVersionUID = 1L;

  private FoldEdge() {}

  /**
   * An edge on the fold.
   *
   * @return the finish
   */
  public static FoldEdge of() {
    return new FoldEdge();
  }

  @Override
  public String id() {
    return "fold";
  }

  @Override
  public Map<String, String> settings() {
    return Map.of();
  }

  @Override
  public Profile profile() {
    return Profile.of(new ProfileLine(LineRole.FOLD, Length.ZERO));
  }

  @Override
  public String describe() {
    return "on the fold of the cloth";
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FoldEdge;
  }

  @Override
  public int hashCode() {
    return "fold".hashCode();
  }

  @Override
  public String toString() {
    return describe();
  }
}
