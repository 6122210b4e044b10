package dev.drafting.core.assembly;

import dev.drafting.core.finding.Place;
import dev.drafting.core.pattern.Seam;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What has to be nothing once pieces are trued: by how much the sides of a seam differ, in mm, or
 * by how much an edge bends where it crosses a seam or a fold.
 *
 * @param place what it is about
 * @param seam the seam, or null for a crossing
 * @param offset what it is as the pieces are drawn
 * @param terms what it grows with
 */
record Demand(Place place, @Nullable Seam seam, double offset, List<Term> terms) {
  static final int LENGTH = 0;
  static final int LEAVING = 1;
  static final int ARRIVING = 2;

  /** An angle that is off by a radian weighs as much as a length that is off by so many mm. */
  static final double MM_PER_RADIAN = 100;

  /** Below this nobody sees or sews a difference, in mm. */
  static final double MET_MM = 1e-9;

  /** How what is seen of an edge counts. */
  record Term(int edge, int what, double factor) {}

  /** What it is now, from what was seen of all edges at first and is seen now. */
  double miss(double[][] drawn, double[][] now) {
    double miss = offset;
    for (Term term : terms) {
      double change = now[term.edge][term.what] - drawn[term.edge][term.what];
      double angle = term.what == LENGTH ? change : Math.IEEEremainder(change, 2 * Math.PI);
      miss += term.factor * angle;
    }
    return miss;
  }
}
