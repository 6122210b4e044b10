/** Files of a garment, damaged; shared with the benchmarks. */
@NullMarked
package dev.drafting.examples.damage;

import org.jspecify.annotations.NullMarked;
