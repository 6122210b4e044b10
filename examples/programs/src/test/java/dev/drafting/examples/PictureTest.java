package dev.drafting.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.export.drawing.DraftDrawing;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.source.GarmentFolder;
import dev.drafting.export.svg.SvgFormat;
import dev.drafting.knit.Draft;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The picture in README is what the program draws. */
class PictureTest {
  private static final Path SHOWN = Path.of("pictures", "front.svg");
  private static final Path DRAWN = Path.of("target", "front.svg");

  @Test
  void readmeShowsTheFrontPieceAsItIsDrawnNow() throws IOException {
    Draft vest = GarmentFolder.read(Path.of("garments", "vest")).makes().values().iterator().next();
    Drawing front = Drawing.of("Boathouse vest: front", DraftDrawing.of(vest).groups().get(0));
    try (OutputStream out = Files.newOutputStream(DRAWN)) {
      SvgFormat.of().write(front, out);
    }
    assertEquals(
        Files.readString(DRAWN),
        Files.readString(SHOWN),
        "look at " + DRAWN + "; if it is right, copy it to " + SHOWN);
  }
}
