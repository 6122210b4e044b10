/**
 * Lists of a draft as CSV files for spreadsheets. Open {@link dev.drafting.export.csv.CutListFile}.
 *
 * <p>Nulls are refused; all values may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.export.csv;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
