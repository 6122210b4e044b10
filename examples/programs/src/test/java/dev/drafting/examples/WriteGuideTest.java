package dev.drafting.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WriteGuideTest {
  private static final Pattern PICTURE = Pattern.compile("<img src=\"([^\"]+)\" alt=\"([^\"]+)\"");

  @TempDir Path folder;

  private final ByteArrayOutputStream said = new ByteArrayOutputStream();

  private int write(Path texts, Path out) {
    PrintStream stream = new PrintStream(said, true, StandardCharsets.UTF_8);
    String[] args = {
      "--texts", texts.toString(), "--garment", Vest.FOLDER.toString(), "--out", out.toString()
    };
    return WriteGuide.run(args, stream, stream);
  }

  @Test
  void everyPictureOfThePageIsThereAndDescribed() throws IOException {
    Path out = folder.resolve("guide");
    assertEquals(0, write(Path.of("guide"), out), said.toString(StandardCharsets.UTF_8));
    String page = Files.readString(out.resolve("index.html"));
    Matcher pictures = PICTURE.matcher(page);
    int count = 0;
    while (pictures.find()) {
      assertTrue(Files.size(out.resolve(pictures.group(1))) > 500, pictures.group(1));
      assertTrue(pictures.group(2).length() > 20, "not described: " + pictures.group(1));
      count++;
    }
    assertEquals(9, count);
    assertEquals(13, page.split("<h2>", -1).length - 1);
    String overview = Files.readString(out.resolve("overview.html"));
    for (String picture :
        new String[] {"traced", "finished", "sew", "band", "findings", "lay", "cut", "changes"}) {
      assertTrue(overview.contains("pictures/" + picture + ".svg"), picture);
    }
  }

  @Test
  void withoutItsTextsNothingIsWritten() {
    Path out = folder.resolve("guide");
    assertEquals(2, write(folder.resolve("nowhere"), out));
    assertFalse(Files.exists(out));
  }
}
