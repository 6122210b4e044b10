package dev.drafting.export.store;

import dev.drafting.core.alter.Alteration;
import dev.drafting.core.alter.EdgePlace;
import dev.drafting.core.measure.Length;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/** Makes the alterations of the library from their settings. */
final class AlterationMakers {
  static final String FINISH = "finish";

  private AlterationMakers() {}

  static Map<String, Function<Map<String, String>, Alteration>> all() {
    Map<String, Function<Settings, Alteration>> makers =
        Map.of(
            "seam-move", AlterationMakers::seamMove,
            "lengthen", AlterationMakers::lengthen,
            "neck-depth", s -> Alteration.lowerNeck(s.text("edge"), s.length("lower")),
            "seam-end", AlterationMakers::seamEnd,
            "seam-swing", AlterationMakers::seamSwing,
            "reshape", AlterationMakers::reshape,
            "snip", AlterationMakers::snip,
            "gape", AlterationMakers::gape);
    Map<String, Function<Map<String, String>, Alteration>> all = new LinkedHashMap<>();
    makers.forEach((id, maker) -> all.put(id, settings -> maker.apply(new Settings(settings))));
    all.put(FINISH, settings -> finish(settings, StoredTypes.usual()).orElseThrow());
    return all;
  }

  private static Alteration seamMove(Settings settings) {
    return Alteration.takeIn(
        settings.text("seam"), settings.length("at lower end"), settings.length("at upper end"));
  }

  private static Alteration lengthen(Settings settings) {
    return Alteration.lengthen(
        settings.text("seam"), settings.length("up"), settings.length("amount"));
  }

  private static Alteration seamEnd(Settings settings) {
    Map<String, BiFunction<String, Length, Alteration>> ends =
        Map.of(
            "inner", Alteration::widenNeck,
            "outer", (seam, inwards) -> Alteration.widenStrap(seam, inwards.negated()),
            "upper", Alteration::deepenArmhole);
    return settings.choice("end", ends).apply(settings.text("seam"), settings.length("inwards"));
  }

  private static Alteration seamSwing(Settings settings) {
    Map<String, BiFunction<String, Length, Alteration>> ends =
        Map.of("outer", Alteration::dropShoulder, "lower", Alteration::flare);
    return settings.choice("end", ends).apply(settings.text("seam"), settings.length("amount"));
  }

  private static Alteration reshape(Settings settings) {
    return Alteration.reshape(
        settings.text("edge"),
        place(settings, "from"),
        place(settings, "at"),
        place(settings, "to"),
        settings.length("outward"));
  }

  private static Alteration snip(Settings settings) {
    return Alteration.snip(
        settings.text("edge"),
        settings.length("outward").negated(),
        place(settings, "from"),
        place(settings, "at"),
        place(settings, "to"));
  }

  private static EdgePlace place(Settings settings, String name) {
    return EdgePlace.parse(settings.text(name));
  }

  private static Alteration gape(Settings settings) {
    return Alteration.takeOutGape(
        settings.text("edge"), settings.length("amount"), settings.text("pivot"));
  }

  /** An edge with another finish, if that is known. */
  static Optional<Alteration> finish(Map<String, String> settings, StoredTypes types) {
    Settings own = new Settings(settings);
    return types
        .finish(own.text("finish"), own.after("finish "))
        .map(finish -> Alteration.finish(own.text("edge"), finish));
  }
}
