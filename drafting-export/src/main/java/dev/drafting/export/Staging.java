package dev.drafting.export;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.Stream;

/**
 * A hidden folder in which files are made before they are moved in together. Closing it removes
 * whatever has not been moved.
 *
 * <p>A new folder is moved in as one. In a folder that is there already each file takes the place
 * of the old one in one step. Should the process end between two of these steps, the rest stays in
 * the hidden folder, and whoever next moves something in moves that in first.
 */
final class Staging implements AutoCloseable {
  private static final String PREFIX = ".drafting-";
  private static final String NEW = "new";
  private static final String OLD = "old";

  /** Stands in the hidden folder while files are moved from there, and says where to. */
  private static final String MOVING = "moving";

  /** As it was asked for, which may be a link to where it is. */
  private final Path named;

  private final Path folder;
  private final Path root;

  private Staging(Path named, Path folder, Path root) throws IOException {
    this.named = named;
    this.folder = folder;
    this.root = root;
    Files.createDirectory(root.resolve(NEW));
    Files.createDirectory(root.resolve(OLD));
  }

  /** On the same disk as the folder, so that moving is one step. */
  static Staging of(Path folder) throws IOException {
    Path wanted = folder.toAbsolutePath().normalize();
    Path real = Files.isDirectory(wanted) ? wanted.toRealPath() : wanted;
    return new Staging(wanted, real, Files.createTempDirectory(existing(real), PREFIX));
  }

  /** The folder, or else the nearest one above it that is there. */
  private static Path existing(Path folder) {
    Path existing = folder;
    while (!Files.isDirectory(existing) && existing.getParent() != null) {
      existing = existing.getParent();
    }
    return existing;
  }

  OutputStream open(String name) throws IOException {
    return Files.newOutputStream(root.resolve(NEW).resolve(name));
  }

  /** Moves the files in; if one cannot be moved, everything is as it was before. */
  @SuppressWarnings("try") // the lock is held, not used
  List<WrittenFile> moveIn(List<String> names) throws IOException {
    List<WrittenFile> written = new ArrayList<>();
    for (String name : names) {
      long bytes = Files.size(root.resolve(NEW).resolve(name));
      written.add(new WrittenFile(named.resolve(name), bytes));
    }
    Path place = existing(folder);
    try (FolderLock lock = FolderLock.of(place)) {
      if (place.equals(folder)) {
        finishOthers(place);
        moveEach(names);
        return List.copyOf(written);
      }
      if (!Files.isDirectory(folder)) {
        moveAll();
        return List.copyOf(written);
      }
    }
    return moveIn(names); // somebody else has just made the folder
  }

  private void moveAll() throws IOException {
    List<Path> made = foldersToMake();
    try {
      Files.createDirectories(folder.getParent());
      Files.move(root.resolve(NEW), folder, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException | RuntimeException e) {
      for (Path path : made) {
        Files.deleteIfExists(path);
      }
      throw e;
    }
  }

  /** Those above the folder, the innermost first. */
  private List<Path> foldersToMake() {
    List<Path> missing = new ArrayList<>();
    Path path = folder.getParent();
    for (; path != null && !Files.exists(path); path = path.getParent()) {
      missing.add(path);
    }
    return missing;
  }

  private void moveEach(List<String> names) throws IOException {
    for (String name : names) {
      Path target = folder.resolve(name);
      if (Files.isRegularFile(target)) {
        Files.copy(target, root.resolve(OLD).resolve(name), StandardCopyOption.COPY_ATTRIBUTES);
      }
    }
    Path moving = Files.writeString(root.resolve(MOVING), folder.toString());
    List<String> moved = new ArrayList<>();
    try {
      for (String name : names) {
        replace(root.resolve(NEW).resolve(name), folder.resolve(name));
        moved.add(name);
      }
    } catch (IOException | RuntimeException e) {
      putBack(moved);
      throw e;
    } finally {
      Files.deleteIfExists(moving);
    }
  }

  private static void replace(Path fresh, Path target) throws IOException {
    Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
  }

  private void putBack(List<String> moved) throws IOException {
    for (String name : moved) {
      Path old = root.resolve(OLD).resolve(name);
      if (Files.exists(old)) {
        replace(old, folder.resolve(name));
      } else {
        Files.delete(folder.resolve(name));
      }
    }
  }

  /**
   * Moves in what was left by processes that ended while they moved; as only the holder of the lock
   * moves, nobody else is at it.
   */
  private static void finishOthers(Path folder) throws IOException {
    for (Path left : hidden(folder)) {
      if (isMovingTo(folder, left)) {
        List<Path> files;
        try (Stream<Path> all = Files.list(left.resolve(NEW))) {
          files = all.toList();
        }
        for (Path file : files) {
          replace(file, folder.resolve(file.getFileName()));
        }
        delete(left);
      }
    }
  }

  private static List<Path> hidden(Path folder) throws IOException {
    List<Path> hidden = new ArrayList<>();
    Path above = folder.getParent() == null ? folder : folder.getParent();
    for (Path place : new LinkedHashSet<>(List.of(folder, above))) {
      try (DirectoryStream<Path> all = Files.newDirectoryStream(place, PREFIX + "*")) {
        all.forEach(hidden::add);
      }
    }
    return hidden;
  }

  private static boolean isMovingTo(Path folder, Path left) throws IOException {
    Path moving = left.resolve(MOVING);
    return Files.exists(moving) && Files.readString(moving).equals(folder.toString());
  }

  @Override
  public void close() throws IOException {
    delete(root);
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      all.sorted(Comparator.reverseOrder()).forEach(Staging::deleteOne);
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private static void deleteOne(Path path) {
    try {
      Files.deleteIfExists(path);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
