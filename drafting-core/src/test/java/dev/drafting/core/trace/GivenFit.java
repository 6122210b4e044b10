package dev.drafting.core.trace;

/** A fit that was not found but given: where it runs, and how its points lie. */
final class GivenFit implements Fitted {
  private final Track track;
  private final double[] shares;
  private final double[] distances;

  GivenFit(Track track, double[] shares, double[] distances) {
    this.track = track;
    this.shares = shares;
    this.distances = distances;
  }

  @Override
  public long looks() {
    return 0;
  }

  @Override
  public Track track() {
    return track;
  }

  @Override
  public double distance(int point) {
    return distances[point];
  }

  @Override
  public double share(int point) {
    return shares[point];
  }
}
