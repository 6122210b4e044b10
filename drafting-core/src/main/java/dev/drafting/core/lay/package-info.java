/**
 * How the pieces and strips lie on the cloth, and how much of it to buy.
 *
 * <p>In come the cut pieces of a {@link dev.drafting.core.cut.CutPlan} and strips by their size, on
 * a {@link dev.drafting.core.lay.Cloth} with its width, fold, direction and flaws; out comes a
 * {@link dev.drafting.core.lay.LayPlan} in which nothing overlaps. Open {@link
 * dev.drafting.core.lay.Lay} first.
 *
 * <p>On a plan, x runs along the cloth from its cut end and y across it, from the fold if it is
 * folded and from the selvage if not, in millimetres. The same seed and number of rounds give the
 * same plan on every machine. Nothing takes or returns null; values are immutable and may be shared
 * between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.core.lay;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
