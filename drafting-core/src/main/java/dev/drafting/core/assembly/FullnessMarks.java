package dev.drafting.core.assembly;

import dev.drafting.core.assembly.SewnSeam.Run;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Fullness;
import dev.drafting.core.pattern.Notch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import java.util.List;

/**
 * Where the sides of a seam are matched when the longer one is gathered or laid in pleats: quarters
 * on both sides, or both ends of every pleat on the longer side and its place on the shorter one.
 * Along a side of several edges they are counted through; where one falls on a corner between two
 * edges, the seam that ends there is the mark.
 */
final class FullnessMarks {
  private static final int QUARTERS = 4;

  /** Nearer to the end of an edge than this a notch is no other place. */
  private static final double AT_END_MM = 0.5;

  private Pattern pattern;

  private FullnessMarks(Pattern pattern) {
    this.pattern = pattern;
  }

  /** The pattern with the marks of all its seams. */
  static Pattern on(Pattern pattern) {
    if (pattern.seams().stream().noneMatch(FullnessMarks::isDrawnIn)) {
      return pattern;
    }
    FullnessMarks marks = new FullnessMarks(pattern);
    SewingDirections.of(pattern).seams().stream()
        .filter(sewn -> isDrawnIn(sewn.seam()))
        .forEach(marks::mark);
    return marks.pattern;
  }

  private static boolean isDrawnIn(Seam seam) {
    return !seam.ease().isZero() && !seam.fullness().equals(Fullness.eased());
  }

  private void mark(SewnSeam sewn) {
    boolean firstLonger = sewn.seam().ease().isPositive();
    List<Run> longer = firstLonger ? sewn.first() : sewn.second();
    List<Run> shorter = firstLonger ? sewn.second() : sewn.first();
    Length taken = length(longer).minus(length(shorter));
    if (!taken.isPositive()) {
      return;
    }
    int pleats = sewn.seam().fullness().pleatCount();
    if (pleats == 0) {
      boolean numbered = longer.size() + shorter.size() > 2;
      quarters(longer, numbered);
      quarters(shorter, numbered);
    } else {
      pleats(longer, shorter, pleats, taken.dividedBy(pleats));
    }
  }

  private void quarters(List<Run> side, boolean numbered) {
    Length whole = length(side);
    for (int i = 1; i < QUARTERS; i++) {
      notch(side, whole.times(i / (double) QUARTERS), "quarter" + (numbered ? " " + i : ""));
    }
  }

  /** A pleat lies in the middle of its share of the shorter side. */
  private void pleats(List<Run> longer, List<Run> shorter, int pleats, Length depth) {
    Length whole = length(shorter);
    for (int i = 0; i < pleats; i++) {
      String label = "pleat " + (i + 1);
      Length place = whole.times((i + 0.5) / pleats);
      Length from = place.plus(depth.times(i));
      notch(longer, from, label);
      notch(longer, from.plus(depth), label);
      notch(shorter, place, label);
    }
  }

  private void notch(List<Run> side, Length along, String label) {
    Length left = along;
    for (Run run : side) {
      Length edge = length(run);
      if (left.compareTo(edge) <= 0) {
        Length fromStart = run.asDrawn() ? left : edge.minus(left);
        boolean inside = fromStart.toMm() > AT_END_MM && edge.minus(fromStart).toMm() > AT_END_MM;
        if (inside) {
          Piece piece = pattern.piece(run.edge().piece());
          pattern =
              pattern.withPiece(piece.withNotch(Notch.of(run.edge().edge(), fromStart, label)));
        }
        return;
      }
      left = left.minus(edge);
    }
  }

  private Length length(List<Run> side) {
    return side.stream().map(this::length).reduce(Length.ZERO, Length::plus);
  }

  private Length length(Run run) {
    return pattern.edge(run.edge()).length();
  }
}
