package dev.drafting.export.drawing;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.sewing.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The pictures of steps that are not about the edges of pieces, in a frame of 100 by 60 mm. */
final class SceneDrawing {
  private static final Length LETTERS = Length.mm(7);

  private final List<Element> elements = new ArrayList<>();

  private SceneDrawing() {}

  static Group of(Step.Scene scene) {
    SceneDrawing picture = new SceneDrawing();
    switch (scene) {
      case WASHING -> picture.washing();
      case RESTING -> picture.resting();
      case STRETCHING -> picture.stretching();
      case PRINTING -> picture.printing();
      case SCRAP -> picture.scrap();
      case MEASURING, EDGES -> picture.measuring();
    }
    return new Group(scene.name().toLowerCase(Locale.ROOT), picture.elements);
  }

  /** A folded cloth half under water. */
  private void washing() {
    thin(box(30, 12, 70, 48));
    for (int row = 0; row < 3; row++) {
      worked(wave(10, 90, 14 + 10 * row));
    }
  }

  /** Cloth flat on a table, nothing hanging down. */
  private void resting() {
    worked(line(20, 38, 80, 38));
    thin(line(5, 35, 95, 35));
    thin(line(15, 35, 15, 5));
    thin(line(85, 35, 85, 5));
  }

  /** The two pins at rest, and where the second one goes. */
  private void stretching() {
    thin(box(5, 20, 95, 42));
    worked(line(20, 16, 20, 46));
    worked(line(60, 16, 60, 46));
    thin(line(80, 16, 80, 46));
    thin(line(62, 31, 78, 31));
    thin(line(78, 31, 74, 34));
    thin(line(78, 31, 74, 28));
    words("10 cm", 40, 4);
  }

  /** The first sheet with its square. */
  private void printing() {
    thin(box(28, 2, 72, 58));
    worked(box(38, 22, 62, 46));
    words("100 mm", 50, 8);
  }

  /** Two scraps, one on the other, and a row of stitches. */
  private void scrap() {
    thin(box(15, 12, 70, 42));
    thin(box(25, 20, 85, 50));
    for (int stitch = 0; stitch < 6; stitch++) {
      worked(line(28 + 7 * stitch, 36, 32 + 7 * stitch, 36));
    }
  }

  /** A tape measure. */
  private void measuring() {
    thin(box(5, 22, 95, 38));
    for (int mark = 1; mark < 9; mark++) {
      worked(line(5 + 10 * mark, 22, 5 + 10 * mark, mark % 5 == 0 ? 34 : 29));
    }
  }

  private void thin(Curve curve) {
    elements.add(new Stroke(StrokeStyle.FRAME, "", curve));
  }

  private void worked(Curve curve) {
    elements.add(new Stroke(StrokeStyle.WORKED, "", curve));
  }

  private void words(String text, double x, double y) {
    elements.add(Label.of(text, new Point(x, y), LETTERS).withAnchor(Anchor.MIDDLE));
  }

  private static Curve line(double x0, double y0, double x1, double y1) {
    return Curve.line(new Point(x0, y0), new Point(x1, y1));
  }

  private static Curve box(double x0, double y0, double x1, double y1) {
    return Curve.polyline(
        new Point(x0, y0),
        new Point(x1, y0),
        new Point(x1, y1),
        new Point(x0, y1),
        new Point(x0, y0));
  }

  private static Curve wave(double from, double to, double y) {
    List<Segment> waves = new ArrayList<>();
    double length = (to - from) / 4;
    Point at = new Point(from, y);
    for (int i = 0; i < 4; i++) {
      double lift = i % 2 == 0 ? 5 : -5;
      Point end = at.plus(new Vector(length, 0));
      waves.add(
          new Cubic(
              at,
              at.plus(new Vector(length / 3, lift)),
              end.plus(new Vector(-length / 3, lift)),
              end));
      at = end;
    }
    return Curve.of(waves);
  }
}
