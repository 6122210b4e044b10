package dev.drafting.core.geometry;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;

/** Lengths along segments in bare millimetres, for the insides of this package. */
final class SegmentLength {
  /** A length that is off the end by no more than this share of the whole is taken as the end. */
  private static final double SLACK = 1e-9;

  private static final double SLACK_MM = 1e-6;

  private SegmentLength() {}

  static double of(Segment segment) {
    if (segment instanceof Cubic cubic) {
      return new Hodograph(cubic).length(0, 1);
    }
    if (segment instanceof Arc arc) {
      return arc.arcLength();
    }
    return segment.start().gap(segment.end());
  }

  static double to(Segment segment, double t) {
    return segment instanceof Cubic cubic ? new Hodograph(cubic).length(0, t) : of(segment) * t;
  }

  static double parameter(Segment segment, double along, double length) {
    if (along <= 0) {
      return 0;
    }
    if (along >= length) {
      return 1;
    }
    return segment instanceof Cubic cubic
        ? new Hodograph(cubic).parameterAt(along, length)
        : along / length;
  }

  /**
   * Brings a length that is a hair off either end back to the end, and refuses more than a hair.
   */
  static double checked(Length along, double length) {
    double mm = along.toMm();
    double slack = Math.max(SLACK_MM, SLACK * length);
    if (mm < -slack || mm > length + slack) {
      throw DraftingException.of("a length is off the curve")
          .value(along)
          .accepted("0 to " + Length.mm(length));
    }
    return Math.max(0, Math.min(length, mm));
  }

  static void checkedRange(double from, double to) {
    if (!(from >= 0 && from < to && to <= 1)) {
      throw DraftingException.of("the parameters of a part are out of order")
          .value(from + " to " + to)
          .accepted("0 to 1, the lesser first");
    }
  }
}
