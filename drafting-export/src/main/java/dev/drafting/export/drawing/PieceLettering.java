package dev.drafting.export.drawing;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Puts the arrows and words of a piece where nothing else is drawn. */
final class PieceLettering {
  static final String FOLD_OF_THE_CLOTH = "FOLD OF THE CLOTH";

  private static final double LEADING = 1.75;
  private static final double TITLE = 2;
  private static final double LONGEST_ARROW = 320;
  private static final double SHORTEST_ARROW = 12;
  private static final double STRETCH_ARROW = 60;
  private static final double[] LETTERS = {3.5, 3, 2.5, 2};
  private static final double[] WIDTHS = {95, 70, 50, 35, 25};

  private static final Pattern WORDS = Pattern.compile("\\s+");

  /** How far outside of a narrow piece the names of its lines may lie. */
  private static final double OUTSIDE = 60;

  /** White room around the words of the piece. */
  private static final double AROUND = 4;

  /** Room for a reader of drawings that lacks the font and takes a wider one. */
  private static final double WIDER = 1.15;

  /** Heights of capitals for names, folds and findings, of which the words come at 3.5. */
  private static final double NAMES = 2.5;

  private static final double FOLDS = 3;

  /** Markings up to this long are the places of things that are sewn on. */
  private static final double LONGEST_MARK = 30;

  /** How far above a mark the middle of its name lies, on paper. */
  private static final double ABOVE = 4.5;

  /** How many times as large as on paper the letters are. */
  private final double times;

  private final FreeRoom room;
  private final Box bounds;
  private final List<Stroke> lines;
  private final List<Element> elements = new ArrayList<>();

  PieceLettering(Curve cutLine, List<Stroke> lines, Length letters) {
    times = letters.toMm() / LETTERS[0];
    room = FreeRoom.inside(cutLine);
    bounds = cutLine.bounds();
    this.lines = lines;
    lines.forEach(this::put);
  }

  List<Element> elements() {
    return elements;
  }

  private void put(Element element) {
    elements.add(element);
    room.take(element);
  }

  /** The grain as a long arrow, the greatest stretch as a double arrow across it. */
  void grain(Angle grain) {
    double longest = Math.min(LONGEST_ARROW, 0.5 * bounds.height().max(bounds.width()).toMm());
    Point near = new Point(bounds.centre().x(), bounds.centre().y());
    for (double length = longest; length >= SHORTEST_ARROW; length *= 0.8) {
      double across = Math.min(STRETCH_ARROW, length / 2);
      Vector along = direction(grain).times(length);
      Vector stretch = direction(grain).left().times(across);
      double width = Math.abs(along.dx()) + Math.abs(stretch.dx());
      double height = Math.abs(along.dy()) + Math.abs(stretch.dy());
      Optional<Point> corner = room.find(Length.mm(width), Length.mm(height), near);
      if (corner.isPresent()) {
        Point centre = new Point(corner.get().x() + width / 2, corner.get().y() + height / 2);
        arrows(centre, along, stretch);
        return;
      }
    }
    arrows(
        bounds.centre(),
        direction(grain).times(SHORTEST_ARROW),
        direction(grain).left().times(SHORTEST_ARROW / 2));
  }

  private static Vector direction(Angle angle) {
    return new Vector(Math.cos(angle.toRadians()), Math.sin(angle.toRadians()));
  }

  private void arrows(Point centre, Vector along, Vector stretch) {
    Point from = centre.plus(along.times(-0.5));
    Point to = centre.plus(along.times(0.5));
    Point left = centre.plus(stretch.times(-0.5));
    Point right = centre.plus(stretch.times(0.5));
    Arrow.single(StrokeStyle.GRAIN, "grain", from, to).forEach(this::put);
    Arrow.twoHeaded(StrokeStyle.GRAIN, "greatest stretch", left, right).forEach(this::put);
    arrowName("grain", from.plus(along.times(0.85)).plus(new Vector(10, 0)));
    arrowName("greatest stretch", centre.plus(new Vector(18, -6)));
  }

  private void arrowName(String text, Point near) {
    put(placed(text, near, near, NAMES));
  }

  /** The name of the piece and what to know about it, as a block of lines. */
  void words(String title, List<String> words) {
    for (double height : LETTERS) {
      for (double width : WIDTHS) {
        if (isWhole(words, height * times, width * times)
            && block(title, words, height * times, width * times)) {
          return;
        }
      }
    }
    beside(title, words);
  }

  /** Whether no word would be broken within. */
  private static boolean isWhole(List<String> words, double height, double width) {
    return words.stream()
        .flatMap(WORDS::splitAsStream)
        .allMatch(word -> Lettering.width(word, Length.mm(height)).toMm() <= width);
  }

  private boolean block(String title, List<String> words, double height, double width) {
    List<Label> labels = set(title, words, height, width);
    Box box = labels.stream().map(Label::bounds).reduce(Box::union).orElseThrow();
    Length around = Length.mm(2 * AROUND);
    Optional<Point> corner =
        room.find(
            box.width().times(WIDER).plus(around), box.height().plus(around), bounds.centre());
    corner.ifPresent(at -> putBlock(labels, at, box));
    return corner.isPresent();
  }

  /** Puts a block down and keeps the names of lines out of its margin. */
  private void putBlock(List<Label> labels, Point corner, Box box) {
    Vector by = new Vector(corner.x() + AROUND - box.minX(), corner.y() + AROUND - box.minY());
    List<Label> placed = move(labels, by);
    placed.forEach(this::put);
    placed.forEach(label -> room.take(wider(label.bounds()).widened(Length.mm(AROUND))));
  }

  /** As wide as words that start there may come out in another font. */
  private static Box wider(Box words) {
    double more = (WIDER - 1) * words.width().toMm();
    return new Box(words.minX(), words.minY(), words.maxX() + more, words.maxY());
  }

  /** A piece too small for its words has them to its right, and to that of its names. */
  private void beside(String title, List<String> words) {
    double height = LETTERS[LETTERS.length - 1] * times;
    double end =
        elements.stream().mapToDouble(e -> e.bounds().maxX()).reduce(bounds.maxX(), Math::max);
    Vector right = new Vector(end + 5, bounds.maxY());
    move(set(title, words, height, WIDTHS[0] * times), right).forEach(this::put);
  }

  /** Lines under each other, the first one larger, the upper left corner at the origin. */
  private static List<Label> set(String title, List<String> words, double height, double width) {
    List<Label> labels = new ArrayList<>();
    double y = 0;
    for (String line : Lettering.wrap(title, Length.mm(height * TITLE), Length.mm(width))) {
      y -= height * TITLE;
      labels.add(Label.of(line, new Point(0, y), Length.mm(height * TITLE)));
      y -= height * TITLE * 0.5;
    }
    for (String paragraph : words) {
      for (String line : Lettering.wrap(paragraph, Length.mm(height), Length.mm(width))) {
        y -= height * LEADING;
        labels.add(Label.of(line, new Point(0, y), Length.mm(height)));
      }
    }
    return labels;
  }

  private static List<Label> move(List<Label> labels, Vector by) {
    return labels.stream().map(label -> label.map(Transform.translation(by))).toList();
  }

  /** Short markings by their names, each above its own: there may be many in a row. */
  void markNames() {
    for (Stroke line : lines) {
      if (isMark(line)) {
        Box mark = line.bounds();
        name(line.name(), new Point(mark.centre().x(), mark.maxY() + ABOVE * times), line);
      }
    }
  }

  private static boolean isMark(Stroke line) {
    return line.style() == StrokeStyle.MARKING && line.curve().length().toMm() <= LONGEST_MARK;
  }

  /** Folds in words, edges and markings by their names, each beside the middle of its line. */
  void lineNames() {
    for (Stroke line : lines) {
      switch (line.style()) {
        case FOLD -> put(placed(foldWords(line), beside(line), middle(line), FOLDS));
        case JOIN_LINE -> name(line.name() + " join line", beside(line), line);
        case MARKING -> name(isMark(line) ? "" : line.name(), beside(line), line);
        case NOTCH -> name(line.name(), within(line), line);
        case FINDING -> finding("look at " + line.name(), line);
        default -> {}
      }
    }
  }

  private static String foldWords(Stroke fold) {
    return fold.name().equals(FOLD_OF_THE_CLOTH) ? fold.name() : "FOLD, " + fold.name();
  }

  /** To the left of the middle of a line, which is inwards on an outline. */
  private static Point beside(Stroke line) {
    Length half = line.curve().length().dividedBy(2);
    Vector inwards = line.curve().directionAt(half).left();
    return middle(line).plus(inwards.times(8 + 10 * Math.abs(inwards.dx())));
  }

  private static Point middle(Stroke line) {
    return line.curve().pointAt(line.curve().length().dividedBy(2));
  }

  /** A little further in than the slit. */
  private static Point within(Stroke slit) {
    Curve curve = slit.curve();
    return curve.end().plus(curve.end().minus(curve.start()).unit().times(10));
  }

  private void name(String text, Point near, Stroke line) {
    if (!text.isEmpty()) {
      put(placed(text, near, middle(line), NAMES));
    }
  }

  private void finding(String text, Stroke line) {
    put(placed(text, beside(line), middle(line), FOLDS).asFinding());
  }

  /** The room round a piece that is too narrow for the names of its lines. */
  private FreeRoom outside() {
    FreeRoom outside = FreeRoom.within(bounds.widened(Length.mm(OUTSIDE * times)));
    outside.take(bounds);
    elements.forEach(outside::take);
    return outside;
  }

  /** A text in the piece, near one place, or beside the piece, near the other. */
  private Label placed(String text, Point near, Point without, double onPaper) {
    Length height = Length.mm(onPaper * times);
    Length width = Lettering.width(text, height).times(WIDER);
    Point corner =
        room.find(width, height, near)
            .or(() -> outside().find(width, height, without))
            .orElse(new Point(near.x() - width.toMm() / 2, near.y()));
    return Label.of(text, corner, height);
  }
}
