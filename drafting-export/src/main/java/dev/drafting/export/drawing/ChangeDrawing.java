package dev.drafting.export.drawing;

import dev.drafting.core.Stable;
import dev.drafting.core.alter.AlterationRecord;
import dev.drafting.core.alter.EdgeChange;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import java.util.ArrayList;
import java.util.List;

/**
 * Before and after: each piece that was altered, the finished edges as they were under those as
 * they are, and what changed in words under it.
 *
 * <pre>{@code
 * Pattern top = Templates.installed().get("sleeveless-top").pattern();
 * ChangeDrawing.of(AlterationRecord.of(top).with(Alteration.takeIn("side", Length.mm(10)))).groups().size();  // => 2
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class ChangeDrawing {
  private static final Length GAP = Length.mm(60);
  private static final Length HEADING = Length.mm(7);
  private static final Length LETTERS = Length.mm(5);
  private static final double STEP = 9;

  private ChangeDrawing() {}

  /**
   * Draws what was altered.
   *
   * @param record the pattern as it was first, and its alterations
   * @return one group for each piece that is not as it was; a single one with words if none is
   */
  public static Drawing of(AlterationRecord record) {
    return of(record.base().name() + ", altered", record.base(), record.result());
  }

  /**
   * Draws what differs between two patterns with the same pieces and edges: one fabric and another,
   * {@code ChangeDrawing.of("in interlock", jersey.finished(), interlock.finished())}.
   *
   * @param title what was changed
   * @param before the one
   * @param after the other
   * @return one group for each piece that differs; a single one with words if none does
   */
  public static Drawing of(String title, Pattern before, Pattern after) {
    List<EdgeChange> changes = EdgeChange.between(before, after);
    List<Group> groups = new ArrayList<>();
    for (Piece piece : after.pieces()) {
      List<EdgeChange> here =
          changes.stream().filter(change -> change.edge().piece().equals(piece.name())).toList();
      if (!here.isEmpty()) {
        groups.add(group(before.piece(piece.name()), piece, here));
      }
    }
    if (groups.isEmpty()) {
      Label nothing = Label.of("Nothing was changed.", new Point(0, 0), HEADING);
      groups.add(new Group("nothing", List.of(nothing)));
    }
    return Drawing.sideBySide(title, groups, GAP);
  }

  private static Group group(Piece before, Piece after, List<EdgeChange> changes) {
    List<Element> elements = new ArrayList<>();
    for (Edge edge : before.edges()) {
      if (!edge.curve().equals(after.edge(edge.name()).curve())) {
        elements.add(new Stroke(StrokeStyle.BEFORE, edge.name() + " before", edge.curve()));
      }
    }
    for (Edge edge : after.edges()) {
      StrokeStyle style = edge.isOnFold() ? StrokeStyle.FOLD : StrokeStyle.FINISHED_EDGE;
      elements.add(new Stroke(style, edge.name(), edge.curve()));
    }
    Box box = new Group(after.name(), elements).bounds();
    double y = box.minY() - 16;
    elements.add(Label.of(after.name(), new Point(box.minX(), y), HEADING));
    for (EdgeChange change : changes) {
      y -= STEP;
      elements.add(Label.of(words(change), new Point(box.minX(), y), LETTERS));
    }
    return new Group(after.name(), elements);
  }

  private static String words(EdgeChange change) {
    String name = change.edge().edge();
    if (!change.refinished().isEmpty()) {
      return name + ": " + change.refinished();
    }
    return name
        + ": "
        + change.before().text(LengthUnit.MM)
        + ", now "
        + change.after().text(LengthUnit.MM)
        + "; moved by up to "
        + change.farthest().text(LengthUnit.MM);
  }
}
