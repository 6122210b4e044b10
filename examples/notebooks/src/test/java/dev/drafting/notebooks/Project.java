package dev.drafting.notebooks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Where things are in the project; paths are relative to its top, the working folder of the tests.
 */
final class Project {
  static final Path README = Path.of("README.md");
  static final Path STARTUP = Path.of("examples/notebooks/drafting.jsh");
  static final Path GUIDE = Path.of("examples/programs/guide/guide.md");
  private static final Path NOTEBOOKS = Path.of("examples/notebooks");
  static final List<String> LIBRARIES =
      List.of("drafting-core", "drafting-knit", "drafting-export");

  private Project() {}

  /** All Java sources of a library module, in a fixed order. */
  static List<Path> sources(String module) throws IOException {
    Path root = Path.of(module, "src/main/java");
    if (!Files.isDirectory(root)) {
      return List.of();
    }
    try (Stream<Path> files = Files.walk(root)) {
      return files.filter(Project::isType).sorted().toList();
    }
  }

  /** All scripts but the startup script, in a fixed order; at least one. */
  static List<Path> notebooks() throws IOException {
    try (Stream<Path> files = Files.list(NOTEBOOKS)) {
      List<Path> scripts =
          files
              .filter(file -> file.toString().endsWith(".jsh") && !file.equals(STARTUP))
              .sorted()
              .toList();
      if (scripts.isEmpty()) {
        throw new IllegalStateException("no notebook in " + NOTEBOOKS);
      }
      return scripts;
    }
  }

  private static boolean isType(Path file) {
    return file.toString().endsWith(".java");
  }

  /** The name of the top-level type in a source. */
  static String typeOf(Path source) {
    Path inModule = source.subpath(4, source.getNameCount());
    return inModule
        .toString()
        .replace(".java", "")
        .replace(source.getFileSystem().getSeparator(), ".");
  }

  /** The startup script as an example to run. */
  static Example startup() throws IOException {
    return Example.ofScript(STARTUP);
  }
}
