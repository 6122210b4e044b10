package dev.drafting.core.alter;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Reshaping;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.exception.NoBracketingException;

/**
 * A fold pinched at one edge and running to nothing in the middle of another: the part of the piece
 * between the two turns about that middle until the edge is as much shorter as was pinched.
 */
record Gape(EdgeRef edge, Length amount, String pivot) implements Alteration {
  private static final double WIDEST = Math.toRadians(30);
  private static final double FIRST_SHARE = 1.0 / 64;
  private static final double ANGLE = 1e-12;
  private static final double PROBE = 1e-6;
  private static final int MOST_STEPS = 100;

  @Override
  public String id() {
    return "gape";
  }

  @Override
  public Map<String, String> settings() {
    return Settings.of("edge", edge, "amount", amount, "pivot", pivot);
  }

  @Override
  public String describe() {
    return "take a gape of "
        + Settings.amount(amount)
        + " out of "
        + edge
        + ", running to nothing at "
        + pivot;
  }

  @Override
  public Pattern applyTo(Pattern pattern) {
    SeamSide side = SeamSide.of(pattern, edge);
    SeamSide about = SeamSide.of(pattern, new EdgeRef(edge.piece(), pivot));
    Point middle = about.curve().pointAt(about.curve().length().dividedBy(2));
    List<Integer> turned = turned(side, about);
    double angle = angle(pattern, side, turned, middle);
    Follow follow = new Follow(pattern);
    for (int corner : turned) {
      follow.move(ref(side.piece(), corner), move(side.piece(), corner, middle, angle));
    }
    between(side.piece(), turned).forEach(follow::keepAnglesTo);
    return follow.result();
  }

  /** The corners between the two edges, on the side where the fold is not, or the fewer ones. */
  private List<Integer> turned(SeamSide side, SeamSide about) {
    List<Integer> after = corners(side.piece(), side.index(), about.index());
    List<Integer> before = corners(side.piece(), about.index(), side.index());
    boolean foldAfter = touchesFold(side.piece(), after);
    boolean foldBefore = touchesFold(side.piece(), before);
    if (side.index() == about.index() || (foldAfter && foldBefore)) {
      throw DraftingException.of("no part of the piece can turn about the middle of this edge")
          .at(edge.toString())
          .value(pivot)
          .accepted("another edge of the piece, with no fold between the two on one side");
    }
    if (foldAfter != foldBefore) {
      return foldAfter ? before : after;
    }
    return after.size() <= before.size() ? after : before;
  }

  private static List<Integer> corners(Piece piece, int from, int to) {
    List<Integer> corners = new ArrayList<>();
    for (int i = from; i != to; i = (i + 1) % piece.edges().size()) {
      corners.add(i);
    }
    return corners;
  }

  /** The edges that turn as a whole, because both of their corners do. */
  private static List<EdgeRef> between(Piece piece, List<Integer> turned) {
    return turned.stream().skip(1).map(corner -> ref(piece, corner)).toList();
  }

  private static boolean touchesFold(Piece piece, List<Integer> corners) {
    List<Edge> edges = piece.edges();
    return corners.stream()
        .anyMatch(i -> edges.get(i).isOnFold() || edges.get((i + 1) % edges.size()).isOnFold());
  }

  private static EdgeRef ref(Piece piece, int corner) {
    return new EdgeRef(piece.name(), piece.edges().get(corner).name());
  }

  private static Vector move(Piece piece, int corner, Point middle, double angle) {
    Vector arm = piece.edges().get(corner).curve().end().minus(middle);
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    Vector turned = new Vector(cos * arm.dx() - sin * arm.dy(), sin * arm.dx() + cos * arm.dy());
    return turned.minus(arm);
  }

  private double angle(Pattern pattern, SeamSide side, List<Integer> turned, Point middle) {
    double wanted = side.curve().length().minus(amount).toMm();
    UnivariateFunction over =
        angle -> {
          Reshaping reshaping = Reshaping.of(pattern);
          for (int corner : turned) {
            reshaping =
                reshaping.moved(
                    ref(side.piece(), corner), move(side.piece(), corner, middle, angle));
          }
          for (EdgeRef whole : between(side.piece(), turned)) {
            reshaping = reshaping.keepingAnglesTo(whole);
          }
          return reshaping.result().edge(edge).length().toMm() - wanted;
        };
    double closing = over.value(PROBE) < over.value(-PROBE) ? WIDEST : -WIDEST;
    try {
      double reach = reach(over, closing);
      return new BrentSolver(ANGLE).solve(MOST_STEPS, over, Math.min(0, reach), Math.max(0, reach));
    } catch (NoBracketingException | DraftingException e) {
      throw DraftingException.of("the edge cannot give up so much")
          .at(edge.toString())
          .value(Settings.amount(amount))
          .accepted("what a turn of 30 degrees takes out")
          .because(e);
    }
  }

  /** A turn that is wide enough; a wider one may carry a corner past the edge, which then grows. */
  private static double reach(UnivariateFunction over, double closing) {
    double share = FIRST_SHARE;
    while (share < 1 && over.value(closing * share) > 0) {
      share *= 2;
    }
    return closing * share;
  }

  @Override
  public String toString() {
    return describe();
  }
}
