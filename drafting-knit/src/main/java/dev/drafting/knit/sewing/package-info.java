/**
 * What to do next: the {@link dev.drafting.knit.sewing.OrderOfWork} of a garment step by step, and
 * the {@link dev.drafting.knit.sewing.Cautions} that go with it. Open {@code OrderOfWork} first.
 *
 * <p>Nulls are refused; all values may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.knit.sewing;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
