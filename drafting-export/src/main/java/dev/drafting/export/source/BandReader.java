package dev.drafting.export.source;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Finish;
import dev.drafting.knit.band.Casing;
import dev.drafting.knit.band.FacedStrip;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.band.Intent;
import dev.drafting.knit.band.WrappedBinding;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** Reads bands, bindings, strips that are turned in, and casings for elastic. */
final class BandReader {
  private static final Length NARROWEST = Length.mm(1);
  private static final Length WIDEST = Length.mm(100);
  private static final Map<String, Intent> INTENTS = intents();
  private static final Map<String, UnaryOperator<WrappedBinding>> LAYERS = layers();

  private BandReader() {}

  private static Map<String, Intent> intents() {
    Map<String, Intent> intents = new LinkedHashMap<>();
    Arrays.stream(Intent.values()).forEach(intent -> intents.put(intent.plainName(), intent));
    return intents;
  }

  private static Map<String, UnaryOperator<WrappedBinding>> layers() {
    Map<String, UnaryOperator<WrappedBinding>> layers = new LinkedHashMap<>();
    layers.put("both edges turned in", UnaryOperator.identity());
    layers.put("folded in half first", WrappedBinding::doubled);
    layers.put("overlocked inside", WrappedBinding::overlockedInside);
    return layers;
  }

  /** The finishes that are read here, by their names in the file. */
  static Map<String, Function<Entry, Finish>> finishes() {
    Map<String, Function<Entry, Finish>> finishes = new LinkedHashMap<>();
    finishes.put("folded band", entry -> folded(entry, FoldedBand::of));
    finishes.put("cuff", entry -> folded(entry, FoldedBand::cuff));
    finishes.put("waist rib", entry -> folded(entry, FoldedBand::waistRib));
    finishes.put("wrapped binding", BandReader::wrapped);
    finishes.put("faced strip", BandReader::turnedIn);
    finishes.put("casing", BandReader::casing);
    return finishes;
  }

  private static Fields fields(Entry entry, String... own) {
    return entry.fields(
        Stream.concat(Stream.of("edges", "finish"), Arrays.stream(own)).toArray(String[]::new));
  }

  private static Finish folded(Entry entry, BiFunction<Length, Length, FoldedBand> kind) {
    Fields fields = fields(entry, "showing", "allowance", "cloth", "intent", "readyEdged");
    Length showing = width(fields.get("showing"));
    Length allowance = width(fields.get("allowance"));
    FoldedBand band = entry.placed(() -> kind.apply(showing, allowance));
    band = fields.change(band, "cloth", (b, e) -> b.withCloth(e.name()));
    band = fields.change(band, "readyEdged", (b, e) -> e.truth() ? b.readyEdged() : b);
    return fields.change(band, "intent", (b, e) -> b.withIntent(intent(e)));
  }

  private static Finish wrapped(Entry entry) {
    Fields fields = fields(entry, "showing", "turn", "cloth", "layers", "intent");
    Length showing = width(fields.get("showing"));
    WrappedBinding binding = entry.placed(() -> WrappedBinding.of(showing));
    binding =
        fields.change(binding, "turn", (b, e) -> b.withTurnOfCloth(e.length(Length.ZERO, showing)));
    binding =
        fields.change(binding, "layers", (b, e) -> e.choice("way of laying", LAYERS).apply(b));
    binding = fields.change(binding, "cloth", (b, e) -> b.withCloth(e.name()));
    return fields.change(binding, "intent", (b, e) -> b.withIntent(intent(e)));
  }

  private static Finish turnedIn(Entry entry) {
    Fields fields = fields(entry, "depth", "allowance", "tuck", "cloth", "intent");
    Length depth = width(fields.get("depth"));
    Length allowance = width(fields.get("allowance"));
    FacedStrip strip = entry.placed(() -> FacedStrip.of(depth, allowance));
    strip = fields.change(strip, "tuck", (s, e) -> s.withTuck(e.length(Length.ZERO, depth)));
    strip = fields.change(strip, "cloth", (s, e) -> s.withCloth(e.name()));
    return fields.change(strip, "intent", (s, e) -> s.withIntent(intent(e)));
  }

  private static Finish casing(Entry entry) {
    Fields fields = fields(entry, "depth", "turnIn", "elastic", "girth", "shorter", "overlap");
    Length depth = width(fields.get("depth"));
    Length turnIn = fields.or("turnIn", Length.ZERO, e -> e.length(Length.ZERO, depth));
    Casing casing = entry.placed(() -> Casing.of(depth, turnIn));
    casing =
        fields.change(casing, "elastic", (c, e) -> c.withElastic(e.length(Length.mm(3), depth)));
    casing =
        fields.change(
            casing, "girth", (c, e) -> c.withGirth(e.length(Length.cm(5), Length.cm(250))));
    casing = fields.change(casing, "shorter", (c, e) -> c.withShortening(e.share(0, 30)));
    return fields.change(
        casing, "overlap", (c, e) -> c.withOverlap(e.length(Length.ZERO, Length.mm(50))));
  }

  private static Intent intent(Entry entry) {
    return entry.choice("intent", INTENTS);
  }

  private static Length width(Entry entry) {
    return entry.length(NARROWEST, WIDEST);
  }
}
