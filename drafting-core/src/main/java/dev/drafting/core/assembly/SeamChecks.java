package dev.drafting.core.assembly;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import java.util.List;

/** Measures both sides of every seam. */
final class SeamChecks {
  private SeamChecks() {}

  static List<SeamCheck> of(Pattern pattern) {
    return pattern.seams().stream()
        .map(s -> new SeamCheck(s, total(pattern, s.first()), total(pattern, s.second())))
        .toList();
  }

  private static Length total(Pattern pattern, List<EdgeRef> edges) {
    return edges.stream().map(e -> pattern.edge(e).length()).reduce(Length.ZERO, Length::plus);
  }
}
