package dev.drafting.core.assembly;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Pieces that were trued together, and what it took.
 *
 * <pre>{@code
 * Pattern top = Templates.installed().get("sleeveless-top").pattern();
 * PatternTruing.of(top).evened(Length.mm(3)).result();  // => Sleeveless top: nothing moved, 0 findings
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class TruedPattern implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Pattern pattern;

  @SuppressWarnings("serial") // always an unmodifiable view of a LinkedHashMap
  private final Map<EdgeRef, Length> moved;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Finding> findings;

  TruedPattern(Pattern pattern, Map<EdgeRef, Length> moved, List<Finding> findings) {
    this.pattern = pattern;
    this.moved = Collections.unmodifiableMap(new LinkedHashMap<>(moved));
    this.findings = List.copyOf(findings);
  }

  /**
   * The trued pieces.
   *
   * @return the pattern
   */
  public Pattern pattern() {
    return pattern;
  }

  /**
   * How far the edges moved, at the place where each moved farthest.
   *
   * @return unmodifiable, the edges that moved, in the order of the pieces
   */
  public Map<EdgeRef, Length> moved() {
    return moved;
  }

  /**
   * What moved so far that a maker may want to know, and which seams and crossings were left as
   * they were because they would have taken too much.
   *
   * @return an unmodifiable list, empty when all is well
   */
  public List<Finding> findings() {
    return findings;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(Pattern pattern, Map<EdgeRef, Length> moved, List<Finding> findings)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      Objects.requireNonNull(pattern, "pattern");
      moved.forEach(
          (edge, length) -> {
            Objects.requireNonNull(pattern.edge(edge), "edge");
            Objects.requireNonNull(length, "moved");
          });
      return new TruedPattern(pattern, moved, findings);
    }
  }

  private Object writeReplace() {
    return new Kept(pattern, moved, findings);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a trued pattern is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TruedPattern that
        && that.pattern.equals(pattern)
        && that.moved.equals(moved)
        && that.findings.equals(findings);
  }

  @Override
  public int hashCode() {
    return Objects.hash(pattern, moved, findings);
  }

  @Override
  public String toString() {
    String most =
        moved.values().stream()
            .max(Length::compareTo)
            .map(length -> "moved by up to " + length.text(LengthUnit.MM))
            .orElse("nothing moved");
    return pattern.name()
        + ": "
        + most
        + ", "
        + findings.size()
        + (findings.size() == 1 ? " finding" : " findings");
  }
}
