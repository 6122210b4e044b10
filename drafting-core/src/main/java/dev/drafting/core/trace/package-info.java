/**
 * From what the hand drew to what the garment is: truing a tracing.
 *
 * <p>In comes a {@link dev.drafting.core.trace.Tracing}: points traced round a piece of a garment,
 * edge by edge, half of it on the fold or the whole of it; or an {@link
 * dev.drafting.core.trace.UnnamedTracing}, drawn past the corners, which are found; several of them
 * make a {@link dev.drafting.core.trace.RepeatedTracing}, what was seen askew is put right by a
 * {@link dev.drafting.core.trace.DrawnRectangle}, and a {@link dev.drafting.core.trace.TapedHalf}
 * needs a tape measure only. Out comes a {@link dev.drafting.core.trace.TruedPiece}: a {@link
 * dev.drafting.core.pattern.Piece} whose edges are straight where the points say straight and
 * smooth where they do not, square at the fold, joined at exact corners, and a {@link
 * dev.drafting.core.trace.TruingReport} of what was seen, refused and averaged. Open {@link
 * dev.drafting.core.trace.Truing} first.
 *
 * <p>Points are in millimetres, y up. How far the pencil wandered is judged from the points
 * themselves unless the maker says it. Nulls are refused; all values may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.core.trace;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
