package dev.drafting.core.trace;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The points of a line round a piece, whose corners are searched for. */
final class RoundLine {
  private static final int FEWEST = 3;
  private static final double SAME_MM = 1e-6;

  private RoundLine() {}

  /** The points of all strokes, without repeats. */
  static Polyline of(List<Stroke> strokes, boolean closed) {
    List<Point> points = new ArrayList<>();
    for (Stroke stroke : strokes) {
      for (int i = 0; i < stroke.samples.size(); i++) {
        Point point = stroke.point(i);
        if (points.isEmpty() || !points.get(points.size() - 1).equals(point)) {
          points.add(point);
        }
      }
    }
    if (closed && points.size() > 1 && points.get(0).equals(points.get(points.size() - 1))) {
      points.remove(points.size() - 1);
    }
    return Polyline.of(points);
  }

  static List<Corner> corners(Polyline round, boolean closed) {
    int points = round.size();
    if (!closed) {
      return search(round, 0, points);
    }
    // A closed line is searched from its farthest point, and then again from its farthest corner.
    Point middle = middle(round);
    int farthest = farthest(middle, round);
    @Nullable Corner start = farthestCorner(middle, round, farthest);
    if (start == null) {
      // The only corner may lie where the search began.
      start = farthestCorner(middle, round, farthest(round.point(farthest), round));
    }
    if (start == null) {
      return List.of();
    }
    int used = Math.floorMod(start.last() - start.first(), points) + 1;
    List<Corner> corners = new ArrayList<>();
    corners.add(start);
    for (Corner corner : search(round, start.first(), used == 1 ? points + 1 : used)) {
      corners.add(corner.shifted(start.first(), points));
    }
    corners.sort(Comparator.comparingInt(Corner::first));
    return corners;
  }

  private static int farthest(Point from, Polyline round) {
    int farthest = 0;
    for (int i = 1; i < round.size(); i++) {
      farthest = distance(from, round, i) > distance(from, round, farthest) ? i : farthest;
    }
    return farthest;
  }

  /** The corner farthest from the middle, searched for from a point round to it. */
  private static @Nullable Corner farthestCorner(Point middle, Polyline round, int from) {
    int points = round.size();
    @Nullable Corner farthest = null;
    for (Corner corner : search(round, from, points + 1)) {
      Corner here = corner.shifted(from, points);
      boolean farther =
          farthest == null || distance(middle, round, here) > distance(middle, round, farthest);
      farthest = farther ? here : farthest;
    }
    return farthest;
  }

  /** The corners of a part, the same for its mirror image, which is walked the other way. */
  private static List<Corner> search(Polyline round, int from, int count) {
    if (count < FEWEST) {
      return List.of();
    }
    Polyline part = part(round, from, count);
    boolean backwards = isBackwards(part, middle(part));
    double[] x = new double[count];
    double[] y = new double[count];
    for (int i = 0; i < count; i++) {
      int at = backwards ? count - 1 - i : i;
      x[i] = part.x(at);
      y[i] = part.y(at);
    }
    Samples samples = Samples.traced(x, y);
    List<Corner> corners = CornerSearch.of(samples, Noise.ofRound(samples).mm);
    if (!backwards) {
      return corners;
    }
    List<Corner> turned = new ArrayList<>();
    corners.forEach(c -> turned.add(0, new Corner(count - 1 - c.first(), count - 1 - c.last())));
    return turned;
  }

  /** Whether the line keeps farther from its middle when it is walked from its last point. */
  private static boolean isBackwards(Polyline part, Point middle) {
    int last = part.size() - 1;
    for (int i = 0; i <= last; i++) {
      double difference = distance(middle, part, last - i) - distance(middle, part, i);
      if (Math.abs(difference) > SAME_MM) {
        return difference > 0;
      }
    }
    return false;
  }

  private static Polyline part(Polyline round, int from, int count) {
    double[] xy = new double[2 * count];
    for (int i = 0; i < count; i++) {
      int at = (from + i) % round.size();
      xy[2 * i] = round.x(at);
      xy[2 * i + 1] = round.y(at);
    }
    return Polyline.of(xy);
  }

  /** The centre of the area: the same wherever the pencil was set down. */
  private static Point middle(Polyline round) {
    double area = 0;
    double middleX = 0;
    double middleY = 0;
    double originX = round.x(0);
    double originY = round.y(0);
    for (int i = 1; i + 1 < round.size(); i++) {
      double x1 = round.x(i) - originX;
      double y1 = round.y(i) - originY;
      double x2 = round.x(i + 1) - originX;
      double y2 = round.y(i + 1) - originY;
      double cross = x1 * y2 - x2 * y1;
      area += cross;
      middleX += cross * (x1 + x2);
      middleY += cross * (y1 + y2);
    }
    return new Point(originX + middleX / (3 * area), originY + middleY / (3 * area));
  }

  private static double distance(Point middle, Polyline round, Corner corner) {
    return distance(middle, round, corner.first()) + distance(middle, round, corner.last());
  }

  private static double distance(Point middle, Polyline round, int i) {
    return Math.hypot(round.x(i) - middle.x(), round.y(i) - middle.y());
  }

  /** The points between corners; those of a closed line from the lowest stretch on. */
  static List<Polyline> stretches(Polyline round, List<Corner> corners, boolean closed) {
    List<Polyline> stretches = new ArrayList<>();
    int points = round.size();
    if (!closed) {
      int first = 0;
      for (Corner corner : corners) {
        stretches.add(part(round, first, corner.last() - first + 1));
        first = corner.first();
      }
      stretches.add(part(round, first, points - first));
      return stretches;
    }
    for (int i = 0; i < corners.size(); i++) {
      int first = corners.get(i).first();
      int last = corners.get((i + 1) % corners.size()).last();
      int steps = Math.floorMod(last - first, points);
      stretches.add(part(round, first, (steps == 0 ? points : steps) + 1));
    }
    Collections.rotate(stretches, -lowest(stretches));
    return stretches;
  }

  private static int lowest(List<Polyline> stretches) {
    int lowest = 0;
    for (int i = 1; i < stretches.size(); i++) {
      if (height(stretches.get(i)) < height(stretches.get(lowest))) {
        lowest = i;
      }
    }
    return lowest;
  }

  /** Of the middle of a stretch. */
  private static double height(Polyline stretch) {
    double half = stretch.length().toMm() / 2;
    double way = 0;
    int i = 1;
    while (i < stretch.size() - 1) {
      double step = stretch.point(i).distanceTo(stretch.point(i - 1)).toMm();
      if (way + step >= half) {
        break;
      }
      way += step;
      i++;
    }
    double step = stretch.point(i).distanceTo(stretch.point(i - 1)).toMm();
    double share = step == 0 ? 0 : (half - way) / step;
    return stretch.y(i - 1) + share * (stretch.y(i) - stretch.y(i - 1));
  }
}
