package dev.drafting.core.trace;

/** A fit that was not found but given: where it runs, and how its points lie. */
record GivenFit(Track track, double[] shares, double[] distances) implements Fitted {
  @Override
  public long looks() {
    return 0;
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
