package dev.drafting.core.alter;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Crossing;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Reshaping;
import dev.drafting.core.pattern.Seam;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Moves of corners and edges, and what must follow them: where a seam would no longer match, the
 * corners at its side that is not altered give way; where both sides are altered, the moved corners
 * at the second one give way by what little they differ.
 */
final class Follow {
  private static final Length MATCHED = Length.mm(0.01);
  private static final double NEGLIGIBLE_MM = 1e-9;

  private final Pattern pattern;
  private Reshaping reshaping;
  private final Set<String> altered = new LinkedHashSet<>();
  private final Set<EdgeRef> moved = new LinkedHashSet<>();

  Follow(Pattern pattern) {
    this.pattern = pattern;
    this.reshaping = Reshaping.of(pattern);
  }

  void move(EdgeRef corner, Vector way) {
    reshaping = reshaping.moved(corner, way);
    altered.add(corner.piece());
    moved.add(corner);
  }

  /** Edges beside this one keep their angles to it. */
  void keepAnglesTo(EdgeRef edge) {
    reshaping = reshaping.keepingAnglesTo(edge);
  }

  void shift(EdgeRef edge, List<Length> places, Length outward) {
    reshaping = reshaping.shifted(edge, places.get(0), places.get(1), places.get(2), outward);
    altered.add(edge.piece());
    SeamSide side = SeamSide.of(pattern, edge);
    moved.add(side.corner(true));
    moved.add(side.corner(false));
  }

  /** The altered pattern, or a refusal that says what would not hold. */
  Pattern result() {
    Pattern first = reshaping.result();
    for (Seam seam : pattern.seams()) {
      if (!seam.isMirrored() && isOff(seam, first)) {
        giveWay(seam);
      }
    }
    Pattern result = reshaping.result();
    result.pieces().forEach(this::requireSimple);
    result.seams().forEach(seam -> requireMatch(seam, result));
    return result;
  }

  private boolean isOff(Seam seam, Pattern result) {
    double change = difference(seam, result).minus(difference(seam, pattern)).toMm();
    return Math.abs(change) > NEGLIGIBLE_MM;
  }

  /** The side that is not altered gives way; else what is not altered; else what was moved. */
  private void giveWay(Seam seam) {
    List<EdgeRef> whole = new ArrayList<>(seam.first());
    whole.addAll(seam.second());
    List<EdgeRef> still = new ArrayList<>();
    for (List<EdgeRef> side : List.of(seam.first(), seam.second())) {
      if (side.stream().noneMatch(this::isAltered)) {
        still.addAll(side);
      }
    }
    if (still.isEmpty()) {
      whole.stream().filter(edge -> !isAltered(edge)).forEach(still::add);
    }
    boolean movedOnly = still.isEmpty();
    for (EdgeRef edge : movedOnly ? seam.second() : still) {
      SeamSide side = SeamSide.of(pattern, edge);
      for (EdgeRef corner : List.of(side.corner(true), side.corner(false))) {
        if (!movedOnly || moved.contains(corner)) {
          reshaping = reshaping.yielding(corner);
        }
      }
    }
  }

  private boolean isAltered(EdgeRef edge) {
    return altered.contains(edge.piece());
  }

  private void requireSimple(Piece piece) {
    List<Crossing> crossings = piece.outline().selfCrossings();
    if (!crossings.isEmpty()) {
      throw DraftingException.of("the outline would cross itself")
          .at(piece.name())
          .value(crossings.get(0).point())
          .accepted("a smaller change");
    }
  }

  private void requireMatch(Seam seam, Pattern result) {
    Length before = difference(seam, pattern);
    Length after = difference(seam, result);
    if (after.minus(before).abs().compareTo(MATCHED) > 0) {
      throw DraftingException.of("the other side of the seam cannot follow")
          .at("seam " + seam.name())
          .value("the sides would differ by " + after.text(LengthUnit.MM))
          .accepted("a smaller change, or one on both sides");
    }
  }

  private static Length difference(Seam seam, Pattern pattern) {
    return length(seam.first(), pattern).minus(length(seam.second(), pattern));
  }

  private static Length length(List<EdgeRef> edges, Pattern pattern) {
    return edges.stream()
        .map(edge -> pattern.edge(edge).length())
        .reduce(Length.ZERO, Length::plus);
  }
}
