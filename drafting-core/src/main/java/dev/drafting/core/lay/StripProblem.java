package dev.drafting.core.lay;

import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * What is to be laid on a strip as short as possible: shapes with the turns they may have, items of
 * these shapes with their room, and flaws that nothing may lie on.
 */
final class StripProblem {
  /** What counts as touching, as a share of the height. */
  private static final double TOUCHING = 1e-9;

  private final TurnedShape[][] shapes;
  private final Room[] rooms;
  private final double height;
  private final int[] firstOriented;
  private final TurnedShape[] oriented;
  private final AtomicReferenceArray<Clash> clashes;
  private final List<Flaw> flaws;

  /** A flaw of the cloth, as a shape in its place. */
  record Flaw(TurnedShape shape, double x, double y) {}

  StripProblem(List<TurnedShape[]> shapes, List<Room> rooms, List<Flaw> flaws, double height) {
    this.shapes = shapes.toArray(TurnedShape[][]::new);
    this.rooms = rooms.toArray(Room[]::new);
    this.flaws = List.copyOf(flaws);
    this.height = height;
    firstOriented = new int[shapes.size() + 1];
    for (int i = 0; i < shapes.size(); i++) {
      firstOriented[i + 1] = firstOriented[i] + shapes.get(i).length;
    }
    oriented = new TurnedShape[firstOriented[shapes.size()]];
    for (int i = 0; i < shapes.size(); i++) {
      System.arraycopy(shapes.get(i), 0, oriented, firstOriented[i], shapes.get(i).length);
    }
    clashes = new AtomicReferenceArray<>(oriented.length * oriented.length);
  }

  int count() {
    return rooms.length;
  }

  double height() {
    return height;
  }

  List<Flaw> flaws() {
    return flaws;
  }

  Room room(int item) {
    return rooms[item];
  }

  int turns(int item) {
    return shapes[rooms[item].type()].length;
  }

  TurnedShape shape(int item, int turn) {
    return oriented[number(item, turn)];
  }

  /** The number of a shape in one of its turns. */
  int number(int item, int turn) {
    return firstOriented[rooms[item].type()] + turn;
  }

  /** How two of these lie in each other; computed when first asked for. */
  Clash clash(int one, int other) {
    int at = one * oriented.length + other;
    Clash known = clashes.get(at);
    if (known == null) {
      known = new Clash(oriented[one], oriented[other], height * TOUCHING);
      clashes.set(at, known);
    }
    return known;
  }

  Clash clash(int one, Flaw flaw) {
    return new Clash(oriented[one], flaw.shape(), height * TOUCHING);
  }

  double area() {
    double area = 0;
    for (int i = 0; i < count(); i++) {
      area += shape(i, 0).area;
    }
    return area;
  }

  /** The length that a layout takes up. */
  double extent(Layout layout) {
    double extent = 0;
    for (int i = 0; i < count(); i++) {
      extent = Math.max(extent, layout.x[i] + shape(i, layout.turn[i]).maxX);
    }
    return extent;
  }

  private boolean isOnOneFold(int item) {
    boolean below = false;
    boolean above = false;
    for (int turn = 0; turn < turns(item); turn++) {
      boolean foldBelow = shape(item, turn).maxY > -shape(item, turn).minY;
      below |= foldBelow;
      above |= !foldBelow;
    }
    return room(item).onFold() && !(below && above);
  }

  /** No layout can be shorter: what each item alone needs, and those on one fold one by one. */
  double longest() {
    double longest = 0;
    double onOneFold = 0;
    for (int i = 0; i < count(); i++) {
      double shortest = Double.POSITIVE_INFINITY;
      for (int turn = 0; turn < turns(i); turn++) {
        TurnedShape shape = shape(i, turn);
        if (room(i).fits(shape, Double.POSITIVE_INFINITY)) {
          shortest = Math.min(shortest, shape.maxX - shape.minX + room(i).along());
        }
      }
      longest = Math.max(longest, shortest);
      onOneFold += isOnOneFold(i) ? shortest : 0;
    }
    return Math.max(longest, onOneFold);
  }
}
