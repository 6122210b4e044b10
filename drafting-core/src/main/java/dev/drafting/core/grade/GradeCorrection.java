package dev.drafting.core.grade;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The rule for one corner that lets the sides of a seam grow alike: the corner at an end of one of
 * its edges is moved farther out along that edge, or less far, until they do. Of all such corners
 * the one is proposed that leaves the fewest seams unequal, and of those the one that moves least.
 */
final class GradeCorrection {
  private static final int MOST_TRIES = 12;
  private static final double REACHED_MM = 0.01;
  private static final double TOLD_MM = 0.1;

  /** An edge that leaves the fold squarer than this does not grow along it. */
  private static final double ALONG_FOLD = 0.2;

  private final Grading grading;
  private final Seam seam;
  private final SeamGrowth worst;

  private GradeCorrection(Grading grading, Seam seam, SeamGrowth worst) {
    this.grading = grading;
    this.seam = seam;
    this.worst = worst;
  }

  /** A corner between two edges, and the way that makes the edge longer. */
  private record Corner(String piece, String edge, String next, Vector out) {}

  /** A corrected rule, and what it leaves unequal. */
  private record Corrected(
      Corner corner, GradeRule rule, GradeRule before, int unequal, double moved) {}

  static Optional<Remedy> of(Grading grading, Seam seam, SeamGrowth worst) {
    return new GradeCorrection(grading, seam, worst).remedy();
  }

  private Optional<Remedy> remedy() {
    return Stream.concat(seam.second().stream(), seam.first().stream())
        .flatMap(edge -> corners(edge).stream())
        .flatMap(corner -> corrected(corner).stream())
        .min(Comparator.comparingInt(Corrected::unequal).thenComparingDouble(Corrected::moved))
        .map(GradeCorrection::remedy);
  }

  private static Remedy remedy(Corrected corrected) {
    GradeRule rule = corrected.rule();
    return Remedy.of(
            "Let the corner move by another rule, for each size: "
                + rule
                + ", instead of "
                + mm(corrected.before().across())
                + " across and "
                + mm(corrected.before().along())
                + " along.")
        .with("grade.piece", rule.piece())
        .with("grade.edge", corrected.corner().edge())
        .with("grade.next", corrected.corner().next())
        .with("grade.across", rule.across().toString())
        .with("grade.along", rule.along().toString());
  }

  private static String mm(Length length) {
    return length.text(LengthUnit.MM, 1);
  }

  private List<Corner> corners(EdgeRef ref) {
    Piece piece = grading.base().piece(ref.piece());
    List<Edge> edges = piece.edges();
    Edge edge = piece.edge(ref.edge());
    int at = edges.indexOf(edge);
    Edge next = edges.get((at + 1) % edges.size());
    Edge before = edges.get((at + edges.size() - 1) % edges.size());
    Vector end = edge.curve().directionAt(edge.length());
    Vector start = edge.curve().directionAt(Length.ZERO).negated();
    List<Corner> corners = new ArrayList<>();
    add(corners, new Corner(ref.piece(), edge.name(), next.name(), end), next);
    add(corners, new Corner(ref.piece(), before.name(), edge.name(), start), before);
    return corners;
  }

  private static void add(List<Corner> corners, Corner corner, Edge other) {
    if (!other.isOnFold()) {
      corners.add(corner);
    } else if (Math.abs(corner.out().dy()) > ALONG_FOLD) {
      Vector up = new Vector(0, Math.signum(corner.out().dy()));
      corners.add(new Corner(corner.piece(), corner.edge(), corner.next(), up));
    }
  }

  private Optional<Corrected> corrected(Corner corner) {
    try {
      double amount = amount(corner);
      GradeRule before = grading.rule(corner.piece(), corner.edge(), corner.next());
      GradeRule rule = moved(before, corner.out().times(amount));
      List<SeamGrowth> left = grading.with(rule).growths();
      boolean alike =
          left.stream().filter(g -> g.seam().equals(seam.name())).noneMatch(SeamGrowth::isUnequal);
      int unequal = (int) left.stream().filter(SeamGrowth::isUnequal).count();
      return alike
          ? Optional.of(new Corrected(corner, rule, before, unequal, Math.abs(amount)))
          : Optional.empty();
    } catch (DraftingException e) {
      return Optional.empty(); // a corner that cannot move so far is none to propose
    }
  }

  /** By the secant method: how far along the edge the corner has to move more for each step. */
  private double amount(Corner corner) {
    double before = 0;
    double offBefore = worst.difference().toMm();
    boolean second = seam.second().stream().anyMatch(edge -> isEdge(edge, corner));
    double amount = (second ? offBefore : -offBefore) / grading.step(worst.size());
    for (int i = 0; i < MOST_TRIES; i++) {
      double off = off(corner, amount);
      if (Math.abs(off) < REACHED_MM || off == offBefore) {
        break;
      }
      double next = amount - off * (amount - before) / (off - offBefore);
      before = amount;
      offBefore = off;
      amount = next;
    }
    return amount;
  }

  private static boolean isEdge(EdgeRef edge, Corner corner) {
    return edge.piece().equals(corner.piece())
        && (edge.edge().equals(corner.edge()) || edge.edge().equals(corner.next()));
  }

  private double off(Corner corner, double amount) {
    GradeRule before = grading.rule(corner.piece(), corner.edge(), corner.next());
    Vector by = corner.out().times(amount);
    GradeRule rule =
        before.moving(
            before.across().plus(Length.mm(by.dx())), before.along().plus(Length.mm(by.dy())));
    return grading.with(rule).growth(seam, worst.size()).difference().toMm();
  }

  /** In whole tenths of a millimetre, as it is told. */
  private static GradeRule moved(GradeRule rule, Vector by) {
    return rule.moving(tenths(rule.across(), by.dx()), tenths(rule.along(), by.dy()));
  }

  private static Length tenths(Length length, double more) {
    return Length.mm(Math.rint((length.toMm() + more) / TOLD_MM) / Math.rint(1 / TOLD_MM));
  }
}
