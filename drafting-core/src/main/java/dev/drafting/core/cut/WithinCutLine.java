package dev.drafting.core.cut;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Crossing;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.Optional;

/** Makes lines run from cut edge to cut edge: straight on where they are short, cut where long. */
final class WithinCutLine {
  private static final double SHORTEST_MM = 0.01;

  private final Curve cutLine;
  private final double reach;

  WithinCutLine(Curve cutLine) {
    this.cutLine = cutLine;
    Box box = cutLine.bounds();
    this.reach = Math.hypot(box.width().toMm(), box.height().toMm());
  }

  /**
   * The line between the cut edges that it meets first, on either side of its middle. An end where
   * another line goes on from it is not drawn longer.
   */
  Optional<Curve> clip(Curve line, boolean onBefore, boolean onAfter) {
    double length = line.length().toMm();
    Curve longer = extended(line);
    double middle = reach + length / 2;
    double from = onBefore ? reach : Double.NEGATIVE_INFINITY;
    double to = onAfter ? reach + length : Double.POSITIVE_INFINITY;
    for (Crossing crossing : longer.intersections(cutLine)) {
      double along = crossing.along().toMm();
      if (along <= middle) {
        from = Math.max(from, along);
      } else {
        to = Math.min(to, along);
      }
    }
    if (!(to - from >= SHORTEST_MM) || Double.isInfinite(to - from)) {
      return Optional.empty();
    }
    return Optional.of(longer.between(Length.mm(from), Length.mm(to)));
  }

  private Curve extended(Curve line) {
    Vector before = line.directionAt(Length.ZERO).times(-reach);
    Vector after = line.directionAt(line.length()).times(reach);
    Point start = line.start();
    Point end = line.end();
    return Curve.of(new Line(start.plus(before), start))
        .then(line)
        .then(Curve.of(new Line(end, end.plus(after))));
  }
}
