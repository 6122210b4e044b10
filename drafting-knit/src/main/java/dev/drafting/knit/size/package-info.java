/**
 * From the measures of a body to the dimensions of a finished garment, and tables of sizes.
 *
 * <p>In come a {@link dev.drafting.knit.size.Body}, a fabric and a template that knows which
 * measure each of its dimensions follows; out come dimensions, a pattern, and findings where the
 * cloth does not give what the fit asks for. Open {@link MadeToMeasure} first, {@link BodySizes}
 * for a run of sizes.
 *
 * <p>Nothing takes or returns null; values are immutable and may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.knit.size;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
