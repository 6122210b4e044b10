package dev.drafting.knit;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.assembly.OpeningPart;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.knit.band.BandFinish;
import dev.drafting.knit.band.SewnResult;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.band.StripRule;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.sewing.Construction;
import dev.drafting.knit.sewing.OrderOfWork;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What the maker says about strips: how long each is made, and what earlier ones have taught. */
final class StripChoices implements Serializable {
  private static final long serialVersionUID = 1L;

  static final StripChoices NONE = new StripChoices(Map.of(), List.of());

  @SuppressWarnings("serial") // never changed after it was made
  private final Map<String, StripRule> rules;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<SewnResult> results;

  private StripChoices(Map<String, StripRule> rules, List<SewnResult> results) {
    this.rules = rules;
    this.results = List.copyOf(results);
  }

  StripChoices with(String opening, StripRule rule) {
    Map<String, StripRule> more = new LinkedHashMap<>(rules);
    more.put(Objects.requireNonNull(opening, "opening"), Objects.requireNonNull(rule, "rule"));
    return new StripChoices(more, results);
  }

  StripChoices with(SewnResult result) {
    List<SewnResult> more = new ArrayList<>(results);
    more.add(result);
    return new StripChoices(rules, more);
  }

  StripChoices without(SewnResult result) {
    return new StripChoices(
        rules, results.stream().filter(known -> !known.equals(result)).toList());
  }

  Map<String, StripRule> rules() {
    return Collections.unmodifiableMap(rules);
  }

  List<SewnResult> results() {
    return results;
  }

  Fabric taught(Fabric fabric) {
    return SewnResult.applied(fabric, results);
  }

  /** The strips of a plan; one that is sewn flat begins at the seam that is still open. */
  List<Strip> strips(Plan plan, Construction construction, Function<String, Fabric> fabrics) {
    Map<String, String> openSeams =
        OrderOfWork.openSeams(plan.assembly(), PassageCheck.NECK, construction);
    List<Strip> strips = new ArrayList<>();
    for (Opening opening : plan.assembly().openings()) {
      if (opening.finish() instanceof BandFinish band) {
        StripRule rule = rule(opening);
        String open = openSeams.get(opening.name());
        StripRule joined =
            Plackets.of(plan.finished(), opening)
                .map(placket -> Plackets.lapped(rule, placket))
                .orElse(open == null ? rule : rule.withJoinAt(open));
        Strip strip =
            Strip.of(opening, band, fabrics.apply(band.cloth()), joined)
                .withOpeningAsCut(plan.asCut(opening));
        strips.add(isLapped(plan.assembly(), opening) ? strip.cutApart() : strip);
      }
    }
    return List.copyOf(strips);
  }

  /** Where edges lie over each other, each has a strip of its own. */
  private static boolean isLapped(Assembly assembly, Opening opening) {
    Set<EdgeRef> edges =
        opening.parts().stream().map(OpeningPart::edge).collect(Collectors.toSet());
    Set<String> ending =
        assembly.junctions().stream()
            .filter(junction -> junction.openEdges().stream().anyMatch(edges::contains))
            .flatMap(junction -> junction.ending().stream())
            .collect(Collectors.toSet());
    return assembly.pattern().seams().stream()
        .anyMatch(seam -> seam.isLapped() && ending.contains(seam.name()));
  }

  private StripRule rule(Opening opening) {
    StripRule own = rules.get(opening.name());
    return own != null
        ? own
        : rules.entrySet().stream()
            .filter(entry -> isNamed(opening, entry.getKey()))
            .map(Map.Entry::getValue)
            .findFirst()
            .orElse(StripRule.recommended());
  }

  /** Refuses a rule for an opening that is not there, or with a join where the opening has none. */
  static void require(String draft, List<Opening> all, String opening, StripRule rule) {
    if (all.stream().noneMatch(known -> StripChoices.isNamed(known, opening))) {
      throw DraftingException.of("there is no such opening")
          .at(draft)
          .value(opening)
          .accepted(String.join(", ", all.stream().map(Opening::name).toList()));
    }
    all.stream().filter(known -> StripChoices.isNamed(known, opening)).forEach(rule::requireJoinOn);
  }

  /** "armhole" means "armhole (left)" and "armhole (right)" both. */
  static boolean isNamed(Opening opening, String name) {
    return opening.name().equals(name) || opening.name().startsWith(name + " (");
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(Map<String, StripRule> rules, List<SewnResult> results)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      StripChoices choices = NONE;
      for (Map.Entry<String, StripRule> rule : rules.entrySet()) {
        choices = choices.with(rule.getKey(), rule.getValue());
      }
      for (SewnResult result : results) {
        choices = choices.with(result);
      }
      return choices;
    }
  }

  private Object writeReplace() {
    return new Kept(rules, results);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a set of strip rules is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof StripChoices
        && ((StripChoices) other).rules.equals(rules)
        && ((StripChoices) other).results.equals(results);
  }

  @Override
  public int hashCode() {
    return Objects.hash(rules, results);
  }
}
