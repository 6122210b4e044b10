package dev.drafting.core.trace;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * What truing saw, refused and averaged, edge by edge in the order of the trued outline.
 *
 * <pre>{@code
 * Tracing pocket = Tracing.of("pocket", Extent.HALF_ON_FOLD, List.of(TracedEdge.of("bottom", 0, 0, 20, 0.2, 40, -0.1, 60, 0), TracedEdge.of("side", 60, 0, 60.2, 30, 59.9, 60, 60, 80), TracedEdge.of("top", 60, 80, 40, 80.2, 20, 79.9, 0, 80)));
 * TruingReport report = Truing.of(pocket).result().report();
 * report.findings();  // => []
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class TruingReport implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final int MOST_SHOWN = 8;

  private final String piece;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<EdgeReport> edges;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Lopsidedness> lopsidedness;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Finding> findings;

  private final Length noise;
  private final Transform placement;

  TruingReport(
      String piece,
      List<EdgeReport> edges,
      List<Lopsidedness> lopsidedness,
      List<Finding> findings,
      Length noise,
      Transform placement) {
    this.piece = piece;
    this.edges = List.copyOf(edges);
    this.lopsidedness = List.copyOf(lopsidedness);
    this.findings = List.copyOf(findings);
    this.noise = noise;
    this.placement = placement;
  }

  /**
   * One report for each edge but the fold.
   *
   * @return an unmodifiable list, counter-clockwise from the lower end of the fold
   */
  public List<EdgeReport> edges() {
    return edges;
  }

  /**
   * The report on one edge.
   *
   * @param name the name of the edge
   * @return its report
   * @throws DraftingException if no edge of that name was traced
   */
  public EdgeReport edge(String name) {
    return edges.stream()
        .filter(edge -> edge.edge().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                DraftingException.of("no such edge was traced")
                    .at(piece)
                    .value(name)
                    .accepted(
                        edges.stream().map(EdgeReport::edge).collect(Collectors.joining(", "))));
  }

  /**
   * How far left and right differ, for each edge of a whole tracing.
   *
   * @return an unmodifiable list, empty for a half
   */
  public List<Lopsidedness> lopsidedness() {
    return lopsidedness;
  }

  /**
   * What the maker should know: slips, sides that differ, rough strokes.
   *
   * @return an unmodifiable list, empty when all is well
   */
  public List<Finding> findings() {
    return findings;
  }

  /**
   * How far the pencil was taken to wander over the whole tracing: the standard deviation square to
   * the edges.
   *
   * @return zero or more
   */
  public Length noise() {
    return noise;
  }

  /**
   * Where the tracing lies in the frame of the trued piece. A half stays where it was traced; a
   * whole piece is turned and moved until its fold line lies on x = 0 and the lower end of the fold
   * on y = 0.
   *
   * @return a turn and a move
   */
  public Transform placement() {
    return placement;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      String piece,
      List<EdgeReport> edges,
      List<Lopsidedness> lopsidedness,
      List<Finding> findings,
      Length noise,
      Transform placement)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      if (noise.isNegative()) {
        throw DraftingException.of("the noise of a tracing is below zero")
            .at(piece)
            .value(noise)
            .accepted("0 mm or more");
      }
      return new TruingReport(
          Objects.requireNonNull(piece, "piece"),
          edges,
          lopsidedness,
          findings,
          Objects.requireNonNull(noise, "noise"),
          Objects.requireNonNull(placement, "placement"));
    }
  }

  private Object writeReplace() {
    return new Kept(piece, edges, lopsidedness, findings, noise, placement);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a report of a truing is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TruingReport that
        && piece.equals(that.piece)
        && edges.equals(that.edges)
        && lopsidedness.equals(that.lopsidedness)
        && findings.equals(that.findings)
        && noise.equals(that.noise)
        && placement.equals(that.placement);
  }

  @Override
  public int hashCode() {
    return Objects.hash(piece, edges, lopsidedness, findings, noise, placement);
  }

  @Override
  public String toString() {
    String shown =
        edges.stream().limit(MOST_SHOWN).map(edge -> "\n  " + edge).collect(Collectors.joining());
    String more = edges.size() > MOST_SHOWN ? "\n  and more" : "";
    return piece
        + ", the pencil wandered "
        + noise.text(LengthUnit.MM, 2)
        + ", findings "
        + findings.size()
        + shown
        + more;
  }
}
