package dev.drafting.export.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.pattern.Pattern;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A tube skirt in a photograph taken at an angle, a sheet of A4 (ISO 216) beside it. */
class DrawnSheetTest {
  private static final String SHEET = "\"sheet\": {\"width\": \"21 cm\", \"height\": \"297 mm\"}, ";
  private static final double[][] A4 = {{0, 0}, {21, 0}, {21, 29.7}, {0, 29.7}};

  @TempDir Path folder;

  @BeforeEach
  void write() throws IOException {
    photograph(0, 1, A4);
  }

  /** Beginning at one of the corners of the sheet; a sign of -1 makes y run down. */
  private void photograph(int first, int sign, double[][] sheet) throws IOException {
    StringBuilder seen = new StringBuilder();
    for (String line : TubeSkirt.TRACING.lines().toList()) {
      String[] cells = line.split(",", -1);
      seen.append(
          cells[2].equals("x")
              ? line
              : cells[0] + "," + cells[1] + "," + seen(cells[2], cells[3], sign));
      seen.append('\n');
    }
    for (int i = 0; i < sheet.length; i++) {
      double[] corner = sheet[(i + first) % sheet.length];
      seen.append("sheet,,").append(seen(corner[0] + "", corner[1] + "", sign)).append('\n');
    }
    TubeSkirt.write(
        folder, TubeSkirt.DESCRIPTION.replace("\"pieces\": [", SHEET + "\"pieces\": ["));
    Files.writeString(folder.resolve("tracing.csv"), seen);
  }

  private static String seen(String across, String up, int sign) {
    double x = Double.parseDouble(across);
    double y = Double.parseDouble(up);
    double depth = 1 + x / 900 + y / 700;
    return String.format(
        Locale.ROOT, "%.12f,%.12f", (2 * x + y / 9 - 40) / depth, sign * (1.9 * y + 7) / depth);
  }

  private List<Finding> findings() {
    return GarmentFolder.read(folder).findings();
  }

  @Test
  void whatWasSeenIsPutRightByTheSheet() throws IOException {
    Pattern photographed = GarmentFolder.read(folder).pattern();
    TubeSkirt.write(folder, TubeSkirt.DESCRIPTION);
    Pattern traced = GarmentFolder.read(folder).pattern();
    traced
        .pieces()
        .forEach(
            piece ->
                piece
                    .edges()
                    .forEach(
                        edge ->
                            assertEquals(
                                edge.length().toMm(),
                                photographed.piece(piece.name()).edge(edge.name()).length().toMm(),
                                1e-6)));
  }

  @Test
  void howAskewTheSheetWasSeenIsSaid() {
    assertEquals(1, findings().size());
    assertEquals("trace.sheet", findings().get(0).id());
    String said = findings().get(0).reason();
    assertTrue(said.startsWith("all tracings were put right by the sheet: 210 mm x 297 mm"), said);
    assertTrue(said.contains("out of square by "), said);
  }

  @Test
  void aPictureWhoseYRunsDownIsTurnedOver() throws IOException {
    photograph(0, -1, A4);
    assertTrue(findings().get(0).reason().endsWith(", turned over"), findings().toString());
    Pattern pattern = GarmentFolder.read(folder).pattern();
    assertEquals(500, pattern.piece("front").edge("side").length().toMm(), 1e-6);
  }

  @Test
  void aSheetOnItsSideIsSaid() throws IOException {
    photograph(0, 1, new double[][] {{0, 0}, {29.7, 0}, {29.7, 21}, {0, 21}});
    assertEquals("trace.sheet-on-its-side", findings().get(1).id());
    assertTrue(
        findings().get(1).remedies().get(0).toString().contains("exchange width and height"));
  }

  @Test
  void aSheetHasFourCornersOnce() throws IOException {
    String described = Files.readString(folder.resolve("garment.json"));
    String traced = Files.readString(folder.resolve("tracing.csv"));
    Files.writeString(
        folder.resolve("tracing.csv"),
        traced + "front,hem,0,0\nfront,hem,9,0\nsheet,,1,1\nsheet,,2,2\n");
    assertTrue(refused().contains("2 strokes called sheet"), refused());
    photograph(0, 1, new double[][] {{0, 0}, {21, 0}, {10, 29.7}});
    assertTrue(refused().contains("3 corners. Accepted: lower left, lower right"), refused());
    photograph(0, 1, new double[][] {{0, 0}, {21, 0}, {0, 29.7}, {21, 29.7}});
    assertTrue(refused().contains("the corners of a drawn rectangle lie badly"), refused());
    TubeSkirt.write(folder, described);
    assertTrue(refused().contains("0 strokes called sheet"), refused());
    photograph(0, 1, A4);
    TubeSkirt.write(folder, TubeSkirt.DESCRIPTION);
    Files.writeString(folder.resolve("tracing.csv"), traced);
    assertTrue(refused().contains("not described in garment.json"), refused());
  }

  private String refused() {
    return Refusal.of(() -> GarmentFolder.read(folder));
  }
}
