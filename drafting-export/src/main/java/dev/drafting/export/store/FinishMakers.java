package dev.drafting.export.store;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.FacedEdge;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.FoldEdge;
import dev.drafting.core.pattern.RawEdge;
import dev.drafting.core.pattern.SeamFinish;
import dev.drafting.knit.band.Casing;
import dev.drafting.knit.band.FacedStrip;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.band.Intent;
import dev.drafting.knit.band.WrappedBinding;
import dev.drafting.knit.hem.TurnedHem;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** Makes the finishes of the library from their settings. */
final class FinishMakers {
  private static final Map<String, Intent> INTENTS = intents();

  private FinishMakers() {}

  static Map<String, Function<Map<String, String>, Finish>> all() {
    Map<String, Function<Settings, Finish>> makers =
        Map.of(
            "raw", settings -> RawEdge.of(),
            "fold", settings -> FoldEdge.of(),
            "seam", settings -> SeamFinish.of(settings.length("allowance")),
            "faced", FinishMakers::faced,
            "turned-hem", FinishMakers::hem,
            "folded-band", FinishMakers::band,
            "wrapped-binding", FinishMakers::binding,
            "faced-strip", FinishMakers::facedStrip,
            "casing", FinishMakers::casing);
    Map<String, Function<Map<String, String>, Finish>> all = new LinkedHashMap<>();
    makers.forEach((id, maker) -> all.put(id, settings -> maker.apply(new Settings(settings))));
    return all;
  }

  private static Map<String, Intent> intents() {
    Map<String, Intent> intents = new LinkedHashMap<>();
    Arrays.stream(Intent.values()).forEach(intent -> intents.put(intent.plainName(), intent));
    return intents;
  }

  private static Finish faced(Settings settings) {
    FacedEdge plain = FacedEdge.of(settings.length("allowance"));
    return settings.find("topstitch").map(Length::parse).map(plain::withTopstitch).orElse(plain);
  }

  private static Finish hem(Settings settings) {
    Length turnIn = settings.length("turn-in");
    Length depth = settings.length("depth");
    TurnedHem hem =
        (turnIn.isZero() ? TurnedHem.once(depth) : TurnedHem.twice(turnIn, depth))
            .withTopstitchMargin(settings.length("topstitch margin"));
    return settings.find("twin needle").map(Length::parse).map(hem::withTwinNeedle).orElse(hem);
  }

  private static Finish band(Settings settings) {
    Map<String, BiFunction<Length, Length, FoldedBand>> nouns =
        Map.of("band", FoldedBand::of, "cuff", FoldedBand::cuff, "waist rib", FoldedBand::waistRib);
    String rows = settings.text("topstitch");
    Length[] topstitch =
        Arrays.stream(rows.split(", "))
            .filter(row -> !row.isEmpty())
            .map(Length::parse)
            .toArray(Length[]::new);
    FoldedBand band =
        settings
            .choice("noun", nouns)
            .apply(settings.length("showing"), settings.length("allowance"))
            .withCloth(settings.text("cloth"))
            .withTopstitch(topstitch)
            .withIntent(settings.choice("intent", INTENTS));
    Map<String, UnaryOperator<FoldedBand>> edges =
        Map.of("folded", UnaryOperator.identity(), "ready", FoldedBand::readyEdged);
    return settings.choice("edge", edges).apply(band);
  }

  private static Finish binding(Settings settings) {
    Map<String, UnaryOperator<WrappedBinding>> layers =
        Map.of(
            "both edges turned in", UnaryOperator.identity(),
            "folded in half first", WrappedBinding::doubled,
            "overlocked inside", WrappedBinding::overlockedInside);
    WrappedBinding binding =
        WrappedBinding.of(settings.length("showing"))
            .withTurnOfCloth(settings.length("turn of cloth"))
            .withCloth(settings.text("cloth"))
            .withIntent(settings.choice("intent", INTENTS));
    return settings.choice("layers", layers).apply(binding);
  }

  private static Finish facedStrip(Settings settings) {
    FacedStrip strip = FacedStrip.of(settings.length("depth"), settings.length("allowance"));
    return strip
        .withTuck(settings.length("tuck"))
        .withCloth(settings.text("cloth"))
        .withIntent(settings.choice("intent", INTENTS));
  }

  private static Finish casing(Settings settings) {
    Casing casing =
        Casing.of(settings.length("depth"), settings.length("turn-in"))
            .withElastic(settings.length("elastic"))
            .withShortening(settings.number("shortening"))
            .withOverlap(settings.length("overlap"));
    Optional<Length> girth =
        settings.find("girth").filter(text -> !text.equals("unknown")).map(Length::parse);
    return girth.map(casing::withGirth).orElse(casing);
  }
}
