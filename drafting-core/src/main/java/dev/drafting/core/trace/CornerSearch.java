package dev.drafting.core.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds the corners of a line that was drawn past them in one go: places where it stands off what
 * any smooth run of it would be, by more than the pencil wandered.
 */
final class CornerSearch {
  private static final int STRAIGHT = 1;
  private static final int BENT = 2;
  private static final int TWISTED = 3;
  private static final int ENOUGH_BENT = 6;
  private static final int ENOUGH_TWISTED = 10;
  private static final int BESIDE = 12;

  private static final int MOST_OF_POLYGON = 9;

  /** Points nearer to an edge than so many deviations may well belong to it. */
  private static final double LIKELY = 2.5;

  /** Points so many parts of their distance off a line may still be meant to lie on it. */
  private static final double SHARE_OF_SPACING = 0.01;

  private final double[] x;
  private final double[] y;

  /** Of each point without slips its number among all. */
  private final int[] number;

  private final Walk walk;
  private final double noise;

  private CornerSearch(Samples samples, double wander) {
    boolean[] kept = Slips.kept(samples, wander);
    this.number = IntStream.range(0, kept.length).filter(i -> kept[i]).toArray();
    this.x = Arrays.stream(number).mapToDouble(i -> samples.x[i]).toArray();
    this.y = Arrays.stream(number).mapToDouble(i -> samples.y[i]).toArray();
    this.walk = Walk.of(x, y, wander);
    this.noise = Math.max(walk.wander(), SHARE_OF_SPACING * walk.spacing());
  }

  /** The corners between the first point and the last, in order. */
  static List<Corner> of(Samples samples, double wander) {
    if (samples.size() <= MOST_OF_POLYGON) {
      return turns(samples);
    }
    return new CornerSearch(samples, wander).corners();
  }

  /** Whoever gives so few points gives the corners, and points on straight edges. */
  private static List<Corner> turns(Samples samples) {
    List<Corner> corners = new ArrayList<>();
    for (int i = 1; i + 1 < samples.size(); i++) {
      double inX = samples.x[i] - samples.x[i - 1];
      double inY = samples.y[i] - samples.y[i - 1];
      double outX = samples.x[i + 1] - samples.x[i];
      double outY = samples.y[i + 1] - samples.y[i];
      double turn = Math.atan2(inX * outY - inY * outX, inX * outX + inY * outY);
      if (Math.abs(turn) >= Joint.SHALLOWEST) {
        corners.add(new Corner(i, i));
      }
    }
    return corners;
  }

  private List<Corner> corners() {
    List<Segmentation.Part> parts = Segmentation.of(walk, noise);
    List<Joint> joints = new ArrayList<>();
    for (int i = 1; i < parts.size(); i++) {
      joints.add(new Joint(walk, parts.get(i - 1), parts.get(i), noise));
    }
    int smoothest = smoothest(joints);
    while (smoothest >= 0) {
      join(joints, smoothest);
      smoothest = smoothest(joints);
    }
    List<Corner> corners = new ArrayList<>();
    for (Joint joint : joints) {
      Corner corner = placed(joint.one(), joint.next());
      // What turns within a block or two may have been cut twice.
      if (corners.isEmpty() || corner.last() > corners.get(corners.size() - 1).first()) {
        corners.add(corner);
      }
    }
    return corners;
  }

  /** Which joint that is no corner stands out least; -1 if all are corners. */
  private static int smoothest(List<Joint> joints) {
    int smoothest = -1;
    for (int i = 0; i < joints.size(); i++) {
      boolean less = smoothest < 0 || joints.get(i).standsOut() < joints.get(smoothest).standsOut();
      smoothest = less && !joints.get(i).isCorner() ? i : smoothest;
    }
    return smoothest;
  }

  /** Makes one stretch of the two beside a joint. */
  private void join(List<Joint> joints, int at) {
    Joint gone = joints.remove(at);
    Segmentation.Part both = new Segmentation.Part(gone.one().from(), gone.next().to());
    if (at > 0) {
      joints.set(at - 1, new Joint(walk, joints.get(at - 1).one(), both, noise));
    }
    if (at < joints.size()) {
      joints.set(at, new Joint(walk, both, joints.get(at).next(), noise));
    }
  }

  /**
   * The corner to the point: where both neighbours fit best, looked for among all points nearby.
   */
  private Corner placed(Segmentation.Part one, Segmentation.Part next) {
    boolean shared = one.to() == next.from();
    int low = walk.first[Math.max(one.from() + 1, one.to() - 1)];
    int high = walk.first[Math.min(next.to(), next.from() + 2)] - 1;
    int start = walk.first[Math.max(one.from(), one.to() - BESIDE)];
    int end = walk.first[Math.min(next.to(), next.from() + BESIDE) + 1] - 1;
    if (shared && (low >= high || one.to() - one.from() < 2 || next.to() - next.from() < 2)) {
      int at = walk.first[one.to()];
      return corner(at, at);
    }
    double[] before = left(start, high, 1);
    double[] after = left(end, low, -1);
    int best = low;
    double least = Double.POSITIVE_INFINITY;
    for (int at = low; at < high; at++) {
      double both = before[at - start] + after[end - at - 1];
      if (both < least) {
        least = both;
        best = at;
      }
    }
    return meeting(start, best, end);
  }

  /** What a fit leaves over of the points from one on to each point. */
  private double[] left(int from, int to, int step) {
    double[] left = new double[Math.abs(to - from) + 1];
    Moments moments = moments(from);
    for (int i = 0; i < left.length; i++) {
      add(moments, from + step * i);
      left[i] = moments.left(degree(moments));
    }
    return left;
  }

  private Corner meeting(int start, int best, int end) {
    Moments before = moments(start);
    for (int i = start; i <= best; i++) {
      add(before, i);
    }
    Moments after = moments(end);
    for (int i = end; i > best; i--) {
      add(after, i);
    }
    boolean laterFits = isLikely(before, best + 1);
    boolean earlierFits = isLikely(after, best);
    boolean earlierIsNearer = off(after, best) <= off(before, best + 1);
    double gap = Math.hypot(x[best + 1] - x[best], y[best + 1] - y[best]);
    if (!laterFits && !earlierFits && gap <= Joining.FARTHEST_MM) {
      return corner(best, best + 1);
    }
    // Edges that are traced with few points end on the corner.
    boolean earlier = earlierFits == laterFits ? earlierIsNearer : earlierFits;
    return earlier ? corner(best, best) : corner(best + 1, best + 1);
  }

  /** Whether a point lies no farther off the fit of an edge than the others do. */
  private boolean isLikely(Moments fit, int point) {
    int degree = fit.count() >= ENOUGH_TWISTED ? TWISTED : degree(fit);
    double variance =
        Math.max(noise * noise, fit.left(degree) / Math.max(1, fit.count() - degree - 1));
    double off = fit.off(degree, walk.along[point], x[point], y[point]);
    return off <= LIKELY * LIKELY * variance;
  }

  private static int degree(Moments moments) {
    return moments.count() >= ENOUGH_BENT ? BENT : STRAIGHT;
  }

  private Moments moments(int origin) {
    return new Moments(walk.along[origin], x[origin], y[origin]);
  }

  private void add(Moments moments, int i) {
    moments.add(walk.along[i], x[i], y[i]);
  }

  private double off(Moments moments, int i) {
    return moments.off(degree(moments), walk.along[i], x[i], y[i]);
  }

  private Corner corner(int last, int first) {
    // A slip between two edges goes to the later one, and is refused there.
    return new Corner(number[last], first == last ? number[first] : number[last] + 1);
  }
}
