package dev.drafting.knit.size;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.template.Dimensions;
import dev.drafting.knit.fabric.Ease;
import dev.drafting.knit.fabric.Fabric;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A garment for a body in a fabric: the dimensions of the finished garment, worked out from the
 * measures of the body, how close the garment is to lie, and how far the cloth gives.
 *
 * <pre>{@code
 * FittedTemplate leggings = (FittedTemplate) Templates.installed().get("leggings");
 * Body body = Body.of().with(BodyMeasure.HIP_GIRTH, Length.cm(96)).with(BodyMeasure.ANKLE_GIRTH, Length.cm(23)).with(BodyMeasure.INSIDE_LEG, Length.cm(78));
 * MadeToMeasure made = MadeToMeasure.of(leggings, body, Fabric.of("legging knit", Structure.ELASTIC, 0.60));
 * made.dimensions().length("hip").text(LengthUnit.CM, 1);  // => 85.7 cm
 * made.with("hip", Fit.ease(-0.30)).findings().get(0).id();  // => ease.tight
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class MadeToMeasure implements Serializable {
  private static final long serialVersionUID = 1L;

  private final FittedTemplate template;
  private final Body body;
  private final Fabric fabric;

  @SuppressWarnings("serial") // always an unmodifiable view of a TreeMap
  private final Map<String, Fit> fits;

  private final Dimensions given;

  private MadeToMeasure(
      FittedTemplate template, Body body, Fabric fabric, Map<String, Fit> fits, Dimensions given) {
    this.template = template;
    this.body = body;
    this.fabric = fabric;
    this.fits = Collections.unmodifiableMap(fits);
    this.given = given;
  }

  /**
   * The garment as it usually fits.
   *
   * @param template the garment
   * @param body whom it is for
   * @param fabric what lies round the body
   * @return the garment
   */
  public static MadeToMeasure of(FittedTemplate template, Body body, Fabric fabric) {
    return new MadeToMeasure(
        Objects.requireNonNull(template, "template"),
        Objects.requireNonNull(body, "body"),
        Objects.requireNonNull(fabric, "fabric"),
        new TreeMap<>(),
        Dimensions.of());
  }

  /**
   * The same garment, closer or looser somewhere.
   *
   * @param dimension a dimension that lies round the body
   * @param fit how close
   * @return the garment
   * @throws DraftingException if the template has no such girth; it lists those that it has
   */
  public MadeToMeasure with(String dimension, Fit fit) {
    List<String> girths =
        template.bodyRules().stream()
            .filter(rule -> rule.fit().isPresent())
            .map(BodyRule::dimension)
            .toList();
    if (!girths.contains(dimension)) {
      throw DraftingException.of("no such dimension lies round the body")
          .at(template.id())
          .value(dimension)
          .accepted(girths.isEmpty() ? "none has a fit" : String.join(", ", girths));
    }
    Map<String, Fit> more = new TreeMap<>(fits);
    more.put(dimension, fit);
    return new MadeToMeasure(template, body, fabric, more, given);
  }

  /**
   * The same garment with dimensions and choices of the maker's own, whatever the body measures.
   *
   * @param own dimensions of the finished garment, in place of all that were set before
   * @return the garment
   */
  public MadeToMeasure with(Dimensions own) {
    return new MadeToMeasure(
        template, body, fabric, new TreeMap<>(fits), Objects.requireNonNull(own, "own"));
  }

  /**
   * The same garment, made in the same way, for someone else.
   *
   * @param other whom it is for
   * @return the garment
   */
  public MadeToMeasure on(Body other) {
    return new MadeToMeasure(
        template, Objects.requireNonNull(other, "other"), fabric, new TreeMap<>(fits), given);
  }

  /**
   * The same garment in another fabric.
   *
   * @param other what lies round the body
   * @return the garment
   */
  public MadeToMeasure in(Fabric other) {
    return new MadeToMeasure(
        template, body, Objects.requireNonNull(other, "other"), new TreeMap<>(fits), given);
  }

  /**
   * Whom it is for.
   *
   * @return the body
   */
  public Body body() {
    return body;
  }

  /**
   * What is made.
   *
   * @return the template
   */
  public FittedTemplate template() {
    return template;
  }

  /**
   * The dimensions of the finished garment.
   *
   * @return what follows from the body, and what the maker gave; the rest is taken as usual
   * @throws DraftingException if a measure of the body is needed; it says which, and how it is
   *     taken
   */
  public Dimensions dimensions() {
    Dimensions all = given;
    for (BodyRule rule : openRules()) {
      Optional<Length> length = length(rule);
      if (length.isPresent()) {
        all = all.with(rule.dimension(), length.get());
      }
    }
    return all;
  }

  private Optional<Length> length(BodyRule rule) {
    try {
      return rule.of(body, fabric);
    } catch (DraftingException e) {
      throw e.at(template.id());
    }
  }

  /** The rules of what the maker has not given, with the fits that were chosen. */
  private List<BodyRule> openRules() {
    List<BodyRule> rules = new ArrayList<>();
    for (BodyRule rule : template.bodyRules()) {
      if (!given.lengths().containsKey(rule.dimension())) {
        Fit chosen = fits.get(rule.dimension());
        rules.add(chosen == null ? rule : rule.withFit(chosen));
      }
    }
    return rules;
  }

  /**
   * Draws the garment.
   *
   * @return the pattern
   * @throws DraftingException if a measure is needed, or a dimension is out of the template's
   *     bounds
   */
  public Pattern pattern() {
    return template.pattern(dimensions());
  }

  /**
   * Where the fit asks for more than the cloth gives, and which lengths are taken as usual because
   * nobody has measured.
   *
   * @return findings with the fabric as their place, then one note
   */
  public List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    for (BodyRule rule : openRules()) {
      Optional<Ease> ease = rule.ease(body, fabric);
      if (ease.isPresent()) {
        String where = body.firstKnown(rule.measures()).map(BodyMeasure::place).orElse("");
        findings.addAll(ease.get().findings(fabric, where));
      }
    }
    List<BodyRule> unmeasured =
        openRules().stream()
            .filter(rule -> body.firstKnown(rule.measures()).isEmpty())
            .filter(rule -> rule.fit().isEmpty())
            .toList();
    if (!unmeasured.isEmpty()) {
      findings.add(asUsual(unmeasured));
    }
    return List.copyOf(findings);
  }

  private static Finding asUsual(List<BodyRule> rules) {
    String measures =
        rules.stream()
            .map(rule -> rule.measures().get(0).toString())
            .distinct()
            .collect(Collectors.joining(", "));
    String names = rules.stream().map(BodyRule::dimension).collect(Collectors.joining(", "));
    return Finding.note(
            "measure.as-usual",
            Place.draft(),
            "Nobody has measured what these follow, and they are taken as usual: " + names + ".")
        .withRemedy(Remedy.of("Measure the body, or the garment: " + measures + "."));
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      FittedTemplate template, Body body, Fabric fabric, Map<String, Fit> fits, Dimensions given)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      MadeToMeasure order = of(template, body, fabric).with(given);
      for (Map.Entry<String, Fit> fit : fits.entrySet()) {
        order = order.with(fit.getKey(), fit.getValue());
      }
      return order;
    }
  }

  private Object writeReplace() {
    return new Kept(template, body, fabric, fits, given);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("an order made to measure is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof MadeToMeasure that
        && that.template.id().equals(template.id())
        && that.template.getClass().equals(template.getClass())
        && that.body.equals(body)
        && that.fabric.equals(fabric)
        && that.fits.equals(fits)
        && that.given.equals(given);
  }

  @Override
  public int hashCode() {
    return Objects.hash(template.id(), body, fabric, fits, given);
  }

  @Override
  public String toString() {
    return template.id()
        + " in "
        + fabric.name()
        + " for "
        + body
        + (fits.isEmpty() ? "" : "; " + fits)
        + (given.equals(Dimensions.of()) ? "" : "; " + given);
  }
}
