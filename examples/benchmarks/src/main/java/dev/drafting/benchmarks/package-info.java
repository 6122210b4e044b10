/** Measured figures of the library, printed as tables; {@code Tables} is the program. */
@NullMarked
package dev.drafting.benchmarks;

import org.jspecify.annotations.NullMarked;
