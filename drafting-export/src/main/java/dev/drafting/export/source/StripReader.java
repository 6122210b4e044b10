package dev.drafting.export.source;

import dev.drafting.core.measure.Length;
import dev.drafting.knit.band.StripRule;
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

  /** The rule for every opening that is named. */
  static Map<String, StripRule> rules(Entry list, Collection<String> openings) {
    Map<String, String> known = new LinkedHashMap<>();
    openings.forEach(opening -> known.put(opening, opening));
    Unique<StripRule> rules = new Unique<>("opening");
    for (Entry entry : list.list(0, MOST_STRIPS)) {
      Fields fields = entry.anyFields();
      String opening = fields.get("opening").choice("opening", known);
      StripRule rule = fields.get("rule").choice("rule", RULES).apply(entry);
      rules.put(
          entry,
          opening,
          fields.change(
              rule, "join", (r, e) -> r.withJoinAllowance(e.length(Length.ZERO, MOST_JOIN))));
    }
    return rules.all();
  }

  private static StripRule recommended(Entry entry) {
    entry.anyFields().require(List.of("opening", "rule", "join"));
    return StripRule.recommended();
  }

  private static StripRule ratio(Entry entry) {
    Fields fields = entry.fields("opening", "rule", "ratio", "join");
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
    return entry.fields("opening", "rule", "length", "join").get("length").length(least, most);
  }
}
