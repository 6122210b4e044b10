/**
 * The making-up sheet: what to buy, cut, sew and look out for, as one page that needs no network,
 * for browser, phone, screen reader and printer. Open {@link
 * dev.drafting.export.sheet.MakingUpSheet}.
 *
 * <p>In comes a draft; out goes HTML with its style and pictures inside, or PDF for a printer. The
 * same draft gives the same bytes. Nulls are refused; all values may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.export.sheet;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
