package dev.drafting.export.drawing;

import dev.drafting.core.Experimental;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.lay.Cloth;
import dev.drafting.core.lay.LaidPiece;
import dev.drafting.core.lay.LayPlan;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * A lay plan as it lies on the table at a fifth of its size, the cut end at the left: the cloth
 * with its folds and selvages named, every piece with its name, and a mark every ten centimetres
 * along the edges.
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * LayDrawing.of("body", top.lay("body").plan(1, 5)).title();  // => body, lay plan
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class LayDrawing {
  private static final double NEARLY = 1e-6;
  private static final double LETTERS = 4;
  private static final double SMALL = 3;
  private static final double LEAST = 2;
  private static final double FILLED = 0.85;
  private static final double MARK = 2.5;
  private static final double STEP = 100;
  private static final Transform SMALLER = Transform.scaling(0.2);

  private LayDrawing() {}

  /**
   * Draws a plan.
   *
   * @param title what is cut, such as the name of the garment
   * @param plan where everything lies
   * @return a group for the cloth and one for each piece
   */
  public static Drawing of(String title, LayPlan plan) {
    List<Group> groups = new ArrayList<>();
    groups.add(cloth(plan));
    for (int i = 0; i < plan.pieces().size(); i++) {
      groups.add(piece(plan.pieces().get(i), i + 1));
    }
    return Drawing.of(title + ", lay plan", groups);
  }

  private static Group cloth(LayPlan plan) {
    Cloth cloth = plan.cloth();
    boolean crosswise = cloth.fold() == Cloth.Fold.CROSSWISE;
    double length = plan.length().toMm() * SMALLER.scale() / (crosswise ? 2 : 1);
    double width = cloth.tableWidth().toMm() * SMALLER.scale();
    List<Element> elements = new ArrayList<>();
    boolean foldBelow = cloth.fold().isBelow();
    line(elements, foldBelow, "lower edge", 0, 0, length, 0);
    line(elements, cloth.fold().isAbove(), "upper edge", 0, width, length, width);
    line(elements, false, "cut end", 0, 0, 0, width);
    line(elements, crosswise, "end of the lay", length, 0, length, width);
    if (cloth.fold() == Cloth.Fold.PARTLY) {
      double over = cloth.turnedOver().toMm() * SMALLER.scale();
      line(elements, false, "edge of the upper layer", 0, over, length, over);
    }
    if (cloth.fold() == Cloth.Fold.TO_THE_MIDDLE) {
      line(elements, false, "selvages", 0, width / 2, length, width / 2);
    }
    marks(elements, length, width);
    for (Cloth.Flaw flaw : cloth.flaws()) {
      elements.add(new Stroke(StrokeStyle.FINDING, "flaw", outline(flaw).map(SMALLER)));
    }
    String below = foldBelow ? "FOLD" : "SELVAGE";
    String above = cloth.fold().isAbove() ? "FOLD" : "SELVAGE";
    double under = -MARK - 2.2 * LETTERS;
    elements.add(Label.of(below, new Point(0, under), Length.mm(LETTERS)));
    elements.add(Label.of(above, new Point(0, width + LETTERS / 2), Length.mm(LETTERS)));
    double y = under - 2 * LETTERS;
    for (String words : words(plan)) {
      for (String row : Lettering.wrap(words, Length.mm(SMALL), Length.mm(length * FILLED))) {
        elements.add(Label.of(row, new Point(0, y), Length.mm(SMALL)));
        y -= 1.6 * SMALL;
      }
    }
    return new Group("cloth", elements);
  }

  private static List<String> words(LayPlan plan) {
    List<String> words = new ArrayList<>();
    words.add("Cloth " + plan.cloth());
    words.add(
        cutFromTheRoll(plan.length())
            + " long, "
            + Math.round(100 * plan.use())
            + " % of it used; drawn 1 : 5, a mark every 10 cm");
    for (int i = 0; i < plan.pieces().size(); i++) {
      LaidPiece piece = plan.pieces().get(i);
      if (letters(piece) < LEAST) {
        words.add(i + 1 + " is " + piece.name());
      }
    }
    words.addAll(plan.notes());
    return words;
  }

  /** What is short by a tenth is too short, so it is rounded up. */
  private static String cutFromTheRoll(Length length) {
    Length whole = Length.cm(Math.ceil(length.toCm() - NEARLY));
    Length quarters = Length.inches(Math.ceil(4 * length.toInches() - NEARLY) / 4);
    return whole.text(LengthUnit.CM) + " (" + quarters.toFraction(4) + ")";
  }

  private static void line(
      List<Element> elements,
      boolean fold,
      String name,
      double x,
      double y,
      double toX,
      double toY) {
    StrokeStyle style = fold ? StrokeStyle.FOLD : StrokeStyle.FRAME;
    elements.add(new Stroke(style, name, Curve.line(new Point(x, y), new Point(toX, toY))));
  }

  private static void marks(List<Element> elements, double length, double width) {
    double step = STEP * SMALLER.scale();
    for (int i = 1; i * step <= length; i++) {
      double x = i * step;
      line(elements, false, "mark", x, 0, x, -MARK);
      if (i % 5 == 0) {
        elements.add(
            Label.of(i * 10 + " cm", new Point(x, -MARK - SMALL * 1.2), Length.mm(SMALL))
                .withAnchor(Anchor.MIDDLE));
      }
    }
    for (int i = 1; i * step <= width; i++) {
      line(elements, false, "mark", 0, i * step, -MARK, i * step);
    }
  }

  private static Curve outline(Cloth.Flaw flaw) {
    double x = flaw.fromEnd().toMm();
    double y = flaw.fromSide().toMm();
    double w = flaw.along().toMm();
    double h = flaw.across().toMm();
    return Curve.polyline(
        new Point(x, y),
        new Point(x + w, y),
        new Point(x + w, y + h),
        new Point(x, y + h),
        new Point(x, y));
  }

  /** How large its name can be written on a piece, in mm. */
  private static double letters(LaidPiece piece) {
    double widthOfOne = Lettering.width(piece.name(), Length.mm(1)).toMm();
    double width = piece.along().toMm() * SMALLER.scale() * FILLED;
    return Math.min(width / widthOfOne, SMALL * 1.5);
  }

  /** Its name, or its number if the name has no room. */
  private static Group piece(LaidPiece piece, int number) {
    Box box = piece.cutLine().map(SMALLER).bounds();
    boolean named = letters(piece) >= LEAST;
    double height = named ? letters(piece) : SMALL;
    Point middle =
        new Point((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2 - height / 2);
    String text = named ? piece.name() : String.valueOf(number);
    return new Group(
        piece.name(),
        List.of(
            new Stroke(StrokeStyle.CUT_LINE, "cut", piece.toCut().map(SMALLER)),
            Label.of(text, middle, Length.mm(height)).withAnchor(Anchor.MIDDLE)));
  }
}
