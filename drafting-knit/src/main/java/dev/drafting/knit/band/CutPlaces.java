package dev.drafting.knit.band;

import dev.drafting.core.assembly.OpeningPart;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import java.util.List;

/**
 * Where places along the seam line of the finished garment lie on its cut pieces, which are larger
 * across and along by what their cloth will lose in the wash.
 */
final class CutPlaces {
  private static final double AT_STATION = 1e-6;

  private final SeamLine finished;
  private final SeamLine cut;
  private final List<OpeningPart> parts;
  private final List<OpeningPart> cutParts;
  private final double start;
  private final double cutStart;

  /**
   * @param finished the seam line of the finished garment
   * @param cut the same seam line on the cut pieces
   * @param start where the strip's join lies along the finished seam line, in mm
   */
  CutPlaces(SeamLine finished, SeamLine cut, double start) {
    this.finished = finished;
    this.cut = cut;
    this.parts = finished.parts();
    this.cutParts = cut.parts();
    this.start = start;
    this.cutStart = place(start);
  }

  /** How far from the join a place lies on the cut pieces. */
  Length of(Length fromJoin) {
    double at = start + fromJoin.toMm();
    double place = place(at > finished.length() ? at - finished.length() : at) - cutStart;
    return Length.mm(place < -AT_STATION ? place + cut.length() : Math.max(0, place));
  }

  private double place(double at) {
    List<Double> stations = finished.stations();
    int part = 0;
    while (part + 1 < parts.size() && stations.get(part + 1) <= at + AT_STATION) {
      part++;
    }
    if (Math.abs(at - stations.get(part)) <= AT_STATION) {
      return cut.stations().get(part);
    }
    Curve from = parts.get(part).curve();
    Curve to = cutParts.get(part).curve();
    double along = finished.edgeAt(at) - parts.get(part).from().toMm();
    Point there = larger(from.pointAt(within(along, from)), from.bounds(), to.bounds());
    double cutAlong = cutParts.get(part).from().plus(to.nearest(there).along()).toMm();
    return cut.seamAt(part, cutAlong);
  }

  private static Length within(double along, Curve curve) {
    return Length.mm(Math.max(0, along)).min(curve.length());
  }

  /** What is stretched along the axes keeps its place in its box. */
  private static Point larger(Point point, Box from, Box to) {
    return new Point(
        scaled(point.x(), from.minX(), from.maxX(), to.minX(), to.maxX()),
        scaled(point.y(), from.minY(), from.maxY(), to.minY(), to.maxY()));
  }

  private static double scaled(double x, double low, double high, double newLow, double newHigh) {
    return high - low <= 0 ? newLow : newLow + (x - low) * (newHigh - newLow) / (high - low);
  }
}
