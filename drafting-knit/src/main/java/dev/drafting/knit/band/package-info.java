/**
 * Bands and bindings of knits: how they finish an edge, how long and wide their strips are cut, and
 * whether they will lie flat.
 *
 * <p>{@link dev.drafting.knit.band.FoldedBand} and {@link dev.drafting.knit.band.WrappedBinding}
 * are the finishes, {@link dev.drafting.knit.band.StripRule} says how long a strip is made, and
 * {@link dev.drafting.knit.band.FlatWindow} which lengths lie flat. Open {@code FoldedBand} first.
 *
 * <p>Distances are signed, outward from the finished edge positive. Shares are numbers, 0.1 for 10
 * %. Nulls are refused; all values may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.knit.band;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
