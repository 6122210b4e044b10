/**
 * Turned-up hems: {@link dev.drafting.knit.hem.TurnedHem}, turned once or twice, and {@link
 * dev.drafting.knit.hem.FlareLimit}, how deep a curved edge can be turned up. Open {@code
 * TurnedHem} first.
 *
 * <p>Distances are signed, outward from the finished edge positive. Nulls are refused; all values
 * may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.knit.hem;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
