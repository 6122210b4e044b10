package dev.drafting.core.offset;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * What happens between two neighbouring runs: where the first ends, what leads across, where the
 * second begins.
 *
 * @param endA place on the first run
 * @param beyondA the first run's continuation, at most one strand
 * @param across joins and steps
 * @param beforeB what precedes the second run, at most one strand
 * @param startB place on the second run
 */
record CornerPlan(
    double endA, List<Strand> beyondA, List<Strand> across, List<Strand> beforeB, double startB) {

  /** The same plan for the same two runs travelled the other way. */
  CornerPlan reversed(int strandsOfA, int strandsOfB) {
    return new CornerPlan(
        strandsOfB - startB, turned(beforeB), turned(across), turned(beyondA), strandsOfA - endA);
  }

  private static List<Strand> turned(List<Strand> strands) {
    List<Strand> turned = new ArrayList<>();
    for (Strand strand : strands) {
      turned.add(ParallelRun.reversed(strand));
    }
    Collections.reverse(turned);
    return turned;
  }
}
