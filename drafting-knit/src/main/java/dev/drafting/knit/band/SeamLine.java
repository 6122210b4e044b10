package dev.drafting.knit.band;

import dev.drafting.core.assembly.Opening;
import dev.drafting.core.assembly.OpeningPart;
import dev.drafting.core.assembly.OpeningStation;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The seam line of a strip beside the finished edge of its opening, in millimetres from the start
 * of the loop: which place of the one lies opposite which place of the other.
 */
final class SeamLine {
  private static final int STEPS = 32;

  /** Both ends of every step, and the corners before and after them. */
  private static final int PLACES = STEPS + 3;

  private final List<OpeningPart> parts;
  private final double inward;
  private final List<Double> onSeam = new ArrayList<>();
  private final List<Double> onEdge = new ArrayList<>();
  private final List<Double> stations = new ArrayList<>();
  private final double[] seam;
  private final double[] edge;

  SeamLine(Opening opening, Length joinDistance) {
    this.inward = joinDistance.negated().toMm();
    this.parts = opening.parts();
    List<OpeningStation> corners = opening.stations();
    List<Length> lengths = opening.lengthsAt(joinDistance);
    double start = 0;
    for (int i = 0; i < parts.size(); i++) {
      stations.add(start);
      double before = mitre(corners.get(i));
      double after = mitre(corners.get((i + 1) % corners.size()));
      add(parts.get(i), start, lengths.get(i).toMm(), before, after);
      start += lengths.get(i).toMm();
    }
    stations.add(start);
    this.seam = onSeam.stream().mapToDouble(Double::doubleValue).toArray();
    this.edge = onEdge.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** What the seam gains beside a corner of turn q: w tan(q / 2). */
  private double mitre(OpeningStation corner) {
    double turn = corner.angle().toRadians() - Math.PI;
    return inward * Math.tan(Math.min(turn, Math.PI * 0.9) / 2);
  }

  private void add(OpeningPart part, double start, double seamLength, double before, double after) {
    Curve curve = part.curve();
    double whole = curve.length().toMm();
    double rest = seamLength - parallel(curve, whole) - before - after;
    place(start, part.from().toMm());
    for (int i = 0; i <= STEPS; i++) {
      double along = whole * i / STEPS;
      double own = parallel(curve, along) + rest * i / STEPS;
      place(Math.min(start + before + own, start + seamLength), part.from().toMm() + along);
    }
    place(start + seamLength, part.from().toMm() + whole);
  }

  /** The length of the parallel over the first millimetres of a curve. */
  private double parallel(Curve curve, double along) {
    if (along <= 0) {
      return 0;
    }
    Length to = Length.mm(along).min(curve.length());
    return along - inward * curve.between(Length.ZERO, to).turning().toRadians();
  }

  private void place(double seamPlace, double edgePlace) {
    double last = onSeam.isEmpty() ? 0 : onSeam.get(onSeam.size() - 1);
    onSeam.add(Math.max(last, seamPlace));
    onEdge.add(edgePlace);
  }

  /** The parts of the finished edge, in the order of the loop. */
  List<OpeningPart> parts() {
    return parts;
  }

  /** Where the stations lie along the seam, and the length of the whole seam last. */
  List<Double> stations() {
    return stations;
  }

  double length() {
    return seam[seam.length - 1];
  }

  double edgeLength() {
    return edge[edge.length - 1];
  }

  /** How far along the seam the place opposite one of an edge lies, within one part. */
  double seamAt(int part, double edgePlace) {
    int first = part * PLACES;
    int next = first + 1;
    while (next < first + PLACES - 1 && edge[next] < edgePlace) {
      next++;
    }
    double width = edge[next] - edge[next - 1];
    double share = width <= 0 ? 0 : Math.max(0, Math.min(1, (edgePlace - edge[next - 1]) / width));
    return seam[next - 1] + share * (seam[next] - seam[next - 1]);
  }

  /** How far along the finished edge the place opposite lies. */
  double edgeAt(double seamPlace) {
    int found = Arrays.binarySearch(seam, seamPlace);
    if (found >= 0) {
      return edge[found];
    }
    int next = Math.min(Math.max(-found - 1, 1), seam.length - 1);
    double width = seam[next] - seam[next - 1];
    double share = width <= 0 ? 0 : (seamPlace - seam[next - 1]) / width;
    return edge[next - 1] + share * (edge[next] - edge[next - 1]);
  }
}
