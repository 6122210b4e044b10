package dev.drafting.export.source;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.FacedEdge;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.RawEdge;
import dev.drafting.knit.hem.TurnedHem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Reads how the edges that are in no seam are finished. */
final class FinishReader {
  private static final int MOST_FINISHES = 200;
  private static final Length NARROWEST = Length.mm(1);
  private static final Length WIDEST = Length.mm(100);
  private static final Map<String, Function<Entry, Finish>> FINISHES = finishes();

  private FinishReader() {}

  private static Map<String, Function<Entry, Finish>> finishes() {
    Map<String, Function<Entry, Finish>> finishes = new LinkedHashMap<>(BandReader.finishes());
    finishes.put("hem once", FinishReader::hemOnce);
    finishes.put("hem twice", FinishReader::hemTwice);
    finishes.put("faced", FinishReader::faced);
    finishes.put("raw", FinishReader::raw);
    return finishes;
  }

  /** The finish of every edge that is named. */
  static Map<EdgeRef, Finish> finishes(Entry list, EdgeNames edges) {
    Map<EdgeRef, Finish> finishes = new LinkedHashMap<>();
    for (Entry entry : list.list(1, MOST_FINISHES)) {
      Fields fields = entry.anyFields();
      Finish finish = fields.get("finish").choice("finish", FINISHES).apply(entry);
      for (Entry name : fields.get("edges").list(1, MOST_FINISHES)) {
        if (finishes.putIfAbsent(edges.find(name), finish) != null) {
          throw name.fault("the edge has two finishes").accepted("one finish for each edge");
        }
      }
    }
    return finishes;
  }

  private static Fields fields(Entry entry, String... own) {
    String[] known = new String[own.length + 2];
    known[0] = "edges";
    known[1] = "finish";
    System.arraycopy(own, 0, known, 2, own.length);
    return entry.fields(known);
  }

  private static Finish hemOnce(Entry entry) {
    Fields fields = fields(entry, "depth", "twinNeedle");
    Length depth = width(fields.get("depth"));
    return twin(fields, entry.placed(() -> TurnedHem.once(depth)));
  }

  private static Finish hemTwice(Entry entry) {
    Fields fields = fields(entry, "turnIn", "depth", "twinNeedle");
    Length turnIn = width(fields.get("turnIn"));
    Length depth = width(fields.get("depth"));
    return twin(fields, entry.placed(() -> TurnedHem.twice(turnIn, depth)));
  }

  private static Finish twin(Fields fields, TurnedHem hem) {
    return fields.change(
        hem,
        "twinNeedle",
        (h, e) -> {
          Length gap = e.length(Length.mm(1.5), Length.mm(8));
          return e.placed(() -> h.withTwinNeedle(gap));
        });
  }

  private static Finish faced(Entry entry) {
    return FacedEdge.of(width(fields(entry, "allowance").get("allowance")));
  }

  private static Finish raw(Entry entry) {
    entry.anyFields().require(List.of("edges", "finish"));
    return RawEdge.of();
  }

  private static Length width(Entry entry) {
    return entry.length(NARROWEST, WIDEST);
  }
}
