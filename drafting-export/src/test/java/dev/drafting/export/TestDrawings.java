package dev.drafting.export;

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
import java.util.List;

/** Drawings of known size for the tests of all formats. */
public final class TestDrawings {
  private TestDrawings() {}

  /** Half a front, 240 mm across and 670 mm high, with an arc, a dashed line and a text. */
  public static Group front(String name) {
    return new Group(
        name,
        List.of(
            new Stroke(StrokeStyle.CUT_LINE, "", outline()),
            new Stroke(
                StrokeStyle.JOIN_LINE,
                "side",
                Curve.of(
                    new Cubic(
                        new Point(233, 0),
                        new Point(228, 150),
                        new Point(213, 300),
                        new Point(228, 420)))),
            new Stroke(StrokeStyle.FOLD, "hem", Curve.line(new Point(0, 25), new Point(239, 25))),
            new Stroke(
                StrokeStyle.MARKING,
                "pocket",
                Curve.of(
                    Arc.of(
                        new Point(120, 300), Length.mm(40), Angle.degrees(0), Angle.degrees(360)))),
            Label.of(name, new Point(60, 450), Length.mm(7))));
  }

  private static Curve outline() {
    Point hem = new Point(240, 0);
    Point underarm = new Point(235, 420);
    Point tip = new Point(170, 640);
    Point neck = new Point(110, 670);
    Point front = new Point(0, 540);
    Point start = new Point(0, 0);
    return Curve.of(
        new Line(start, hem),
        new Cubic(hem, new Point(235, 150), new Point(220, 300), underarm),
        new Cubic(underarm, new Point(150, 430), new Point(160, 560), tip),
        new Line(tip, neck),
        new Cubic(neck, new Point(100, 560), new Point(60, 540), front),
        new Line(front, start));
  }

  /** Two pieces side by side. */
  public static Drawing vest() {
    return Drawing.sideBySide(
        "Boathouse vest", List.of(front("front"), front("back")), Length.mm(30));
  }

  /** An upright rectangle with its lower left corner at the origin. */
  public static Group rectangle(String name, double width, double height) {
    Curve around =
        Curve.polyline(
            new Point(0, 0),
            new Point(width, 0),
            new Point(width, height),
            new Point(0, height),
            new Point(0, 0));
    return new Group(name, List.of(new Stroke(StrokeStyle.CUT_LINE, "edge", around)));
  }
}
