package dev.drafting.core.trace;

/**
 * One stroke behind an edge.
 *
 * @param side "left " or "right " where the edge was drawn on both sides, else nothing
 * @param stroke the stroke as it was drawn
 * @param fit its own fit, lying in the frame of the fold
 */
record TracedSide(String side, Stroke stroke, EdgeFit fit) {}
