package dev.drafting.benchmarks;

import dev.drafting.core.alter.Alteration;
import dev.drafting.core.alter.EdgePlace;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.template.Dimensions;
import dev.drafting.core.template.GarmentTemplate;
import dev.drafting.core.template.SizeRun;
import dev.drafting.core.template.Templates;
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
  private final GarmentTemplate shirt = Templates.installed().get("t-shirt");
  private final GarmentTemplate raglan = Templates.installed().get("raglan-sweatshirt");
  private final SizeRun twelve = twelve();

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

  /** Draws a T-shirt in twelve sizes. */
  @Benchmark
  public Map<String, Pattern> sizes() {
    return twelve.patterns(shirt);
  }

  /** Draws the built-in garment that takes longest in twelve sizes. */
  @Benchmark
  public Map<String, Pattern> raglanSizes() {
    return twelve.patterns(raglan);
  }

  private static SizeRun twelve() {
    SizeRun run = SizeRun.of("1", Dimensions.of().with("chest", Length.cm(92)));
    for (int size = 2; size <= 12; size++) {
      run = run.then(String.valueOf(size), Map.of("chest", Length.cm(4)));
    }
    return run;
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
