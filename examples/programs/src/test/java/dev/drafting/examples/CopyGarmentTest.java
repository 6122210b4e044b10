package dev.drafting.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CopyGarmentTest {
  @TempDir Path folder;

  @Test
  void theConsoleTellsASewistWhatCameOut() throws IOException {
    Path out = folder.resolve("out");
    Vest.Run run = Vest.run(Vest.FOLDER, out);
    assertEquals("", run.err());
    assertEquals(0, run.code());
    String said =
        run.out()
            .replace(System.lineSeparator(), "\n")
            .replace(out.toString(), "OUT")
            .replace('\\', '/');
    assertEquals(golden("console.txt"), said.replaceAll(" +\\d+ kB", "   N kB"));
  }

  /** The golden text was written by the program and read aloud. */
  private static String golden(String name) throws IOException {
    try (var in = CopyGarmentTest.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void theSameGarmentGivesTheSameBytes() throws IOException {
    Path one = folder.resolve("one");
    Path other = folder.resolve("other");
    assertEquals(0, Vest.run(Vest.FOLDER, one).code());
    assertEquals(0, Vest.run(Vest.FOLDER, other).code());
    Map<String, String> written = Vest.contents(one);
    assertEquals(16, written.size());
    assertEquals(written, Vest.contents(other));
    written.forEach((name, content) -> assertTrue(content.length() > 1_000, name));
  }

  @Test
  void filesOfItsOwnAreReplacedAndOthersLeftAlone() throws IOException {
    Path out = folder.resolve("deep/out");
    assertEquals(0, Vest.run(Vest.FOLDER, out).code());
    Map<String, String> first = Vest.contents(out);
    Path own = out.resolve(first.keySet().iterator().next());
    Files.writeString(own, "half");
    Files.writeString(out.resolve("notes.txt"), "mine");
    assertEquals(0, Vest.run(Vest.FOLDER, out).code());
    Map<String, String> second = Vest.contents(out);
    assertEquals("mine", second.remove("notes.txt"));
    assertEquals(first, second);
  }

  @Test
  void aFolderInTheWayOfAFileStopsAllFiles() throws IOException {
    Path out = folder.resolve("out");
    assertEquals(0, Vest.run(Vest.FOLDER, out).code());
    Path last = out.resolve(List.copyOf(Vest.contents(out).keySet()).get(11));
    Path first = out.resolve(Vest.contents(out).keySet().iterator().next());
    Files.delete(last);
    Files.createDirectory(last);
    Files.writeString(first, "old");
    Vest.Run run = Vest.run(Vest.FOLDER, out);
    assertEquals(2, run.code());
    assertTrue(run.err().startsWith("a folder stands where a file is to be written."), run.err());
    assertEquals("old", Files.readString(first));
    try (Stream<Path> left = Files.list(out)) {
      assertEquals(4, left.count());
    }
  }

  @Test
  void helpNamesTheOptions() {
    Vest.Run run = Vest.run("--help");
    assertEquals(0, run.code());
    assertTrue(run.out().contains("--garment=FOLDER"), run.out());
    assertTrue(run.out().contains("--out=FOLDER"), run.out());
  }

  @Test
  void theFoldersMayComeFromSystemProperties() throws IOException {
    Path out = folder.resolve("by-property");
    System.setProperty("garment", Vest.FOLDER.toString());
    System.setProperty("out", out.toString());
    try {
      assertEquals(0, Vest.run().code());
    } finally {
      System.clearProperty("garment");
      System.clearProperty("out");
    }
    assertEquals(16, Vest.contents(out).size());
  }

  @Test
  void makesWithNamesThatLookAlikeGetFoldersOfTheirOwn() throws IOException {
    Path garment = Vest.copyTo(folder.resolve("vest"));
    Files.writeString(
        garment.resolve("garment.json"),
        Vest.text("garment.json").replace("\"B interlock\"", "\"A cotton-jersey\""));
    Path out = folder.resolve("out");
    assertEquals(0, Vest.run(garment, out).code());
    try (Stream<Path> makes = Files.list(out)) {
      assertEquals(
          List.of("a-cotton-jersey", "a-cotton-jersey-2", "c-pique", "traced-and-trued.svg"),
          makes.map(path -> String.valueOf(path.getFileName())).sorted().toList());
    }
  }
}
