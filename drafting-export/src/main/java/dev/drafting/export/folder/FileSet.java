package dev.drafting.export.folder;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Files that belong together. They are made in a hidden folder and moved in when all of them are
 * there; closing the set removes whatever has not been moved in.
 *
 * <pre>{@code
 * FileSet files = FileSet.into(Files.createTempDirectory("mending"));
 * files.open("patch.txt").close();  // nothing written
 * files.moveIn();  // => {patch.txt=0}
 * files.close();
 * }</pre>
 *
 * <p>A folder that is not there yet is moved in as one. In a folder that is there already each file
 * takes the place of the old one in one step, and no file is ever seen half written; no portable
 * file system takes several files at once. So as long as old and new files lie side by side, the
 * note {@code files-being-replaced.txt} lies there too and says so. Should the process be killed
 * then, the rest of the new set is kept, and whoever next writes a set to that folder or reads one
 * of its files with this library moves it in first, or is refused if that cannot be done.
 *
 * <p>What is left: a process that is killed before the note lies there leaves the old set, and
 * perhaps a hidden folder whose name starts with {@code .drafting-}, which may be deleted. Programs
 * that know nothing of the note see old and new files while it lies there. Nothing is forced to the
 * disk: after a failure of the power, files may be missing that the operating system had not stored
 * yet.
 *
 * @since 0.1
 */
@Experimental
public final class FileSet implements AutoCloseable {
  static final String PREFIX = ".drafting-";
  static final String NEW = "new";
  private static final String OLD = "old";
  private static final String GIVEN_UP = "given-up";
  private static final String PLAIN = "[^./\\\\:\\x00][^/\\\\:\\x00]*";

  private final Path folder;
  private final Path hidden;
  private final Map<String, Long> bytes = new LinkedHashMap<>();
  private boolean isHalfMoved;

  private FileSet(Path folder, Path hidden) throws IOException {
    this.folder = folder;
    this.hidden = hidden;
    Files.createDirectory(hidden.resolve(NEW));
    Files.createDirectory(hidden.resolve(OLD));
  }

  /**
   * A set without files. Until they are moved in they lie on the same disk as the folder.
   *
   * @param folder made if it is not there; a link to a folder is followed
   * @return the set
   * @throws IOException if nothing can be written there
   */
  public static FileSet into(Path folder) throws IOException {
    Path wanted = folder.toAbsolutePath().normalize();
    Path real = Files.isDirectory(wanted) ? wanted.toRealPath() : wanted;
    return new FileSet(real, Files.createTempDirectory(existing(real), PREFIX));
  }

  /** The folder, or else the nearest one above it that is there. */
  private static Path existing(Path folder) {
    Path existing = folder;
    while (!Files.isDirectory(existing) && existing.getParent() != null) {
      existing = existing.getParent();
    }
    return existing;
  }

  /**
   * One more file of the set.
   *
   * @param name of the file in the folder
   * @return where its bytes go; to be closed before the files are moved in
   * @throws IOException if it cannot be written
   * @throws DraftingException if the set has such a file, or the name leads elsewhere
   */
  public OutputStream open(String name) throws IOException {
    if (!name.matches(PLAIN) || name.equals(Notice.NAME) || bytes.containsKey(name)) {
      throw DraftingException.of("no file of the set can have this name")
          .value(name)
          .accepted("a name of its own, without a folder and without a dot at its start");
    }
    bytes.put(name, 0L);
    return Files.newOutputStream(hidden.resolve(NEW).resolve(name), StandardOpenOption.CREATE_NEW);
  }

  /**
   * Moves the files in; those of the same names are replaced. One set is moved in at a time, the
   * others wait.
   *
   * @return the size of each file in bytes by its name, in the order of making them
   * @throws IOException if one of them cannot be moved; then everything is as it was before
   * @throws DraftingException if a killed process left files of two sets there that cannot be told
   *     apart any more
   */
  @SuppressWarnings("try") // the lock is held, not used
  public Map<String, Long> moveIn() throws IOException {
    for (Map.Entry<String, Long> file : bytes.entrySet()) {
      file.setValue(Files.size(hidden.resolve(NEW).resolve(file.getKey())));
    }
    Path place = existing(folder);
    try (FolderLock lock = FolderLock.of(place)) {
      if (place.equals(folder)) {
        finishOther(folder);
        moveEach();
        return Collections.unmodifiableMap(bytes);
      }
      if (!Files.isDirectory(folder)) {
        moveAll();
        return Collections.unmodifiableMap(bytes);
      }
    }
    return moveIn(); // somebody else has just made the folder
  }

  private void moveAll() throws IOException {
    List<Path> made = foldersToMake();
    try {
      Files.createDirectories(folder.getParent());
      Files.move(hidden.resolve(NEW), folder, StandardCopyOption.ATOMIC_MOVE);
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

  private void moveEach() throws IOException {
    for (String name : bytes.keySet()) {
      Path target = folder.resolve(name);
      if (Files.isRegularFile(target)) {
        Files.copy(target, hidden.resolve(OLD).resolve(name), StandardCopyOption.COPY_ATTRIBUTES);
      }
    }
    Notice notice = new Notice(folder);
    notice.put(List.copyOf(bytes.keySet()), hidden);
    isHalfMoved = true;
    List<String> moved = new ArrayList<>();
    try {
      for (String name : bytes.keySet()) {
        replace(hidden.resolve(NEW).resolve(name), folder.resolve(name));
        moved.add(name);
      }
    } catch (IOException | RuntimeException e) {
      putBack(moved);
      notice.takeAway();
      isHalfMoved = false;
      throw e;
    }
    notice.takeAway();
    isHalfMoved = false;
  }

  private static void replace(Path fresh, Path target) throws IOException {
    Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
  }

  /** Should the process be killed here, nobody takes the rest for a set that can be finished. */
  private void putBack(List<String> moved) throws IOException {
    replace(hidden.resolve(NEW), hidden.resolve(GIVEN_UP));
    for (String name : moved) {
      Path old = hidden.resolve(OLD).resolve(name);
      if (Files.exists(old)) {
        replace(old, folder.resolve(name));
      } else {
        Files.delete(folder.resolve(name));
      }
    }
  }

  /**
   * Moves in what a killed process left half moved in the folder of a file; done before the file is
   * read. A folder without the note is left alone.
   *
   * @param file that is going to be read
   * @throws DraftingException if the note lies beside it and the rest of the set cannot be moved in
   */
  @SuppressWarnings("try") // the lock is held, not used
  public static void finishBeside(Path file) {
    Path folder = file.toAbsolutePath().normalize().getParent();
    if (folder == null || !new Notice(folder).isThere()) {
      return;
    }
    try (FolderLock lock = FolderLock.of(folder)) {
      finishOther(folder.toRealPath());
    } catch (IOException e) {
      throw DraftingException.of("old and new files lie side by side here")
          .at(folder.toString())
          .value(Notice.NAME)
          .accepted("a folder that may be written, so that the rest can be moved in")
          .because(e);
    }
  }

  /** As only the holder of the lock moves, nobody else is at it. */
  private static void finishOther(Path folder) throws IOException {
    Notice notice = new Notice(folder);
    if (notice.isThere()) {
      Path left = notice.hidden();
      for (Path file : filesIn(left.resolve(NEW))) {
        replace(file, folder.resolve(file.getFileName()));
      }
      notice.takeAway();
      delete(left);
    }
  }

  private static List<Path> filesIn(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.sorted().toList();
    }
  }

  /** What is half moved is kept for whoever finishes it. */
  @Override
  public void close() throws IOException {
    if (!isHalfMoved) {
      delete(hidden);
    }
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      all.sorted(Comparator.reverseOrder()).forEach(FileSet::deleteOne);
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
