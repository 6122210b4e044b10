package dev.drafting.export.source;

import dev.drafting.core.measure.Length;
import dev.drafting.knit.band.MarkSpacing;
import dev.drafting.knit.band.Outcome;
import dev.drafting.knit.band.SewnResult;
import dev.drafting.knit.band.StripRule;
import dev.drafting.knit.fabric.Fabric;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Reads the maker's own rules for how long strips are cut. */
final class StripReader {
  private static final int MOST_STRIPS = 50;
  private static final Length SHORTEST = Length.cm(1);
  private static final Length LONGEST = Length.cm(500);
  private static final Length MOST_SHORTENING = Length.cm(100);
  private static final Length MOST_JOIN = Length.mm(50);
  private static final Map<String, Function<Entry, StripRule>> RULES = rules();
  private static final Map<String, MarkSpacing> MARKS = marks();
  private static final Map<String, Outcome> SEEN = seen();

  private StripReader() {}

  private static Map<String, Function<Entry, StripRule>> rules() {
    Map<String, Function<Entry, StripRule>> rules = new LinkedHashMap<>();
    rules.put("recommended", StripReader::recommended);
    rules.put("ratio", StripReader::ratio);
    rules.put("shorter by", StripReader::shorterBy);
    rules.put("loop", StripReader::loop);
    rules.put("already cut", StripReader::alreadyCut);
    return rules;
  }

  /** The rule for an opening, and where it stands. */
  record Ruled(Entry entry, String opening, StripRule rule) {}

  /** The rule for every opening that is named. */
  static List<Ruled> rules(Entry list, Collection<String> openings) {
    Map<String, String> known = new LinkedHashMap<>();
    openings.forEach(opening -> known.put(opening, opening));
    Unique<Ruled> rules = new Unique<>("opening");
    for (Entry entry : list.list(0, MOST_STRIPS)) {
      Fields fields = entry.anyFields();
      String opening = fields.get("opening").choice("opening", known);
      StripRule rule = fields.get("rule").choice("rule", RULES).apply(entry);
      rule =
          fields.change(
              rule, "join", (r, e) -> r.withJoinAllowance(e.length(Length.ZERO, MOST_JOIN)));
      rule = fields.change(rule, "joinAt", (r, e) -> r.withJoinAt(e.name()));
      rule = fields.change(rule, "marks", (r, e) -> r.withMarks(e.choice("way of marking", MARKS)));
      rules.put(entry, opening, new Ruled(entry, opening, rule));
    }
    return List.copyOf(rules.all().values());
  }

  private static Fields fields(Entry entry, String... own) {
    List<String> known = new ArrayList<>(List.of("opening", "rule"));
    known.addAll(List.of(own));
    known.addAll(List.of("join", "joinAt", "marks"));
    return entry.fields(known.toArray(String[]::new));
  }

  /** What sewn strips have taught about fabrics. */
  static List<SewnResult> results(Entry list, Map<String, Fabric> fabrics) {
    List<SewnResult> results = new ArrayList<>();
    for (Entry entry : list.list(0, MOST_STRIPS)) {
      Fields fields = entry.fields("fabric", "edge", "loop", "seen");
      Fabric fabric = fields.get("fabric").choice("fabric", fabrics);
      Length edge = fields.get("edge").length(SHORTEST, LONGEST);
      Length loop = fields.get("loop").length(SHORTEST, LONGEST);
      results.add(
          SewnResult.of(fabric.name(), edge, loop, fields.get("seen").choice("outcome", SEEN)));
    }
    return results;
  }

  private static Map<String, MarkSpacing> marks() {
    Map<String, MarkSpacing> marks = new LinkedHashMap<>();
    marks.put("even", MarkSpacing.EVEN);
    marks.put("more on curves", MarkSpacing.MORE_ON_CURVES);
    return marks;
  }

  private static Map<String, Outcome> seen() {
    Map<String, Outcome> seen = new LinkedHashMap<>();
    for (Outcome outcome : List.of(Outcome.GAPES, Outcome.LIES_FLAT, Outcome.PUCKERS)) {
      seen.put(outcome.plainName(), outcome);
    }
    return seen;
  }

  private static StripRule recommended(Entry entry) {
    return fields(entry).object().placed(StripRule::recommended);
  }

  private static StripRule ratio(Entry entry) {
    Fields fields = fields(entry, "ratio");
    return StripRule.ratio(fields.get("ratio").share(30, 150));
  }

  private static StripRule shorterBy(Entry entry) {
    return StripRule.shorterBy(length(entry, MOST_SHORTENING.negated(), MOST_SHORTENING));
  }

  private static StripRule loop(Entry entry) {
    return StripRule.loop(length(entry, SHORTEST, LONGEST));
  }

  private static StripRule alreadyCut(Entry entry) {
    return StripRule.alreadyCut(length(entry, SHORTEST, LONGEST));
  }

  private static Length length(Entry entry, Length least, Length most) {
    return fields(entry, "length").get("length").length(least, most);
  }
}
