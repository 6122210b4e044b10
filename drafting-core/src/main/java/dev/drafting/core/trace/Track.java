package dev.drafting.core.trace;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.jspecify.annotations.Nullable;

/**
 * The run of one edge, as a spline that is looked at in one place after the other. Beyond both ends
 * it runs on straight. Not for sharing between threads.
 */
final class Track {
  private static final int MOST_STEPS = 30;
  private static final int PLACES = 6;
  private static final int FINE = 12;
  private static final double STILL = 1e-13;
  private static final double SETTLING = 1e-7;

  private static final GaussIntegrator GAUSS = new GaussIntegratorFactory().legendre(8, 0, 1);

  final Knots knots;
  final double[] cx;
  final double[] cy;
  private final double[] px;
  private final double[] py;
  private final int last;

  /** What {@link #nearest} looks at first, x and y in turn, while the control points stay. */
  private double @Nullable [] places;

  // Where it was looked at last.
  int part;
  double u;
  double x;
  double y;
  double dx;
  double dy;

  /** In mm for the whole way. */
  double speed;

  private double ddx;
  private double ddy;

  Track(Knots knots) {
    this(knots, new double[knots.controls()], new double[knots.controls()]);
  }

  Track(Knots knots, double[] cx, double[] cy) {
    this.knots = knots;
    this.cx = cx;
    this.cy = cy;
    this.px = new double[4 * knots.parts()];
    this.py = new double[4 * knots.parts()];
    this.last = knots.parts() - 1;
    changed();
  }

  /** To be called when control points have moved. */
  void changed() {
    places = null;
    knots.sum(cx, px);
    knots.sum(cy, py);
  }

  /** Looks at the point and the direction at a share of the way. */
  void look(double share) {
    part = last == 0 ? 0 : knots.partAt(share);
    double rate = knots.rate(part);
    u = (share - knots.from(part)) * rate;
    int p = 4 * part;
    double x1 = px[p + 1];
    double x2 = px[p + 2];
    double x3 = px[p + 3];
    double y1 = py[p + 1];
    double y2 = py[p + 2];
    double y3 = py[p + 3];
    x = px[p] + u * (x1 + u * (x2 + u * x3));
    y = py[p] + u * (y1 + u * (y2 + u * y3));
    dx = (x1 + u * (2 * x2 + 3 * u * x3)) * rate;
    dy = (y1 + u * (2 * y2 + 3 * u * y3)) * rate;
    ddx = (2 * x2 + 6 * u * x3) * rate * rate;
    ddy = (2 * y2 + 6 * u * y3) * rate * rate;
    speed = Math.max(Math.sqrt(dx * dx + dy * dy), Double.MIN_NORMAL);
  }

  /**
   * Slides along from a share of the way to where a point lies square to the edge (Newton), or to
   * the end nearest to it, and looks there; the direction is then of length one.
   *
   * @return the share of the way there
   */
  double foot(double pointX, double pointY, double from) {
    double share = from;
    look(share);
    for (int step = 0; step < MOST_STEPS; step++) {
      double offX = x - pointX;
      double offY = y - pointY;
      double square = speed * speed;
      double bent = square + offX * ddx + offY * ddy;
      double towards = (offX * dx + offY * dy) / (bent > square / 2 ? bent : square);
      double next = Math.min(Math.max(share - towards, 0), 1);
      double moved = Math.abs(next - share);
      share = next;
      if (moved < STILL) {
        break;
      }
      look(share);
      if (moved < SETTLING) {
        break;
      }
    }
    dx /= speed;
    dy /= speed;
    return share;
  }

  /** The foot that is nearest to a point, wherever along the edge that is. */
  double nearest(double pointX, double pointY) {
    double[] known = places();
    int count = known.length / 2 - 1;
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= count; i++) {
      double offX = known[2 * i] - pointX;
      double offY = known[2 * i + 1] - pointY;
      double off = offX * offX + offY * offY;
      if (off < least) {
        least = off;
        best = i;
      }
    }
    return foot(pointX, pointY, (double) best / count);
  }

  private double[] places() {
    double[] known = places;
    if (known == null) {
      int count = PLACES * knots.parts();
      known = new double[2 * (count + 1)];
      for (int i = 0; i <= count; i++) {
        look((double) i / count);
        known[2 * i] = x;
        known[2 * i + 1] = y;
      }
      places = known;
    }
    return known;
  }

  /** How far a point lies off the edge, to its left or right. */
  double distance(double pointX, double pointY) {
    double foot = nearest(pointX, pointY);
    lookSquare(foot);
    return Math.abs(left(pointX, pointY));
  }

  /** Looks with a direction of length one. */
  void lookSquare(double share) {
    look(share);
    dx /= speed;
    dy /= speed;
  }

  /** Whether it doubles back on itself, as no edge of a garment does. */
  boolean isFolded() {
    int places = FINE * knots.parts();
    look(0);
    double beforeX = dx;
    double beforeY = dy;
    for (int i = 1; i <= places; i++) {
      look((double) i / places);
      double cross = beforeX * dy - beforeY * dx;
      if (beforeX * dx + beforeY * dy < Math.abs(cross)) {
        return true;
      }
      beforeX = dx;
      beforeY = dy;
    }
    return false;
  }

  /** How far a point lies left of the tangent where the edge was looked at last by a foot. */
  double left(double pointX, double pointY) {
    return dx * (pointY - y) - dy * (pointX - x);
  }

  /** How far a point lies beyond the end where its foot is; 0 elsewhere. */
  double beyond(double pointX, double pointY, double foot) {
    return foot > 0 && foot < 1 ? 0 : (pointX - x) * dx + (pointY - y) * dy;
  }

  double length() {
    return length(0, 1);
  }

  /** The length between two shares of the way. */
  double length(double from, double to) {
    double length = 0;
    int end = knots.partAt(to);
    for (int i = knots.partAt(from); i <= end; i++) {
      double a = Math.max(from, knots.from(i));
      double b = Math.min(to, knots.to(i));
      for (int k = 0; k < GAUSS.getNumberOfPoints(); k++) {
        look(a + (b - a) * GAUSS.getPoint(k));
        length += GAUSS.getWeight(k) * (b - a) * speed;
      }
    }
    return length;
  }

  /** Adds how the length changes with each control point's x and y to a gradient. */
  void addLengthGradient(int[] unknownX, int[] unknownY, double[] gradient) {
    double[] slopes = new double[knots.degree + 1];
    for (int i = 0; i < knots.parts(); i++) {
      double width = knots.to(i) - knots.from(i);
      for (int k = 0; k < GAUSS.getNumberOfPoints(); k++) {
        look(knots.from(i) + width * GAUSS.getPoint(k));
        double weight = GAUSS.getWeight(k) * width / speed;
        knots.slopes(i, u, slopes);
        for (int c = 0; c <= knots.degree; c++) {
          double slope = weight * slopes[c];
          add(gradient, unknownX[i + c], slope * dx);
          add(gradient, unknownY[i + c], slope * dy);
        }
      }
    }
  }

  private static void add(double[] gradient, int unknown, double value) {
    if (unknown >= 0) {
      gradient[unknown] += value;
    }
  }

  /** The same run after a turn, a move or a mirroring. */
  Track map(UnaryOperator<Point> map) {
    double[] x2 = new double[cx.length];
    double[] y2 = new double[cx.length];
    for (int i = 0; i < cx.length; i++) {
      Point point = map.apply(new Point(cx[i], cy[i]));
      x2[i] = point.x();
      y2[i] = point.y();
    }
    return new Track(knots, x2, y2);
  }

  Point start() {
    return new Point(cx[0], cy[0]);
  }

  Point end() {
    return new Point(cx[cx.length - 1], cy[cy.length - 1]);
  }

  /** The curve as a user sees it. Its ends are the control points themselves, to the last bit. */
  List<Segment> segments() {
    if (knots.isStraight()) {
      return List.of(new Line(start(), end()));
    }
    List<Segment> cubics = new ArrayList<>();
    Point from = start();
    for (int i = 0; i < knots.parts(); i++) {
      double[] ownX = knots.partControls(i, cx);
      double[] ownY = knots.partControls(i, cy);
      boolean first = i == 0;
      boolean isLast = i == last;
      Point beside = first ? new Point(cx[1], cy[1]) : new Point(ownX[1], ownY[1]);
      Point before =
          isLast ? new Point(cx[cx.length - 2], cy[cy.length - 2]) : new Point(ownX[2], ownY[2]);
      Point to = isLast ? end() : new Point(ownX[3], ownY[3]);
      cubics.add(new Cubic(from, beside, before, to));
      from = to;
    }
    return cubics;
  }
}
