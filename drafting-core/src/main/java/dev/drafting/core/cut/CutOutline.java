package dev.drafting.core.cut;

import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.CornerSide;
import dev.drafting.core.offset.CornerTreatment;
import dev.drafting.core.offset.Offset;
import dev.drafting.core.offset.OffsetEdge;
import dev.drafting.core.offset.OffsetResult;
import dev.drafting.core.pattern.Corner;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Profile;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Moves the edges of a piece to where they are cut, and brings them together at the corners. */
final class CutOutline {
  private static final double ALWAYS_MITRED = 1000;

  private final Piece piece;

  CutOutline(Piece piece) {
    this.piece = piece;
  }

  static Length cutDistance(Edge edge) {
    return edge.finish().profile().cut().orElse(Length.ZERO);
  }

  /** The outline as it is cut. */
  OffsetResult cut() {
    return with(Map.of(), true);
  }

  /**
   * The outline with some edges elsewhere.
   *
   * @param elsewhere distances by the names of edges; all other edges are where they are cut
   * @param foldBack whether the neighbours of turned hems are mirrored at its folds
   */
  OffsetResult with(Map<String, Length> elsewhere, boolean foldBack) {
    List<OffsetEdge> edges =
        piece.edges().stream()
            .map(
                e ->
                    OffsetEdge.of(
                        e.name(), e.curve(), elsewhere.getOrDefault(e.name(), cutDistance(e))))
            .toList();
    Offset offset = Offset.of(edges);
    List<Corner> corners = piece.corners();
    for (int i = 0; i < corners.size(); i++) {
      Optional<CornerTreatment> treatment = treatment(corners.get(i), foldBack);
      if (treatment.isPresent()) {
        offset = offset.withCorner(i, treatment.get());
      }
    }
    return offset.result();
  }

  private Optional<CornerTreatment> treatment(Corner corner, boolean foldBack) {
    Edge before = piece.edge(corner.before());
    Edge after = piece.edge(corner.after());
    if (before.isOnFold() || after.isOnFold()) {
      return Optional.of(CornerTreatment.mitre(ALWAYS_MITRED));
    }
    if (corner.treatment().isPresent()) {
      return corner.treatment();
    }
    if (foldBack && isTurned(before) != isTurned(after)) {
      return Optional.of(
          isTurned(before)
              ? CornerTreatment.foldedBack(CornerSide.BEFORE, folds(before))
              : CornerTreatment.foldedBack(CornerSide.AFTER, folds(after)));
    }
    return Optional.empty();
  }

  /** Tells whether an edge is a hem: cloth beyond its finished edge that is folded, not joined. */
  static boolean isTurned(Edge edge) {
    Profile profile = edge.finish().profile();
    return profile.join().isEmpty()
        && !profile.folds().isEmpty()
        && profile.cut().filter(Length::isPositive).isPresent();
  }

  private static List<Length> folds(Edge hem) {
    return hem.finish().profile().folds().stream().sorted().toList();
  }

  /** Tells whether a corner is folded back because one of its edges is a turned hem. */
  boolean isFoldedBack(Corner corner) {
    Edge before = piece.edge(corner.before());
    Edge after = piece.edge(corner.after());
    boolean onFold = before.isOnFold() || after.isOnFold();
    return !onFold && corner.treatment().isEmpty() && isTurned(before) != isTurned(after);
  }
}
