package dev.drafting.export.source;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.knit.Draft;
import dev.drafting.knit.Wearer;
import dev.drafting.knit.band.BodyPart;
import dev.drafting.knit.band.SewnResult;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Original;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** Reads for whom, in which fabrics and with which strips the pattern is made up. */
final class DraftReader {
  private static final int MOST_MAKES = 20;
  private static final int OLDEST = 120;

  private static final Map<String, Boolean> SHOULDERS = shoulders();

  private DraftReader() {}

  private static Map<String, Boolean> shoulders() {
    Map<String, Boolean> shoulders = new LinkedHashMap<>();
    shoulders.put("stay", false);
    shoulders.put("change", true);
    return shoulders;
  }

  /** A draft for each make by its name, in the order of the file. */
  static Map<String, Draft> makes(
      Fields garment, Pattern pattern, Set<String> roles, Set<String> openings) {
    Map<String, Fabric> fabrics = FabricReader.fabrics(garment.get("fabrics"));
    Draft plain = base(garment, pattern, openings);
    Draft base =
        garment.change(plain, "original", (d, e) -> d.withOriginal(original(e, pattern, fabrics)));
    List<SewnResult> sewn =
        garment.or("sewn", List.of(), list -> StripReader.results(list, fabrics));
    for (SewnResult result : sewn) {
      base = base.withSewnResult(result);
    }
    Unique<Draft> makes = new Unique<>("make");
    for (Entry entry : garment.get("makes").list(1, MOST_MAKES)) {
      Fields fields = entry.fields("name", "cloths");
      String name = fields.get("name").name();
      Draft named = base.withName(pattern.name() + ", " + name);
      makes.put(entry, name, make(named, fields.get("cloths"), roles, fabrics));
    }
    return makes.all();
  }

  private static Draft base(Fields garment, Pattern pattern, Set<String> openings) {
    Wearer wearer = garment.or("wearer", Wearer.of(), DraftReader::wearer);
    List<StripReader.Ruled> rules =
        garment.or("strips", List.of(), list -> StripReader.rules(list, openings));
    Draft plain = garment.object().placed(() -> Draft.of(pattern)).withWearer(wearer);
    Draft base = garment.change(plain, "sewing", SewingReader::sewn);
    return withRules(base, rules);
  }

  private static Draft withRules(Draft base, List<StripReader.Ruled> rules) {
    Draft draft = base;
    for (StripReader.Ruled ruled : rules) {
      Draft before = draft;
      draft = ruled.entry().placed(() -> before.withStripRule(ruled.opening(), ruled.rule()));
    }
    return draft;
  }

  private static Draft make(
      Draft base, Entry cloths, Set<String> roles, Map<String, Fabric> fabrics) {
    Fields fields = cloths.fields(roles.toArray(String[]::new));
    Draft draft = base;
    for (String role : roles) {
      draft = draft.withFabric(role, fields.get(role).choice("fabric", fabrics));
    }
    return draft;
  }

  private static Original original(Entry entry, Pattern pattern, Map<String, Fabric> fabrics) {
    Fields fields = entry.fields("fabric", "girth", "seams", "shoulders");
    Original original = Original.of(fields.get("fabric").choice("fabric", fabrics));
    original = fields.change(original, "girth", (o, e) -> o.withGirth(girth(e, 10, 400)));
    original =
        fields.change(
            original,
            "seams",
            (o, e) ->
                o.withSeams(
                    e.list(1, pattern.seams().size()).stream()
                        .map(name -> name.choice("seam", seams(pattern)))
                        .toArray(String[]::new)));
    boolean change = fields.or("shoulders", false, e -> e.choice("choice", SHOULDERS));
    return change ? original.withShoulders() : original;
  }

  private static Map<String, String> seams(Pattern pattern) {
    Map<String, String> names = new LinkedHashMap<>();
    pattern.seams().forEach(seam -> names.put(seam.name(), seam.name()));
    return names;
  }

  private static Wearer wearer(Entry entry) {
    Fields fields =
        entry.fields("chest", "head", "shoulders", "hips", "hand", "foot", "height", "age");
    Wearer wearer = Wearer.of();
    wearer = fields.change(wearer, "chest", (w, e) -> w.withChest(girth(e, 20, 250)));
    wearer = fields.change(wearer, "head", (w, e) -> w.withHead(girth(e, 25, 80)));
    wearer =
        passing(fields, wearer, "shoulders", BodyPart.SHOULDERS, girth -> girth(girth, 30, 300));
    wearer = passing(fields, wearer, "hips", BodyPart.HIPS, girth -> girth(girth, 30, 300));
    wearer = passing(fields, wearer, "hand", BodyPart.HAND, girth -> girth(girth, 8, 50));
    wearer = passing(fields, wearer, "foot", BodyPart.FOOT, girth -> girth(girth, 10, 70));
    wearer = fields.change(wearer, "height", (w, e) -> w.withHeight(girth(e, 30, 250)));
    return fields.change(wearer, "age", (w, e) -> w.withAge(e.count(0, OLDEST)));
  }

  private static Wearer passing(
      Fields fields, Wearer wearer, String field, BodyPart part, Function<Entry, Length> girth) {
    return fields.change(wearer, field, (w, e) -> w.withGirth(part, girth.apply(e)));
  }

  private static Length girth(Entry entry, int leastCm, int mostCm) {
    return entry.length(Length.cm(leastCm), Length.cm(mostCm));
  }
}
