package dev.drafting.core.trace;

import java.io.Serializable;

/**
 * Where one edge ends and the next begins on a line of points: on one point that belongs to both,
 * or between two.
 *
 * @param last the last point of the edge before
 * @param first the first point of the edge after
 */
record Corner(int last, int first) implements Serializable {
  private static final long serialVersionUID = 1L;

  /** The same corner when the points are counted from elsewhere round a closed line. */
  Corner shifted(int by, int points) {
    return new Corner((last + by) % points, (first + by) % points);
  }
}
