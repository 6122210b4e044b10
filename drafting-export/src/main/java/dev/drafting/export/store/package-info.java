/**
 * Keeps a draft in a file, and reads it back next year to the last bit.
 *
 * <p>In goes a {@link dev.drafting.export.store.StoredDraft}: a draft with its tracings and lay
 * plans. Out comes JSON, and the same stored draft again. Open {@code StoredDraft} first; {@link
 * dev.drafting.export.store.StoredTypes} is for finishes and alterations of one's own.
 *
 * <p>Values are immutable and may be shared by threads. Nulls are refused.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.export.store;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
