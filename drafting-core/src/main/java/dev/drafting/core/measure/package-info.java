/**
 * Quantities at the door of the library: {@link dev.drafting.core.measure.Length} (millimetres
 * inside, centimetres and fractional inches outside) and {@link dev.drafting.core.measure.Angle}.
 * Open {@code Length} first.
 *
 * <p>Nulls are refused; all values may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.core.measure;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
