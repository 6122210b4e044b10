package dev.drafting.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Every bad input ends in one message with its place, exit code 2 and no file. */
class BadInputTest {
  @TempDir Path folder;
  private Path garment = Path.of("");
  private Path out = Path.of("");

  @BeforeEach
  void copy() throws IOException {
    garment = Vest.copyTo(folder.resolve("vest"));
    out = folder.resolve("out");
  }

  private String refused() throws IOException {
    Vest.Run run = Vest.run(garment, out);
    assertEquals(2, run.code(), run.err());
    assertTrue(run.err().endsWith("\nNothing was written.\n"), run.err());
    assertEquals(2, run.err().lines().count(), run.err());
    assertFalse(run.err().contains("should not have"), run.err());
    assertFalse(Files.exists(out));
    try (Stream<Path> left = Files.list(folder)) {
      assertEquals(1, left.count());
    }
    return run.err().lines().findFirst().orElseThrow();
  }

  private void change(String file, String from, String to) throws IOException {
    String text = Vest.text(file);
    assertTrue(text.contains(from), from);
    int at = text.indexOf(from);
    String changed = text.substring(0, at) + to + text.substring(at + from.length());
    Files.writeString(garment.resolve(file), changed);
  }

  private static void assertSaid(String expected, String message) {
    assertEquals(expected, message);
  }

  /** The table was written from what the program says and read line by line. */
  @ParameterizedTest(name = "{1} -> {2}")
  @CsvFileSource(
      resources = "bad-input.txt",
      delimiter = '|',
      quoteCharacter = '`',
      maxCharsPerColumn = 1000)
  void oneChange(String file, String from, String to, String said) throws IOException {
    change(file, from, to == null ? "" : to.replace("\\n", "\n"));
    assertSaid(said, refused());
  }

  @Test
  void anOutlineWithAGap() throws IOException {
    Files.writeString(
        garment.resolve("tracing.csv"),
        Vest.text("tracing.csv").replaceAll("front,shoulder,(\\d)", "front,shoulder,1$1"));
    assertSaid(
        "tracing.csv, lines 2 to 155: front: armhole and shoulder: the outline is open: two edges do "
            + "not meet. Found: a gap of 47.2 mm. Accepted: ends within 15 mm of each other.",
        refused());
  }

  @Test
  void anEdgeOfOnePoint() throws IOException {
    Files.writeString(
        garment.resolve("tracing.csv"),
        Vest.text("tracing.csv").replaceAll("(front,shoulder,.*\n)+", "$1"));
    assertSaid(
        "tracing.csv, line 121, front / shoulder: the edge has one point. Found: 8.3, 62.99. "
            + "Accepted: two different points or more.",
        refused());
  }

  @Test
  void missingFiles() throws IOException {
    Files.delete(garment.resolve("garment.json"));
    assertSaid("garment.json: the file is missing. Accepted: a text file.", refused());
    Files.delete(garment.resolve("tracing.csv"));
    assertSaid("tracing.csv: the file is missing. Accepted: a text file.", refused());
  }

  @Test
  void aFolderThatIsNotThere() throws IOException {
    Vest.Run run = Vest.run(Path.of("no-such-vest"), out);
    assertEquals(2, run.code());
    assertEquals(
        "the folder of the garment is missing. Found: no-such-vest. "
            + "Accepted: a folder with tracing.csv and garment.json.\nNothing was written.\n",
        run.err());
  }

  @Test
  void emptyFiles() throws IOException {
    Files.writeString(garment.resolve("garment.json"), "");
    assertSaid("garment.json: the file is empty. Accepted: one JSON object.", refused());
    Files.writeString(garment.resolve("tracing.csv"), "");
    assertSaid(
        "tracing.csv: the file has no points. "
            + "Accepted: the line piece,edge,x,y and a line for each point.",
        refused());
  }

  @Test
  void tenMillionLines() throws IOException {
    try (BufferedWriter lines = Files.newBufferedWriter(garment.resolve("tracing.csv"))) {
      lines.write("piece,edge,x,y\n");
      String thousand = "front,hem,1,1\n".repeat(1_000);
      for (int i = 0; i < 10_000; i++) {
        lines.write(thousand);
      }
    }
    assertSaid(
        "tracing.csv, line 100001: the file is too long. Accepted: at most 100,000 lines.",
        refused());
  }

  @Test
  void textThatIsNotUtf8() throws IOException {
    byte[] latin =
        Vest.text("garment.json")
            .replace("Boathouse", "Bädhaus")
            .getBytes(StandardCharsets.ISO_8859_1);
    Files.write(garment.resolve("garment.json"), latin);
    assertTrue(
        refused().startsWith("garment.json, line 2: the text is not UTF-8. Found: \"name\""));
  }

  @Test
  void optionsThatAreNone() {
    Vest.Run run = Vest.run("--colour", "red");
    assertEquals(2, run.code());
    assertEquals(
        "Unknown options: '--colour', 'red' Ask for --help.\nNothing was written.\n", run.err());
  }

  @Test
  void aPlaceForTheFilesThatIsAFile() throws IOException {
    Files.writeString(out, "mine");
    Vest.Run run = Vest.run(garment, out.resolve("deeper"));
    assertEquals(2, run.code());
    assertTrue(run.err().startsWith("the folder for the files cannot be made."), run.err());
    assertEquals("mine", Files.readString(out));
  }
}
