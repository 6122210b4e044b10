/**
 * Garments that are built in, drawn from dimensions of the finished garment.
 *
 * <p>Each is a {@link dev.drafting.core.template.GarmentTemplate} and is found by {@link
 * dev.drafting.core.template.Templates#installed()}; open that first. They keep the contract of
 * {@link dev.drafting.core.template.TemplateContract} in all of their bounds.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.knit.garment;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
