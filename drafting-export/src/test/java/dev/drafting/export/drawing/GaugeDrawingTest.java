package dev.drafting.export.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.fabric.GaugeReading;
import java.util.List;
import org.junit.jupiter.api.Test;

class GaugeDrawingTest {
  private static final Group GAUGE = GaugeDrawing.of().groups().get(0);

  @Test
  void itGoesOnEveryPaper() {
    Box page = new Box(10, 10, 190, 260);
    assertEquals(page, page.union(GAUGE.bounds()));
  }

  /** 10 cm pulled to 15 are 50 %: the rung of 50 % lies 150 mm above 0. */
  @Test
  void rungsAreWhereAGaugeReadingSays() {
    for (double rest : new double[] {100, 101.6}) {
      for (int percent = 10; percent <= 100; percent += 10) {
        double pulled = rest * (1 + percent / 100.0);
        GaugeReading reading = GaugeReading.of(Length.mm(rest), Length.mm(pulled), Length.mm(rest));
        assertEquals(percent / 100.0, reading.stretch(), 1e-9);
        double y = 26 + pulled;
        assertEquals(
            1,
            GAUGE.strokes(StrokeStyle.FRAME).stream()
                .map(Stroke::bounds)
                .filter(b -> b.height().toMm() == 0 && Math.abs(b.minY() - y) < 1e-9)
                .count(),
            percent + " % of " + rest);
      }
    }
  }

  @Test
  void turnUpsAreMeasuredFromTheLowerEdge() {
    double edge =
        GAUGE.strokes(StrokeStyle.CUT_LINE).stream()
            .filter(s -> s.name().equals("turn-up gauge"))
            .findFirst()
            .orElseThrow()
            .bounds()
            .minY();
    for (double up : new double[] {5, 20, 60, 6.35, 25.4, 63.5}) {
      assertEquals(
          1,
          GAUGE.strokes(StrokeStyle.FRAME).stream()
              .map(Stroke::bounds)
              .filter(b -> b.maxX() < 70 && Math.abs(b.minY() - edge - up) < 1e-9)
              .count(),
          up + " mm");
    }
  }

  @Test
  void textsLieApart() {
    List<Label> labels = GAUGE.labels();
    for (int i = 0; i < labels.size(); i++) {
      for (int j = 0; j < i; j++) {
        Box a = labels.get(i).bounds();
        Box b = labels.get(j).bounds();
        assertFalse(
            a.minX() < b.maxX()
                && b.minX() < a.maxX()
                && a.minY() < b.maxY()
                && b.minY() < a.maxY(),
            labels.get(i) + " on " + labels.get(j));
      }
    }
  }
}
