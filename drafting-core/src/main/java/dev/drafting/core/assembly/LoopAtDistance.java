package dev.drafting.core.assembly;

import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.Offset;
import dev.drafting.core.offset.OffsetEdge;
import dev.drafting.core.offset.OffsetPart;
import dev.drafting.core.offset.OffsetResult;
import dev.drafting.core.offset.OffsetTag;
import dev.drafting.core.pattern.Piece;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * An opening's loop at a distance from its finished edge: in each piece the edges of the opening
 * are moved by the distance and all other edges stay where they are.
 */
final class LoopAtDistance {
  private static final double SAME_DIRECTION = 1e-6;

  private final List<OpeningPart> parts;
  private final List<Piece> pieces;
  private final Length distance;

  LoopAtDistance(List<OpeningPart> parts, List<Piece> pieces, Length distance) {
    this.parts = parts;
    this.pieces = pieces;
    this.distance = distance;
  }

  /** The lengths of the parts, in the order of the loop. */
  List<Length> lengths() {
    Map<String, OffsetResult> offsets = new HashMap<>();
    pieces.forEach(piece -> offsets.put(piece.name(), offset(piece)));
    return parts.stream().map(part -> length(part, offsets)).toList();
  }

  private static Length length(OpeningPart part, Map<String, OffsetResult> offsets) {
    OffsetResult offset = Objects.requireNonNull(offsets.get(part.edge().piece()));
    return length(offset.parts(), part.edge().edge());
  }

  private OffsetResult offset(Piece piece) {
    Set<String> moved =
        parts.stream()
            .filter(p -> p.edge().piece().equals(piece.name()))
            .map(p -> p.edge().edge())
            .collect(Collectors.toSet());
    List<OffsetEdge> edges =
        piece.edges().stream()
            .map(
                e ->
                    OffsetEdge.of(
                        e.name(), e.curve(), moved.contains(e.name()) ? distance : Length.ZERO))
            .toList();
    return Offset.of(edges).result();
  }

  /** The parallels of one edge with the straight continuations to their mitres. */
  private static Length length(List<OffsetPart> parts, String edge) {
    Length sum = Length.ZERO;
    int count = parts.size();
    for (int i = 0; i < count; i++) {
      OffsetPart part = parts.get(i);
      if (part.tag() != OffsetTag.EDGE || !part.sourceName().equals(edge)) {
        continue;
      }
      List<Segment> own = part.curve().segments();
      sum =
          sum.plus(part.curve().length())
              .plus(continued(parts.get((i + 1) % count), own.get(own.size() - 1)))
              .plus(continuing(parts.get((i + count - 1) % count), own.get(0)));
    }
    return sum;
  }

  private static Length continued(OffsetPart join, Segment last) {
    Length sum = Length.ZERO;
    if (join.tag() == OffsetTag.JOIN) {
      Vector way = last.directionAt(1);
      for (Segment segment : join.curve().segments()) {
        if (!isAlong(way, segment)) {
          break;
        }
        sum = sum.plus(segment.length());
      }
    }
    return sum;
  }

  private static Length continuing(OffsetPart join, Segment first) {
    Length sum = Length.ZERO;
    if (join.tag() == OffsetTag.JOIN) {
      Vector way = first.directionAt(0);
      List<Segment> segments = join.curve().segments();
      for (int i = segments.size() - 1; i >= 0 && isAlong(way, segments.get(i)); i--) {
        sum = sum.plus(segments.get(i).length());
      }
    }
    return sum;
  }

  private static boolean isAlong(Vector way, Segment segment) {
    return Math.abs(way.cross(segment.directionAt(0))) < SAME_DIRECTION
        && way.dot(segment.directionAt(0)) > 0;
  }
}
