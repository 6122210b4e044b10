package dev.drafting.core.geometry;

import java.util.ArrayList;
import java.util.List;

/** Which segments a curve is made of, in words. */
final class SegmentKinds {
  private SegmentKinds() {}

  /** For instance "2 lines, 1 cubic". */
  static String text(List<Segment> segments) {
    long lines = segments.stream().filter(Line.class::isInstance).count();
    long cubics = segments.stream().filter(Cubic.class::isInstance).count();
    List<String> kinds = new ArrayList<>();
    add(kinds, lines, "line");
    add(kinds, cubics, "cubic");
    add(kinds, segments.size() - lines - cubics, "arc");
    return String.join(", ", kinds);
  }

  private static void add(List<String> kinds, long count, String name) {
    if (count > 0) {
      kinds.add(count + " " + name + (count == 1 ? "" : "s"));
    }
  }
}
