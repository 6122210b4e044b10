/**
 * The door from a draft to files: paper at true size, drawings, and the making-up sheet. Open
 * {@link dev.drafting.export.Export}.
 *
 * <p>In comes a draft and a folder; out come files, all of them or none. Long work reports its
 * {@link dev.drafting.export.Progress} and stops when the thread is interrupted. The same draft
 * gives the same bytes. Nulls are refused; values may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.export;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
