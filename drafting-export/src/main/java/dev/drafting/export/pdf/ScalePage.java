package dev.drafting.export.pdf;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Anchor;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.drawing.StrokeStyle;
import java.util.ArrayList;
import java.util.List;

/** Sheet 1: two squares that prove the scale, what to do if it is off, and what the sheets are. */
final class ScalePage {
  private static final double INCH = 25.4;
  private static final double SQUARES_LEFT = 20;
  private static final double METRIC_BOTTOM = 130;
  private static final double INCH_BOTTOM = 20;
  private static final double TEXT_LEFT = 129;
  private static final double TITLE_ABOVE_SQUARES = 33;

  private ScalePage() {}

  static List<Element> of(String title, Paper paper, List<String> sheets) {
    List<Element> page = new ArrayList<>();
    double right = paper.width().toMm() - 12;
    double squaresTop = METRIC_BOTTOM + 100;
    TextColumn head =
        new TextColumn(SQUARES_LEFT, squaresTop + TITLE_ABOVE_SQUARES, right - SQUARES_LEFT)
            .text(6, "Print this sheet first, alone")
            .text(3.2, title + " - pattern at true size for " + paper.name() + " paper");
    page.addAll(head.labels());
    page.addAll(square(METRIC_BOTTOM, 10, 10, "100 mm", "10 steps of 10 mm"));
    page.addAll(square(INCH_BOTTOM, INCH, 4, "4 in", "4 steps of 1 in"));
    page.addAll(words(squaresTop, right, sheets));
    return page;
  }

  private static List<Element> square(
      double bottom, double step, int steps, String side, String steppedText) {
    double size = step * steps;
    double left = SQUARES_LEFT;
    List<Element> square = new ArrayList<>();
    Box box = new Box(left, bottom, left + size, bottom + size);
    square.add(Lines.box(StrokeStyle.FRAME, side + " square", box));
    for (int i = 1; i < steps; i++) {
      double at = i * step;
      square.add(tick(left + at, bottom, left + at, bottom + 3));
      square.add(tick(left, bottom + at, left + 3, bottom + at));
    }
    square.add(text(side, left + size / 2, bottom + size / 2, 6));
    square.add(text(steppedText, left + size / 2, bottom + size / 2 - 8, 2.5));
    return square;
  }

  private static Element tick(double x1, double y1, double x2, double y2) {
    return Lines.line(StrokeStyle.FRAME, "step", x1, y1, x2, y2);
  }

  private static Element text(String words, double x, double y, double height) {
    return Label.of(words, new Point(x, y), Length.mm(height)).withAnchor(Anchor.MIDDLE);
  }

  private static List<Element> words(double top, double right, List<String> sheets) {
    TextColumn column =
        new TextColumn(TEXT_LEFT, top, right - TEXT_LEFT)
            .text(3.2, "1  Print")
            .text(2.5, "At 100\u00a0% or \"actual size\", with nothing fitted, shrunk or centred.")
            .gap(2)
            .text(3.2, "2  Measure")
            .text(
                2.5,
                "Lay your ruler or tape, the one you sew with, along all four sides of one"
                    + " square, from the middle of one line to the middle of the other.")
            .text(
                2.5,
                "Right: every side is 100\u00a0mm (or 4 in), at most 0.5\u00a0mm (1/64 in) more or less."
                    + " Print the other sheets with the same settings.")
            .gap(2)
            .text(3.2, "3  If it is off")
            .text(
                2.5,
                "Look for a setting that fits, scales or borders the page and switch it off; print"
                    + " this sheet again.")
            .text(
                2.5,
                "Still off by the same share both ways: set the scale by hand to 10\u00a0000 divided by"
                    + " the millimetres you measured. 97\u00a0mm: 103.1\u00a0%. 96\u00a0mm: 104.2\u00a0%. Print again"
                    + " and measure again.")
            .text(
                2.5,
                "Off one way only: this printer stretches the paper. Use another printer; a"
                    + " pattern from this one will not fit.")
            .gap(2)
            .text(3.2, "The sheets")
            .texts(2.5, sheets);
    return column.labels();
  }
}
