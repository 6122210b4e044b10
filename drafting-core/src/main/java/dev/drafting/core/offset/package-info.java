/**
 * Lines parallel to an outline, each edge at a distance of its own, and every part of the result
 * knows which edge it came from.
 *
 * <p>In goes a closed outline of named edges ({@link dev.drafting.core.offset.OffsetEdge}),
 * counter-clockwise, each with a signed distance: + is outward (allowances, hems), - is inward
 * (join lines of bands, rows of topstitching), 0 leaves the edge where it is. Out comes an {@link
 * dev.drafting.core.offset.OffsetResult}: one closed outline whose parts are tagged EDGE, JOIN or
 * STEP, and a list of what had to be trimmed. Curves stay curves: a line gives a line, an arc an
 * arc, a cubic as few cubics as the tolerance allows. Open {@link dev.drafting.core.offset.Offset}
 * first.
 *
 * <p><b>What a point of the result means.</b> Every point of an EDGE part lies square off its own
 * edge at exactly the edge's own distance, or at that distance from the straight continuation of
 * the edge where two parallels are extended until they meet. It may be nearer to other edges: where
 * distances differ there is no single "distance to the outline". It may be nearer to another
 * stretch of its own edge only beside an end that is curved more tightly than its distance, which
 * is reported. Where parallels overrun each other the outline keeps to the boundary of what is
 * covered once all strips between edges and parallels are added (outward) or taken away (inward),
 * and each such place is reported as a {@link dev.drafting.core.offset.Trimming}.
 *
 * <p>Millimetres inside, {@code Length} at the door. Nulls are refused; all values are immutable
 * and may be shared between threads. This package knows no findings: it reports, others judge.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.core.offset;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
