/**
 * Reads a garment from a folder: {@code tracing.csv}, the points that were traced round it in
 * centimetres, and {@code garment.json}, which says how the pieces are cut, sewn and finished, in
 * which fabrics and for whom.
 *
 * <p>A folder goes in; a {@link dev.drafting.export.source.Garment} with its trued pieces, its
 * pattern and a draft for each make comes out. Open {@link
 * dev.drafting.export.source.GarmentFolder} first. What cannot be drafted is refused by a {@link
 * dev.drafting.core.finding.DraftingException} that names the file, the line, the field, the value
 * and what would be accepted. Nulls are refused; garments may be shared between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.export.source;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
