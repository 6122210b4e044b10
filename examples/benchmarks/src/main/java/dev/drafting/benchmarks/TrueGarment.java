package dev.drafting.benchmarks;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.trace.Extent;
import java.util.List;

/**
 * Six pieces known by formulas (ellipses, sines, circles, powers: no cubics), counter-clockwise;
 * halves from the lower end of the fold. Invented sizes.
 */
final class TrueGarment {
  static final List<TrueGarment> ALL =
      List.of(
          new TrueGarment(
              "vest front",
              Extent.HALF_ON_FOLD,
              TrueEdge.of("hem", t -> new Point(238 * t, 30 * (1 - Math.cos(Math.PI / 2 * t)))),
              line("side", 238, 30, 226, 405),
              quarter("armhole", 226, 605, -90, -200),
              line("shoulder", 136, 605, 76, 630),
              ellipse("neck", 0, 630, 76, -110)),
          new TrueGarment(
              "shirt front",
              Extent.HALF_ON_FOLD,
              line("hem", 0, 0, 260, 0),
              TrueEdge.of("side", t -> new Point(260 - 12 * Math.sin(Math.PI * t), 400 * t)),
              quarter("armhole", 260, 610, -70, -210),
              line("shoulder", 190, 610, 85, 650),
              ellipse("neck", 0, 650, 85, -90)),
          new TrueGarment(
              "raglan front",
              Extent.HALF_ON_FOLD,
              TrueEdge.of("hem", t -> new Point(245 * t, 12 * (1 - Math.cos(Math.PI / 2 * t)))),
              line("side", 245, 12, 250, 400),
              TrueEdge.of(
                  "raglan",
                  t ->
                      new Point(
                          250 - 170 * t + 9 * Math.sin(2 * Math.PI * t),
                          400 + 220 * t + 7 * Math.sin(2 * Math.PI * t))),
              ellipse("neck", 0, 620, 80, -70)),
          new TrueGarment(
              "skirt",
              Extent.HALF_ON_FOLD,
              circle("hem", 900, 0, 20),
              TrueEdge.of(
                  "side",
                  t -> {
                    double radius = 900 - 600 * t;
                    double turn = Math.toRadians(20) + 8 / radius * Math.sin(Math.PI * t);
                    return new Point(radius * Math.sin(turn), 900 - radius * Math.cos(turn));
                  }),
              circle("waist", 300, 20, 0)),
          new TrueGarment(
              "sleeve",
              Extent.AS_IT_LIES,
              line("hem", -115, 0, 115, 0),
              line("front seam", 115, 0, 170, 420),
              TrueEdge.of(
                  "cap",
                  t -> new Point(170 - 340 * t, 420 + 65 * (1 + Math.cos(Math.PI * (1 - 2 * t))))),
              line("back seam", -170, 420, -115, 0)),
          new TrueGarment(
              "leggings",
              Extent.AS_IT_LIES,
              line("hem", 60, 0, 260, 0),
              TrueEdge.of("back leg", t -> new Point(260 + 160 * Math.pow(t, 1.6), 630 * t)),
              TrueEdge.of(
                  "back rise", t -> new Point(330 + 90 * Math.pow(1 - t, 2.5), 630 + 285 * t)),
              line("waist", 330, 915, 0, 900),
              TrueEdge.of("front rise", t -> new Point(-60 * Math.pow(t, 3), 900 - 260 * t)),
              TrueEdge.of(
                  "front leg", t -> new Point(-60 + 120 * Math.pow(t, 0.8), 640 * (1 - t)))));

  final String name;
  final Extent extent;
  final List<TrueEdge> edges;

  private TrueGarment(String name, Extent extent, TrueEdge... edges) {
    this.name = name;
    this.extent = extent;
    this.edges = List.of(edges);
  }

  boolean isClosed() {
    return extent != Extent.HALF_ON_FOLD;
  }

  private static TrueEdge line(String name, double x, double y, double toX, double toY) {
    return TrueEdge.line(name, new Point(x, y), new Point(toX, toY));
  }

  /** A quarter of an ellipse from below its centre to beside it. */
  private static TrueEdge quarter(String name, double x, double y, double across, double down) {
    return TrueEdge.of(
        name,
        t ->
            new Point(
                x + across * Math.sin(Math.PI / 2 * t), y + down * Math.cos(Math.PI / 2 * t)));
  }

  /** A quarter of an ellipse from beside its centre to below it. */
  private static TrueEdge ellipse(String name, double x, double y, double across, double down) {
    return TrueEdge.of(
        name,
        t ->
            new Point(
                x + across * Math.cos(Math.PI / 2 * t), y + down * Math.sin(Math.PI / 2 * t)));
  }

  /** A part of a circle about (0, 900). */
  private static TrueEdge circle(String name, double radius, double from, double to) {
    return TrueEdge.of(
        name,
        t -> {
          double turn = Math.toRadians(from + (to - from) * t);
          return new Point(radius * Math.sin(turn), 900 - radius * Math.cos(turn));
        });
  }
}
