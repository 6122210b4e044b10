package dev.drafting.core.offset.sample;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.OffsetEdge;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Seeded outlines such as garments have, with a distance from -30 to +40 mm for each edge. */
public final class RandomGarments {
  private final Random random;

  public RandomGarments(long seed) {
    this.random = new Random(seed);
  }

  private double from(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private Length distance() {
    return Length.mm(random.nextInt(4) == 0 ? 0 : Math.rint(from(-30, 40)));
  }

  private Cubic curve(Point a, Point b, double bulge1, double bulge2) {
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    return new Cubic(
        a,
        new Point(a.x() + dx / 3 + dy * bulge1, a.y() + dy / 3 - dx * bulge1),
        new Point(a.x() + dx * 2 / 3 + dy * bulge2, a.y() + dy * 2 / 3 - dx * bulge2),
        b);
  }

  private OffsetEdge edge(String name, Curve curve) {
    return OffsetEdge.of(name, curve, distance());
  }

  /** Half a bodice on the fold: hem, side, armhole, shoulder, neck, fold. */
  public List<OffsetEdge> halfBodice() {
    double width = from(120, 320);
    double chest = width * from(0.85, 1.1);
    double height = from(200, 500);
    Point hemSide = new Point(width, from(-20, 40));
    Point underarm = new Point(chest, height);
    Point shoulder = new Point(chest * from(0.55, 0.85), height + from(150, 240));
    Point neck = new Point(shoulder.x() * from(0.3, 0.7), shoulder.y() + from(10, 50));
    Point front = new Point(0, neck.y() - from(20, 220));
    boolean pointed = random.nextInt(4) == 0;
    Cubic neckLine =
        pointed
            ? curve(neck, front, from(-0.1, 0.1), from(-0.1, 0.1))
            : new Cubic(
                neck,
                new Point(neck.x() - from(0, 20), neck.y() - (neck.y() - front.y()) * 0.6),
                new Point(neck.x() * from(0.3, 0.7), front.y()),
                front);
    Cubic armhole =
        new Cubic(
            underarm,
            new Point(underarm.x() - (underarm.x() - shoulder.x()) * from(0.5, 1.1), height),
            new Point(shoulder.x() - from(0, 15), height + from(30, 90)),
            shoulder);
    return List.of(
        edge("hem", Curve.of(curve(new Point(0, 0), hemSide, from(-0.05, 0.1), from(-0.05, 0.1)))),
        edge("side", Curve.of(curve(hemSide, underarm, from(-0.08, 0.08), from(-0.08, 0.08)))),
        edge("armhole", Curve.of(armhole)),
        edge("shoulder", Curve.line(shoulder, neck)),
        edge("neck", Curve.of(neckLine)),
        edge("fold", Curve.line(front, new Point(0, 0))));
  }

  /** A sleeve: wrist, two underarm seams, cap in two curves. */
  public List<OffsetEdge> sleeve() {
    double wrist = from(80, 130);
    double bicep = from(140, 210);
    double length = from(80, 450);
    double cap = from(60, 160);
    Point left = new Point(-wrist, 0);
    Point right = new Point(wrist, 0);
    Point underRight = new Point(bicep, length);
    Point underLeft = new Point(-bicep, length);
    Point top = new Point(0, length + cap);
    return List.of(
        edge("wrist", Curve.line(left, right)),
        edge(
            "underarm right", Curve.of(curve(right, underRight, from(-0.1, 0.1), from(-0.1, 0.1)))),
        edge(
            "cap right",
            Curve.of(
                new Cubic(
                    underRight,
                    new Point(bicep * from(0.6, 0.8), length + from(0, 15)),
                    new Point(bicep * from(0.35, 0.5), top.y()),
                    top))),
        edge(
            "cap left",
            Curve.of(
                new Cubic(
                    top,
                    new Point(-bicep * from(0.35, 0.5), top.y()),
                    new Point(-bicep * from(0.6, 0.8), length + from(0, 15)),
                    underLeft))),
        edge("underarm left", Curve.of(curve(underLeft, left, from(-0.1, 0.1), from(-0.1, 0.1)))));
  }

  /** One leg of leggings: hem, inseam, crotch curve, waist, centre back or side. */
  public List<OffsetEdge> legging() {
    double hem = from(90, 130);
    double thigh = from(240, 330);
    double inseam = from(300, 800);
    double rise = from(180, 320);
    Point foot = new Point(hem, 0);
    Point fork = new Point(thigh, inseam);
    Point waistFront = new Point(thigh - from(50, 90), inseam + rise);
    Point waistBack = new Point(from(-20, 40), inseam + rise + from(0, 40));
    return List.of(
        edge("hem", Curve.line(new Point(0, 0), foot)),
        edge("inseam", Curve.of(curve(foot, fork, from(-0.05, 0.08), from(-0.05, 0.08)))),
        edge(
            "crotch",
            Curve.of(
                new Cubic(
                    fork,
                    new Point(waistFront.x() + from(5, 25), inseam + from(5, 25)),
                    new Point(waistFront.x() + from(0, 10), inseam + rise * 0.4),
                    waistFront))),
        edge("waist", Curve.of(curve(waistFront, waistBack, from(-0.03, 0.03), from(-0.03, 0.03)))),
        edge(
            "side",
            Curve.of(curve(waistBack, new Point(0, 0), from(-0.04, 0.04), from(-0.04, 0.04)))));
  }

  /** A hand-traced outline: many short chords with a pencil's noise, in four edges. */
  public List<OffsetEdge> traced() {
    int each = 10 + random.nextInt(30);
    List<OffsetEdge> edges = new ArrayList<>();
    List<Point> points = new ArrayList<>();
    int n = 4 * each;
    for (int i = 0; i < n; i++) {
      double turn = 2 * Math.PI * i / n;
      double radius = 200 + 30 * Math.cos(2 * turn) + from(-1.5, 1.5);
      points.add(new Point(radius * Math.cos(turn), radius * Math.sin(turn)));
    }
    for (int k = 0; k < 4; k++) {
      List<Point> stroke = new ArrayList<>();
      for (int i = 0; i <= each; i++) {
        stroke.add(points.get((k * each + i) % n));
      }
      edges.add(edge("stroke " + k, Curve.polyline(stroke.toArray(new Point[0]))));
    }
    return edges;
  }

  public List<OffsetEdge> any() {
    return switch (random.nextInt(8)) {
      case 0, 1, 2, 3 -> halfBodice();
      case 4, 5 -> sleeve();
      case 6 -> legging();
      default -> traced();
    };
  }
}
