package dev.drafting.core.lay;

import java.util.SplittableRandom;

/**
 * Finds a better place for one item: it looks at some places near by and some anywhere on the
 * strip, and goes on from the best few by ever smaller steps.
 */
final class Mover {
  private static final int NEAR = 20;
  private static final int ANYWHERE = 25;
  private static final int KEPT = 3;
  private static final double SAME = 0.01;
  private static final double FIRST_STEP = 0.25;
  private static final double MIDDLE_STEP = 0.02;
  private static final double LAST_STEP = 0.001;
  private static final double LONGER = 1.1;

  private final StripProblem problem;
  private final Layout layout;
  private final Overlaps overlaps;
  private final SplittableRandom random;
  private final Place[] kept = {new Place(), new Place(), new Place()};
  private final Place best = new Place();
  private int count;

  /** A place for the item that is being moved. */
  private static final class Place {
    private int turn;
    private double x;
    private double y;
    private double weight;

    private void set(int newTurn, double newX, double newY, double newWeight) {
      turn = newTurn;
      x = newX;
      y = newY;
      weight = newWeight;
    }

    private void set(Place other) {
      set(other.turn, other.x, other.y, other.weight);
    }
  }

  Mover(StripProblem problem, Layout layout, Overlaps overlaps, SplittableRandom random) {
    this.problem = problem;
    this.layout = layout;
    this.overlaps = overlaps;
    this.random = random;
  }

  /** Moves an item that overlaps to a place where it weighs less, if one is found. */
  void move(int item, double length) {
    double now = overlaps.of(item);
    if (now == 0) {
      return;
    }
    TurnedShape shape = problem.shape(item, layout.turn[item]);
    double size = Math.min(shape.maxX - shape.minX, shape.maxY - shape.minY);
    count = 0;
    keep(layout.turn[item], layout.x[item], layout.y[item], now, size * SAME);
    for (int i = 0; i < NEAR + ANYWHERE; i++) {
      look(item, length, i < NEAR, size * SAME);
    }
    best.set(layout.turn[item], layout.x[item], layout.y[item], now);
    for (int i = 0; i < count && best.weight > 0; i++) {
      descend(item, length, kept[i], size * FIRST_STEP, size * MIDDLE_STEP);
      if (kept[i].weight < best.weight) {
        best.set(kept[i]);
      }
    }
    if (best.weight > 0) {
      descend(item, length, best, size * SAME, size * LAST_STEP);
    }
    if (best.weight < now) {
      overlaps.move(item, best.turn, best.x, best.y);
    }
  }

  private void look(int item, double length, boolean near, double same) {
    int turn = problem.turns(item) == 1 ? 0 : random.nextInt(problem.turns(item));
    TurnedShape shape = problem.shape(item, turn);
    Room room = problem.room(item);
    if (!room.fits(shape, length)) {
      return;
    }
    double across = random.nextDouble();
    double up = random.nextDouble();
    double x;
    double y;
    if (near) {
      x = layout.x[item] + (across - 0.5) * (shape.maxX - shape.minX);
      y = layout.y[item] + (up - 0.5) * (shape.maxY - shape.minY);
    } else {
      x = -shape.minX + across * (length - shape.maxX + shape.minX);
      y = room.low() - shape.minY + up * (room.high() - room.low() - shape.maxY + shape.minY);
    }
    x = room.x(shape, x, length);
    y = room.y(shape, y);
    double bound = count == KEPT ? kept[KEPT - 1].weight : Double.POSITIVE_INFINITY;
    double weight = overlaps.at(item, turn, x, y, bound);
    if (weight < bound) {
      keep(turn, x, y, weight, same);
    }
  }

  /** Keeps a place among the best, but no two that are nearly the same. */
  private void keep(int turn, double x, double y, double weight, double same) {
    int at = count;
    for (int i = 0; i < count; i++) {
      Place other = kept[i];
      if (other.turn == turn && Math.abs(other.x - x) < same && Math.abs(other.y - y) < same) {
        if (weight >= other.weight) {
          return;
        }
        at = i;
        break;
      }
    }
    if (at == count) {
      if (count < KEPT) {
        count++;
      } else if (weight < kept[KEPT - 1].weight) {
        at = KEPT - 1;
      } else {
        return;
      }
    }
    Place place = kept[at];
    place.set(turn, x, y, weight);
    while (at > 0 && kept[at - 1].weight > weight) {
      kept[at] = kept[at - 1];
      at--;
    }
    kept[at] = place;
  }

  private void descend(int item, double length, Place place, double first, double last) {
    TurnedShape shape = problem.shape(item, place.turn);
    Room room = problem.room(item);
    double stepX = Math.max(first, room.along());
    double stepY = Math.max(first, room.across());
    double shrink = Math.sqrt(0.5);
    while (Math.max(stepX, stepY) > last && place.weight > 0) {
      int axis = random.nextInt(4);
      double dx = axis == 1 ? 0 : stepX;
      double dy = axis == 0 ? 0 : axis == 3 ? -stepY : stepY;
      double before = place.weight;
      step(item, place, room.x(shape, place.x + dx, length), room.y(shape, place.y + dy));
      if (place.weight == before) {
        step(item, place, room.x(shape, place.x - dx, length), room.y(shape, place.y - dy));
      }
      boolean better = place.weight < before;
      if (axis != 1) {
        stepX *= better ? LONGER : axis == 0 ? 0.5 : shrink;
      }
      if (axis != 0) {
        stepY *= better ? LONGER : axis == 1 ? 0.5 : shrink;
      }
    }
  }

  private void step(int item, Place place, double x, double y) {
    double weight = overlaps.at(item, place.turn, x, y, place.weight);
    if (weight < place.weight) {
      place.set(place.turn, x, y, weight);
    }
  }
}
