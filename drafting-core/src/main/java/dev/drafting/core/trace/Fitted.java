package dev.drafting.core.trace;

import dev.drafting.core.geometry.Segment;
import java.util.List;

/** A line or a chain of cubics laid through points. */
interface Fitted {
  /** How far the point lies off, in mm, left of the direction of travel positive. */
  double distance(int point);

  /** The share of the way at which the point lies nearest. */
  double share(int point);

  List<Segment> segments();
}
