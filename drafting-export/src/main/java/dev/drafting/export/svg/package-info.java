/**
 * Drawings as SVG files: true size in millimetres, one group a piece, one layer a kind of line,
 * names of pieces and edges as data. Open {@link dev.drafting.export.svg.SvgFormat}.
 *
 * <p>Nulls are refused; all values may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.export.svg;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
