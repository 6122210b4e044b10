/**
 * What is laid on the cloth and cut: every piece with its allowances, and the lines that are sewn,
 * folded and topstitched, drawn where the cloth lies flat.
 *
 * <p>What comes in is a {@link dev.drafting.core.pattern.Pattern}; what goes out is a {@link
 * dev.drafting.core.cut.CutPlan} with paper pieces, a cut list and findings. Open that first. Lines
 * are in millimetres in the coordinates of the piece; a piece on the fold stays a half at x of zero
 * or more, cut straight along x = 0. Nulls are refused; all values may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.core.cut;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
