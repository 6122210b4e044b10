package dev.drafting.core.trace;

import org.apache.commons.math3.util.MathUtils;

/**
 * Tells a corner from a place where an edge runs through. How much worse one smooth cubic past the
 * place explains the points than two that know nothing of each other is looked at over longer and
 * longer stretches, until it is well out of the noise; there a corner must explain no less than any
 * bend.
 */
final class Joint {
  private static final int CUBIC = 3;
  private static final int SHORTEST = 6;
  private static final int FEWEST = 3;
  private static final int MOST_BESIDE_SHORT = 24;
  private static final double LONGER = Math.sqrt(2);

  /** What stands out so far is looked at over no longer stretches; in variances. */
  private static final double SURE = 400;

  /** Where short edges allow no more, this much will do. */
  private static final double DOUBTFUL = 30;

  /** A corner may also have stood out this far before the bend of its edges came into it. */
  private static final double ALSO = 60;

  /** How many blocks of a stretch at most are looked at beside a joint. */
  private static final int FARTHEST = 80;

  /** In deviations: what is left over of a stretch by chance once in a hundred times. */
  private static final double SURELY_MORE = 2.33;

  /** What a cubic explains more of a straight stretch by chance once in a hundred times. */
  private static final double BENDS = 13.3;

  /** What two cubics explain more of mere noise than one. */
  private static final int OF_NOISE = 2 * (CUBIC + 1);

  /** A shallower turn is no corner that a maker would see. */
  static final double SHALLOWEST = Math.toRadians(10);

  private final Walk walk;
  private final Segmentation.Part one;
  private final Segmentation.Part next;
  private final double variance;
  private final double at;
  private final int reach;
  private final double standsOut;

  /** Whether one of the stretches has too few points to tell a bend from a corner. */
  private final boolean isShort;

  private final boolean corner;

  /** The joint between two neighbouring stretches. */
  Joint(Walk walk, Segmentation.Part one, Segmentation.Part next, double noise) {
    this.walk = walk;
    this.one = one;
    this.next = next;
    this.variance = noise * noise;
    this.at = (walk.way[one.to()] + walk.way[next.from()]) / 2;
    int shorter = Math.min(one.to() - one.from(), next.to() - next.from()) + 1;
    this.isShort = shorter < FEWEST;
    int longest = isShort ? MOST_BESIDE_SHORT : shorter;
    int sure = Math.min(SHORTEST, longest);
    while (sure < longest && standsOut(sure) < SURE) {
      sure = Math.min((int) Math.ceil(sure * LONGER), longest);
    }
    this.reach = sure;
    this.standsOut = standsOut(sure);
    int before = (int) Math.floor(reach / LONGER);
    this.corner = isCorner(reach, DOUBTFUL) || isCorner(before, ALSO);
  }

  Segmentation.Part one() {
    return one;
  }

  Segmentation.Part next() {
    return next;
  }

  /** How much a corner here would explain, in variances, as far as need be looked. */
  double standsOut() {
    return standsOut;
  }

  /** Whether the line turns a corner here. */
  boolean isCorner() {
    return corner;
  }

  private boolean isCorner(int blocks, double least) {
    double stands = standsOut(blocks);
    if (stands < least) {
      return false;
    }
    if (isShort) {
      return kink(blocks) >= SHALLOWEST;
    }
    Side before = new Side(one, -1, blocks);
    Side after = new Side(next, 1, blocks);
    double half = (walk.way[last(blocks)] - walk.way[first(blocks)]) / 2;
    return new CornerOrBend(walk, before.end, after.end, at, half, before.straight, after.straight)
        .isCorner();
  }

  private boolean isStraight(Moments moments) {
    return moments.left(1) - moments.left(CUBIC) < BENDS * variance;
  }

  private boolean isCubic(Moments moments) {
    double freedom = 2.0 * (moments.count() - CUBIC - 1);
    double chance = freedom + SURELY_MORE * Math.sqrt(2 * freedom);
    return moments.left(CUBIC) <= variance * chance;
  }

  /**
   * As much of a stretch, from the joint on, as a straight line explains, or a cubic over a shorter
   * way: the longer it is, the surer the direction in which it comes to the joint.
   */
  private final class Side {
    final int end;
    final boolean straight;

    Side(Segmentation.Part part, int step, int blocks) {
      int from = step < 0 ? part.to() : part.from();
      int length = part.to() - part.from() + 1;
      Moments moments = new Moments(walk.way[from], walk.x[from], walk.y[from]);
      boolean line = true;
      int good = 0;
      for (int count = 1; count <= length; count++) {
        int block = from + step * (count - 1);
        moments.add(walk.way[block], walk.x[block], walk.y[block]);
        boolean few = count < SHORTEST;
        boolean still = line && count <= FARTHEST && (few || isStraight(moments));
        if (count > SHORTEST && !still && (count > blocks || !isCubic(moments))) {
          break;
        }
        line = still;
        good = count;
      }
      this.end = from + step * (good - 1);
      this.straight = line;
    }
  }

  /** By how much the line turns here, judged so far to either side, in radians. */
  private double kink(int blocks) {
    double turn =
        walk.moments(next.from(), last(blocks)).direction(CUBIC, at)
            - walk.moments(first(blocks), one.to()).direction(CUBIC, at);
    return Math.abs(MathUtils.normalizeAngle(turn, 0));
  }

  private double standsOut(int blocks) {
    double together = walk.moments(first(blocks), last(blocks)).left(CUBIC);
    double apart =
        walk.moments(first(blocks), one.to()).left(CUBIC)
            + walk.moments(next.from(), last(blocks)).left(CUBIC);
    return (together - apart) / variance - OF_NOISE;
  }

  private int first(int blocks) {
    return Math.max(one.from(), one.to() + 1 - blocks);
  }

  private int last(int blocks) {
    return Math.min(next.to(), next.from() - 1 + blocks);
  }
}
