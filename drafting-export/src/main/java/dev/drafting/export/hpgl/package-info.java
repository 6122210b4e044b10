/**
 * Drawings as HPGL/2 files for roll plotters: true size, pen down along every line. Open {@link
 * dev.drafting.export.hpgl.HpglFormat}.
 *
 * <p>Nulls are refused; all values may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.export.hpgl;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
