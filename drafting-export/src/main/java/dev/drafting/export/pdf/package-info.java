/**
 * Drawings on paper at true size: a PDF of single sheets to print at home, trim and tape together.
 * Open {@link dev.drafting.export.pdf.TiledPdf}.
 *
 * <p>Sheet 1 proves the scale by itself. Measured from the lower left corner of the page to the
 * middle of the lines, whatever the paper:
 *
 * <ul>
 *   <li>the 100 mm square has its lower left corner at x = 20 mm, y = 130 mm, so it reaches from 20
 *       to 120 across and from 130 to 230 upwards;
 *   <li>the 4 in square (101.6 mm) has its lower left corner at x = 20 mm, y = 20 mm, so it reaches
 *       from 20 to 121.6 across and from 20 to 121.6 upwards.
 * </ul>
 *
 * <p>Sheet 2 (and more, for many pieces) shows how the sheets go together; then come the pieces,
 * sheet by sheet. Rows of sheets have letters from the top, columns have numbers from the left.
 * Neighbours share a strip: the sheet below or to the right has that margin cut off and is laid on
 * the other one, up to the dashed line; the two halves of every numbered mark then meet.
 *
 * <p>The same drawing gives the same bytes. Nulls are refused; all values may be shared between
 * threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.export.pdf;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
