package dev.drafting.core.pattern;

import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the sides of a seam are matched when the longer one is gathered or laid in pleats: quarters
 * on both sides, or both ends of every pleat on the longer side and its place on the shorter one. A
 * side of several edges has no marks but the points where they meet.
 */
final class FullnessMarks {
  private static final int QUARTERS = 4;

  private final Seam seam;
  private final Length longer;
  private final Length shorter;

  private FullnessMarks(Seam seam, Length longer, Length shorter) {
    this.seam = seam;
    this.longer = longer;
    this.shorter = shorter;
  }

  /** The pattern with the marks of all its seams. */
  static Pattern on(Pattern pattern) {
    Pattern marked = pattern;
    for (Seam seam : pattern.seams()) {
      if (!seam.ease().isZero() && !seam.fullness().equals(Fullness.eased())) {
        marked = mark(marked, seam);
      }
    }
    return marked;
  }

  private static Pattern mark(Pattern pattern, Seam seam) {
    boolean firstLonger = seam.ease().isPositive();
    List<EdgeRef> longer = firstLonger ? seam.first() : seam.second();
    List<EdgeRef> shorter = firstLonger ? seam.second() : seam.first();
    FullnessMarks marks =
        new FullnessMarks(seam, length(pattern, longer), length(pattern, shorter));
    if (marks.longer.compareTo(marks.shorter) <= 0) {
      return pattern;
    }
    Pattern marked = pattern;
    if (longer.size() == 1) {
      marked = notched(marked, longer.get(0), marks.onLonger(longer.get(0)));
    }
    if (shorter.size() == 1) {
      marked = notched(marked, shorter.get(0), marks.onShorter(shorter.get(0)));
    }
    return marked;
  }

  private static Length length(Pattern pattern, List<EdgeRef> edges) {
    return edges.stream()
        .map(edge -> pattern.edge(edge).length())
        .reduce(Length.ZERO, Length::plus);
  }

  private static Pattern notched(Pattern pattern, EdgeRef edge, List<Notch> notches) {
    Piece piece = pattern.piece(edge.piece());
    for (Notch notch : notches) {
      piece = piece.withNotch(notch);
    }
    return pattern.withPiece(piece);
  }

  private List<Notch> onLonger(EdgeRef edge) {
    int pleats = seam.fullness().pleatCount();
    if (pleats == 0) {
      return quarters(edge, longer);
    }
    Length taken = longer.minus(shorter).dividedBy(pleats);
    List<Notch> notches = new ArrayList<>();
    for (int i = 0; i < pleats; i++) {
      Length from = place(i, pleats).plus(taken.times(i));
      notches.add(Notch.of(edge.edge(), from, label(i)));
      notches.add(Notch.of(edge.edge(), from.plus(taken), label(i)));
    }
    return notches;
  }

  private List<Notch> onShorter(EdgeRef edge) {
    int pleats = seam.fullness().pleatCount();
    if (pleats == 0) {
      return quarters(edge, shorter);
    }
    List<Notch> notches = new ArrayList<>();
    for (int i = 0; i < pleats; i++) {
      int number = seam.isEndToStart() ? pleats - 1 - i : i;
      notches.add(Notch.of(edge.edge(), place(i, pleats), label(number)));
    }
    return notches;
  }

  /** Where a pleat lies on the shorter side: in the middle of its share. */
  private Length place(int pleat, int pleats) {
    return shorter.times((pleat + 0.5) / pleats);
  }

  private String label(int pleat) {
    return "pleat " + (pleat + 1);
  }

  private List<Notch> quarters(EdgeRef edge, Length whole) {
    List<Notch> notches = new ArrayList<>();
    for (int i = 1; i < QUARTERS; i++) {
      Length along = whole.times(i / (double) QUARTERS);
      notches.add(Notch.of(edge.edge(), along, "quarter"));
    }
    return notches;
  }
}
