package dev.drafting.export.drawing;

import dev.drafting.core.Stable;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What the lines of a drawing mean: a sample of each kind that is used, and its meaning in words.
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * Legend.of(DraftDrawing.of(top)).name();  // => legend
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Legend {
  private static final Length LETTERS = Length.mm(2.5);

  /** No name of an edge or a line, so that a sample is not taken for one. */
  private static final String SAMPLE_NAME = "sample";

  private static final double SAMPLE = 24;
  private static final double TEXT = 28;
  private static final double STEP = 6.5;

  private Legend() {}

  /**
   * The legend of a drawing, its upper left corner at the origin.
   *
   * @param drawing whose kinds of line are explained
   * @return one row for each kind of line of a pattern that occurs; the first row is a heading
   */
  public static Group of(Drawing drawing) {
    List<Element> rows = new ArrayList<>();
    rows.add(Label.of("The lines", new Point(0, -3.5), Length.mm(3.5)));
    double y = -3.5 - STEP;
    for (StrokeStyle style : used(drawing)) {
      double middle = y + LETTERS.toMm() / 2;
      rows.addAll(sample(style, new Point(0, middle)));
      rows.add(Label.of(style.meaning(), new Point(TEXT, y), LETTERS));
      y -= STEP;
    }
    return new Group("legend", rows);
  }

  /**
   * A short line of one style, from the left to the right.
   *
   * @param style how to draw it
   * @param from where it begins, in mm
   * @return one stroke, or those of an arrow
   */
  public static List<Stroke> sample(StrokeStyle style, Point from) {
    Point to = new Point(from.x() + SAMPLE, from.y());
    return style == StrokeStyle.GRAIN
        ? Arrow.single(style, SAMPLE_NAME, from, to)
        : List.of(new Stroke(style, SAMPLE_NAME, Curve.line(from, to)));
  }

  private static List<StrokeStyle> used(Drawing drawing) {
    return Arrays.stream(StrokeStyle.values())
        .filter(style -> !style.meaning().isEmpty())
        .filter(style -> drawing.groups().stream().anyMatch(g -> !g.strokes(style).isEmpty()))
        .toList();
  }
}
