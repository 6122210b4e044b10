/**
 * Bands and bindings of knits: how they finish an edge, how long and wide their strips are cut, and
 * whether they will lie flat.
 *
 * <p>In come a finish ({@link dev.drafting.knit.band.FoldedBand}, {@link
 * dev.drafting.knit.band.WrappedBinding}), the {@link dev.drafting.core.assembly.Opening} that it
 * goes round, the strip's {@link dev.drafting.knit.fabric.Fabric} and a {@link
 * dev.drafting.knit.band.StripRule}; out comes a {@link dev.drafting.knit.band.Strip} with its
 * sizes, marks, outcome and findings. With a tape measure alone open {@link
 * dev.drafting.knit.band.FlatWindow}; for the way over the head {@link
 * dev.drafting.knit.band.BodyPassage}. Otherwise open {@code Strip} first.
 *
 * <p>Distances are signed, outward from the finished edge positive. Shares are numbers, 0.1 for 10
 * %. Nulls are refused; all values may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.knit.band;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
