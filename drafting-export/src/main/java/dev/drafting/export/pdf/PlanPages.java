package dev.drafting.export.pdf;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.FreeRoom;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.drawing.Lettering;
import dev.drafting.export.drawing.Stroke;
import dev.drafting.export.drawing.StrokeStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Sheet 2 and, for many pieces, more: how the sheets go together, with a small picture a piece. */
final class PlanPages {
  private static final double MARGIN = 14;
  private static final double LEAST_PICTURE = 62;
  private static final double LARGEST_PICTURE = 120;
  private static final double CAPTION = 18;
  private static final double HEAD = 66;

  private static final List<String> OVERLAPPING =
      List.of(
          "2  Put one piece together at a time. Begin with its first sheet; nothing is cut off it."
              + " On every other sheet cut off the margins beside the ticked lines.",
          "3  Lay each sheet on its neighbour, cut edge along the dashed line, so that the two"
              + " halves of every numbered mark meet. Tape it down.");

  private static final List<String> EDGE_TO_EDGE =
      List.of(
          "2  Put one piece together at a time. On every sheet cut off the margins beside the"
              + " ticked lines.",
          "3  Lay each sheet against its neighbour, edge to edge, so that the two halves of every"
              + " numbered mark meet. Tape the joint.");

  private final Paper paper;
  private final Group legend;
  private final List<PieceSheets> pieces;

  PlanPages(Paper paper, Group legend, List<PieceSheets> pieces) {
    this.paper = paper;
    this.legend = legend;
    this.pieces = pieces;
  }

  /** How many pages there are. */
  int count() {
    int rest = Math.max(0, pieces.size() - perPage(true));
    return 1 + (rest + perPage(false) - 1) / perPage(false);
  }

  private int perPage(boolean first) {
    int rows = (int) Math.max(1, Math.floor(room(first) / (LEAST_PICTURE + CAPTION)));
    return rows * columns();
  }

  /** What is left for pictures between head and legend. */
  private double room(boolean first) {
    double taken = first ? HEAD + legend.bounds().height().toMm() + 6 : 0;
    return paper.height().toMm() - 2 * MARGIN - taken;
  }

  /** Few pieces have larger pictures. */
  private double pictureHeight(boolean first) {
    int pictures = Math.min(pieces.size(), perPage(first));
    int rows = (pictures + columns() - 1) / columns();
    return Math.min(LARGEST_PICTURE, room(first) / rows - CAPTION);
  }

  private int columns() {
    return (int) Math.max(1, Math.floor((paper.width().toMm() - 2 * MARGIN) / 85));
  }

  /** The pages; the first sheet of each piece is given by number. */
  List<List<Element>> pages(List<Integer> firstSheets) {
    List<List<Element>> pages = new ArrayList<>();
    int piece = 0;
    for (int page = 0; page < count(); page++) {
      List<Element> elements = new ArrayList<>();
      double top = paper.height().toMm() - MARGIN;
      if (page == 0) {
        elements.addAll(head(top));
        elements.addAll(legend());
        top -= HEAD;
      }
      double high = pictureHeight(page == 0);
      for (int place = 0; place < perPage(page == 0) && piece < pieces.size(); place++, piece++) {
        double wide = (paper.width().toMm() - 2 * MARGIN) / columns();
        double left = MARGIN + (place % columns()) * wide;
        int row = place / columns();
        double y = top - row * (high + CAPTION);
        Box frame = new Box(left, y - high, left + wide - 6, y);
        elements.addAll(picture(pieces.get(piece), frame));
        elements.addAll(caption(pieces.get(piece), firstSheets.get(piece), frame));
      }
      pages.add(elements);
    }
    return pages;
  }

  private boolean butt() {
    return pieces.get(0).tiling().isButt();
  }

  private List<Element> head(double top) {
    return new TextColumn(MARGIN, top, paper.width().toMm() - 2 * MARGIN)
        .text(6, "How the sheets go together")
        .text(
            2.5,
            "1  Print sheet 1 and check its squares. Print the other sheets with the same"
                + " settings.")
        .texts(2.5, butt() ? EDGE_TO_EDGE : OVERLAPPING)
        .text(
            2.5,
            "4  Measure the piece as its picture says. If it agrees, cut the paper along the"
                + " heaviest line.")
        .labels();
  }

  private List<Element> legend() {
    Box box = legend.bounds();
    Vector move = new Vector(MARGIN - box.minX(), MARGIN - box.minY());
    return legend.map(Transform.translation(move)).elements();
  }

  private List<Element> picture(PieceSheets sheets, Box frame) {
    Tiling tiling = sheets.tiling();
    Box all =
        tiling
            .window(new Cell(0, 0))
            .union(tiling.window(new Cell(tiling.rows() - 1, tiling.columns() - 1)));
    double scale =
        Math.min(frame.width().ratioTo(all.width()), frame.height().ratioTo(all.height()));
    Transform small =
        Transform.translation(new Vector(-all.minX(), -all.maxY()))
            .then(Transform.scaling(scale))
            .then(Transform.translation(new Vector(frame.minX(), frame.maxY())));
    List<Element> picture = new ArrayList<>();
    for (Stroke fold : sheets.piece().strokes(StrokeStyle.FOLD)) {
      picture.add(new Stroke(StrokeStyle.OVERLAP, fold.name(), fold.curve().map(small)));
    }
    for (Stroke stroke : sheets.piece().strokes(StrokeStyle.CUT_LINE)) {
      picture.add(new Stroke(StrokeStyle.MARKING, stroke.name(), stroke.curve().map(small)));
    }
    for (Cell cell : sheets.cells()) {
      Stroke sheet = Lines.box(StrokeStyle.FRAME, cell.label(), tiling.visible(cell)).map(small);
      picture.add(sheet);
      picture.add(name(cell, sheet.bounds(), picture));
    }
    return picture;
  }

  /** The name of a sheet in the middle of its picture, or beside it where a line runs there. */
  private static Label name(Cell cell, Box sheet, List<Element> picture) {
    Length height = Length.mm(3);
    Length width = Lettering.width(cell.label(), height);
    FreeRoom room = FreeRoom.within(sheet);
    picture.forEach(room::take);
    Point centre = sheet.centre();
    Point inTheMiddle = new Point(centre.x() - width.toMm() / 2, centre.y() - height.toMm() / 2);
    return Label.of(cell.label(), room.find(width, height, centre).orElse(inTheMiddle), height);
  }

  private List<Element> caption(PieceSheets sheets, int first, Box frame) {
    int count = sheets.cells().size();
    String range = count == 1 ? "sheet " + first : "sheets " + first + " to " + (first + count - 1);
    String turned = sheets.across() ? ", paper across" : ", paper upright";
    String name = Lettering.shortened(sheets.piece().name(), Length.mm(3.5), frame.width());
    return new TextColumn(frame.minX(), frame.minY() - 2, frame.width().toMm())
        .text(3.5, name)
        .text(2.2, range + turned + "; " + measure(sheets.piece()))
        .labels();
  }

  private static String measure(Group piece) {
    List<Stroke> cut = piece.strokes(StrokeStyle.CUT_LINE);
    Box box = cut.stream().map(Stroke::bounds).reduce(Box::union).orElse(piece.bounds());
    return String.format(
        Locale.ROOT,
        "cut line %.0f mm (%.1f in) across, %.0f mm (%.1f in) from top to bottom",
        box.width().toMm(),
        box.width().toInches(),
        box.height().toMm(),
        box.height().toInches());
  }
}
