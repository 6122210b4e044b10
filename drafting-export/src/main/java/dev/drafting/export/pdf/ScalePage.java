package dev.drafting.export.pdf;

import dev.drafting.export.drawing.Element;
import java.util.ArrayList;
import java.util.List;

/** Sheet 1: two squares that prove the scale, what to do if it is off, and what the sheets are. */
final class ScalePage {
  private static final double LETTERS = 6;
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
            .line(3.2, title)
            .text(2.5, "Pattern at true size for " + paper.name() + " paper");
    page.addAll(head.labels());
    page.addAll(TestSquare.ofCentimetres(10).at(SQUARES_LEFT, METRIC_BOTTOM, LETTERS));
    page.addAll(TestSquare.ofInches(4).at(SQUARES_LEFT, INCH_BOTTOM, LETTERS));
    page.addAll(words(squaresTop, right, sheets));
    return page;
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
