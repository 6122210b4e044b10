package dev.drafting.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AlterAfterTryOnTest {
  @TempDir Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private interface Run {
    int with(String[] args, PrintStream out, PrintStream err);
  }

  private List<String> said(Run program, int code, String... args) {
    int found =
        program.with(
            args,
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    assertEquals(code, found, err.toString(StandardCharsets.UTF_8));
    return out.toString(StandardCharsets.UTF_8).lines().toList();
  }

  @Test
  void saysWhatChangesAndWritesBeforeAndAfter() throws Exception {
    Path target = folder.resolve("altered");
    List<String> said = said(AlterAfterTryOn::run, 0, "--out", target.toString());
    assertEquals(
        "Snip 8 mm off the raw edge of front / neck at the fold, fading to nothing 60 mm from the"
            + " shoulder (tight under the chin)",
        said.get(0));
    assertEquals("  front / neck: 134 mm, then 138.8 mm; moves by up to 8 mm", said.get(1));
    assertTrue(
        said.contains("  shoulder seam                          65.6 mm    60.6 mm"),
        said.toString());
    String picture = Files.readString(target.resolve("before-and-after.svg"));
    assertTrue(picture.contains("the finished edge before"));
    assertTrue(picture.contains("neck: 134 mm, now 138.8 mm; moved by up to 8 mm"));
  }

  @Test
  void remakesInThreeFabrics() {
    List<String> said = said(RemakeInThreeFabrics::run, 0);
    assertTrue(
        said.contains(
            "shoulder seam                                      61            61        61"),
        said.toString());
    assertTrue(said.contains("C pique"), said.toString());
  }

  @Test
  void badInputIsSaidAndNothingWritten() {
    Path target = folder.resolve("nothing");
    List<String> said =
        said(
            AlterAfterTryOn::run,
            2,
            "--garment",
            folder.resolve("none").toString(),
            "--out",
            target.toString());
    assertEquals(List.of(), said);
    assertTrue(err.toString(StandardCharsets.UTF_8).contains("Nothing was written."));
    assertFalse(Files.exists(target));
  }
}
