/**
 * What the library says when something is wrong. Input that cannot be drafted at all is a {@link
 * dev.drafting.core.finding.DraftingException}; a draft that will sew, fit or lie badly is a {@link
 * dev.drafting.core.finding.Finding} with its place, its reason and its remedy.
 *
 * <p>This package depends on nothing. Open {@link dev.drafting.core.finding.Finding} first. Nulls
 * are refused; all values may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.core.finding;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
