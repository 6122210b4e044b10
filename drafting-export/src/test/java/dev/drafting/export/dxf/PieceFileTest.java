package dev.drafting.export.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Notch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.knit.Draft;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class PieceFileTest {
  private static final Piece HALF =
      Piece.of(
              "upper front",
              List.of(
                  Edge.of("hem", Curve.line(new Point(0, 0), new Point(200, 0))),
                  Edge.of("side", Curve.line(new Point(200, 0), new Point(200, 300))),
                  Edge.of("top", Curve.line(new Point(200, 300), new Point(0, 300))),
                  Edge.onFold(Curve.line(new Point(0, 300), new Point(0, 0)))))
          .withNotch(Notch.of("side", Length.mm(100), "back"));

  private static String written() throws IOException {
    Pattern tube =
        Pattern.of(
                "Tube",
                List.of(HALF, Piece.of("back", HALF.edges())),
                List.of(
                    Seam.of(
                        "side", new EdgeRef("upper front", "side"), new EdgeRef("back", "side"))))
            .withSeamAllowance(Length.mm(10));
    Draft draft = Draft.of(tube).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.3));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PieceFile.of(draft).write(out);
    return out.toString(StandardCharsets.US_ASCII);
  }

  private static int count(String text, String part) {
    return text.split(java.util.regex.Pattern.quote(part), -1).length - 1;
  }

  @Test
  void everyPieceIsABlock() throws IOException {
    String dxf = written();
    assertEquals(2, count(dxf, "  0\nBLOCK\n"));
    assertEquals(2, count(dxf, "  0\nINSERT\n"));
    assertTrue(dxf.contains("  2\nupper_front\n"));
    assertTrue(dxf.contains("PIECE NAME: upper front\n"));
    assertTrue(dxf.contains("STYLE NAME: Tube"));
    assertTrue(dxf.contains("UNITS: METRIC"));
    assertTrue(dxf.contains("QUANTITY: cut 1 on the fold"));
    assertTrue(dxf.contains("MATERIAL: body"));
  }

  @Test
  void linesLieOnTheirLayers() throws IOException {
    String dxf = written();
    assertEquals(2, count(dxf, "  0\nPOLYLINE\n  8\n1\n"), "cut lines");
    assertEquals(2, count(dxf, "  0\nLINE\n  8\n6\n"), "folds");
    assertEquals(2, count(dxf, "  0\nLINE\n  8\n7\n"), "grains");
    assertEquals(1, count(dxf, "  0\nPOINT\n  8\n4\n"), "notches");
    assertEquals(2, count(dxf, "  0\nPOLYLINE\n  8\n14\n"), "sides to sew");
    assertEquals(0, count(dxf, "  0\nPOINT\n  8\n3\n"), "no curves");
    assertTrue(
        dxf.contains("  0\nVERTEX\n  8\n1\n 10\n210.0\n 20\n0.0\n"), "allowance at the side");
    assertEquals(dxf, written());
  }
}
