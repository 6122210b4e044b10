package dev.drafting.core.pattern;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Length;
import java.util.Map;

/**
 * An edge that is cut where it is seen and left as it is.
 *
 * <pre>{@code
 * RawEdge.of().profile();  // => CUT 0 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class RawEdge implements Finish {
  private static final long serialVersionUID = 1L;

  private RawEdge() {}

  /**
   * A raw edge.
   *
   * @return the finish
   */
  public static RawEdge of() {
    return new RawEdge();
  }

  @Override
  public String id() {
    return "raw";
  }

  @Override
  public Map<String, String> settings() {
    return Map.of();
  }

  @Override
  public Profile profile() {
    return Profile.of(new ProfileLine(LineRole.CUT, Length.ZERO));
  }

  @Override
  public String describe() {
    return "raw edge, cut on the finished line";
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof RawEdge;
  }

  @Override
  public int hashCode() {
    return "raw".hashCode();
  }

  @Override
  public String toString() {
    return describe();
  }
}
