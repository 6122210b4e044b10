package dev.drafting.core.trace;

import dev.drafting.core.geometry.Transform;
import java.util.List;

/**
 * The fitted edges of a half piece from the lower end of the fold round to its upper end, or of a
 * piece without a fold all the way round.
 *
 * @param placement from the tracing to where the edges lie
 * @param folded whether a fold closes the outline
 * @param grounded whether the lower end of the fold belongs on y = 0
 */
record Outline(
    String piece,
    List<FittedEdge> edges,
    Noise noise,
    Transform placement,
    boolean folded,
    boolean grounded) {}
