package dev.drafting.core.trace;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import java.util.ArrayList;
import java.util.List;

/**
 * The line about which a whole tracing mirrors itself best. Which stroke answers to which follows
 * from their names round the outline; where the line lies, from least squares: first over the
 * corners, then over the distances of each fitted edge from the mirror image of its opposite.
 */
final class FoldLine {
  private static final double STATION_MM = 10;
  private static final int MOST_ROUNDS = 40;

  /** Turns and moves the tracing so that the fold line lies on x = 0, as upright as it was. */
  final Transform frame;

  /** Stroke i is the mirror image of stroke (sum - i), counted round the outline. */
  final int sum;

  private FoldLine(Transform frame, int sum) {
    this.frame = frame;
    this.sum = sum;
  }

  int opposite(int stroke, int count) {
    return Math.floorMod(sum - stroke, count);
  }

  /** The fold line that the corners between the strokes suggest. */
  static FoldLine fromCorners(String piece, List<Stroke> loop) {
    int n = loop.size();
    FoldLine best = null;
    double least = Double.POSITIVE_INFINITY;
    for (int sum = 0; sum < n && n > 1; sum++) {
      if (mirrorsNames(loop, sum)) {
        Mirror mirror = new Mirror(loop, sum);
        if (mirror.misfit < least) {
          least = mirror.misfit;
          best = new FoldLine(mirror.frame(), sum);
        }
      }
    }
    if (best == null) {
      List<String> names = new ArrayList<>();
      loop.forEach(stroke -> names.add(stroke.name));
      throw DraftingException.of("the edges of a whole piece do not answer to each other")
          .at(piece)
          .value("round the outline: " + String.join(", ", names))
          .accepted("left and right edges of the same names in the same order");
    }
    return best;
  }

  /**
   * Where round the outline its lower end lies: a stroke's number where the fold crosses the
   * stroke, half a number more where it passes between it and the next.
   */
  double lowerEnd(List<Stroke> loop) {
    double one = sum / 2.0;
    double other = one + loop.size() / 2.0;
    return height(loop, one) <= height(loop, other) ? one : other;
  }

  private double height(List<Stroke> loop, double place) {
    Stroke stroke = loop.get(Math.floorMod((int) Math.floor(place), loop.size()));
    boolean crossed = place == Math.rint(place);
    Point point = crossed ? stroke.point(stroke.samples.size() / 2) : stroke.last();
    return frame.apply(point).y();
  }

  private static boolean mirrorsNames(List<Stroke> loop, int sum) {
    int n = loop.size();
    for (int i = 0; i < n; i++) {
      if (!loop.get(i).name.equals(loop.get(Math.floorMod(sum - i, n)).name)) {
        return false;
      }
    }
    return true;
  }

  /** The reflection that takes the corners to their opposites with the least squares. */
  private static final class Mirror {
    private final double centreX;
    private final double centreY;
    private final double doubled;
    private final double misfit;

    Mirror(List<Stroke> loop, int sum) {
      int n = loop.size();
      Point[] corners = new Point[n];
      double x = 0;
      double y = 0;
      for (int i = 0; i < n; i++) {
        corners[i] = loop.get(i).last().midpoint(loop.get((i + 1) % n).first());
        x += corners[i].x() / n;
        y += corners[i].y() / n;
      }
      this.centreX = x;
      this.centreY = y;
      double cos = 0;
      double sin = 0;
      double spread = 0;
      for (int i = 0; i < n; i++) {
        double px = corners[i].x() - x;
        double py = corners[i].y() - y;
        Point opposite = corners[Math.floorMod(sum - 1 - i, n)];
        double qx = opposite.x() - x;
        double qy = opposite.y() - y;
        cos += px * qx - py * qy;
        sin += px * qy + py * qx;
        spread += px * px + py * py;
      }
      this.doubled = Math.atan2(sin, cos);
      this.misfit = 2 * (spread - Math.hypot(sin, cos));
    }

    Transform frame() {
      double fold = doubled / 2;
      double upright = Math.sin(fold) < 0 ? fold + Math.PI : fold;
      Point centre = new Point(centreX, centreY);
      return Transform.rotation(centre, Angle.radians(Math.PI / 2 - upright))
          .then(Transform.translation(new Vector(-centreX, 0)));
    }
  }

  /** The fold line that fits the edges best; they are given as they lie in this line's frame. */
  FoldLine refined(List<Track> edges) {
    List<Station> stations = stations(edges);
    Transform moved = Transform.identity();
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double[] step = step(stations, moved);
      Transform turn =
          Transform.rotation(new Point(0, step[2]), Angle.radians(step[0]))
              .then(Transform.translation(new Vector(step[1], 0)));
      moved = moved.then(turn);
      if (Math.abs(step[0]) < 1e-13 && Math.abs(step[1]) < 1e-10) {
        break;
      }
    }
    return new FoldLine(frame.then(moved), sum);
  }

  /** A place on an edge that is compared with the opposite edge, and the length it stands for. */
  private static final class Station {
    final Point place;
    final Track opposite;
    final double weight;

    /** Where on the opposite edge it is answered, as far as is known. */
    double share;

    Station(Point place, Track opposite, double weight, double share) {
      this.place = place;
      this.opposite = opposite;
      this.weight = weight;
      this.share = share;
    }
  }

  private List<Station> stations(List<Track> edges) {
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      Track edge = edges.get(i);
      Track opposite = edges.get(opposite(i, edges.size()));
      int count = (int) Math.max(2, Math.ceil(edge.length() / STATION_MM));
      for (int k = 0; k < count; k++) {
        double share = (k + 0.5) / count;
        edge.look(share);
        stations.add(
            new Station(new Point(edge.x, edge.y), opposite, edge.speed / count, 1 - share));
      }
    }
    return stations;
  }

  /**
   * One step of Gauss and Newton from where the edges lie now: a turn in radians, a shift in mm,
   * and the height of the turn.
   */
  private static double[] step(List<Station> stations, Transform moved) {
    Transform reflection = moved.then(Transform.mirrorInFold()).then(moved.inverse());
    double height = 0;
    for (Station station : stations) {
      height += moved.apply(station.place).y() / stations.size();
    }
    double tt = 0;
    double ts = 0;
    double ss = 0;
    double tr = 0;
    double sr = 0;
    for (Station station : stations) {
      Point image = reflection.apply(station.place);
      Track track = station.opposite;
      station.share = track.foot(image.x(), image.y(), station.share);
      double off = track.left(image.x(), image.y());
      Vector square = moved.apply(new Vector(-track.dy, track.dx));
      Point place = moved.apply(station.place);
      Point foot = moved.apply(new Point(track.x, track.y));
      double turn =
          square.dx() * (place.y() + foot.y() - 2 * height) + square.dy() * (place.x() - foot.x());
      double shift = -2 * square.dx();
      tt += station.weight * turn * turn;
      ts += station.weight * turn * shift;
      ss += station.weight * shift * shift;
      tr -= station.weight * turn * off;
      sr -= station.weight * shift * off;
    }
    double det = tt * ss - ts * ts;
    if (!(det > 1e-12 * tt * ss)) {
      return new double[] {0, 0, height};
    }
    return new double[] {(tr * ss - sr * ts) / det, (sr * tt - tr * ts) / det, height};
  }
}
