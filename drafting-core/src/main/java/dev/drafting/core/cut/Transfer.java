package dev.drafting.core.cut;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.JtsBridge;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.OffsetPart;
import dev.drafting.core.offset.OffsetTag;
import dev.drafting.core.pattern.MarkingLine;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** What of an inner piece differs from the outer piece whose paper it shares. */
final class Transfer {
  private static final double SAME_LINE_MM = 0.05;
  private static final int SAMPLES = 8;

  private final CutPiece outer;
  private final CutPiece inner;
  private final List<MarkingLine> markings = new ArrayList<>();

  Transfer(CutPiece outer, CutPiece inner) {
    this.outer = outer;
    this.inner = inner;
    collect(startingAfterACommonPart());
  }

  /** The paper of the outer piece with the inner one marked on it. */
  CutPiece on(String paper) {
    List<CutNotch> notches = new ArrayList<>();
    for (CutNotch notch : inner.notches()) {
      if (!outer.notches().contains(notch)) {
        notches.add(
            new CutNotch(
                notch.at(), notch.inward(), notch.depth(), inner.name() + ": " + notch.label()));
      }
    }
    return outer.shared(paper, inner, markings, notches);
  }

  /** Tells whether the inner piece reaches beyond the paper. */
  boolean reachesOut() {
    Polygon paper = JtsBridge.toPolygon(outer.cutLine(), Length.mm(SAME_LINE_MM / 10));
    return markings.stream()
        .flatMap(m -> samples(m.curve()).stream())
        .anyMatch(p -> !isOn(p) && !holds(paper, p));
  }

  private static boolean holds(Polygon paper, Point point) {
    Coordinate at = new Coordinate(point.x(), point.y());
    return paper.contains(paper.getFactory().createPoint(at));
  }

  private List<OffsetPart> startingAfterACommonPart() {
    List<OffsetPart> parts = new ArrayList<>(inner.offset().parts());
    for (int i = 0; i < parts.size() && differs(parts.get(parts.size() - 1)); i++) {
      Collections.rotate(parts, 1);
    }
    return parts;
  }

  private void collect(List<OffsetPart> parts) {
    List<OffsetPart> run = new ArrayList<>();
    for (OffsetPart part : parts) {
      if (differs(part)) {
        run.add(part);
      } else {
        finish(run);
        run.clear();
      }
    }
    finish(run);
  }

  private void finish(List<OffsetPart> run) {
    if (run.isEmpty()) {
      return;
    }
    Curve curve = run.stream().map(OffsetPart::curve).reduce(Curve::then).orElseThrow();
    Set<String> names = new LinkedHashSet<>();
    run.stream()
        .filter(part -> part.tag() == OffsetTag.EDGE)
        .forEach(part -> names.add(part.sourceName()));
    markings.add(
        MarkingLine.of(String.join(" and ", names) + " of " + inner.name() + ": transfer", curve));
  }

  private boolean differs(OffsetPart part) {
    return samples(part.curve()).stream().anyMatch(p -> !isOn(p));
  }

  private boolean isOn(Point point) {
    return outer.cutLine().nearest(point).distance().toMm() <= SAME_LINE_MM;
  }

  private static List<Point> samples(Curve curve) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= SAMPLES; i++) {
      points.add(curve.pointAt(curve.length().times((double) i / SAMPLES)));
    }
    return points;
  }
}
