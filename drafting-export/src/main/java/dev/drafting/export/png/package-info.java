/**
 * Drawings as pictures of pixels, for screens and letters: made without a screen, from the same
 * lines as every other format and the outlines of the embedded font, so that the fonts of the
 * machine do not matter. Open {@link dev.drafting.export.png.PngFormat}.
 *
 * <p>In comes a drawing; out goes PNG that says its resolution. Nulls are refused; all values may
 * be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.export.png;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
