package dev.drafting.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SizeRunTest {
  @TempDir Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String template) {
    return run("--template", template);
  }

  private int run(String... options) {
    List<String> all = new ArrayList<>(List.of(options));
    all.addAll(List.of("--out", folder.resolve("sizes").toString()));
    return SizeRun.run(
        all.toArray(String[]::new),
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8));
  }

  @Test
  void setsTheSizesSideBySideAndDrawsThemInEachOther() throws Exception {
    assertEquals(0, run("sleeveless-top"), err.toString(StandardCharsets.UTF_8));
    String said = out.toString(StandardCharsets.UTF_8);
    assertTrue(
        said.contains("  chest, all round                 94.0    98.0   102.0   106.0"), said);
    String drawing = Files.readString(folder.resolve("sizes").resolve("sleeveless-top-sizes.svg"));
    for (String size : new String[] {"S", "M", "L", "XL"}) {
      assertTrue(drawing.contains(">" + size + "<"), size);
    }
  }

  @Test
  void saysWhichTemplatesThereAre() {
    assertEquals(2, run("cape"));
    assertTrue(
        err.toString(StandardCharsets.UTF_8).contains("sleeveless-top, t-shirt, straight-skirt"));
    assertFalse(Files.exists(folder.resolve("sizes")));
  }

  private String said() {
    return out.toString(StandardCharsets.UTF_8);
  }

  /** 88 cm at 15 % of 50 % of stretch: 88 / 1.075 = 81.86. */
  @Test
  void setsBodiesBesideTheGarment() {
    assertEquals(0, run("--for", "women", "--from", "88", "--to", "96"));
    assertTrue(said().contains("  bust girth          88.0   92.0   96.0"), said());
    assertTrue(said().contains("  chest, all round                 81.9   85.6   89.3"), said());
  }

  @Test
  void readsTheMakersOwnTableOfBodies() {
    assertEquals(0, run("--bodies", "sizes/crew-bodies.csv"), err.toString(StandardCharsets.UTF_8));
    assertTrue(said().contains("slight   usual   broad"), said());
  }

  /** 10 mm at each of four sides for each step of 4 cm (common practice, no source). */
  @Test
  void gradesTheCopiedGarment() throws Exception {
    assertEquals(0, run("--grades", "sizes/vest-grades.csv", "--steps", "S=-1,L=1,XL=2.5"));
    assertTrue(
        said().contains("finished, cm                        S      M      L      XL"), said());
    assertTrue(
        said().contains("chest, all round                 88.2   92.2   96.2   102.2"), said());
    String drawing = Files.readString(folder.resolve("sizes").resolve("graded-sizes.svg"));
    assertTrue(drawing.contains(">XL<"));
  }

  @Test
  void aSeamThatGrowsUnequallyIsSaid() throws Exception {
    Path grades = folder.resolve("grades.csv");
    Files.writeString(grades, "piece,edge,next edge,across,along\nfront,hem,side,10 mm,-5 mm\n");
    assertEquals(0, run("--grades", grades.toString()));
    assertTrue(said().contains("all sizes: WARNING side: In size XL front side is"), said());
  }

  @Test
  void refusesWhatItDoesNotKnow() {
    assertEquals(2, run("--for", "cats"));
    assertEquals(2, run("--for", "women", "--from", "90"));
    assertEquals(2, run("--for", "women", "--stretch", "soft"));
    assertEquals(2, run("--for", "children", "--template", "leggings"));
    assertFalse(Files.exists(folder.resolve("sizes")));
    assertTrue(err.toString(StandardCharsets.UTF_8).contains("women, men, children"));
  }
}
