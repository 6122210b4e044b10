package dev.drafting.export;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A folder beside the wanted one in which files are made before they are moved in together. Closing
 * it removes whatever has not been moved.
 */
final class Staging implements AutoCloseable {
  private final Path folder;
  private final Path fresh;
  private final Path replaced;
  private final Path root;

  private Staging(Path folder, Path root) throws IOException {
    this.folder = folder;
    this.root = root;
    this.fresh = Files.createDirectory(root.resolve("new"));
    this.replaced = Files.createDirectory(root.resolve("old"));
  }

  /** On the same disk as the folder, so that moving is one step. */
  static Staging beside(Path folder) throws IOException {
    Path wanted = folder.toAbsolutePath().normalize();
    Path parent = wanted.getParent() == null ? wanted : wanted.getParent();
    Path existing = parent;
    while (!Files.isDirectory(existing) && existing.getParent() != null) {
      existing = existing.getParent();
    }
    return new Staging(wanted, Files.createTempDirectory(existing, ".drafting-"));
  }

  OutputStream open(String name) throws IOException {
    return Files.newOutputStream(fresh.resolve(name));
  }

  /** Moves the files in; if one cannot be moved, everything is as it was before. */
  List<WrittenFile> moveIn(List<String> names) throws IOException {
    List<Path> made = foldersToMake();
    Files.createDirectories(folder);
    List<String> moved = new ArrayList<>();
    try {
      List<WrittenFile> written = new ArrayList<>();
      for (String name : names) {
        Path target = folder.resolve(name);
        if (Files.exists(target)) {
          Files.move(target, replaced.resolve(name));
        }
        moved.add(name);
        Files.move(fresh.resolve(name), target, StandardCopyOption.ATOMIC_MOVE);
        written.add(new WrittenFile(target, Files.size(target)));
      }
      return List.copyOf(written);
    } catch (IOException | RuntimeException e) {
      putBack(moved, made);
      throw e;
    }
  }

  private List<Path> foldersToMake() {
    List<Path> missing = new ArrayList<>();
    for (Path path = folder; path != null && !Files.exists(path); path = path.getParent()) {
      missing.add(path);
    }
    return missing;
  }

  private void putBack(List<String> moved, List<Path> made) throws IOException {
    for (String name : moved) {
      Files.deleteIfExists(folder.resolve(name));
      if (Files.exists(replaced.resolve(name))) {
        Files.move(replaced.resolve(name), folder.resolve(name));
      }
    }
    for (Path path : made) {
      Files.deleteIfExists(path);
    }
  }

  @Override
  public void close() throws IOException {
    try (Stream<Path> all = Files.walk(root)) {
      all.sorted(Comparator.reverseOrder()).forEach(Staging::delete);
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private static void delete(Path path) {
    try {
      Files.deleteIfExists(path);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
