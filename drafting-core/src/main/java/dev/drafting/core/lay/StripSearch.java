package dev.drafting.core.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Shortens the strip step by step: from the best layout so far a little is cut out and its items
 * are pulled apart again, by two searches at a time that begin alike and chance differently. What
 * comes out depends on the seed and the number of rounds alone, not on the number of cores.
 */
final class StripSearch {
  private static final int SEARCHES = 2;
  private static final int PASSES = 20;
  private static final double LOOSE = 1.45;
  private static final double WIDER = 1.2;
  private static final double FIRST_CUT = 0.05;
  private static final double SMALLER = 0.7;
  private static final double LEAST_EXPLORED = 0.003;
  private static final double EXPLORING = 0.8;
  private static final double FIRST_SQUEEZE = 0.0005;
  private static final double LAST_SQUEEZE = 0.00001;
  private static final int MOST_FAILURES = 2;
  private static final int SQUEEZE_ROUNDS = 5;
  private static final int FIRST_ROUNDS = 4;
  private static final double ENOUGH = 1e-6;

  /** How far along the search is, from 0 to 1, and whether it may go on. */
  interface Budget {
    double spent();
  }

  /** Is told of every shorter layout. */
  interface Listener {
    void shorter(double length);
  }

  private final StripProblem problem;
  private final List<Separation> searches = new ArrayList<>();
  private final SplittableRandom random;
  private Layout best;
  private double length;
  private double cut = FIRST_CUT;
  private int rounds;

  StripSearch(StripProblem problem, long seed) {
    this.problem = problem;
    this.random = new SplittableRandom(seed);
    for (int i = 0; i < SEARCHES; i++) {
      searches.add(new Separation(problem, random.split()));
    }
    best = new Layout(problem.count());
  }

  Layout best() {
    return best;
  }

  double length() {
    return length;
  }

  /** A first layout, then shorter ones until the budget is spent. */
  void run(Budget budget, Listener listener) {
    ExecutorService threads =
        Executors.newFixedThreadPool(
            Math.min(SEARCHES, Runtime.getRuntime().availableProcessors()),
            work -> {
              Thread thread = new Thread(work, "lay plan");
              thread.setDaemon(true);
              return thread;
            });
    try {
      first(threads);
      listener.shorter(length);
      shortenAll();
      while (budget.spent() < 1 && length > problem.longest() * (1 + ENOUGH)) {
        boolean squeezing = budget.spent() > EXPLORING;
        int found = round(threads);
        rounds++;
        if (found >= 0) {
          adopt(searches.get(found));
          listener.shorter(length);
          cut = squeezing ? squeeze(budget.spent()) : Math.max(LEAST_EXPLORED, cut * SMALLER);
          shortenAll();
        } else if (squeezing ? rounds >= SQUEEZE_ROUNDS : isStuck()) {
          cut = squeezing ? squeeze(budget.spent()) : cut / 2;
          shortenAll();
        }
      }
    } finally {
      threads.shutdownNow();
    }
  }

  private static double squeeze(double spent) {
    double share = (spent - EXPLORING) / (1 - EXPLORING);
    return FIRST_SQUEEZE + (LAST_SQUEEZE - FIRST_SQUEEZE) * Math.max(0, Math.min(1, share));
  }

  private boolean isStuck() {
    return searches.stream().allMatch(search -> search.failed() >= MOST_FAILURES);
  }

  private void first(ExecutorService threads) {
    length = Math.max(problem.longest(), problem.area() / problem.height() * LOOSE);
    for (int found = -1; found < 0; length *= WIDER) {
      for (Separation search : searches) {
        search.scatter(length);
      }
      for (int i = 0; i < FIRST_ROUNDS && found < 0; i++) {
        found = round(threads);
      }
      if (found >= 0) {
        adopt(searches.get(found));
        return;
      }
    }
  }

  private void adopt(Separation search) {
    best = search.layout().copy();
    length = problem.extent(best);
  }

  private void shortenAll() {
    rounds = 0;
    for (Separation search : searches) {
      search.shorten(best, length, Math.max(problem.longest(), length * (1 - cut)));
    }
  }

  /** Some passes of every search; the number of the one that found the shortest layout, or -1. */
  private int round(ExecutorService threads) {
    List<Future<Boolean>> running = new ArrayList<>();
    for (Separation search : searches) {
      running.add(threads.submit(() -> search.advance(PASSES)));
    }
    int found = -1;
    double shortest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < running.size(); i++) {
      if (isApart(running.get(i))) {
        double extent = problem.extent(searches.get(i).layout());
        if (extent < shortest) {
          shortest = extent;
          found = i;
        }
      }
    }
    return found;
  }

  private static boolean isApart(Future<Boolean> search) {
    try {
      return search.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    } catch (ExecutionException e) {
      throw new IllegalStateException(e.getCause());
    }
  }
}
