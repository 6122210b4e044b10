package dev.drafting.export.drawing;

import dev.drafting.core.Experimental;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * A page to measure by while sewing: a gauge for turn-ups, to be cut out, and ladders for the
 * stretch test in centimetres and inches. It is a page of 200 by 270 mm from the lower left corner
 * of the paper, so that it goes on every paper.
 *
 * <pre>{@code
 * GaugeDrawing.of().title();  // => Gauge for turn-ups and stretch
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class GaugeDrawing {
  private static final double INCH = 25.4;
  private static final double FOOT = 26;
  private static final double TURN_UP_LEFT = 14;
  private static final double TURN_UP_WIDTH = 52;
  private static final double TURN_UP_HEIGHT = 90;
  private static final double WORDS_LEFT = 14;
  private static final double WORDS_WIDTH = 100;
  private static final double METRIC_LEFT = 128;
  private static final double INCH_LEFT = 164;
  private static final double LADDER_WIDTH = 26;
  private static final double TITLE = 5;
  private static final double BODY = 2.4;
  private static final double SMALL = 2;

  private final List<Element> elements = new ArrayList<>();

  private GaugeDrawing() {}

  /**
   * The page.
   *
   * @return one group
   */
  public static Drawing of() {
    GaugeDrawing page = new GaugeDrawing();
    String title = "Gauge for turn-ups and stretch";
    double below = page.words(title, TITLE, WORDS_LEFT, 252, 180);
    page.stretchWords(below - 7);
    page.turnUps();
    page.ladder(METRIC_LEFT, 100, "10 cm at rest");
    page.ladder(INCH_LEFT, 4 * INCH, "4 in at rest");
    return Drawing.of(title, new Group("gauge", page.elements));
  }

  private void stretchWords(double top) {
    double y = words("Stretch test", 3.5, WORDS_LEFT, top, WORDS_WIDTH);
    for (String line :
        List.of(
            "Print at 100 %. True if 0 and \"10 cm at rest\" are 100 mm apart, within 0.5 mm.",
            "1  Fold the cloth across its width, away from selvage and cut edge. Pin twice in the"
                + " fold, 10 cm (or 4 in) apart.",
            "2  Hold one pin at 0. Pull the other up the ladder as far as it goes easily, no"
                + " further. Read the line beside it: that is the stretch.",
            "3  Let go. How far the pin stays above \"at rest\" is what the cloth has grown.",
            "4  Do it three times, along the cloth as well, and take the mean of each.")) {
      y = words(line, BODY, WORDS_LEFT, y - 2, WORDS_WIDTH);
    }
  }

  /** Rungs at every 5 per cent of the length at rest, up to twice that length. */
  private void ladder(double left, double rest, String name) {
    line(StrokeStyle.FRAME, left, FOOT, left, FOOT + 2 * rest);
    line(StrokeStyle.CUT_LINE, left, FOOT, left + LADDER_WIDTH, FOOT);
    label("0, hold here", SMALL, left, FOOT - 4);
    line(StrokeStyle.CUT_LINE, left, FOOT + rest, left + LADDER_WIDTH, FOOT + rest);
    label(name, SMALL, left + 2, FOOT + rest - 3.6);
    for (int percent = 5; percent <= 100; percent += 5) {
      double y = FOOT + rest * (1 + percent / 100.0);
      boolean ten = percent % 10 == 0;
      line(StrokeStyle.FRAME, left, y, left + (ten ? 10 : 5), y);
      if (ten) {
        label(percent + " %", SMALL, left + 12, y - 1);
      }
    }
  }

  /**
   * Lines above a lower edge, in millimetres at the left and in quarters of an inch at the right.
   */
  private void turnUps() {
    double y = words("Turn-ups", 3.5, WORDS_LEFT, 156, WORDS_WIDTH);
    for (String line :
        List.of(
            "Cut the gauge out along the heavy line. Lay it on the wrong side of the cloth, its lower"
                + " edge where the fold is to come, and fold the cloth up over it until the cut edge"
                + " meets the line of your turn-up.",
            "Pin, take the gauge out, then press: paper scorches under the iron.")) {
      y = words(line, BODY, WORDS_LEFT, y - 2, WORDS_WIDTH);
    }
    double right = TURN_UP_LEFT + TURN_UP_WIDTH;
    box(TURN_UP_LEFT, FOOT, right, FOOT + TURN_UP_HEIGHT);
    for (int mm = 5; mm <= 60; mm += 5) {
      double up = FOOT + mm;
      line(StrokeStyle.FRAME, TURN_UP_LEFT, up, TURN_UP_LEFT + (mm % 10 == 0 ? 12 : 8), up);
      label(mm + " mm", SMALL, TURN_UP_LEFT + 13, up - 1);
    }
    for (int quarter = 1; quarter <= 10; quarter++) {
      double up = FOOT + quarter * INCH / 4;
      line(StrokeStyle.FRAME, right - (quarter % 4 == 0 ? 12 : 8), up, right, up);
      label(inches(quarter), SMALL, right - 24, up - 1);
    }
    label("fold the cloth here", SMALL, TURN_UP_LEFT + 14, FOOT - 4);
    label("turn-ups", 3, TURN_UP_LEFT + 17, FOOT + TURN_UP_HEIGHT - 12);
  }

  private static String inches(int quarters) {
    return Length.inches(quarters / 4.0).toFraction(4);
  }

  private double words(String text, double height, double left, double top, double width) {
    double y = top;
    for (String line : Lettering.wrap(text, Length.mm(height), Length.mm(width))) {
      label(line, height, left, y - height);
      y -= 1.75 * height;
    }
    return y;
  }

  private void label(String text, double height, double left, double baseLine) {
    elements.add(Label.of(text, new Point(left, baseLine), Length.mm(height)));
  }

  private void line(StrokeStyle style, double x1, double y1, double x2, double y2) {
    elements.add(new Stroke(style, "", Curve.line(new Point(x1, y1), new Point(x2, y2))));
  }

  private void box(double left, double bottom, double right, double top) {
    Box box = new Box(left, bottom, right, top);
    elements.add(
        new Stroke(
            StrokeStyle.CUT_LINE,
            "turn-up gauge",
            Curve.polyline(
                new Point(box.minX(), box.minY()),
                new Point(box.maxX(), box.minY()),
                new Point(box.maxX(), box.maxY()),
                new Point(box.minX(), box.maxY()),
                new Point(box.minX(), box.minY()))));
  }
}
