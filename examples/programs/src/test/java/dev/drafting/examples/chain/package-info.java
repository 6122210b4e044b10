/** Random garments through the whole chain, and who judges them; shared with the benchmarks. */
@NullMarked
package dev.drafting.examples.chain;

import org.jspecify.annotations.NullMarked;
