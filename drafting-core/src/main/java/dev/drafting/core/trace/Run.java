package dev.drafting.core.trace;

import dev.drafting.core.geometry.Point;

/** One edge in a least squares: its points, how much they count, and where the edge runs now. */
final class Run {
  final Samples samples;

  /** The roots of the weights of the points. */
  final double[] root;

  final Track track;

  /** How surely the ends that were seen say where the edge ends; 0 for not. */
  final double startWeight;

  final double endWeight;

  /** How far the pencil wandered, in mm. */
  final double noise;

  /** Whether the edge had better not turn away from the directions that it begins with. */
  final boolean firm;

  final Point start;
  final Point end;
  final double[] feet;
  final double[] distances;
  final double[] startWay = new double[2];
  final double[] endWay = new double[2];

  Run(
      Samples samples,
      double[] weights,
      Track track,
      double[] feet,
      double startWeight,
      double endWeight,
      double noise,
      boolean firm) {
    this.samples = samples;
    this.track = track;
    this.startWeight = startWeight;
    this.endWeight = endWeight;
    this.noise = noise;
    this.firm = firm;
    this.feet = feet;
    this.distances = new double[samples.size()];
    this.root = new double[samples.size()];
    for (int i = 0; i < root.length; i++) {
      root[i] = Math.sqrt(weights[i]);
    }
    this.start = samples.start(counting(0, 1));
    this.end = samples.end(counting(root.length - 1, -1));
  }

  /** The first point from here on that counts. */
  private int counting(int from, int step) {
    int i = from;
    while (root[i] == 0) {
      i += step;
    }
    return i;
  }

  /** Starts with a straight run from the start to the end that was seen. */
  void layAlongChord() {
    int last = track.cx.length - 1;
    for (int i = 0; i <= last; i++) {
      double share = (double) i / last;
      track.cx[i] = start.x() + share * (end.x() - start.x());
      track.cy[i] = start.y() + share * (end.y() - start.y());
    }
  }

  /** Takes the directions in which the edge starts and ends now. */
  void aim() {
    aim(0, startWay);
    aim(1, endWay);
  }

  private void aim(double share, double[] way) {
    track.look(share);
    way[0] = track.dx / track.speed;
    way[1] = track.dy / track.speed;
  }
}
