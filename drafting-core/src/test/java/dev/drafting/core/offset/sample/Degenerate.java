package dev.drafting.core.offset.sample;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.offset.OffsetEdge;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Polygons that are hardly polygons: each side may carry a spike, a kink, a hair of an edge. */
final class Degenerate {
  private final Random random;

  Degenerate(Random random) {
    this.random = random;
  }

  List<OffsetEdge> edges() {
    List<Point> corners = RandomOutline.round(random, 3 + random.nextInt(5), 0.4, 1);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      points.add(corners.get(i));
      spoil(points, corners.get(i), corners.get((i + 1) % corners.size()));
    }
    List<OffsetEdge> edges = new ArrayList<>();
    int i = 0;
    while (i < points.size()) {
      int last = Math.min(points.size(), i + 1 + random.nextInt(3));
      List<Point> stroke = new ArrayList<>(points.subList(i, last));
      stroke.add(points.get(last % points.size()));
      edges.add(
          OffsetEdge.of(
              "edge " + edges.size(),
              Curve.polyline(stroke.toArray(new Point[0])),
              RandomOutline.distance(random)));
      i = last;
    }
    return edges;
  }

  /** From 1e-7 to 1 mm. */
  private double little() {
    return Math.pow(10, RandomOutline.from(random, -7, 0));
  }

  private void spoil(List<Point> points, Point from, Point to) {
    Vector along = to.minus(from).unit();
    Vector out = new Vector(along.dy(), -along.dx());
    Point middle = from.between(to, RandomOutline.from(random, 0.3, 0.7));
    switch (random.nextInt(7)) {
      case 0 -> points.add(middle.plus(out.times(little())));
      case 1 -> points.add(middle.plus(out.times(-little())));
      case 2 -> { // a spike, out or in
        double tall = RandomOutline.from(random, -15, 60);
        points.add(middle);
        points.add(middle.plus(along.times(little())).plus(out.times(tall)));
        points.add(middle.plus(along.times(2 * little())).plus(along.times(1e-6)));
      }
      case 3 -> { // kinks
        for (int i = 0; i < 6; i++) {
          double side = little() * (i % 2 == 0 ? 1 : -1);
          points.add(middle.plus(along.times(i * 0.3 * little())).plus(out.times(side)));
        }
      }
      case 4 -> points.add(from.plus(along.times(little())));
      case 5 -> { // a slot or a tab of next to no width
        double deep = RandomOutline.from(random, -20, 20);
        double wide = little();
        points.add(middle);
        points.add(middle.plus(out.times(deep)));
        points.add(middle.plus(out.times(deep)).plus(along.times(wide)));
        points.add(middle.plus(along.times(wide)));
      }
      default -> {}
    }
  }
}
