package dev.drafting.export.hpgl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.drawing.Stroke;
import dev.drafting.export.drawing.StrokeStyle;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class HpglFormatTest {
  private static final Curve SQUARE =
      Curve.polyline(
          new Point(0, 0), new Point(90, 0), new Point(90, 90), new Point(0, 90), new Point(0, 0));

  @Test
  void drawsASquareInUnitsOfAFortiethOfAMillimetre() throws IOException {
    String plot = plot(new Stroke(style(false), "", SQUARE));
    assertTrue(
        plot.contains("PU200,200;PD3800,200,3800,3800,200,3800,200,200;"), () -> "in " + plot);
    assertTrue(plot.startsWith("IN;SP1;"), plot);
    assertTrue(plot.endsWith("PU;SP0;\n"), plot);
  }

  @Test
  void drawsDashesAsLinesOfTheirOwn() throws IOException {
    StrokeStyle style = style(true);
    double period = 0;
    double on = 0;
    for (int i = 0; i < style.dashes().size(); i++) {
      double mm = style.dashes().get(i).toMm();
      period += mm;
      on += i % 2 == 0 ? mm : 0;
    }
    Curve line = Curve.line(new Point(0, 0), new Point(100 * period, 0));
    assertEquals(100 * on, drawn(plot(new Stroke(style, "", line))), 100 * 2 * 0.025);
  }

  @Test
  void writesTextsInPlainLetters() throws IOException {
    Label label = Label.of("Größe ½", new Point(10, 10), Length.mm(5));
    String plot = plot(new Stroke(style(false), "", SQUARE), label);
    assertTrue(plot.contains(";LBGrosse 1/2\u0003"), plot);
    assertTrue(plot.contains(",0.500;LB"), plot);
  }

  private static StrokeStyle style(boolean dashed) {
    return Arrays.stream(StrokeStyle.values())
        .filter(style -> style.dashes().isEmpty() != dashed)
        .findFirst()
        .orElseThrow();
  }

  private static String plot(dev.drafting.export.drawing.Element... elements) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    HpglFormat.of().write(Drawing.of("square", new Group("square", List.of(elements))), out);
    return out.toString(StandardCharsets.US_ASCII);
  }

  /** Length drawn in mm with the pen down. */
  private static double drawn(String plot) {
    double sum = 0;
    double x = 0;
    double y = 0;
    for (String command : plot.replace("\n", "").split(";", -1)) {
      if (command.matches("P[UD][0-9].*")) {
        String[] at = command.substring(2).split(",", -1);
        for (int i = 0; i < at.length; i += 2) {
          double nextX = Double.parseDouble(at[i]) / 40;
          double nextY = Double.parseDouble(at[i + 1]) / 40;
          sum += command.startsWith("PD") ? Math.hypot(nextX - x, nextY - y) : 0;
          x = nextX;
          y = nextY;
        }
      }
    }
    return sum;
  }
}
