package dev.drafting.core.lay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Pulls the items of a layout apart on a strip of a given length, some passes at a time. What it
 * could not pull apart it keeps, the least bad first, and begins again from one of those with two
 * large items swapped.
 */
final class Separation {
  private static final int PATIENCE = 200;
  private static final int MOST_STRIKES = 3;
  private static final double PROGRESS = 0.98;
  private static final double FAVOUR = 0.25;
  private static final int SWAP_TRIES = 50;

  private final StripProblem problem;
  private final SplittableRandom random;
  private final Layout layout;
  private final Overlaps overlaps;
  private final Mover mover;
  private final Layout least;
  private final List<Layout> failures = new ArrayList<>();
  private final List<Double> depths = new ArrayList<>();
  private double length;
  private double best;
  private double bestAtStrike;
  private int idle;
  private int strikes;
  private int failed;

  Separation(StripProblem problem, SplittableRandom random) {
    this.problem = problem;
    this.random = random;
    layout = new Layout(problem.count());
    least = new Layout(problem.count());
    overlaps = new Overlaps(problem, layout);
    mover = new Mover(problem, layout, overlaps, random);
  }

  /** Begins anew with every item anywhere. */
  void scatter(double newLength) {
    length = newLength;
    for (int i = 0; i < problem.count(); i++) {
      int turn = random.nextInt(problem.turns(i));
      while (!problem.room(i).fits(problem.shape(i, turn), length)) {
        turn = (turn + 1) % problem.turns(i);
      }
      layout.turn[i] = turn;
      TurnedShape shape = problem.shape(i, turn);
      layout.x[i] = problem.room(i).x(shape, random.nextDouble() * length - shape.minX, length);
      layout.y[i] = problem.room(i).y(shape, random.nextDouble() * problem.height() - shape.minY);
    }
    begin();
  }

  /** Begins from a layout without overlaps, with a stretch cut out of its strip anywhere. */
  void shorten(Layout from, double oldLength, double newLength) {
    layout.set(from);
    length = newLength;
    double cut = random.nextDouble() * oldLength;
    for (int i = 0; i < problem.count(); i++) {
      TurnedShape shape = problem.shape(i, layout.turn[i]);
      boolean behind = layout.x[i] + (shape.minX + shape.maxX) / 2 > cut;
      double x = layout.x[i] - (behind ? oldLength - newLength : 0);
      layout.x[i] = problem.room(i).x(shape, x, length);
    }
    begin();
  }

  private void begin() {
    failures.clear();
    depths.clear();
    failed = 0;
    restart();
  }

  private void restart() {
    overlaps.reset();
    least.set(layout);
    best = overlaps.total();
    bestAtStrike = best;
    idle = 0;
    strikes = 0;
  }

  Layout layout() {
    return layout;
  }

  /** How often it had to begin again at this length. */
  int failed() {
    return failed;
  }

  /** Goes on for some passes; tells whether nothing overlaps any more. */
  boolean advance(int passes) {
    for (int pass = 0; pass < passes; pass++) {
      if (best == 0) {
        return true;
      }
      pass();
      double total = overlaps.total();
      idle = total < PROGRESS * best ? 0 : idle + 1;
      if (total < best) {
        best = total;
        least.set(layout);
      }
      if (best == 0) {
        return true;
      }
      overlaps.reweigh();
      if (idle >= PATIENCE) {
        strike();
      }
    }
    return false;
  }

  private void pass() {
    int[] order = new int[problem.count()];
    int count = 0;
    for (int i = 0; i < problem.count(); i++) {
      if (!overlaps.isFree(i)) {
        order[count++] = i;
      }
    }
    for (int i = count - 1; i > 0; i--) {
      int other = random.nextInt(i + 1);
      int swapped = order[i];
      order[i] = order[other];
      order[other] = swapped;
    }
    for (int i = 0; i < count; i++) {
      mover.move(order[i], length);
    }
  }

  private void strike() {
    strikes = best > PROGRESS * bestAtStrike ? strikes + 1 : 0;
    bestAtStrike = best;
    idle = 0;
    layout.set(least);
    overlaps.refresh();
    if (strikes >= MOST_STRIKES) {
      failed++;
      int rank = 0;
      while (rank < depths.size() && depths.get(rank) < best) {
        rank++;
      }
      failures.add(rank, least.copy());
      depths.add(rank, best);
      double share = Math.min(1, Math.abs(normal()) * FAVOUR);
      layout.set(failures.get((int) Math.min(failures.size() - 1.0, share * failures.size())));
      swapTwoLargeItems();
      restart();
    }
  }

  private double normal() {
    double u = 1 - random.nextDouble();
    return Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.nextDouble());
  }

  private void swapTwoLargeItems() {
    double[] areas = new double[problem.count()];
    for (int i = 0; i < areas.length; i++) {
      areas[i] = problem.shape(i, 0).area;
    }
    double[] sorted = areas.clone();
    Arrays.sort(sorted);
    int count = Math.min(sorted.length, Math.max(2, sorted.length / 3));
    double large = sorted[sorted.length - count];
    for (int i = 0; i < SWAP_TRIES; i++) {
      int one = random.nextInt(areas.length);
      int other = random.nextInt(areas.length);
      boolean both = areas[one] >= large && areas[other] >= large;
      if (both && problem.room(one).type() != problem.room(other).type()) {
        swap(one, other);
        return;
      }
    }
  }

  private void swap(int one, int other) {
    double[] a = middle(one);
    double[] b = middle(other);
    put(one, b);
    put(other, a);
  }

  private double[] middle(int item) {
    TurnedShape shape = problem.shape(item, layout.turn[item]);
    return new double[] {
      layout.x[item] + (shape.minX + shape.maxX) / 2, layout.y[item] + (shape.minY + shape.maxY) / 2
    };
  }

  private void put(int item, double[] middle) {
    TurnedShape shape = problem.shape(item, layout.turn[item]);
    Room room = problem.room(item);
    layout.x[item] = room.x(shape, middle[0] - (shape.minX + shape.maxX) / 2, length);
    layout.y[item] = room.y(shape, middle[1] - (shape.minY + shape.maxY) / 2);
  }
}
