package dev.drafting.benchmarks;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A pencil that marks a point every few millimetres, wanders to all sides (normally distributed),
 * slips once and leaves a gap.
 */
final class Pencil {
  /** As a garment of two pieces that is traced with 600 points. */
  static final double SPACING_MM = 5;

  private static final double SLIP_MM = 12;
  private static final double GAP_MM = 30;
  private static final double LONG_ENOUGH_MM = 150;

  private final Random random;
  private final double wander;
  private final double spacing;

  Pencil(long seed, double wander, double spacing) {
    this.random = new Random(seed);
    this.wander = wander;
    this.spacing = spacing;
  }

  /** Every edge in one stroke of its own. */
  List<List<Point>> strokes(TrueGarment garment) {
    int slipped = random.nextInt(garment.edges.size());
    int gapped = random.nextInt(garment.edges.size());
    List<List<Point>> strokes = new ArrayList<>();
    for (int e = 0; e < garment.edges.size(); e++) {
      TrueEdge edge = garment.edges.get(e);
      boolean longEnough = edge.length() > LONG_ENOUGH_MM;
      strokes.add(stroke(edge, longEnough && e == slipped, longEnough && e == gapped));
    }
    return strokes;
  }

  private List<Point> stroke(TrueEdge edge, boolean slips, boolean gaps) {
    double length = edge.length();
    int steps = (int) Math.max(2, Math.rint(length / spacing));
    int slip = slips ? 3 + random.nextInt(steps - 6) : -2;
    double gap = gaps ? length * (0.2 + 0.6 * random.nextDouble()) : -GAP_MM;
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      double way = length * i / steps;
      Vector onwards = edge.directionAt(way);
      double off = wander * random.nextGaussian() + (i == slip || i == slip + 1 ? SLIP_MM : 0);
      double along = wander * random.nextGaussian();
      if (Math.abs(way - gap) > GAP_MM / 2) {
        points.add(edge.at(way).plus(onwards.left().times(off)).plus(onwards.times(along)));
      }
    }
    return points;
  }
}
