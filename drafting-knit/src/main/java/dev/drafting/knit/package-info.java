/**
 * A pattern made up in knit fabrics for a wearer.
 *
 * <p>In goes a {@link dev.drafting.core.pattern.Pattern}, a {@link dev.drafting.knit.fabric.Fabric}
 * for each of its cloths and what is known of the {@link dev.drafting.knit.Wearer}; out come
 * strips, findings, cut list, measures, goods to buy and order of work. Open {@link
 * dev.drafting.knit.Draft} first.
 *
 * <p>Nulls are refused; all values may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.knit;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
