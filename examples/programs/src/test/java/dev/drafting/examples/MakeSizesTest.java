package dev.drafting.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MakeSizesTest {
  @TempDir Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String template) {
    return MakeSizes.run(
        new String[] {"--template", template, "--out", folder.resolve("sizes").toString()},
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
}
