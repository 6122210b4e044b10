package dev.drafting.export.sheet;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Anchor;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.drawing.Lettering;
import dev.drafting.export.drawing.Stroke;
import dev.drafting.export.drawing.StrokeStyle;
import dev.drafting.export.pdf.Paper;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Text and pictures set from the top down on as many pages as they need. Heights and places are in
 * mm, places from the left margin; letters are told by the height of their capitals.
 */
final class PageFlow {
  /** The letters of running text. */
  static final double BODY = 2.4;

  private static final double MARGIN = 16;
  private static final double FOOT = 2;
  private static final double LEADING = 1.8;
  private static final double COLUMN_GAP = 5;

  private final String title;
  private final Paper paper;
  private final List<List<Element>> pages = new ArrayList<>();
  private double width;
  private double y;

  PageFlow(String title, Paper paper) {
    this.title = title;
    this.paper = paper;
    this.width = paper.width().toMm() - 2 * MARGIN;
    turn();
  }

  private void turn() {
    pages.add(new ArrayList<>());
    y = paper.height().toMm() - MARGIN;
  }

  private void put(Element element) {
    pages.get(pages.size() - 1).add(element);
  }

  double width() {
    return width;
  }

  /** Begins a new page unless there is this much room. */
  void need(double height) {
    if (y - height < MARGIN + FOOT) {
      turn();
    }
  }

  void gap(double height) {
    y -= height;
  }

  /** A place in the flow. */
  record Mark(int page, double y) {}

  /** Where the flow stands; with {@link #atLeast} it keeps room for a picture beside a text. */
  Mark mark() {
    return new Mark(pages.size(), y);
  }

  /** Goes on no higher than a height under a mark, if that is on the same page. */
  void atLeast(Mark mark, double height) {
    if (mark.page() == pages.size()) {
      y = Math.min(y, mark.y() - height);
    }
  }

  /** Sets something in a narrower column. */
  void within(double narrow, Runnable content) {
    double before = width;
    width = narrow;
    content.run();
    width = before;
  }

  double widthOf(String text) {
    return Lettering.width(text, Length.mm(BODY)).toMm();
  }

  void text(double height, double left, String words) {
    for (String line : wrapped(words, height, width - left)) {
      line(line, height, left, false);
    }
  }

  /** A sign or number, and a text right of it. */
  void beside(double height, double left, String sign, String words) {
    need(height * LEADING);
    put(Label.of(sign, new Point(MARGIN + left - signRoom(left), y - height), Length.mm(height)));
    text(height, left, words);
  }

  private static double signRoom(double left) {
    return Math.min(left, 7);
  }

  private void line(String line, double height, double left, boolean finding) {
    need(height * LEADING);
    Label label = Label.of(line, new Point(MARGIN + left, y - height), Length.mm(height));
    put(finding ? label.asFinding() : label);
    y -= height * LEADING;
  }

  /** A text with the mark of a finding at its left. */
  void finding(String words) {
    for (String line : wrapped(words, BODY, width - 4)) {
      need(BODY * LEADING);
      Curve bar =
          Curve.line(
              new Point(MARGIN + 1, y + 0.6), new Point(MARGIN + 1, y - BODY * LEADING + 0.6));
      put(new Stroke(StrokeStyle.FINDING, "finding", bar));
      line(line, BODY, 5, false);
    }
  }

  private static List<String> wrapped(String words, double height, double room) {
    return Lettering.wrap(words, Length.mm(height), Length.mm(Math.max(room, height)));
  }

  void rule() {
    Curve line = Curve.line(new Point(MARGIN, y + 0.6), new Point(MARGIN + width, y + 0.6));
    put(new Stroke(StrokeStyle.FRAME, "", line));
  }

  /** One line under where the flow stands, cut short to its room. */
  void label(String words, double left, double below, double room) {
    String line = Lettering.shortened(words, Length.mm(BODY), Length.mm(room));
    put(Label.of(line, new Point(MARGIN + left, y - below), Length.mm(BODY)));
  }

  /** A picture whose upper left corner lies at the origin. */
  void picture(Group picture, double left, double below) {
    Vector to = new Vector(MARGIN + left, y - below);
    picture.map(Transform.translation(to)).elements().forEach(this::put);
  }

  /** Rows in columns as wide as their texts ask for; heads are repeated on every page. */
  void rows(List<String> heads, List<List<String>> rows) {
    double[] columns = columns(heads, rows);
    head(heads, columns);
    for (List<String> row : rows) {
      List<List<String>> cells = new ArrayList<>();
      int lines = 1;
      for (int i = 0; i < row.size(); i++) {
        cells.add(wrapped(row.get(i), BODY, columns[i]));
        lines = Math.max(lines, cells.get(i).size());
      }
      int page = pages.size();
      need(Math.min(lines, 12) * BODY * LEADING + 1);
      if (pages.size() > page) {
        head(heads, columns);
      }
      row(cells, columns, lines);
    }
    gap(2);
  }

  private void row(List<List<String>> cells, double[] columns, int lines) {
    for (int line = 0; line < lines; line++) {
      need(BODY * LEADING);
      double left = 0;
      for (int i = 0; i < cells.size(); i++) {
        if (line < cells.get(i).size()) {
          Point at = new Point(MARGIN + left, y - BODY);
          put(Label.of(cells.get(i).get(line), at, Length.mm(BODY)));
        }
        left += columns[i] + COLUMN_GAP;
      }
      y -= BODY * LEADING;
    }
    y -= 0.9;
  }

  private void head(List<String> heads, double[] columns) {
    if (heads.isEmpty()) {
      return;
    }
    need(16);
    List<List<String>> cells = new ArrayList<>();
    int lines = 1;
    for (int i = 0; i < heads.size(); i++) {
      cells.add(wrapped(heads.get(i), BODY, columns[i]));
      lines = Math.max(lines, cells.get(i).size());
    }
    row(cells, columns, lines);
    rule();
    gap(0.9);
  }

  /** What the widest text of each column takes, all together no more than there is. */
  private double[] columns(List<String> heads, List<List<String>> rows) {
    int count = rows.isEmpty() ? heads.size() : rows.get(0).size();
    double room = width - COLUMN_GAP * (count - 1);
    double[] wanted = new double[count];
    for (int i = 0; i < count; i++) {
      int column = i;
      double widest = rows.stream().mapToDouble(row -> widthOf(row.get(column))).max().orElse(1);
      double head = heads.isEmpty() ? 0 : widthOf(heads.get(i));
      wanted[i] = Math.max(widest, Math.min(head, room / count));
    }
    return shared(wanted, room);
  }

  /** Narrow columns get what they want; wide ones share the rest. */
  private static double[] shared(double[] wanted, double room) {
    double[] ascending = wanted.clone();
    Arrays.sort(ascending);
    double rest = room;
    double limit = Double.POSITIVE_INFINITY;
    for (int i = 0; i < ascending.length && limit > room; i++) {
      double share = rest / (ascending.length - i);
      limit = ascending[i] > share ? share : limit;
      rest -= ascending[i];
    }
    double[] columns = new double[wanted.length];
    for (int i = 0; i < columns.length; i++) {
      columns[i] = Math.min(wanted[i], limit);
    }
    return columns;
  }

  /** Numbers the pages. */
  void end() {
    for (int i = 0; i < pages.size(); i++) {
      String words = "page " + (i + 1) + " of " + pages.size() + ", " + title;
      Length room = paper.width().minus(Length.mm(2 * MARGIN));
      String line = Lettering.shortened(words, Length.mm(2), room);
      Point at = new Point(paper.width().toMm() - MARGIN, MARGIN - 4);
      pages.get(i).add(Label.of(line, at, Length.mm(2)).withAnchor(Anchor.END));
    }
  }

  Drawing pages() {
    List<Group> groups = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      groups.add(new Group("page " + (i + 1), pages.get(i)));
    }
    return Drawing.of(title, groups);
  }
}
