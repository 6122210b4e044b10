package dev.drafting.examples.chain;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.FoldEdge;
import dev.drafting.core.pattern.Patch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Placket;
import dev.drafting.core.pattern.Reshaping;
import dev.drafting.core.template.Choice;
import dev.drafting.core.template.Dimension;
import dev.drafting.core.template.Dimensions;
import dev.drafting.core.template.GarmentTemplate;
import dev.drafting.core.template.Templates;
import dev.drafting.core.trace.Extent;
import dev.drafting.core.trace.TracedEdge;
import dev.drafting.core.trace.Tracing;
import dev.drafting.core.trace.Truing;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A built-in garment of any dimensions, traced by an unsteady hand or copied from a drawing, trued
 * and put together again with the finishes and seams that it had.
 */
final class TracedGarment {
  private static final Templates ALL = Templates.installed();
  private static final double MOST_WANDER_MM = 1;
  private static final int COPIED_ONE_IN = 10;
  private static final int FINEST_ROUNDING = 14;
  private static final double SPACING_MM = 6;
  private static final int LEAST_STEPS = 6;
  private static final double STRAIGHT_MM = 1e-6;
  private static final double MOST_LENGTH_LOST = 0.05;
  private static final double MOST_WANDERS_LOST = 10;
  private static final Length MOST_EVENED = Length.mm(20);

  private final Random random;
  private final double wander;

  private TracedGarment(long seed) {
    random = new Random(seed);
    double unsteady = MOST_WANDER_MM * random.nextDouble();
    wander = seed % COPIED_ONE_IN == 0 ? copied(seed / COPIED_ONE_IN) : unsteady;
  }

  /** What is copied from a drawing wanders by a rounding, a small one or a large one. */
  private static double copied(long number) {
    int digits = 1 + (int) (number % FINEST_ROUNDING);
    return Math.pow(10, -digits);
  }

  /** The pattern of a seed. */
  static Pattern of(long seed) {
    TracedGarment hand = new TracedGarment(seed);
    return hand.traced(hand.drawn());
  }

  private Pattern drawn() {
    List<String> ids = ALL.ids();
    GarmentTemplate template = ALL.get(ids.get(random.nextInt(ids.size())));
    Dimensions given = Dimensions.of();
    for (Dimension dimension : template.dimensions()) {
      Length range = dimension.most().minus(dimension.least());
      Length length = dimension.least().plus(range.times(random.nextDouble()));
      given = given.with(dimension.name(), length);
    }
    for (Choice choice : template.choices()) {
      String option = choice.options().get(random.nextInt(choice.options().size()));
      given = given.withChoice(choice.name(), option);
    }
    return template.pattern(given.suitedTo(template));
  }

  private Pattern traced(Pattern drawn) {
    List<Piece> pieces = new ArrayList<>();
    drawn.pieces().forEach(piece -> pieces.add(traced(piece)));
    Pattern traced = Pattern.of(drawn.name(), pieces, drawn.seams());
    Pattern evened = Reshaping.of(traced).evened(MOST_EVENED).result();
    for (Patch patch : drawn.patches()) {
      evened = evened.withPatch(patch);
    }
    for (Placket placket : drawn.plackets()) {
      evened = evened.withPlacket(placket);
    }
    return evened;
  }

  private Piece traced(Piece drawn) {
    List<TracedEdge> strokes = new ArrayList<>();
    List<Edge> edges = drawn.edges().stream().filter(edge -> !isFold(edge)).toList();
    edges.forEach(edge -> strokes.add(TracedEdge.of(edge.name(), stroke(edge))));
    Extent extent = drawn.isOnFold() ? Extent.HALF_ON_FOLD : Extent.AS_IT_LIES;
    Truing truing = Truing.of(Tracing.of(drawn.name(), extent, strokes));
    for (Edge edge : edges) {
      truing = isStraight(edge) ? truing.withStraight(edge.name()) : truing;
    }
    Piece trued = truing.result().piece();
    for (Edge edge : edges) {
      requireAsDrawn(edge, trued.edge(edge.name()));
      trued = trued.withFinish(edge.name(), edge.finish());
    }
    return trued.withCutting(drawn.cutting()).withCloth(drawn.cloth());
  }

  private void requireAsDrawn(Edge drawn, Edge trued) {
    double length = drawn.length().toMm();
    double lost = Math.abs(trued.length().toMm() - length);
    if (lost > MOST_LENGTH_LOST * length + MOST_WANDERS_LOST * wander) {
      throw new IllegalStateException("drawn as " + drawn + ", trued to " + trued.length());
    }
  }

  private static boolean isFold(Edge edge) {
    return edge.finish() instanceof FoldEdge;
  }

  private static boolean isStraight(Edge edge) {
    double chord = edge.curve().start().distanceTo(edge.curve().end()).toMm();
    return edge.length().toMm() - chord < STRAIGHT_MM;
  }

  private List<Point> stroke(Edge edge) {
    double length = edge.length().toMm();
    int steps = Math.max(LEAST_STEPS, (int) (length / SPACING_MM));
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      Point at = edge.curve().pointAt(Length.mm(length * i / steps));
      double x = at.x() + wander * random.nextGaussian();
      points.add(new Point(x, at.y() + wander * random.nextGaussian()));
    }
    return points;
  }
}
