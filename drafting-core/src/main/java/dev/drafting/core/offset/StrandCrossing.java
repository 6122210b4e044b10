package dev.drafting.core.offset;

import dev.drafting.core.geometry.Point;

/**
 * Where two strands of the raw chain cross.
 *
 * @param point where
 * @param strand the earlier strand
 * @param at its parameter there
 * @param other the later strand
 * @param atOther its parameter there
 */
record StrandCrossing(Point point, int strand, double at, int other, double atOther) {}
