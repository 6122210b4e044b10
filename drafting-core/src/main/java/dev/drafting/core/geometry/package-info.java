/**
 * Points, lines, cubics, arcs and the curves made of them: how long a curve is, where a point at a
 * length along it lies, how far it turns, what crosses it and which of its points is nearest.
 *
 * <p><b>In:</b> points in millimetres, x to the right and y up, from a tracing or a draft.
 * <b>Out:</b> immutable curves and measures of them. Open {@link dev.drafting.core.geometry.Curve}
 * first; every edge of a pattern is one.
 *
 * <p><b>Units and signs:</b> coordinates are bare millimetres; lengths at the door are {@link
 * dev.drafting.core.measure.Length}, angles are {@link dev.drafting.core.measure.Angle}, positive
 * to the left (counter-clockwise). Outlines run counter-clockwise; the fold of a piece is the line
 * x = 0, and mirroring in it is exact to the last bit.
 *
 * <p><b>Nulls</b> are refused. <b>Threads:</b> every value may be shared.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.core.geometry;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
