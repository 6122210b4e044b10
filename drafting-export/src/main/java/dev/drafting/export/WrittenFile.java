package dev.drafting.export;

import dev.drafting.core.Stable;
import java.nio.file.Path;
import java.util.Objects;

/**
 * A file that an export wrote.
 *
 * <pre>{@code
 * new WrittenFile(Path.of("vest", "vest.svg"), 20_480);  // => vest.svg, 20 kB
 * }</pre>
 *
 * @param path where it lies
 * @param bytes how large it is
 * @since 0.1
 */
@Stable
public record WrittenFile(Path path, long bytes) {
  /**
   * Checks that nothing is missing.
   *
   * @param path where it lies
   * @param bytes how large it is
   */
  public WrittenFile {
    Objects.requireNonNull(path, "path");
  }

  /**
   * Name and size.
   *
   * @return for instance "boathouse-vest-a4.pdf, 27 kB"
   */
  @Override
  public String toString() {
    return path.getFileName() + ", " + Math.max(1, Math.round(bytes / 1000.0)) + " kB";
  }
}
