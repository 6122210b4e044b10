/**
 * Garments that are drawn from a few dimensions.
 *
 * <p>A {@link dev.drafting.core.template.GarmentTemplate} says which dimensions of the finished
 * garment it takes, and draws a {@link dev.drafting.core.pattern.Pattern} from them; {@link
 * dev.drafting.core.template.Templates} finds templates by their id, {@link
 * dev.drafting.core.template.TemplateContract} tries one out, {@link
 * dev.drafting.core.template.SizeRun} draws it in several sizes. Open {@code GarmentTemplate}
 * first.
 *
 * <p>Nothing takes or returns null; values are immutable and may be shared between threads, and a
 * template gives the same pattern for the same dimensions every time.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.core.template;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
