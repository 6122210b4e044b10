/** Reads a garment from a folder. */
@NullMarked
@CheckReturnValue
package dev.drafting.export.source;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
