package dev.drafting.core.assembly;

import dev.drafting.core.Stable;
import dev.drafting.core.pattern.EdgeRef;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * A place where seams end: at an opening, or where they meet other seams, as side, sleeve and
 * underarm do. It says what must be sewn before what: a seam that crosses the end of another one is
 * sewn after it.
 *
 * <p>Drawn and mirrored copies of a piece share their junctions.
 *
 * <pre>{@code
 * Pattern top = Templates.installed().get("sleeveless-top").pattern();
 * Assembly.of(top).junctions().get(0);  // => end of shoulder, at [front / armhole, back / armhole]
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Junction implements Serializable {
  private static final long serialVersionUID = 1L;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<String> ending;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<String> crossing;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<EdgeRef> openEdges;

  Junction(List<String> ending, List<String> crossing, List<EdgeRef> openEdges) {
    this.ending = List.copyOf(ending);
    this.crossing = List.copyOf(crossing);
    this.openEdges = List.copyOf(openEdges);
  }

  /**
   * The seams that end here.
   *
   * @return their names, in the order of the pattern; at least one
   */
  public List<String> ending() {
    return ending;
  }

  /**
   * The seams that run on across this place.
   *
   * @return their names, in the order of the pattern
   */
  public List<String> crossing() {
    return crossing;
  }

  /**
   * The edges that meet here and belong to no seam and no fold.
   *
   * @return the edges, in the order of the pattern; empty in the middle of the garment
   */
  public List<EdgeRef> openEdges() {
    return openEdges;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(List<String> ending, List<String> crossing, List<EdgeRef> openEdges)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return new Junction(ending, crossing, openEdges);
    }
  }

  private Object writeReplace() {
    return new Kept(ending, crossing, openEdges);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a junction is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Junction
        && ((Junction) other).ending.equals(ending)
        && ((Junction) other).crossing.equals(crossing)
        && ((Junction) other).openEdges.equals(openEdges);
  }

  @Override
  public int hashCode() {
    return Objects.hash(ending, crossing, openEdges);
  }

  @Override
  public String toString() {
    String text = "end of " + String.join(" and ", ending);
    if (!crossing.isEmpty()) {
      text += ", crossed by " + String.join(" and ", crossing);
    }
    return openEdges.isEmpty() ? text : text + ", at " + openEdges;
  }
}
