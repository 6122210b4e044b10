/**
 * Lines parallel to an outline, each edge at a distance of its own, and every part of the result
 * knows which edge it came from.
 *
 * <p>In goes a closed outline of named edges ({@link dev.drafting.core.offset.OffsetEdge}),
 * counter-clockwise, or an open chain of edges, each with a signed distance: + is outward
 * (allowances, hems), - is inward (join lines of bands, rows of topstitching), 0 leaves the edge
 * where it is. Out comes an {@link dev.drafting.core.offset.OffsetResult}: one closed outline, or
 * one open line, whose parts are tagged EDGE, JOIN or STEP, and a list of what had to be trimmed.
 * Curves stay curves: a line gives a line, an arc an arc, a cubic as few cubics as the tolerance
 * allows. Open {@link dev.drafting.core.offset.Offset} first.
 *
 * <p><b>What a point of the result means.</b> The strip of an edge is what a line square to it
 * sweeps, from the edge to its parallel; at its ends it stops square, and at corners where strips
 * leave a gap the corner's treatment fills it. Each strip counts +1 where it lies outward and -1
 * where it lies inward, the garment counts 1, and the result bounds what counts 1 or more; where
 * that falls apart it is the largest part, without holes. (Counting winding numbers of raw
 * parallels: Chen and McMains, "Polygon Offsetting by Computing Winding Numbers", 2005.) So:
 *
 * <ul>
 *   <li>Every point of an EDGE part lies at its own edge's distance from that edge, square off it,
 *       or at that distance from the straight continuation of the edge where two parallels are
 *       extended until they meet. It is never nearer to its own edge.
 *   <li>It may be nearer to other edges: where distances differ there is no single "distance to the
 *       outline".
 *   <li>What bounds the result without being at its distance is no EDGE part: a STEP along the end
 *       of a strip, a JOIN at a corner or where a parallel comes too near to its own edge.
 * </ul>
 *
 * <p>Each place where a parallel is cut short is reported as a {@link
 * dev.drafting.core.offset.Trimming}. Beside an open chain there is no garment to count: a stretch
 * is kept where it bounds the strip of its own edge and no other strip covers it, and the result is
 * the longest way along such stretches.
 *
 * <p>Millimetres inside, {@code Length} at the door. Nulls are refused; all values are immutable
 * and may be shared between threads. This package knows no findings: it reports, others judge.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.core.offset;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
