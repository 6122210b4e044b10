/**
 * DXF files, in millimetres: the drawing for cutters and drawing programs ({@link
 * dev.drafting.export.dxf.DxfFormat}), and the pieces as data for other pattern software ({@link
 * dev.drafting.export.dxf.PieceFile}).
 *
 * <p>Nulls are refused; all values may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.export.dxf;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
