/**
 * A sewing pattern as the maker knows it: pieces with named edges, how each edge is finished, how
 * often each piece is cut, and which edges are sewn together.
 *
 * <p>What comes in is the <em>finished</em> outline, the edge that is seen on the sewn garment
 * lying flat. What goes out is a {@link dev.drafting.core.pattern.Pattern} that the packages {@code
 * assembly} and {@code cut} read. Allowances are never drawn: an edge has a {@link
 * dev.drafting.core.pattern.Finish}, and its {@link dev.drafting.core.pattern.Profile} says how far
 * from the finished edge the lines for cutting, sewing, folding and topstitching lie. Open {@link
 * dev.drafting.core.pattern.Piece} first.
 *
 * <p>Outlines are in millimetres, y up, counter-clockwise; a piece cut on the fold is drawn as its
 * half at x of zero or more, with the fold on x = 0. Nulls are refused; all values may be shared
 * between threads.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.core.pattern;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
