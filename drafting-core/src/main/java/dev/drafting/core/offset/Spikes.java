package dev.drafting.core.offset;

import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Vector;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Takes away spikes of no width: where a line is followed by one that runs straight back over it,
 * as far as points can be told apart.
 */
final class Spikes {
  private static final double WIDTH = CornerPlanner.TOUCHING;

  private Spikes() {}

  /**
   * A chain without spikes.
   *
   * @param chain strands end to end
   * @param closed whether the last meets the first
   */
  static List<Strand> removed(List<Strand> chain, boolean closed) {
    List<Strand> kept = new ArrayList<>();
    for (Strand strand : chain) {
      push(kept, strand);
    }
    boolean changed = closed;
    while (changed && kept.size() > 2) {
      Strand last = kept.get(kept.size() - 1);
      List<Strand> both = shortened(last, kept.get(0));
      changed = both != null;
      if (both != null) {
        kept.remove(kept.size() - 1);
        kept.remove(0);
        if (!both.isEmpty()) {
          push(kept, both.get(0));
        }
      }
    }
    return kept;
  }

  private static void push(List<Strand> kept, Strand next) {
    Strand strand = next;
    while (!kept.isEmpty()) {
      List<Strand> both = shortened(kept.get(kept.size() - 1), strand);
      if (both == null) {
        break;
      }
      kept.remove(kept.size() - 1);
      if (both.isEmpty()) {
        return;
      }
      strand = both.get(0);
    }
    kept.add(strand);
  }

  /**
   * What is left of two lines of which the second runs back over the first; null if it does not.
   */
  private static @Nullable List<Strand> shortened(Strand one, Strand two) {
    if (!(one.segment() instanceof Line first) || !(two.segment() instanceof Line second)) {
      return null;
    }
    Vector on = first.end().minus(first.start());
    Vector back = second.end().minus(second.start());
    double forth = Math.sqrt(on.dot(on));
    double over = Math.sqrt(back.dot(back));
    if (on.dot(back) >= 0 || Math.abs(on.cross(back)) > WIDTH * Math.max(forth, over)) {
      return null;
    }
    if (Math.abs(over - forth) <= WIDTH) {
      return List.of();
    }
    Strand left = over < forth ? one.between(0, 1 - over / forth) : two.between(forth / over, 1);
    return List.of(left.withEnds(one.start(), two.end()));
  }
}
