package dev.drafting.examples;

import dev.drafting.core.finding.DraftingException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The folder for the files of one run. They are first written apart and moved there when all of
 * them are done; closed before that, it leaves nothing behind. Other files in the folder are left
 * alone.
 */
final class OutputFolder implements AutoCloseable {
  private final Path target;
  private final Path staging;

  private OutputFolder(Path target, Path staging) {
    this.target = target;
    this.staging = staging;
  }

  static OutputFolder stage(Path folder) throws IOException {
    Path target = folder.toAbsolutePath().normalize();
    Path standing = target;
    while (!Files.exists(standing, LinkOption.NOFOLLOW_LINKS)) {
      standing = parent(standing);
    }
    if (!Files.isDirectory(standing)) {
      throw DraftingException.of("the folder for the files cannot be made")
          .value(folder)
          .accepted("a folder; " + standing + " is something else");
    }
    return new OutputFolder(target, Files.createTempDirectory(standing, ".being-written-"));
  }

  private static Path parent(Path path) {
    Path parent = path.getParent();
    return parent == null ? path : parent;
  }

  /** Where the files are written for the time being. */
  Path staging() {
    return staging;
  }

  /** Where they will be. */
  Path target() {
    return target;
  }

  /** The files that were written, as paths inside the folder, sorted. */
  List<Path> files() throws IOException {
    try (Stream<Path> all = Files.walk(staging)) {
      return all.filter(Files::isRegularFile).map(staging::relativize).sorted().toList();
    }
  }

  /** Moves all files to where they belong, each at once and none before all can be moved. */
  void publish() throws IOException {
    List<Path> files = files();
    for (Path file : files) {
      Path end = target.resolve(file);
      if (Files.isDirectory(end)) {
        throw DraftingException.of("a folder stands where a file is to be written")
            .value(end)
            .accepted("another folder for the files");
      }
      Files.createDirectories(parent(end));
    }
    for (Path file : files) {
      Files.move(
          staging.resolve(file),
          target.resolve(file),
          StandardCopyOption.REPLACE_EXISTING,
          StandardCopyOption.ATOMIC_MOVE);
    }
  }

  @Override
  public void close() throws IOException {
    try (Stream<Path> all = Files.walk(staging)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
