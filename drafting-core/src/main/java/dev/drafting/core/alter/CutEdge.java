package dev.drafting.core.alter;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.Offset;
import dev.drafting.core.offset.OffsetEdge;
import dev.drafting.core.offset.OffsetPart;
import dev.drafting.core.offset.OffsetTag;
import dev.drafting.core.pattern.Edge;
import java.util.ArrayList;
import java.util.List;

/** The raw edge of a half-sewn garment, from seam to seam, beside the finished edge. */
final class CutEdge {
  private final SeamSide side;
  private final Curve cut;

  private CutEdge(SeamSide side, Curve cut) {
    this.side = side;
    this.cut = cut;
  }

  static CutEdge of(SeamSide side) {
    Length distance = side.edge().finish().profile().cut().orElse(Length.ZERO);
    if (distance.isZero()) {
      return new CutEdge(side, side.curve());
    }
    List<OffsetEdge> edges = new ArrayList<>();
    for (Edge edge : side.piece().edges()) {
      boolean here = edge.equals(side.edge());
      edges.add(OffsetEdge.of(edge.name(), edge.curve(), here ? distance : Length.ZERO));
    }
    List<Segment> segments = new ArrayList<>();
    for (OffsetPart part : Offset.of(edges).result().parts()) {
      if (part.tag() == OffsetTag.EDGE && part.source() == side.index()) {
        segments.addAll(part.curve().segments());
      }
    }
    if (segments.isEmpty()) {
      throw DraftingException.of("nothing is left of the edge where it is cut")
          .at(side.ref().toString())
          .value(distance)
          .accepted("an edge with room for its finish");
    }
    return new CutEdge(side, Curve.of(segments));
  }

  /** The place on the finished edge beside a place on the raw one. */
  Length finished(EdgePlace place) {
    Length along = place.along(side, cut.length());
    if (along.isZero()) {
      return Length.ZERO;
    }
    if (along.equals(cut.length())) {
      return side.curve().length();
    }
    return side.curve().nearest(cut.pointAt(along)).along();
  }
}
