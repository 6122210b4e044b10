package dev.drafting.export.source;

import dev.drafting.core.assembly.Opening;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Seam;
import dev.drafting.knit.Draft;
import dev.drafting.knit.sewing.Construction;
import dev.drafting.knit.sewing.Detail;
import dev.drafting.knit.sewing.Machines;
import dev.drafting.knit.sewing.SewingChoices;
import dev.drafting.knit.sewing.Stitch;
import dev.drafting.knit.sewing.StitchType;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads on which machines and how the garment is sewn, and what it has that calls for cautions. */
final class SewingReader {
  private static final Length LEAST_GAP = Length.mm(1);
  private static final Length MOST_GAP = Length.mm(12);
  private static final Length USUAL_GAP = Length.mm(4);

  private static final Map<String, Machines> SEAMS = seams();
  private static final Map<String, BiFunction<Machines, Length, Machines>> HEMS = hems();
  private static final Map<String, Construction> BANDS =
      named(Construction.values(), Construction::toString);
  private static final Map<String, Detail> DETAILS = named(Detail.values(), Detail::toString);
  private static final Map<String, StitchType> STITCHES =
      named(StitchType.values(), StitchType::plainName);

  private SewingReader() {}

  private static Map<String, Machines> seams() {
    Map<String, Machines> machines = new LinkedHashMap<>();
    machines.put("zigzag machine", Machines.zigzag());
    machines.put("three-thread overlocker", Machines.overlocker(3));
    machines.put("four-thread overlocker", Machines.overlocker(4));
    return machines;
  }

  private static Map<String, BiFunction<Machines, Length, Machines>> hems() {
    Map<String, BiFunction<Machines, Length, Machines>> hems = new LinkedHashMap<>();
    hems.put("zigzag", (machines, gap) -> machines);
    hems.put("twin needle", Machines::withTwinNeedle);
    hems.put("cover stitch", Machines::withCoverstitch);
    return hems;
  }

  private static <T> Map<String, T> named(T[] values, Function<T, String> name) {
    return Arrays.stream(values)
        .collect(Collectors.toMap(name, value -> value, (a, b) -> a, LinkedHashMap::new));
  }

  private static Fields fields(Entry entry) {
    return entry.fields("seams", "hems", "rows", "bands", "tape", "stitches", "has");
  }

  /** The machines alone, which say how wide an allowance is where a seam does not. */
  static Machines machines(Entry entry) {
    Fields fields = fields(entry);
    Machines machines = fields.get("seams").choice("machine", SEAMS);
    Length gap = fields.or("rows", USUAL_GAP, e -> e.length(LEAST_GAP, MOST_GAP));
    return fields.or("hems", machines, e -> e.choice("machine", HEMS).apply(machines, gap));
  }

  /** A draft sewn as the entry says; allowances that seams have of their own are kept. */
  static Draft sewn(Draft draft, Entry entry) {
    Pattern pattern = draft.pattern();
    Fields fields = fields(entry);
    Machines machines = machines(entry);
    for (Seam seam : pattern.seams()) {
      Length allowance = pattern.edge(seam.first().get(0)).finish().profile().allowance();
      machines = machines.withAllowance(seam.name(), allowance);
    }
    Map<String, String> seams =
        named(pattern.seams().stream().map(Seam::name).toArray(String[]::new), n -> n);
    Map<String, String> places = places(draft, seams);
    for (Entry own : fields.or("stitches", List.<Entry>of(), e -> e.list(0, 200))) {
      Fields one = own.fields("at", "stitch");
      StitchType type = one.get("stitch").choice("stitch", STITCHES);
      machines =
          machines.withStitch(one.get("at").choice("seam or opening", places), Stitch.of(type));
    }
    SewingChoices choices = SewingChoices.of().withMachines(machines);
    choices = fields.change(choices, "bands", (c, e) -> c.withConstruction(e.choice("way", BANDS)));
    for (Entry seam : fields.or("tape", List.<Entry>of(), e -> e.list(0, 200))) {
      choices = choices.withTape(seam.choice("seam", seams));
    }
    for (Entry detail : fields.or("has", List.<Entry>of(), e -> e.list(0, 20))) {
      choices = choices.withDetail(detail.choice("thing", DETAILS));
    }
    return draft.withSewing(choices);
  }

  /** Seams and openings; "armhole" stands for the left and the right one. */
  private static Map<String, String> places(Draft draft, Map<String, String> seams) {
    Stream<String> openings =
        draft.openings().stream()
            .map(Opening::name)
            .flatMap(name -> Stream.of(name.replaceAll(" \\((left|right)\\)$", ""), name));
    return named(
        Stream.concat(seams.keySet().stream(), openings).distinct().toArray(String[]::new),
        name -> name);
  }
}
