/**
 * How amounts are put into the sentences that a maker reads. A leaf: {@link
 * dev.drafting.knit.wording.Wording} alone.
 *
 * <p>Nulls are refused; everything may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.knit.wording;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
