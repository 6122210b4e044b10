/**
 * Drawings as one list of lines and words in millimetres, y up, that every drawing format prints.
 *
 * <p>In come the cut pieces of a pattern; out goes a {@link dev.drafting.export.drawing.Drawing}:
 * one group a piece, side by side on one plane at true size. Open {@link
 * dev.drafting.export.drawing.PieceDrawing} first; to write a format of your own, implement {@link
 * dev.drafting.export.drawing.Format}.
 *
 * <p>Line weights follow the series of ISO 128 (0.18, 0.25, 0.35, 0.5, 0.7 mm), and so do the
 * dashes: long ones are 24, dashes 12 and gaps 3 line widths (numbers from memory of ISO 128-2).
 * Heights of letters are heights of capitals, as in ISO 3098. Nulls are refused; all values may be
 * shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.export.drawing;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
