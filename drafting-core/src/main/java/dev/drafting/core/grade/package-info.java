/**
 * Sizes of a garment that has no template, such as a copied one.
 *
 * <p>In come the {@link dev.drafting.core.pattern.Pattern} of one size and a {@link GradeRule} for
 * every corner that moves from size to size; out comes a pattern for each size, and findings where
 * the two sides of a seam do not grow alike. Open {@link Grading} first.
 *
 * <p>Nothing takes or returns null; values are immutable and may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.core.grade;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
