package dev.drafting.export.folder;

import dev.drafting.core.finding.DraftingException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;

/**
 * The note that lies in a folder while files are moved in. It tells a person what is going on, and
 * its last line tells the library in which hidden folder the rest of the new set lies: there or
 * beside the folder.
 */
final class Notice {
  static final String NAME = "files-being-replaced.txt";
  private static final int MOST_BYTES = 1 << 20;

  private final Path folder;
  private final Path file;

  Notice(Path folder) {
    this.folder = folder;
    this.file = folder.resolve(NAME);
  }

  boolean isThere() {
    return Files.exists(file, LinkOption.NOFOLLOW_LINKS);
  }

  /** From here on the new set is the one that counts. */
  void put(List<String> names, Path hidden) throws IOException {
    Path made = hidden.resolve(NAME);
    Files.writeString(
        made,
        String.format(
            Locale.ROOT,
            """
            These files are being replaced by new ones:
            %s

            If nothing is writing to this folder any more, that was cut short, and some of
            the files are old and some are new. Do not cut or sew from them yet. Write to
            this folder once more with the program that wrote them: that moves the rest in
            and takes this note away. The rest lies in a hidden folder here or one folder
            further up; leave it there until then. Its name:
            %s
            """,
            String.join("\n", names),
            hidden.getFileName()));
    Files.move(made, file, StandardCopyOption.ATOMIC_MOVE);
  }

  void takeAway() throws IOException {
    Files.delete(file);
  }

  /**
   * The hidden folder that the note tells of, and nothing else that somebody may have put there.
   */
  Path hidden() throws IOException {
    String name = Files.size(file) > MOST_BYTES ? "" : lastLine();
    if (name.matches("\\" + FileSet.PREFIX + "[0-9]+")) {
      for (Path hidden : List.of(folder.resolve(name), folder.resolveSibling(name))) {
        if (Files.isDirectory(hidden.resolve(FileSet.NEW), LinkOption.NOFOLLOW_LINKS)) {
          return hidden;
        }
      }
    }
    throw DraftingException.of("files of two sets lie side by side and cannot be told apart")
        .at(folder.toString())
        .value(NAME)
        .accepted("a folder without this note: read it, delete it, and write all files once more");
  }

  private String lastLine() throws IOException {
    List<String> lines = Files.readAllLines(file);
    return lines.isEmpty() ? "" : lines.get(lines.size() - 1);
  }
}
