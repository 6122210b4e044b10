package dev.drafting.export.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.drawing.Stroke;
import dev.drafting.export.drawing.StrokeStyle;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class DxfFormatTest {
  private static final Curve MIXED =
      Curve.of(
          new Line(new Point(0, 0), new Point(90.5, 0)),
          new Cubic(new Point(90.5, 0), new Point(100, 10), new Point(95, 40), new Point(80, 50)),
          Arc.of(new Point(80, 60), Length.mm(10), Angle.degrees(-90), Angle.degrees(90)));

  private static String written(DxfFormat format, Drawing drawing) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    format.write(drawing, out);
    return out.toString(StandardCharsets.US_ASCII);
  }

  private static Drawing drawing() {
    return Drawing.of(
        "test",
        new Group(
            "piece",
            List.of(
                new Stroke(StrokeStyle.CUT_LINE, "cut", MIXED),
                Label.of("Größe M", new Point(10, 20), Length.mm(5)))));
  }

  @Test
  void everySegmentIsWhatItIs() throws IOException {
    String dxf = written(DxfFormat.of(), drawing());
    assertTrue(dxf.startsWith("  0\nSECTION\n  2\nHEADER\n  9\n$ACADVER\n  1\nAC1015\n"), dxf);
    assertTrue(dxf.endsWith("  0\nENDSEC\n  0\nEOF\n"));
    assertTrue(dxf.contains("$INSUNITS\n 70\n4\n"));
    assertTrue(
        dxf.contains(
            "  8\nCUT_LINE\n100\nAcDbLine\n 10\n0.0\n 20\n0.0\n 30\n0.0\n 11\n90.5\n 21\n0.0\n"));
    assertTrue(dxf.contains(" 10\n100.0\n 20\n10.0\n 30\n0.0\n 10\n95.0\n 20\n40.0\n"));
    assertTrue(dxf.contains("AcDbArc\n 50\n-90.0\n 51\n0.0\n"));
    assertTrue(dxf.contains(" 40\n5.0\n  1\nGr\\U+00F6\\U+00DFe M\n"));
    assertTrue(dxf.chars().allMatch(c -> c < 127), "plain ASCII");
  }

  @Test
  void aClockwiseArcIsTurnedRound() throws IOException {
    Curve clockwise =
        Curve.of(Arc.of(new Point(0, 0), Length.mm(10), Angle.degrees(90), Angle.degrees(-60)));
    Drawing drawing =
        Drawing.of("arc", new Group("a", List.of(new Stroke(StrokeStyle.MARKING, "", clockwise))));
    assertTrue(written(DxfFormat.of(), drawing).contains(" 50\n30.0\n 51\n90.0\n"));
  }

  @Test
  void layersCarryTheDashesOfTheirLines() throws IOException {
    String dxf = written(DxfFormat.of(), drawing());
    for (StrokeStyle style : StrokeStyle.values()) {
      assertTrue(dxf.contains(style.toString().toUpperCase(Locale.ROOT).replace(' ', '_')));
    }
    assertTrue(
        dxf.contains("JOIN_LINE\n 70\n0\n  3\njoin line\n 72\n65\n 73\n2\n 40\n3.75\n 49\n3.0\n"));
  }

  @Test
  void polylinesStayWithinTheTolerance() throws IOException {
    String dxf = written(DxfFormat.withPolylines(Length.mm(0.1)), drawing());
    assertTrue(dxf.contains("LWPOLYLINE"));
    assertTrue(!dxf.contains("SPLINE") && !dxf.contains("AcDbArc"));
    List<String> lines = dxf.substring(dxf.indexOf("AcDbPolyline")).lines().toList();
    int points = 0;
    for (int i = 5; i + 3 < lines.size() && lines.get(i).equals(" 10"); i += 4) {
      Point at =
          new Point(Double.parseDouble(lines.get(i + 1)), Double.parseDouble(lines.get(i + 3)));
      assertTrue(MIXED.nearest(at).distance().toMm() < 1e-6, at.toString());
      points++;
    }
    assertTrue(points > 6, points + " points");
    assertEquals(
        "DXF with polylines within 0.1 mm", DxfFormat.withPolylines(Length.mm(0.1)).toString());
    assertEquals(
        "the tolerance of polylines is out of range. Found: 2 mm. Accepted: 0.001 to 1 mm.",
        assertThrows(DraftingException.class, () -> DxfFormat.withPolylines(Length.mm(2)))
            .getMessage());
  }

  @Test
  void theSameDrawingGivesTheSameBytes() throws IOException {
    assertEquals(written(DxfFormat.of(), drawing()), written(DxfFormat.of(), drawing()));
    assertEquals(".dxf", DxfFormat.of().fileEnding());
  }
}
