package dev.drafting.export.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.pattern.Pattern;
import dev.drafting.export.TestGarment;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

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
}
