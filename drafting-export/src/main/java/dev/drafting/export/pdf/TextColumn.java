package dev.drafting.export.pdf;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.drawing.Lettering;
import java.util.ArrayList;
import java.util.List;

/** Lines of text set from the top down in a column of a page. */
final class TextColumn {
  private static final double LEADING = 1.75;
  private static final double PARAGRAPH = 0.8;

  private final double left;
  private final Length width;
  private final List<Element> labels = new ArrayList<>();
  private double y;

  TextColumn(double left, double top, double width) {
    this.left = left;
    this.width = Length.mm(width);
    this.y = top;
  }

  /** Sets a paragraph in letters whose capitals have this height in mm. */
  TextColumn text(double height, String words) {
    for (String line : Lettering.wrap(words, Length.mm(height), width)) {
      y -= height;
      labels.add(Label.of(line, new Point(left, y), Length.mm(height)));
      y -= height * (LEADING - 1);
    }
    y -= height * PARAGRAPH;
    return this;
  }

  /** Sets one line, cut short where it is too long. */
  TextColumn line(double height, String words) {
    return text(height, Lettering.shortened(words, Length.mm(height), width));
  }

  /** Sets paragraphs one under the other. */
  TextColumn texts(double height, List<String> paragraphs) {
    TextColumn column = this;
    for (String words : paragraphs) {
      column = column.text(height, words);
    }
    return column;
  }

  TextColumn gap(double height) {
    y -= height;
    return this;
  }

  /** Where the next paragraph would begin. */
  double bottom() {
    return y;
  }

  List<Element> labels() {
    return labels;
  }
}
