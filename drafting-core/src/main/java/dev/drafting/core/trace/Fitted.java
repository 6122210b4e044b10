package dev.drafting.core.trace;

/** A line or a chain of cubics laid through points. */
interface Fitted {
  /** How far the point lies off, in mm, left of the direction of travel positive. */
  double distance(int point);

  /** The share of the way at which the point lies nearest. */
  double share(int point);

  /** How often points were looked at until it lay there. */
  long looks();

  /** Where it runs. */
  Track track();

  /** Starts a fit of the same cubics, or of one more, where this one runs. */
  default void copyTo(Track other, double[] feet) {
    Track own = track();
    double[] x = own.cx;
    double[] y = own.cy;
    if (other.knots.controls() > own.knots.controls()) {
      int split = 0;
      while (other.knots.to(split) == own.knots.to(split)) {
        split++;
      }
      x = own.knots.splitControls(split, x);
      y = own.knots.splitControls(split, y);
    }
    System.arraycopy(x, 0, other.cx, 0, x.length);
    System.arraycopy(y, 0, other.cy, 0, y.length);
    other.changed();
    for (int i = 0; i < feet.length; i++) {
      feet[i] = share(i);
    }
  }
}
