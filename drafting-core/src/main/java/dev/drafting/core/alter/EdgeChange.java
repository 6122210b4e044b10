package dev.drafting.core.alter;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What an alteration does to one edge. Changes under 0.05 mm, such as what the other side of a seam
 * gives way to stay equal, are not told.
 *
 * <pre>{@code
 * Pattern top = Templates.installed().get("sleeveless-top").pattern();
 * Alteration.takeIn("side", Length.mm(10)).changes(top).get(0);  // => front / hem: 240 mm, then 230 mm; moves by up to 10 mm
 * }</pre>
 *
 * @param edge the edge
 * @param before how long its finished edge was
 * @param after how long it is then
 * @param farthest how far its points move at most, compared at twenty equal shares of its length
 * @param refinished what its finish is then, empty if it stays as it was
 * @since 0.1
 */
@Stable
public record EdgeChange(
    EdgeRef edge, Length before, Length after, Length farthest, String refinished)
    implements Serializable {
  private static final int SHARES = 20;
  private static final Length FINEST = Length.mm(0.05);

  /**
   * Refuses nulls.
   *
   * @param edge the edge
   * @param before how long it was
   * @param after how long it is then
   * @param farthest how far its points move
   * @param refinished its new finish in words, or nothing
   */
  public EdgeChange {
    Objects.requireNonNull(edge, "edge");
    Objects.requireNonNull(before, "before");
    Objects.requireNonNull(after, "after");
    Objects.requireNonNull(farthest, "farthest");
    Objects.requireNonNull(refinished, "refinished");
  }

  /**
   * What differs between two patterns with the same pieces and edges, such as before and after a
   * change of fabric.
   *
   * @param before the one
   * @param after the other
   * @return the edges that differ, in the order of the first
   * @throws DraftingException if the second lacks a piece or an edge of the first
   */
  public static List<EdgeChange> between(Pattern before, Pattern after) {
    List<EdgeChange> changes = new ArrayList<>();
    for (Piece piece : before.pieces()) {
      for (Edge edge : piece.edges()) {
        EdgeRef ref = new EdgeRef(piece.name(), edge.name());
        Edge changed = after.edge(ref);
        if (!changed.equals(edge)) {
          EdgeChange change = of(ref, edge, changed);
          if (change.isVisible()) {
            changes.add(change);
          }
        }
      }
    }
    return List.copyOf(changes);
  }

  /** What nobody can draw is no change. */
  private boolean isVisible() {
    return farthest.compareTo(FINEST) >= 0
        || difference().abs().compareTo(FINEST) >= 0
        || !refinished.isEmpty();
  }

  private static EdgeChange of(EdgeRef ref, Edge before, Edge after) {
    double farthest = 0;
    for (int i = 0; i <= SHARES; i++) {
      double share = (double) i / SHARES;
      farthest =
          Math.max(farthest, at(before.curve(), share).distanceTo(at(after.curve(), share)).toMm());
    }
    String refinished = before.finish().equals(after.finish()) ? "" : after.finish().describe();
    return new EdgeChange(ref, before.length(), after.length(), Length.mm(farthest), refinished);
  }

  private static Point at(Curve curve, double share) {
    return curve.pointAt(curve.length().times(share));
  }

  /**
   * How much longer the edge becomes.
   *
   * @return the difference; negative if it becomes shorter
   */
  public Length difference() {
    return after.minus(before);
  }

  @Override
  public String toString() {
    return edge
        + ": "
        + before.text(LengthUnit.MM)
        + ", then "
        + after.text(LengthUnit.MM)
        + "; moves by up to "
        + farthest.text(LengthUnit.MM)
        + (refinished.isEmpty() ? "" : "; " + refinished);
  }
}
