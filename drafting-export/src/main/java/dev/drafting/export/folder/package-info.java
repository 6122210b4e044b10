/**
 * Puts files that belong together into a folder, all of them or none. Open {@link
 * dev.drafting.export.folder.FileSet}.
 *
 * <p>In comes a folder and the bytes of each file; out comes a folder that holds the old set or the
 * new one. Where that cannot be had in one step, a note in the folder says so until it is done.
 * Nulls are refused. A set belongs to the thread that makes it; several may be made for one folder
 * at the same time.
 */
@NullMarked
@CheckReturnValue
package dev.drafting.export.folder;

import dev.drafting.core.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
