package dev.drafting.export.pdf;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.FreeRoom;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.drawing.Stroke;
import dev.drafting.export.drawing.StrokeStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The texts of a piece where each can be read on one sheet: those that would run across the joint
 * of two sheets are moved to the nearest free place beside it, lines of one block together.
 */
final class SheetTexts {
  /** Lines of one block are not farther apart than this many heights of a capital. */
  private static final double LINE_STEP = 3.5;

  private static final Length OFF_THE_JOINT = Length.mm(2);

  private final Group piece;
  private final Tiling tiling;
  private final List<Cell> cells;
  private final List<Label> settled = new ArrayList<>();

  private SheetTexts(Group piece, Tiling tiling, List<Cell> cells) {
    this.piece = piece;
    this.tiling = tiling;
    this.cells = cells;
  }

  /** The same lines, and the texts where no joint crosses them; a text without room stays. */
  static Group offJoints(Group piece, Tiling tiling, List<Cell> cells) {
    return new SheetTexts(piece, tiling, cells).moved();
  }

  private Group moved() {
    List<List<Label>> blocks = blocks(piece.labels());
    List<List<Label>> crossed = new ArrayList<>();
    for (List<Label> block : blocks) {
      if (isOnOneSheet(bounds(block))) {
        settled.addAll(block);
      } else {
        crossed.add(block);
      }
    }
    for (List<Label> block : crossed) {
      settled.addAll(beside(block));
    }
    List<Element> elements = new ArrayList<>(piece.strokes());
    elements.addAll(settled);
    return new Group(piece.name(), elements);
  }

  /** Labels that follow each other, begin at the same x and stand one under the other. */
  private static List<List<Label>> blocks(List<Label> labels) {
    List<List<Label>> blocks = new ArrayList<>();
    for (Label label : labels) {
      List<Label> last = blocks.isEmpty() ? List.of() : blocks.get(blocks.size() - 1);
      if (last.isEmpty() || !follows(last.get(last.size() - 1), label)) {
        last = new ArrayList<>();
        blocks.add(last);
      }
      last.add(label);
    }
    return blocks;
  }

  private static boolean follows(Label upper, Label lower) {
    double step = upper.at().y() - lower.at().y();
    return upper.at().x() == lower.at().x()
        && upper.anchor() == lower.anchor()
        && step > 0
        && step <= LINE_STEP * upper.height().max(lower.height()).toMm();
  }

  private static Box bounds(List<Label> block) {
    return block.stream().map(Label::bounds).reduce(Box::union).orElseThrow();
  }

  private boolean isOnOneSheet(Box box) {
    return cells.stream().map(tiling::visible).anyMatch(sheet -> sheet.union(box).equals(sheet));
  }

  private List<Label> beside(List<Label> block) {
    Box box = bounds(block);
    Optional<Point> corner = nearest(box, true).or(() -> nearest(box, false));
    return corner
        .map(to -> Transform.translation(new Vector(to.x() - box.minX(), to.y() - box.minY())))
        .map(move -> block.stream().map(label -> label.map(move)).toList())
        .orElse(block);
  }

  private Optional<Point> nearest(Box box, boolean inPiece) {
    Optional<Point> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    for (Cell cell : cells.stream().filter(c -> touches(tiling.window(c), box)).toList()) {
      Optional<Point> corner = room(cell, inPiece).find(box.width(), box.height(), box.centre());
      if (corner.isPresent()) {
        double far = Math.hypot(corner.get().x() - box.minX(), corner.get().y() - box.minY());
        if (far < least) {
          best = corner;
          least = far;
        }
      }
    }
    return best;
  }

  private static boolean touches(Box sheet, Box box) {
    return sheet.minX() < box.maxX()
        && box.minX() < sheet.maxX()
        && sheet.minY() < box.maxY()
        && box.minY() < sheet.maxY();
  }

  private FreeRoom room(Cell cell, boolean inPiece) {
    Box sheet = tiling.visible(cell).widened(OFF_THE_JOINT.negated());
    List<Stroke> cut = piece.strokes(StrokeStyle.CUT_LINE);
    FreeRoom room =
        inPiece && cut.size() == 1
            ? FreeRoom.inside(closed(cut.get(0).curve()), sheet)
            : FreeRoom.within(sheet);
    piece.strokes().forEach(room::take);
    settled.forEach(room::take);
    return room;
  }

  /** The cut line of a piece on the fold, closed along it. */
  private static Curve closed(Curve cut) {
    return cut.isClosed() ? cut : cut.then(Curve.line(cut.end(), cut.start()));
  }
}
