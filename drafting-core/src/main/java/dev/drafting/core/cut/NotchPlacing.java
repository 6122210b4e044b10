package dev.drafting.core.cut;

import dev.drafting.core.geometry.Nearest;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.OffsetResult;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Notch;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Profile;
import java.util.List;

/**
 * Puts notches from the finished edge to the cut line, square to the edge. A slit is 3 mm deep at
 * most and never more than half the allowance: common practice, no source.
 */
final class NotchPlacing {
  private static final Length DEEPEST = Length.mm(3);
  private static final double ON_THE_LINE_MM = 0.05;

  private NotchPlacing() {}

  static List<CutNotch> of(Piece piece, OffsetResult cut) {
    return piece.notches().stream().map(n -> place(piece.edge(n.edge()), n, cut)).toList();
  }

  private static CutNotch place(Edge edge, Notch notch, OffsetResult cut) {
    Length along = notch.along().min(edge.length());
    Vector inward = edge.curve().directionAt(along).left();
    Point finished = edge.curve().pointAt(along);
    Point moved = finished.plus(inward.times(-CutOutline.cutDistance(edge).toMm()));
    Nearest nearest = cut.outline().nearest(moved);
    boolean there = nearest.distance().toMm() <= ON_THE_LINE_MM;
    return new CutNotch(there ? moved : nearest.point(), inward, depth(edge), notch.label());
  }

  private static Length depth(Edge edge) {
    Profile profile = edge.finish().profile();
    Length beyond = profile.cut().orElse(Length.ZERO).minus(profile.join().orElse(Length.ZERO));
    return DEEPEST.min(beyond.times(0.5)).max(Length.ZERO);
  }
}
