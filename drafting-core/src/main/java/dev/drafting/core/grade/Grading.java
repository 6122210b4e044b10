package dev.drafting.core.grade;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Reshaping;
import dev.drafting.core.pattern.Seam;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A pattern in several sizes: named corners move by their {@link GradeRule} for every step, and the
 * edges between them follow. A straight edge stays straight; a curve keeps its directions at both
 * ends, so that it stays square to the fold, and changes between them as little as that allows.
 * Corners without a rule stay where they are, notches keep their share of their edge. From size to
 * size every point moves by the same amount, so that the sizes nest evenly.
 *
 * <p>A size need not lie a whole step from the next: where girths grow by 4 cm for most sizes and
 * by 6 cm for large ones, these are one step and a half.
 *
 * <pre>{@code
 * Pattern top = Templates.installed().get("sleeveless-top").pattern();
 * Grading sizes = Grading.of(top, "M", List.of(GradeRule.of("front", "hem", "side", Length.mm(10), Length.ZERO), GradeRule.of("front", "side", "armhole", Length.mm(10), Length.ZERO))).with("S", -1).with("L", 1);
 * sizes.names();  // => [S, M, L]
 * sizes.pattern("L").piece("front").edge("hem").length().minus(top.piece("front").edge("hem").length()).text(LengthUnit.MM, 1);  // => 10 mm
 * sizes.findings();  // => []
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class Grading implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final double MOST_STEPS = 50;

  private final Pattern base;
  private final String baseSize;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<GradeRule> rules;

  @SuppressWarnings("serial") // always an unmodifiable view of a LinkedHashMap
  private final Map<String, Double> steps;

  private Grading(Pattern base, String baseSize, List<GradeRule> rules, Map<String, Double> steps) {
    this.base = Objects.requireNonNull(base, "base");
    this.baseSize = baseSize;
    this.rules = rules;
    this.steps = Collections.unmodifiableMap(steps);
  }

  /**
   * One size, and how the others follow from it.
   *
   * @param base the pattern that fits
   * @param baseSize what its size is called
   * @param rules for each corner that moves, one rule
   * @return the grading, with the base size alone
   * @throws DraftingException if there is no such corner, a corner on the fold is to leave it, or a
   *     corner has two rules
   */
  public static Grading of(Pattern base, String baseSize, List<GradeRule> rules) {
    Map<EdgeRef, GradeRule> byCorner = new LinkedHashMap<>();
    for (GradeRule rule : rules) {
      GradeRule other = byCorner.put(rule.arriving(base.piece(rule.piece())), rule);
      if (other != null) {
        throw DraftingException.of("a corner has two grade rules")
            .at(rule.piece())
            .value(other + "; " + rule)
            .accepted("one rule for each corner");
      }
    }
    Grading none = new Grading(base, baseSize, List.copyOf(rules), new LinkedHashMap<>());
    return none.with(baseSize, 0);
  }

  /**
   * One size more.
   *
   * @param size what it is called
   * @param step how many steps it lies above the base size; below if negative
   * @return the grading
   * @throws DraftingException if there is a size of that name, or one at that step, or the step is
   *     out of range
   */
  public Grading with(String size, double step) {
    if (size.isBlank() || steps.containsKey(size) || steps.containsValue(step + 0.0)) {
      throw DraftingException.of("a size has no name or no step of its own")
          .value(size + " at " + step)
          .accepted("a name and a step beside " + steps);
    }
    if (!(Math.abs(step) <= MOST_STEPS)) {
      throw DraftingException.of("the step of a size is out of range")
          .at("size " + size)
          .value(step)
          .accepted("-50 to 50");
    }
    List<Map.Entry<String, Double>> entries = new ArrayList<>(steps.entrySet());
    entries.add(Map.entry(size, step));
    entries.sort(Comparator.comparingDouble(Map.Entry::getValue));
    Map<String, Double> more = new LinkedHashMap<>();
    entries.forEach(entry -> more.put(entry.getKey(), entry.getValue()));
    return new Grading(base, baseSize, rules, more);
  }

  /**
   * What the sizes are called.
   *
   * @return the smallest first
   */
  public List<String> names() {
    return List.copyOf(steps.keySet());
  }

  /**
   * The pattern of a size.
   *
   * @param size what it is called
   * @return the pattern, with the size as its version; its seams as they come out
   * @throws DraftingException if there is no such size, or it cannot be drawn; it says which piece
   */
  public Pattern pattern(String size) {
    Double step = steps.get(size);
    if (step == null) {
      throw DraftingException.of("there is no such size")
          .value(size)
          .accepted(String.join(", ", names()));
    }
    try {
      return graded(step).withVersion("size " + size);
    } catch (DraftingException e) {
      throw e.at("size " + size);
    }
  }

  private Pattern graded(double step) {
    Reshaping reshaping = Reshaping.of(base);
    for (GradeRule rule : rules) {
      reshaping = reshaping.moved(rule.arriving(base.piece(rule.piece())), rule.move(step));
    }
    Pattern graded = step == 0 ? base : reshaping.result();
    for (Piece piece : graded.pieces()) {
      if (!piece.outline().selfCrossings().isEmpty()) {
        throw DraftingException.of("the outline would cross itself")
            .at(piece.name())
            .value(step + " steps")
            .accepted("rules that move neighbouring corners less differently, or fewer steps");
      }
    }
    return graded;
  }

  /**
   * The patterns of all sizes.
   *
   * @return an unmodifiable map, the smallest first
   * @throws DraftingException if a size cannot be drawn; it says which
   */
  public Map<String, Pattern> patterns() {
    Map<String, Pattern> patterns = new LinkedHashMap<>();
    names().forEach(size -> patterns.put(size, pattern(size)));
    return Collections.unmodifiableMap(patterns);
  }

  /**
   * By how much the sides of every seam grow, in every size but the base size.
   *
   * @return seam by seam, the smallest size first
   * @throws DraftingException if a size cannot be drawn; it says which
   */
  public List<SeamGrowth> growths() {
    Map<String, Pattern> patterns = new LinkedHashMap<>(patterns());
    patterns.remove(baseSize);
    List<SeamGrowth> growths = new ArrayList<>();
    for (Seam seam : base.seams()) {
      patterns.forEach(
          (size, pattern) ->
              growths.add(
                  new SeamGrowth(
                      seam.name(),
                      size,
                      growth(seam.first(), pattern),
                      growth(seam.second(), pattern))));
    }
    return List.copyOf(growths);
  }

  /** By how much the sides of one seam grow in one size. */
  SeamGrowth growth(Seam seam, String size) {
    Pattern graded = pattern(size);
    return new SeamGrowth(
        seam.name(), size, growth(seam.first(), graded), growth(seam.second(), graded));
  }

  Pattern base() {
    return base;
  }

  double step(String size) {
    return steps.getOrDefault(size, 0.0);
  }

  /** The rule for a corner; one that does not move it where it has none. */
  GradeRule rule(String piece, String edge, String next) {
    GradeRule still = GradeRule.of(piece, edge, next, Length.ZERO, Length.ZERO);
    return rules.stream().filter(rule -> isFor(rule, still)).findFirst().orElse(still);
  }

  private boolean isFor(GradeRule rule, GradeRule other) {
    return rule.piece().equals(other.piece())
        && rule.arriving(base.piece(rule.piece())).equals(other.arriving(base.piece(rule.piece())));
  }

  /** The same sizes with another rule for one corner. */
  Grading with(GradeRule changed) {
    List<GradeRule> others = new ArrayList<>(rules);
    others.removeIf(rule -> isFor(rule, changed));
    others.add(changed);
    return new Grading(base, baseSize, List.copyOf(others), steps);
  }

  private Length growth(List<EdgeRef> edges, Pattern graded) {
    return length(edges, graded).minus(length(edges, base));
  }

  private static Length length(List<EdgeRef> edges, Pattern pattern) {
    return edges.stream()
        .map(edge -> pattern.edge(edge).length())
        .reduce(Length.ZERO, Length::plus);
  }

  /**
   * Seams whose sides do not grow alike in every size, to 1 mm.
   *
   * @return a warning for each such seam, with both growths where they differ most, and with the
   *     rule for one corner that would let them grow alike, if there is one; empty if all do
   * @throws DraftingException if a size cannot be drawn; it says which
   */
  public List<Finding> findings() {
    return GrowthFindings.of(this);
  }

  /**
   * The rules.
   *
   * @return an unmodifiable list
   */
  public List<GradeRule> rules() {
    return rules;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      Pattern base, String baseSize, List<GradeRule> rules, Map<String, Double> steps)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      Grading grading = of(base, baseSize, rules);
      for (Map.Entry<String, Double> step : steps.entrySet()) {
        if (!step.getKey().equals(baseSize)) {
          grading = grading.with(step.getKey(), step.getValue());
        }
      }
      return grading;
    }
  }

  private Object writeReplace() {
    return new Kept(base, baseSize, rules, steps);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a grading is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Grading that
        && that.base.equals(base)
        && that.baseSize.equals(baseSize)
        && that.rules.equals(rules)
        && that.steps.equals(steps);
  }

  @Override
  public int hashCode() {
    return Objects.hash(base, baseSize, rules, steps);
  }

  @Override
  public String toString() {
    return base.name()
        + " in sizes "
        + String.join(", ", names())
        + ", drawn in "
        + baseSize
        + ", "
        + rules.size()
        + (rules.size() == 1 ? " corner moves" : " corners move");
  }
}
