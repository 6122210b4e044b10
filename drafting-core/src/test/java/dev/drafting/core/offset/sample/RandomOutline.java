package dev.drafting.core.offset.sample;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.JtsBridge;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.CornerSide;
import dev.drafting.core.offset.CornerTreatment;
import dev.drafting.core.offset.Offset;
import dev.drafting.core.offset.OffsetEdge;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A closed outline of some kind, drawn from a seed, simple and counter-clockwise, with a distance
 * from -30 to +40 mm for each edge and a treatment for each corner.
 *
 * @param edges the outline
 * @param corners a treatment for each corner, in the order of the edges before them
 */
public record RandomOutline(List<OffsetEdge> edges, List<CornerTreatment> corners) {

  /** What the outline is like. */
  public enum Kind {
    /** Points round an ellipse, joined by lines, arcs and cubics that bulge outward. */
    CONVEX,
    /** Points at wild distances round a centre, joined by lines, arcs and cubics. */
    STAR,
    /** Half bodices, sleeves and leggings. */
    GARMENT,
    /** Short chords with a pencil's noise. */
    TRACED,
    /** Spikes, slivers, hairline kinks, edges next to nothing, corners almost straight. */
    NEAR_DEGENERATE
  }

  /**
   * The outline of a seed.
   *
   * @param kind what it is like
   * @param seed any number; the same gives the same outline
   */
  public static RandomOutline of(Kind kind, long seed) {
    Random random = new Random(31 * seed + kind.name().hashCode());
    List<OffsetEdge> edges = edges(kind, random);
    while (!isSimple(edges)) {
      edges = edges(kind, random);
    }
    List<CornerTreatment> corners = new ArrayList<>();
    for (OffsetEdge edge : edges) {
      corners.add(treatment(random, edge));
    }
    return new RandomOutline(edges, corners);
  }

  /** The offset of this outline, all corners treated. */
  public Offset offset() {
    Offset offset = Offset.of(edges);
    for (int i = 0; i < corners.size(); i++) {
      offset = offset.withCorner(i, corners.get(i));
    }
    return offset;
  }

  /** The offset of the outline without its last edge, if it has several: an open line. */
  public Offset openOffset() {
    Offset offset = Offset.ofOpen(edges.subList(0, Math.max(1, edges.size() - 1)));
    for (int i = 0; i + 2 < corners.size(); i++) {
      offset = offset.withCorner(i, corners.get(i));
    }
    return offset;
  }

  private static List<OffsetEdge> edges(Kind kind, Random random) {
    return switch (kind) {
      case CONVEX -> between(random, round(random, 3 + random.nextInt(6), 0.8, 1), 0.001, 0.03);
      case STAR -> between(random, round(random, 4 + random.nextInt(9), 0.2, 1), -0.15, 0.15);
      case GARMENT -> new RandomGarments(random.nextLong()).any();
      case TRACED -> new RandomGarments(random.nextLong()).traced();
      case NEAR_DEGENERATE -> new Degenerate(random).edges();
    };
  }

  private static boolean isSimple(List<OffsetEdge> edges) {
    Curve outline = edges.get(0).curve();
    for (OffsetEdge edge : edges.subList(1, edges.size())) {
      outline = outline.then(edge.curve());
    }
    return outline.areaSquareMm() > 0
        && JtsBridge.toPolygon(outline, Length.mm(1e-3)).isValid()
        && outline.selfCrossings().isEmpty();
  }

  static double from(Random random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** A whole number of millimetres as often as not; zero for one edge in four. */
  static Length distance(Random random) {
    double drawn = from(random, -30, 40);
    return Length.mm(random.nextInt(4) == 0 ? 0 : random.nextBoolean() ? Math.rint(drawn) : drawn);
  }

  private static CornerTreatment treatment(Random random, OffsetEdge edge) {
    return switch (random.nextInt(12)) {
      case 0 -> CornerTreatment.bevel();
      case 1 -> CornerTreatment.round();
      case 2 -> CornerTreatment.step();
      case 3 -> CornerTreatment.squareTo(CornerSide.BEFORE);
      case 4 -> CornerTreatment.squareTo(CornerSide.AFTER);
      case 5 -> CornerTreatment.mitre(from(random, 1, 10));
      case 6 -> CornerTreatment.foldedBack(CornerSide.BEFORE, List.of(Length.ZERO));
      case 7 ->
          CornerTreatment.foldedBack(
              CornerSide.BEFORE,
              List.of(Length.ZERO, edge.distance().abs().times(0.4).plus(Length.mm(1))));
      default -> CornerTreatment.mitre();
    };
  }

  /** Points in order round a centre, at shares of a radius. */
  static List<Point> round(Random random, int n, double nearest, double farthest) {
    double radius = from(random, 20, 300);
    double flatness = from(random, 0.3, 1);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double turn = 2 * Math.PI * (i + 0.6 * random.nextDouble()) / n;
      double share = from(random, nearest, farthest);
      points.add(
          new Point(radius * share * Math.cos(turn), radius * share * flatness * Math.sin(turn)));
    }
    return points;
  }

  /** Sides from point to point that bulge by a share of their length. */
  private static List<OffsetEdge> between(
      Random random, List<Point> points, double least, double most) {
    List<OffsetEdge> edges = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      Segment side = side(random, points.get(i), points.get((i + 1) % points.size()), least, most);
      edges.add(OffsetEdge.of("edge " + i, Curve.of(side), distance(random)));
    }
    return edges;
  }

  private static Segment side(Random random, Point a, Point b, double least, double most) {
    Vector along = b.minus(a);
    Vector out = new Vector(along.dy(), -along.dx());
    double bulge = from(random, least, most);
    return switch (random.nextInt(3)) {
      case 0 -> new Line(a, b);
      case 1 -> Arc.through(a, a.midpoint(b).plus(out.times(bulge)), b);
      default ->
          new Cubic(
              a,
              a.between(b, from(random, 0.1, 0.5)).plus(out.times(bulge)),
              a.between(b, from(random, 0.5, 0.9)).plus(out.times(from(random, least, most))),
              b);
    };
  }
}
