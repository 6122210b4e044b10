/**
 * A pattern sewn together in the mind: pieces are opened out at their folds, pairs are doubled, and
 * the seams are closed. What is left of the edges are the {@link
 * dev.drafting.core.assembly.Opening}s of the garment: neck, armholes, hem.
 *
 * <p>What comes in is a {@link dev.drafting.core.pattern.Pattern}; what goes out are openings with
 * their length at any distance from the finished edge and with their turning, checks of the seams,
 * and findings. Open {@link dev.drafting.core.assembly.Assembly} first. Nulls are refused; all
 * values may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.core.assembly;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
