/**
 * What the try-on changed, put back into the pattern.
 *
 * <p>In comes a {@link dev.drafting.core.pattern.Pattern}, out comes another one: an {@link
 * dev.drafting.core.alter.Alteration} is one change at a named place by an amount, an {@link
 * dev.drafting.core.alter.AlterationRecord} remembers the first pattern and all changes, so that
 * every one of them can be dropped, and all of them made again on another pattern. Open {@link
 * dev.drafting.core.alter.Alteration} first.
 *
 * <p>Edges that were sewn together stay as well matched as they were. Amounts are lengths of the
 * finished garment, unless a method says otherwise. Nothing takes or returns null; everything is
 * immutable and may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.core.alter;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
