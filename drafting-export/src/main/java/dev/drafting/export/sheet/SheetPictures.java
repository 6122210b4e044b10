package dev.drafting.export.sheet;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.Legend;
import dev.drafting.export.drawing.StepDrawing;
import dev.drafting.export.drawing.Stroke;
import dev.drafting.export.drawing.StrokeStyle;
import dev.drafting.export.svg.SvgPicture;
import dev.drafting.knit.Draft;
import dev.drafting.knit.sewing.Step;
import dev.drafting.knit.wording.Wording;
import java.util.List;
import javax.xml.stream.XMLStreamException;

/** The small pictures of a sheet: each piece, and a sample of each kind of line. */
final class SheetPictures {
  private static final Length AROUND_PIECE = Length.mm(6);
  private static final Length AROUND_STEP = Length.mm(12);
  private static final Length AROUND_SAMPLE = Length.mm(2);

  private final Drawing drawing;
  private final Html html;

  SheetPictures(Drawing drawing, Html html) {
    this.drawing = drawing;
    this.html = html;
  }

  void pieces() throws XMLStreamException {
    html.open("div", "class", "pieces");
    for (Group piece : drawing.groups()) {
      html.open("figure");
      Drawing lines = Drawing.of("Small picture of " + piece.name(), onlyLines(piece));
      SvgPicture.of(lines).write(html.xml(), AROUND_PIECE, false);
      html.open("figcaption");
      html.write(piece.name());
      Box box = onlyLines(piece).bounds();
      String size = Wording.amount(box.width()) + " by " + Wording.amount(box.height());
      html.text("span", size);
      html.close();
      html.close();
    }
    html.close();
  }

  /** What a step is about: its pieces, the edges that are sewn drawn heavily. */
  void step(Draft draft, Step step) throws XMLStreamException {
    html.open("div", "class", "step");
    SvgPicture.of(StepDrawing.of(draft, step)).write(html.xml(), AROUND_STEP, false);
    html.close();
  }

  private static Group onlyLines(Group piece) {
    return new Group(piece.name(), List.copyOf(piece.strokes()));
  }

  /** What the lines mean, those that the pieces have. */
  void lines() throws XMLStreamException {
    html.open("ul", "class", "lines", "aria-label", "What the lines mean");
    for (StrokeStyle style : StrokeStyle.values()) {
      boolean used = drawing.groups().stream().anyMatch(g -> !g.strokes(style).isEmpty());
      if (used && !style.meaning().isEmpty()) {
        html.open("li");
        List<Stroke> line = Legend.sample(style, new Point(0, 0));
        Group sample = new Group("sample", List.copyOf(line));
        Drawing picture = Drawing.of(style.toString(), sample);
        SvgPicture.of(picture).write(html.xml(), AROUND_SAMPLE, false);
        html.text("span", style.meaning());
        html.close();
      }
    }
    html.close();
  }
}
