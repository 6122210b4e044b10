package dev.drafting.core.offset;

import dev.drafting.core.Stable;

/**
 * Where a part of an offset outline came from.
 *
 * <pre>{@code
 * OffsetResult wider = Offset.of(List.of(OffsetEdge.of("hem", Curve.line(new Point(0, 0), new Point(200, 0)), Length.mm(20)), OffsetEdge.of("side", Curve.line(new Point(200, 0), new Point(0, 150)), Length.mm(7)), OffsetEdge.of("front", Curve.line(new Point(0, 150), new Point(0, 0)), Length.ZERO))).result();
 * wider.parts("hem").get(0).tag();  // => EDGE
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public enum OffsetTag {
  /** Parallel to an edge, with the straight continuation that a mitre needs. */
  EDGE,
  /**
   * Added at a corner between the parallels of two edges: a cut, an arc, a fold-back; and what is
   * left of a parallel where it has no room, so that it closes the outline without being at its
   * distance.
   */
  JOIN,
  /** Leads straight across where the allowance changes its width. */
  STEP
}
