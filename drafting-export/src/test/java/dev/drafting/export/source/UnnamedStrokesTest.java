package dev.drafting.export.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.Piece;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A tube of two halves, traced past its corners; its edges are named afterwards. */
class UnnamedStrokesTest {
  private static final String DESCRIPTION =
      """
      {
        "name": "Tube",
        "pieces": [
          {"name": "front", "traced": "half on the fold", "edges": ["hem", "side", "top"],
            "cut": "on the fold", "straight": ["side"]},
          {"name": "back", "traced": "whole", "edges": ["hem", "side", "top", "side"],
            "cut": "on the fold"}
        ],
        "seams": [{"name": "side", "join": ["front side", "back side"], "allowance": "7 mm"}],
        "finishes": [{"edges": ["front hem", "back hem", "front top", "back top"], "finish": "raw"}],
        "fabrics": [{"name": "Jersey", "structure": "jersey", "stretch": "40 %"}],
        "makes": [{"name": "plain", "cloths": {"body": "jersey"}}]
      }
      """;

  @TempDir Path folder;

  @BeforeEach
  void write() throws IOException {
    StringBuilder points = new StringBuilder("piece,edge,x,y\n");
    for (int x = 0; x <= 20; x++) {
      points.append("front,,").append(x).append(",0\n");
    }
    for (int y = 1; y <= 50; y++) {
      points.append("front,,20,").append(y).append('\n');
    }
    for (int x = 19; x >= 0; x--) {
      points.append("front,,").append(x).append(",50\n");
    }
    // Set down in the middle of an edge, and turned the other way.
    points.append("back,,140,25\nback,,140,0\nback,,120,0\nback,,100,0\nback,,100,50\n");
    points.append("back,,120,50\nback,,140,50\nback,,140,25\n");
    Files.writeString(folder.resolve("tracing.csv"), points);
    Files.writeString(folder.resolve("garment.json"), DESCRIPTION);
  }

  private String refused(String file, String from, String to) throws IOException {
    String text = Files.readString(folder.resolve(file));
    assertTrue(text.contains(from), from);
    Files.writeString(folder.resolve(file), text.replace(from, to));
    return Refusal.of(() -> GarmentFolder.read(folder));
  }

  @Test
  void theEdgesAreNamedInTheirOrder() {
    Garment garment = GarmentFolder.read(folder);
    for (Piece piece : garment.pattern().pieces()) {
      assertEquals("200 mm", piece.edge("hem").length().text(LengthUnit.MM), piece.name());
      assertEquals("500 mm", piece.edge("side").length().text(LengthUnit.MM), piece.name());
    }
  }

  @Test
  void namesThatDoNotMatchTheCornersAreSaid() throws IOException {
    assertEquals(
        "tracing.csv, lines 2 to 92: garment.json, line 4, column 62, field pieces 1 / edges: "
            + "there are not as many edges as stretches between corners. Found: hem, top. "
            + "Accepted: 1: (0, 0) to (200, 0), 200 mm apart; 2: (200, 0) to (200, 500), 500 mm apart; "
            + "3: (200, 500) to (0, 500), 200 mm apart.",
        refused("garment.json", "\"hem\", \"side\", \"top\"]", "\"hem\", \"top\"]"));
  }

  @Test
  void edgesAreNamedOnceOnly() throws IOException {
    assertEquals(
        "tracing.csv, line 4, field edge: some lines of a piece name their edge and some do not. "
            + "Found: nothing. Accepted: an edge in every line of the piece, or in none.",
        refused("tracing.csv", "front,,0,0", "front,hem,0,0\nfront,hem,1,0"));
    write();
    assertEquals(
        "tracing.csv, lines 2 to 92: garment.json, line 4, column 5, field pieces 1: a field is missing. "
            + "Accepted: the field \"edges\".",
        refused("garment.json", "\"edges\": [\"hem\", \"side\", \"top\"],", ""));
  }
}
