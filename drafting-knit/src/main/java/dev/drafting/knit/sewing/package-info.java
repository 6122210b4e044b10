/**
 * What to beware of in making up: {@link dev.drafting.knit.sewing.Cautions}.
 *
 * <p>Nulls are refused; all values may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.knit.sewing;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
