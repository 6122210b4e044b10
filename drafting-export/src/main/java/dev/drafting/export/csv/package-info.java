/**
 * Lists of a draft as CSV files for spreadsheets. Open {@link dev.drafting.export.csv.CutListFile},
 * {@link dev.drafting.export.csv.StripsFile} or {@link dev.drafting.export.csv.MeasuresFile}.
 *
 * <p>Nulls are refused; all values may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.export.csv;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
