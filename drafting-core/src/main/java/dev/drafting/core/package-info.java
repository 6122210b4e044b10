/**
 * Drafting without any knowledge of cloth, files or screens: measures, geometry, offsets, tracing,
 * patterns and the pieces that are cut. Open {@link dev.drafting.core.measure.Length} first, then
 * the package {@code dev.drafting.core.pattern}.
 */
@NullMarked
package dev.drafting.core;

import org.jspecify.annotations.NullMarked;
