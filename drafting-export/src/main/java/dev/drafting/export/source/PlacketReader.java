package dev.drafting.export.source;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Placket;

/** Reads where pieces are opened by a placket. */
final class PlacketReader {
  private static final int MOST_PLACKETS = 20;
  private static final int MOST_FASTENERS = 30;
  private static final Length NARROWEST = Length.mm(8);
  private static final Length WIDEST = Length.mm(80);
  private static final Length LONGEST = Length.cm(100);
  private static final Length FARTHEST = Length.cm(500);

  private PlacketReader() {}

  static Pattern on(Pattern pattern, Fields whole, EdgeNames edges) {
    Pattern opened = pattern;
    if (whole.find("plackets").isPresent()) {
      for (Entry entry : whole.get("plackets").list(0, MOST_PLACKETS)) {
        opened = on(opened, entry, edges);
      }
    }
    return opened;
  }

  private static Pattern on(Pattern pattern, Entry entry, EdgeNames edges) {
    Fields fields = entry.fields("edge", "length", "width", "fasteners", "at");
    EdgeRef edge = edges.find(fields.get("edge"));
    Length length = fields.get("length").length(NARROWEST, LONGEST);
    Length width = fields.get("width").length(NARROWEST, WIDEST);
    return entry.placed(
        () -> {
          Placket placket = Placket.of(edge.toString(), length, width);
          placket =
              fields.change(
                  placket, "fasteners", (p, e) -> p.withFasteners(e.count(0, MOST_FASTENERS)));
          placket = fields.change(placket, "at", (p, e) -> p.at(e.length(Length.ZERO, FARTHEST)));
          return pattern.withPlacket(placket);
        });
  }
}
