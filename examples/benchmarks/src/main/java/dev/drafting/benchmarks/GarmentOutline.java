package dev.drafting.benchmarks;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.Offset;
import dev.drafting.core.offset.OffsetEdge;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Outlines of garment pieces with curved edges, counter-clockwise, in millimetres. */
public enum GarmentOutline {
  /** Half a vest front: hem, side, armhole, shoulder, neck, fold. */
  VEST_FRONT,
  /** A whole sleeve: wrist, two seams, a cap of four curves. */
  SLEEVE,
  /** One leg with both crotch curves and a curved inside leg. */
  LEGGING;

  /** What is added all round where the same distance is wanted. */
  static final Length ALLOWANCE = Length.mm(10);

  /** The edges, each of one segment. */
  List<Segment> segments() {
    return switch (this) {
      case VEST_FRONT ->
          List.of(
              line(0, 0, 240, 0),
              cubic(240, 0, 236, 130, 228, 220, 235, 345),
              cubic(235, 345, 190, 355, 165, 410, 178, 560),
              line(178, 560, 85, 590),
              cubic(85, 590, 80, 520, 45, 480, 0, 480),
              line(0, 480, 0, 0));
      case SLEEVE ->
          List.of(
              line(-105, 0, 105, 0),
              cubic(105, 0, 130, 140, 165, 300, 180, 430),
              cubic(180, 430, 150, 440, 125, 475, 110, 510),
              cubic(110, 510, 90, 555, 50, 575, 0, 575),
              cubic(0, 575, -50, 575, -85, 560, -108, 510),
              cubic(-108, 510, -125, 470, -150, 435, -180, 430),
              cubic(-180, 430, -165, 300, -130, 140, -105, 0));
      case LEGGING ->
          List.of(
              line(-110, 0, 110, 0),
              cubic(110, 0, 120, 200, 150, 420, 215, 690),
              cubic(215, 690, 165, 700, 140, 745, 130, 930),
              cubic(130, 930, 40, 945, -60, 960, -140, 970),
              cubic(-140, 970, -155, 780, -190, 715, -255, 690),
              cubic(-255, 690, -160, 420, -125, 200, -110, 0));
    };
  }

  /** The same allowance at every edge. */
  Offset even() {
    return offset(Collections.nCopies(segments().size(), ALLOWANCE));
  }

  /** A hem, seams, and edges with none or with something taken off. */
  Offset uneven() {
    List<Length> distances = new ArrayList<>();
    double[] in = {30, 10, -4, 7, 0, 12, 8};
    for (int i = 0; i < segments().size(); i++) {
      distances.add(Length.mm(in[i]));
    }
    return offset(distances);
  }

  private Offset offset(List<Length> distances) {
    List<OffsetEdge> edges = new ArrayList<>();
    for (int i = 0; i < distances.size(); i++) {
      Curve curve = Curve.of(segments().get(i));
      edges.add(OffsetEdge.of("edge " + (i + 1), curve, distances.get(i)));
    }
    return Offset.of(edges);
  }

  private static Line line(double... xy) {
    return new Line(new Point(xy[0], xy[1]), new Point(xy[2], xy[3]));
  }

  private static Cubic cubic(double... xy) {
    return new Cubic(
        new Point(xy[0], xy[1]),
        new Point(xy[2], xy[3]),
        new Point(xy[4], xy[5]),
        new Point(xy[6], xy[7]));
  }
}
