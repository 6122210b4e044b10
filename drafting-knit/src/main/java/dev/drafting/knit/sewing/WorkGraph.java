package dev.drafting.knit.sewing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Tasks and what each of them needs done before. Among those that are ready the one of the lowest
 * rank comes first, then the one that was added first.
 */
final class WorkGraph {
  private final Map<String, Integer> ranks = new LinkedHashMap<>();
  private final Map<String, Set<String>> needs = new LinkedHashMap<>();

  void add(String task, int rank) {
    ranks.put(task, rank);
    needs.put(task, new LinkedHashSet<>());
  }

  /** Says that a task needs another one first, unless that one needs the task already. */
  void need(String task, String first) {
    if (canNeed(task, first)) {
      of(task).add(first);
    }
  }

  boolean canNeed(String task, String first) {
    return !task.equals(first) && !reaches(first, task);
  }

  private Set<String> of(String task) {
    return needs.getOrDefault(task, Set.of());
  }

  /** Whether a task needs another one, at however many removes. */
  private boolean reaches(String task, String other) {
    return of(task).stream().anyMatch(need -> need.equals(other) || reaches(need, other));
  }

  List<String> inOrder() {
    List<String> done = new ArrayList<>();
    List<String> waiting = new ArrayList<>(ranks.keySet());
    while (!waiting.isEmpty()) {
      String next = "";
      for (String task : waiting) {
        boolean ready = done.containsAll(of(task));
        if (ready && (next.isEmpty() || rank(task) < rank(next))) {
          next = task;
        }
      }
      done.add(next);
      waiting.remove(next);
    }
    return done;
  }

  private int rank(String task) {
    return ranks.getOrDefault(task, Integer.MAX_VALUE);
  }
}
