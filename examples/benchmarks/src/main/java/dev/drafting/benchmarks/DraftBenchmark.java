package dev.drafting.benchmarks;

import dev.drafting.core.alter.Alteration;
import dev.drafting.core.alter.EdgePlace;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.export.source.Garment;
import dev.drafting.knit.Draft;
import dev.drafting.knit.fabric.Fabric;
import java.util.List;
import java.util.Map;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** From the traced points of a garment to everything that is derived from them. */
@State(Scope.Benchmark)
public class DraftBenchmark {
  private final Garment garment = Vest.read();

  /** Reads, trues and drafts. */
  @Benchmark
  public List<Object> whole() {
    return derived(Vest.draft());
  }

  /** Drafts a pattern that is trued already, in fabrics that it has not met. */
  @Benchmark
  public List<Object> drafted() {
    Draft made = garment.makes().values().iterator().next();
    Draft fresh = Draft.of(garment.pattern()).withName(made.name()).withWearer(made.wearer());
    for (Map.Entry<String, Fabric> cloth : made.fabrics().entrySet()) {
      fresh = fresh.withFabric(cloth.getKey(), cloth.getValue());
    }
    return derived(fresh);
  }

  /** Takes a vest in at its sides. */
  @Benchmark
  public Pattern altered() {
    return Alteration.takeIn("side", Length.mm(6)).applyTo(garment.pattern());
  }

  /** Snips its neck, told on the raw edge. */
  @Benchmark
  public Pattern snipped() {
    return Alteration.snip(
            "front neck",
            Length.mm(8),
            EdgePlace.at("fold"),
            EdgePlace.from("shoulder", Length.cm(6)))
        .applyTo(garment.pattern());
  }

  private static List<Object> derived(Draft draft) {
    return List.of(
        draft.strips(),
        draft.findings(),
        draft.cutPieces(),
        draft.cutList(),
        draft.measures(),
        draft.goods(),
        draft.orderOfWork());
  }
}
