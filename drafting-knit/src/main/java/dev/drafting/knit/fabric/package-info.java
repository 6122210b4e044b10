/**
 * How a knit fabric behaves: how far it gives, how well it comes back, how it washes.
 *
 * <p>In come readings of the hand gauge ({@link dev.drafting.knit.fabric.GaugeReading}) or plain
 * shares; out comes a {@link dev.drafting.knit.fabric.Fabric}, which says what the cloth gives in
 * use and what will go wrong with it. Open {@code Fabric} first.
 *
 * <p>Shares are numbers, 0.3 for 30 %. "Across" is the way of the rows of stitches, where a knit
 * gives most and which lies round the body; "along" is the way of the wales, the length of the
 * cloth. Nulls are refused; all values may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.knit.fabric;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
