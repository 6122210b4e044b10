package dev.drafting.export.sheet;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.Legend;
import dev.drafting.export.drawing.Stroke;
import dev.drafting.export.drawing.StrokeStyle;
import java.util.ArrayList;
import java.util.List;

/** A making-up sheet set on pages of paper. */
final class PaperSheet implements SheetWriter<RuntimeException> {
  private static final double PIECE_HEIGHT = 62;
  private static final double PIECE_GAP = 10;
  private static final double STEP_WIDTH = 42;
  private static final double STEP_HEIGHT = 24;
  private static final double NUMBER = 7;
  private static final double INDENT = 5;
  private static final double SAMPLE = 28;

  private final PageFlow flow;
  private int step;

  PaperSheet(PageFlow flow) {
    this.flow = flow;
  }

  @Override
  public void title(String name, List<String> leads) {
    flow.text(6, 0, name);
    leads.forEach(lead -> flow.text(PageFlow.BODY, 0, lead));
  }

  @Override
  public void section(String heading) {
    flow.gap(5);
    flow.need(28);
    flow.text(4, 0, heading);
    flow.rule();
    flow.gap(2.5);
  }

  @Override
  public void heading(String text) {
    flow.gap(2.5);
    flow.need(22);
    flow.text(3, 0, text);
    flow.gap(0.5);
  }

  @Override
  public void paragraph(String text) {
    flow.text(PageFlow.BODY, 0, text);
    flow.gap(1.5);
  }

  @Override
  public void bullets(List<String> texts) {
    for (String text : texts) {
      flow.beside(PageFlow.BODY, INDENT, "-", text);
      flow.gap(0.8);
    }
    flow.gap(1);
  }

  @Override
  public void terms(List<String> pairs) {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < pairs.size(); i += 2) {
      rows.add(pairs.subList(i, i + 2));
    }
    flow.rows(List.of(), rows);
  }

  @Override
  public void table(String caption, List<String> heads, List<List<String>> rows) {
    flow.rows(heads, rows);
  }

  @Override
  public void asideTable(String summary, List<String> heads, List<List<String>> rows) {
    flow.rows(heads, rows);
  }

  @Override
  public void finding(boolean note, String kind, String words, List<String> remedies) {
    flow.need(16);
    flow.finding(kind + ", " + words);
    if (!remedies.isEmpty()) {
      flow.text(
          PageFlow.BODY, INDENT, remedies.size() == 1 ? "What to do:" : "What to do, one of:");
      remedies.forEach(remedy -> flow.beside(PageFlow.BODY, 2 * INDENT, "-", remedy));
    }
    flow.gap(2.5);
  }

  @Override
  public void pieces(List<Group> pieces, List<String> sizes) {
    double tallest = pieces.stream().mapToDouble(p -> p.bounds().height().toMm()).max().orElse(1);
    double widest = pieces.stream().mapToDouble(p -> p.bounds().width().toMm()).max().orElse(1);
    double scale = Math.min(PIECE_HEIGHT / tallest, flow.width() / widest);
    double left = 0;
    double high = tallest * scale;
    flow.need(high + 14);
    for (int i = 0; i < pieces.size(); i++) {
      Group small = small(pieces.get(i), scale);
      double room = Math.max(small.bounds().width().toMm(), flow.widthOf(sizes.get(i)));
      room = Math.min(flow.width(), Math.max(room, flow.widthOf(small.name())));
      if (left > 0 && left + room > flow.width()) {
        flow.gap(high + 14);
        flow.need(high + 14);
        left = 0;
      }
      flow.picture(small, left, 0);
      flow.label(small.name(), left, high + 4.5, room);
      flow.label(sizes.get(i), left, high + 9, room);
      left += room + PIECE_GAP;
    }
    flow.gap(high + 14);
  }

  /** Cut lines and folds alone, as thin as a small picture needs. */
  private static Group small(Group piece, double scale) {
    Box box = piece.bounds();
    Transform transform =
        Transform.translation(new Vector(-box.minX(), -box.maxY())).then(Transform.scaling(scale));
    List<Element> elements = new ArrayList<>();
    for (Stroke stroke : piece.strokes()) {
      StrokeStyle style =
          switch (stroke.style()) {
            case CUT_LINE -> StrokeStyle.MARKING;
            case FOLD, JOIN_LINE -> StrokeStyle.OVERLAP;
            default -> StrokeStyle.FRAME;
          };
      elements.add(new Stroke(style, stroke.name(), stroke.curve().map(transform)));
    }
    return new Group(piece.name(), elements);
  }

  @Override
  public void lines(List<StrokeStyle> styles) {
    for (StrokeStyle style : styles) {
      flow.need(6);
      List<Stroke> sample = Legend.sample(style, new Point(0, -1.2));
      flow.picture(new Group("sample", List.copyOf(sample)), 0, 0);
      flow.text(PageFlow.BODY, SAMPLE, style.meaning());
      flow.gap(0.6);
    }
    flow.gap(3);
  }

  @Override
  public void beginSteps() {
    step = 0;
  }

  @Override
  public void step(String title, String text, Drawing picture, String caution) {
    step++;
    flow.need(STEP_HEIGHT + 4);
    PageFlow.Mark top = flow.mark();
    flow.picture(fitted(picture), flow.width() - STEP_WIDTH, 0);
    double narrow = flow.width() - STEP_WIDTH - 6;
    flow.within(narrow, () -> words(title, text, caution));
    flow.atLeast(top, STEP_HEIGHT);
    flow.gap(3);
  }

  private void words(String title, String text, String caution) {
    flow.beside(PageFlow.BODY, NUMBER, Integer.toString(step), title);
    flow.gap(0.5);
    flow.text(PageFlow.BODY, NUMBER, text);
    if (!caution.isBlank()) {
      flow.gap(0.8);
      flow.text(PageFlow.BODY, NUMBER, "Caution: " + caution);
    }
  }

  private static Group fitted(Drawing picture) {
    Box box = picture.bounds();
    double scale = Math.min(STEP_WIDTH / box.width().toMm(), STEP_HEIGHT / box.height().toMm());
    Transform transform =
        Transform.translation(new Vector(-box.minX(), -box.maxY())).then(Transform.scaling(scale));
    List<Element> elements = new ArrayList<>();
    picture.groups().forEach(g -> elements.addAll(g.map(transform).elements()));
    return new Group(picture.title(), elements);
  }

  @Override
  public void endSteps() {
    flow.gap(1);
  }

  @Override
  public void end() {
    flow.end();
  }
}
