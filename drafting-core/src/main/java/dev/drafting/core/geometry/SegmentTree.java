package dev.drafting.core.geometry;

import java.util.List;

/**
 * Boxes round runs of neighbouring segments, halved again and again: what is far from a run is far
 * from all its segments. Node 1 holds all, node n is halved into 2n and 2n + 1.
 */
final class SegmentTree {
  private final int leaves;
  private final double[] boxes;

  private SegmentTree(int leaves, double[] boxes) {
    this.leaves = leaves;
    this.boxes = boxes;
  }

  static SegmentTree of(List<Segment> segments) {
    int leaves = Math.max(1, Integer.highestOneBit(2 * segments.size() - 1));
    double[] boxes = new double[8 * leaves];
    for (int i = 0; i < leaves; i++) {
      int at = 4 * (leaves + i);
      if (i < segments.size()) {
        Box box = segments.get(i).bounds();
        boxes[at] = box.minX();
        boxes[at + 1] = box.minY();
        boxes[at + 2] = box.maxX();
        boxes[at + 3] = box.maxY();
      } else {
        boxes[at] = boxes[at + 1] = Double.POSITIVE_INFINITY;
        boxes[at + 2] = boxes[at + 3] = Double.NEGATIVE_INFINITY;
      }
    }
    for (int node = leaves - 1; node > 0; node--) {
      for (int side = 0; side < 4; side++) {
        double one = boxes[8 * node + side];
        double two = boxes[8 * node + 4 + side];
        boxes[4 * node + side] = side < 2 ? Math.min(one, two) : Math.max(one, two);
      }
    }
    return new SegmentTree(leaves, boxes);
  }

  /** Takes pairs of segments whose boxes come together. */
  interface Pairs {
    void meet(int segment, int other);
  }

  /** The number of the segment at a node, or -1 if the node holds a run of several. */
  int segment(int node) {
    return node >= leaves ? node - leaves : -1;
  }

  boolean isEmpty(int node) {
    return boxes[4 * node] > boxes[4 * node + 2];
  }

  /** The square of the distance of a point from the box of a node, zero inside. */
  double squaredDistance(int node, double x, double y) {
    double dx = Math.max(0, Math.max(boxes[4 * node] - x, x - boxes[4 * node + 2]));
    double dy = Math.max(0, Math.max(boxes[4 * node + 1] - y, y - boxes[4 * node + 3]));
    return dx * dx + dy * dy;
  }

  /** All pairs of a segment here and one there whose boxes come within a margin of each other. */
  void pairs(SegmentTree other, double margin, Pairs pairs) {
    pairs(1, other, 1, margin, pairs);
  }

  private void pairs(int node, SegmentTree other, int there, double margin, Pairs pairs) {
    if (!meets(node, other, there, margin)) {
      return;
    }
    if (node >= leaves && there >= other.leaves) {
      pairs.meet(segment(node), other.segment(there));
    } else if (node >= leaves || (there < other.leaves && other.extent(there) > extent(node))) {
      pairs(node, other, 2 * there, margin, pairs);
      pairs(node, other, 2 * there + 1, margin, pairs);
    } else {
      pairs(2 * node, other, there, margin, pairs);
      pairs(2 * node + 1, other, there, margin, pairs);
    }
  }

  /** All pairs of two different segments, the earlier first, whose boxes come together. */
  void pairsWithin(double margin, Pairs pairs) {
    pairsWithin(1, margin, pairs);
  }

  private void pairsWithin(int node, double margin, Pairs pairs) {
    if (node < leaves && !isEmpty(node)) {
      pairsWithin(2 * node, margin, pairs);
      pairsWithin(2 * node + 1, margin, pairs);
      pairs(2 * node, this, 2 * node + 1, margin, pairs);
    }
  }

  private double extent(int node) {
    return (boxes[4 * node + 2] - boxes[4 * node]) + (boxes[4 * node + 3] - boxes[4 * node + 1]);
  }

  private boolean meets(int node, SegmentTree other, int there, double margin) {
    return boxes[4 * node] - margin <= other.boxes[4 * there + 2]
        && other.boxes[4 * there] - margin <= boxes[4 * node + 2]
        && boxes[4 * node + 1] - margin <= other.boxes[4 * there + 3]
        && other.boxes[4 * there + 1] - margin <= boxes[4 * node + 3];
  }
}
