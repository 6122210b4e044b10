/** The doors of the library and what anybody may send to them; shared with the benchmarks. */
@NullMarked
package dev.drafting.examples.damage;

import org.jspecify.annotations.NullMarked;
