package dev.drafting.core.geometry;

import java.io.Serializable;
import java.util.List;

/** What is stored in place of a curve; reading it goes through the checks. */
@SuppressWarnings("serial") // always a collection of the JDK
record KeptCurve(List<Segment> segments) implements Serializable {
  private static final long serialVersionUID = 1L;

  private Object readResolve() {
    return Curve.of(segments);
  }
}
