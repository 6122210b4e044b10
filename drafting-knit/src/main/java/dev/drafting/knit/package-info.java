/**
 * A garment's {@link dev.drafting.knit.Wearer} and its measures.
 *
 * <p>Nulls are refused; all values may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.knit;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
