/**
 * Programs that show the library at work. {@link dev.drafting.examples.CopyGarment} is the main
 * one: from the points that were traced round a garment to paper that can be sewn from. {@link
 * dev.drafting.examples.CheckBand} judges one band with a tape measure alone.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.examples;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
