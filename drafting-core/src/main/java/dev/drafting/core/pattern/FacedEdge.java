package dev.drafting.core.pattern;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * An edge with a facing, or with a strip that is turned to the inside: it is sewn and folded on the
 * finished edge, and cut an allowance beyond it.
 *
 * <pre>{@code
 * FacedEdge.of(Length.mm(10)).withTopstitch(Length.mm(5)).profile();  // => CUT +10 mm, JOIN 0 mm, FOLD 0 mm, TOPSTITCH -5 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class FacedEdge implements Finish {
  private static final long serialVersionUID = 1L;

  private final Length allowance;
  private final @Nullable Length topstitch;

  private FacedEdge(Length allowance, @Nullable Length topstitch) {
    this.allowance = allowance;
    this.topstitch = topstitch;
  }

  /**
   * A faced edge without topstitching.
   *
   * @param allowance cloth beyond the join line, 0 to 500 mm
   * @return the finish
   * @throws DraftingException if the allowance is out of range
   */
  public static FacedEdge of(Length allowance) {
    return new FacedEdge(Allowance.checked("facing allowance", allowance), null);
  }

  /**
   * Adds a row of stitching inside the finished edge.
   *
   * @param fromEdge how far inside, 0 to 500 mm
   * @return the finish with this row
   * @throws DraftingException if the distance is out of range
   */
  public FacedEdge withTopstitch(Length fromEdge) {
    return new FacedEdge(allowance, Allowance.checked("distance of the topstitching", fromEdge));
  }

  /**
   * The cloth beyond the join line.
   *
   * @return zero or more
   */
  public Length allowance() {
    return allowance;
  }

  /**
   * How far inside the edge it is topstitched.
   *
   * @return the distance, or empty without topstitching
   */
  public Optional<Length> topstitch() {
    return Optional.ofNullable(topstitch);
  }

  @Override
  public String id() {
    return "faced";
  }

  @Override
  public Map<String, String> settings() {
    Map<String, String> settings = new LinkedHashMap<>();
    settings.put("allowance", allowance.toString());
    topstitch().ifPresent(distance -> settings.put("topstitch", distance.toString()));
    return Collections.unmodifiableMap(settings);
  }

  @Override
  public Profile profile() {
    ProfileLine cut = new ProfileLine(LineRole.CUT, allowance);
    ProfileLine join = new ProfileLine(LineRole.JOIN, Length.ZERO);
    ProfileLine fold = new ProfileLine(LineRole.FOLD, Length.ZERO);
    return topstitch()
        .map(d -> Profile.of(cut, join, fold, new ProfileLine(LineRole.TOPSTITCH, d.negated())))
        .orElseGet(() -> Profile.of(cut, join, fold));
  }

  @Override
  public String describe() {
    return "faced with "
        + allowance
        + " allowance"
        + topstitch().map(d -> ", topstitched " + d + " from the edge").orElse("");
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(Length allowance, @Nullable Length topstitch) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return topstitch == null ? of(allowance) : of(allowance).withTopstitch(topstitch);
    }
  }

  private Object writeReplace() {
    return new Kept(allowance, topstitch);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a faced edge is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FacedEdge
        && ((FacedEdge) other).allowance.equals(allowance)
        && Objects.equals(((FacedEdge) other).topstitch, topstitch);
  }

  @Override
  public int hashCode() {
    return Objects.hash(allowance, topstitch);
  }

  @Override
  public String toString() {
    return describe();
  }
}
