/** Runs the notebooks and every example that stands in README and Javadoc. */
@NullMarked
package dev.drafting.notebooks;

import org.jspecify.annotations.NullMarked;
