package dev.drafting.export.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.template.Dimensions;
import dev.drafting.core.template.SizeRun;
import dev.drafting.core.template.Templates;
import dev.drafting.export.TestGarment;
import java.awt.geom.Line2D;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NestedDrawingTest {
  private static Drawing run(int sizes) {
    Map<String, Pattern> run = new LinkedHashMap<>();
    for (int i = 0; i < sizes; i++) {
      run.put("size " + (34 + 2 * i), TestGarment.pattern());
    }
    return NestedDrawing.of("vest", run);
  }

  /** Sizes that lie next to each other, five on either side, never have the same dash. */
  @Test
  void neighbouringSizesAreToldApartByTheirDash() {
    Set<List<?>> dashes = new HashSet<>();
    for (int i = 0; i < 6; i++) {
      dashes.add(StrokeStyle.ofSize(i).dashes());
    }
    assertEquals(6, dashes.size());
    assertEquals(StrokeStyle.ofSize(0), StrokeStyle.ofSize(6));
  }

  @Test
  void everyPieceSaysWhichDashIsWhichSize() {
    for (Group piece : run(7).groups()) {
      for (int i = 0; i < 7; i++) {
        String size = "size " + (34 + 2 * i);
        StrokeStyle style = StrokeStyle.ofSize(i);
        assertTrue(
            piece.strokes(style).stream().anyMatch(s -> s.name().equals("hem " + size)), size);
        assertEquals(2, piece.labels().stream().filter(l -> l.text().equals(size)).count());
        Label row =
            piece.labels().stream()
                .filter(l -> l.text().equals(size) && l.anchor() == Anchor.START)
                .findFirst()
                .orElseThrow();
        assertTrue(
            piece.strokes(style).stream()
                .filter(s -> s.name().equals("sample"))
                .anyMatch(s -> Math.abs(s.curve().start().y() - row.at().y()) < 4),
            size);
      }
    }
  }

  @Test
  void theFoldIsDrawnOnce() {
    for (Group piece : run(3).groups()) {
      assertEquals(1, piece.strokes(StrokeStyle.FOLD).size());
    }
  }

  private static Map<String, Pattern> sizes(String template, String dimension, double stepMm) {
    SizeRun run = SizeRun.of("104", Dimensions.of().with(dimension, Length.cm(96)));
    for (String size : List.of("110", "116", "122")) {
      run = run.then(size, Map.of(dimension, Length.mm(stepMm)));
    }
    return run.patterns(Templates.installed().get(template));
  }

  /** Sizes that lie close together, or on each other, still have names that can be read. */
  @ParameterizedTest
  @CsvSource({
    "sleeveless-top,chest,40",
    "sleeveless-top,chest,4",
    "straight-skirt,hip,1",
    "straight-skirt,hip,0"
  })
  void noNameLiesOnAnother(String template, String dimension, double step) {
    for (Group group : NestedDrawing.of("sizes", sizes(template, dimension, step)).groups()) {
      List<Label> labels = group.labels();
      assertEquals(9, labels.size());
      for (int i = 0; i < labels.size(); i++) {
        for (int j = 0; j < i; j++) {
          assertFalse(meet(labels.get(i).bounds(), labels.get(j).bounds()), labels.toString());
        }
      }
    }
  }

  /**
   * The thin line from a name to its corner leads past the other names, and across no other line.
   */
  @ParameterizedTest
  @CsvSource({"40,8", "20,8", "6,8", "4,8", "4,4", "1,8", "0,4"})
  void noNameIsCrossedByTheLineOfAnother(double wider, double higher) {
    Map<String, Pattern> run = new LinkedHashMap<>();
    for (int i = 0; i < 5; i++) {
      Piece piece = sleeveless(i * wider, i * higher);
      run.put("size " + (i + 1), Pattern.of("vest", List.of(piece), List.of()));
    }
    Group group = NestedDrawing.of("vest", run).groups().get(0);
    List<Stroke> leaders = group.strokes(StrokeStyle.FRAME);
    assertEquals(5, leaders.size());
    for (Stroke leader : leaders) {
      Line2D line = line(leader);
      for (Label label : group.labels()) {
        Box box = label.bounds().widened(Length.mm(-0.01));
        assertFalse(
            line.intersects(box.minX(), box.minY(), box.width().toMm(), box.height().toMm()),
            leader + " across " + label);
      }
      for (Stroke other : leaders) {
        assertTrue(other.equals(leader) || !line.intersectsLine(line(other)), leader.name());
      }
    }
  }

  private static Line2D line(Stroke leader) {
    Point start = leader.curve().start();
    Point end = leader.curve().end();
    return new Line2D.Double(start.x(), start.y(), end.x(), end.y());
  }

  private static Piece sleeveless(double wider, double higher) {
    Point underarm = new Point(90 + wider, 90);
    Point tip = new Point(65 + wider / 2, 150 + higher);
    Point neck = new Point(32, 160 + higher);
    Point centre = new Point(0, 120 + higher / 2);
    return Piece.of(
        "front",
        List.of(
            Edge.of("hem", Curve.line(new Point(0, 0), new Point(90 + wider, 0))),
            Edge.of("side", Curve.line(new Point(90 + wider, 0), underarm)),
            Edge.of("armhole", Curve.line(underarm, tip)),
            Edge.of("shoulder", Curve.line(tip, neck)),
            Edge.of("neck", Curve.line(neck, centre)),
            Edge.onFold(Curve.line(centre, new Point(0, 0)))));
  }

  private static boolean meet(Box one, Box other) {
    return one.minX() < other.maxX()
        && one.maxX() > other.minX()
        && one.minY() < other.maxY()
        && one.maxY() > other.minY();
  }
}
