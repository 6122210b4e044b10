package dev.drafting.core.offset;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.List;

/**
 * The parallel of one segment at one distance, on its own, without regard to neighbours: a line for
 * a line, an arc for an arc, fitted cubics for a cubic.
 */
final class Parallels {
  private Parallels() {}

  static Vector outward(Vector direction) {
    return new Vector(direction.dy(), -direction.dx());
  }

  /**
   * The strands parallel to a segment, end to end.
   *
   * @param segment what to run along
   * @param edge the edge it belongs to
   * @param index its place in the edge
   * @param distance millimetres, + to the right of the direction of travel
   * @param tolerance millimetres
   * @return at least one strand
   */
  static List<Strand> of(Segment segment, int edge, int index, double distance, double tolerance) {
    Origin whole = new Origin(segment, index, 0, 1);
    if (distance == 0) {
      return List.of(Strand.parallel(segment, edge, whole));
    }
    if (segment instanceof Line line) {
      return List.of(Strand.parallel(shifted(line, distance), edge, whole));
    }
    if (segment instanceof Arc arc) {
      return List.of(concentric(arc, edge, whole, distance));
    }
    return new CubicParallel((Cubic) segment, edge, index, distance, tolerance).strands();
  }

  private static Line shifted(Line line, double distance) {
    Vector across = outward(line.directionAt(0)).times(distance);
    return new Line(line.start().plus(across), line.end().plus(across));
  }

  private static Strand concentric(Arc arc, int edge, Origin whole, double distance) {
    boolean left = arc.sweep().toRadians() > 0;
    double radius = arc.radius().toMm() + (left ? distance : -distance);
    if (radius > 0) {
      Arc parallel = Arc.of(arc.centre(), Length.mm(radius), arc.from(), arc.sweep());
      return Strand.parallel(parallel, edge, whole);
    }
    Segment back;
    if (radius == 0) {
      Point centre = arc.centre();
      back = new Line(centre, centre);
    } else {
      Angle opposite = arc.from().plus(Angle.degrees(180));
      back = Arc.of(arc.centre(), Length.mm(-radius), opposite, arc.sweep());
    }
    return new Strand(back, OffsetTag.EDGE, edge, whole, true);
  }
}
