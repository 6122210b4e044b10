package dev.drafting.export.pdf;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Anchor;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.FreeRoom;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.drawing.Lettering;
import dev.drafting.export.drawing.StrokeStyle;
import java.util.ArrayList;
import java.util.List;

/**
 * The furniture of one sheet of a piece: which margins to cut off, where the neighbours are laid
 * on, the halves of the numbered marks, and what the sheet is.
 */
final class TilePage {
  private static final double SMALL = 2;

  /** How wide the words that say what the sheet is may be. */
  private static final double LONGEST = 80;

  /** Free room around the words that say what the sheet is. */
  private static final double AROUND = 6;

  private final PieceSheets sheets;
  private final Cell cell;

  /** The window on the page, in mm from the page's lower left corner. */
  private final Box frame;

  private final List<Element> label = new ArrayList<>();
  private final List<Element> furniture = new ArrayList<>();

  private TilePage(PieceSheets sheets, Cell cell, double margin) {
    this.sheets = sheets;
    this.cell = cell;
    Box window = sheets.tiling().window(cell);
    frame =
        new Box(margin, margin, margin + window.width().toMm(), margin + window.height().toMm());
  }

  static TilePage of(
      PieceSheets sheets, Cell cell, JoinMarks marks, double margin, List<String> words) {
    TilePage page = new TilePage(sheets, cell, margin);
    page.trimSides();
    if (!sheets.tiling().isButt()) {
      page.overlaps();
    }
    page.furniture.addAll(page.toPage(marks.on(cell)));
    page.addLabel(words);
    return page;
  }

  /** What the sheet is, to be read first. */
  List<Element> label() {
    return label;
  }

  /** What is around the drawing. */
  List<Element> furniture() {
    return furniture;
  }

  static String trimWords(PieceSheets sheets, Cell cell) {
    boolean butt = sheets.tiling().isButt();
    List<String> sides = new ArrayList<>();
    if (sheets.has(cell.left())) {
      sides.add("the left");
    }
    if (sheets.has(cell.above())) {
      sides.add("the top");
    }
    if (butt && sheets.has(cell.right())) {
      sides.add("the right");
    }
    if (butt && sheets.has(cell.below())) {
      sides.add("the bottom");
    }
    if (sides.isEmpty()) {
      return "Cut nothing off.";
    }
    String last = sides.remove(sides.size() - 1);
    String others = sides.isEmpty() ? "" : String.join(", ", sides) + " and ";
    return "Cut off " + others + last + " margin.";
  }

  /** Where sheets overlap, one of them keeps its margin; edge to edge, both lose theirs. */
  private void trimSides() {
    boolean butt = sheets.tiling().isButt();
    if (sheets.has(cell.left())) {
      trimUpright(frame.minX(), -1, cell.left());
    }
    if (sheets.has(cell.above())) {
      trimLevel(frame.maxY(), 1, cell.above());
    }
    if (butt && sheets.has(cell.right())) {
      trimUpright(frame.maxX(), 1, cell.right());
    }
    if (butt && sheets.has(cell.below())) {
      trimLevel(frame.minY(), -1, cell.below());
    }
  }

  private void trimUpright(double x, int outward, Cell neighbour) {
    line(StrokeStyle.FRAME, x, frame.minY(), x, frame.maxY());
    for (double y = frame.minY() + 5; y < frame.maxY(); y += 5) {
      line(StrokeStyle.FRAME, x, y, x + outward * 1.5, y);
    }
    double middle = x + outward * 3.6;
    double y = frame.maxY() - frame.height().toMm() / 3;
    text("cut", middle, y + 1.2, Anchor.MIDDLE, 1.8);
    text("off", middle, y - 1.6, Anchor.MIDDLE, 1.8);
    if (sheets.tiling().isButt()) {
      text(neighbour.label(), middle, frame.centre().y(), Anchor.MIDDLE, SMALL);
    }
  }

  private void trimLevel(double y, int outward, Cell neighbour) {
    line(StrokeStyle.FRAME, frame.minX(), y, frame.maxX(), y);
    for (double x = frame.minX() + 5; x < frame.maxX(); x += 5) {
      line(StrokeStyle.FRAME, x, y, x, y + outward * 1.5);
    }
    double baseLine = outward > 0 ? y + 2.6 : y - 4.4;
    double x = frame.minX() + frame.width().toMm() / 3;
    text("cut this margin off", x, baseLine, Anchor.MIDDLE, 1.8);
    if (sheets.tiling().isButt()) {
      String words = neighbour.label() + " comes edge to edge";
      text(words, frame.centre().x(), baseLine, Anchor.START, SMALL);
    }
  }

  private void overlaps() {
    double overlap = sheets.tiling().overlap();
    if (sheets.has(cell.right())) {
      double x = frame.maxX() - overlap;
      line(StrokeStyle.OVERLAP, x, frame.minY(), x, frame.maxY());
      Box strip = new Box(x, frame.minY(), frame.maxX(), frame.maxY());
      double y = freeMiddle(strip, 8, 9).y();
      text(cell.right().label(), x + overlap / 2, y + 2, Anchor.MIDDLE, 2.2);
      text("goes", x + overlap / 2, y - 1.4, Anchor.MIDDLE, SMALL);
      text("here", x + overlap / 2, y - 4.5, Anchor.MIDDLE, SMALL);
    }
    if (sheets.has(cell.below())) {
      double y = frame.minY() + overlap;
      line(StrokeStyle.OVERLAP, frame.minX(), y, frame.maxX(), y);
      String words = cell.below().label() + " goes here, up to the dashed line";
      Box strip = new Box(frame.minX(), frame.minY() + SMALL, frame.maxX(), y - SMALL);
      double width = Lettering.width(words, Length.mm(SMALL)).toMm();
      Point middle = freeMiddle(strip, width, SMALL);
      text(words, middle.x(), middle.y() - SMALL / 2, Anchor.MIDDLE, SMALL);
    }
  }

  /** Where a text in a strip hides nothing of the drawing, as near its middle as can be. */
  private Point freeMiddle(Box strip, double width, double height) {
    FreeRoom room = FreeRoom.within(strip);
    toPage(sheets.on(cell)).forEach(room::take);
    return room.find(Length.mm(width), Length.mm(height), strip.centre())
        .map(corner -> new Point(corner.x() + width / 2, corner.y() + height / 2))
        .orElse(strip.centre());
  }

  private List<Element> toPage(List<Element> onDrawing) {
    Box window = sheets.tiling().window(cell);
    Transform move =
        Transform.translation(
            new Vector(frame.minX() - window.minX(), frame.minY() - window.minY()));
    return onDrawing.stream().map(e -> e.map(move)).toList();
  }

  /** Says what the sheet is, where it hides nothing. */
  private void addLabel(List<String> words) {
    FreeRoom room = FreeRoom.within(frame);
    toPage(sheets.on(cell)).forEach(room::take);
    furniture.forEach(room::take);
    Length most = Length.mm(LONGEST);
    Length widest = frame.width().minus(Length.mm(4 * AROUND));
    String name = Lettering.shortened(sheets.piece().name(), Length.mm(5), widest);
    String title = name + "  " + cell.label();
    double width = Lettering.width(title, Length.mm(5)).toMm();
    List<String> lines =
        words.stream().map(w -> Lettering.shortened(w, Length.mm(SMALL), most)).toList();
    for (String line : lines) {
      width = Math.max(width, Lettering.width(line, Length.mm(SMALL)).toMm());
    }
    double height = 8 + lines.size() * SMALL * 1.8;
    double wide = width + 2 * AROUND;
    double high = height + 2 * AROUND;
    Point best = new Point(frame.minX() + wide / 2, frame.maxY() - high / 2);
    Point corner =
        room.find(Length.mm(wide), Length.mm(high), best)
            .orElse(new Point(frame.minX(), frame.maxY() - high))
            .plus(new Vector(AROUND, AROUND));
    double y = corner.y() + height - 5;
    label.add(Label.of(title, new Point(corner.x(), y), Length.mm(5)));
    y -= 1.2;
    for (String line : lines) {
      y -= SMALL * 1.8;
      label.add(Label.of(line, new Point(corner.x(), y), Length.mm(SMALL)));
    }
  }

  private void line(StrokeStyle style, double x1, double y1, double x2, double y2) {
    furniture.add(Lines.line(style, "", x1, y1, x2, y2));
  }

  private void text(String words, double x, double y, Anchor anchor, double height) {
    furniture.add(Label.of(words, new Point(x, y), Length.mm(height)).withAnchor(anchor));
  }
}
