/** Rules that the classes of all library modules keep. */
@NullMarked
package dev.drafting.architecture;

import org.jspecify.annotations.NullMarked;
