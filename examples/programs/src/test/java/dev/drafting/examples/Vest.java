package dev.drafting.examples;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The demo garment, whole or with something changed, and a run of the program on it. */
final class Vest {
  static final Path FOLDER = Path.of("garments", "vest");

  private Vest() {}

  /** A run's exit code and what it said. */
  record Run(int code, String out, String err) {}

  static Run run(Path garment, Path out) {
    return run("--garment", garment.toString(), "--out", out.toString());
  }

  static Run run(String... args) {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    ByteArrayOutputStream complained = new ByteArrayOutputStream();
    int code =
        CopyGarment.run(
            args,
            new PrintStream(said, true, StandardCharsets.UTF_8),
            new PrintStream(complained, true, StandardCharsets.UTF_8));
    return new Run(
        code, said.toString(StandardCharsets.UTF_8), complained.toString(StandardCharsets.UTF_8));
  }

  static String text(String file) throws IOException {
    return Files.readString(FOLDER.resolve(file));
  }

  /** Copies the demo garment; both files may be changed there. */
  static Path copyTo(Path folder) throws IOException {
    Files.createDirectories(folder);
    for (String file : List.of("tracing.csv", "garment.json")) {
      Files.writeString(folder.resolve(file), text(file));
    }
    return folder;
  }

  /** All files under a folder with their bytes as text, one character a byte. */
  static Map<String, String> contents(Path folder) throws IOException {
    Map<String, String> contents = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        contents.put(
            folder.relativize(file).toString(),
            new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
      }
    }
    return contents;
  }
}
