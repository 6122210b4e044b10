package dev.drafting.knit.size;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.fabric.Ease;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Which measure of the body a dimension of a garment follows: the measure with its fit, times a
 * factor, plus a length.
 *
 * <pre>{@code
 * BodyRule.girth("hip", Fit.stretchUsed(0.2), BodyMeasure.HIP_GIRTH);
 * // => hip: hip girth, 20 % of the stretch used
 * BodyRule.length("inside leg", BodyMeasure.INSIDE_LEG).plus(Length.cm(-7));
 * // => inside leg: inside leg less 70 mm, or as usual
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class BodyRule implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String dimension;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<BodyMeasure> measures;

  private final @Nullable Fit fit;
  private final double factor;
  private final Length plus;

  private BodyRule(
      String dimension, List<BodyMeasure> measures, @Nullable Fit fit, double factor, Length plus) {
    this.dimension = dimension;
    this.measures = measures;
    this.fit = fit;
    this.factor = factor;
    this.plus = plus;
    if (!Double.isFinite(factor)) {
      throw DraftingException.of("a dimension is no share of a measure")
          .at(dimension)
          .value(factor)
          .accepted("a number");
    }
    if (measures.isEmpty()) {
      throw DraftingException.of("the dimension follows no measure of the body")
          .at(dimension)
          .accepted("one measure or more");
    }
  }

  /**
   * A dimension that lies round the body. Its measure is needed.
   *
   * @param dimension its name in the template
   * @param usual how close it lies unless the maker says otherwise
   * @param measures what it follows; the first one that is known counts
   * @return the rule
   * @throws DraftingException if there is no measure
   */
  public static BodyRule girth(String dimension, Fit usual, BodyMeasure... measures) {
    return new BodyRule(
        dimension, List.of(measures), Objects.requireNonNull(usual, "usual"), 1, Length.ZERO);
  }

  /**
   * A dimension that follows a measure without a fit. Where the measure is not known, the
   * template's usual dimension is taken.
   *
   * @param dimension its name in the template
   * @param measures what it follows; the first one that is known counts
   * @return the rule
   * @throws DraftingException if there is no measure
   */
  public static BodyRule length(String dimension, BodyMeasure... measures) {
    return new BodyRule(dimension, List.of(measures), null, 1, Length.ZERO);
  }

  /**
   * The rule for a dimension that is a part of the measure.
   *
   * @param share the part: 0.5 for a girth that is drawn lying flat
   * @return the rule
   */
  public BodyRule times(double share) {
    return new BodyRule(dimension, measures, fit, factor * share, plus);
  }

  /**
   * The rule for a dimension that is longer than the measure.
   *
   * @param more by how much, after its factor; less if negative
   * @return the rule
   */
  public BodyRule plus(Length more) {
    return new BodyRule(dimension, measures, fit, factor, plus.plus(more));
  }

  /**
   * The dimension.
   *
   * @return its name in the template
   */
  public String dimension() {
    return dimension;
  }

  /**
   * What it follows.
   *
   * @return the measures; the first one that is known counts
   */
  public List<BodyMeasure> measures() {
    return measures;
  }

  /**
   * How close it lies.
   *
   * @return the usual fit, or empty where there is none
   */
  public Optional<Fit> fit() {
    return Optional.ofNullable(fit);
  }

  BodyRule withFit(Fit other) {
    return new BodyRule(dimension, measures, other, factor, plus);
  }

  /** The dimension for this body; empty where the usual one is taken. */
  Optional<Length> of(Body body, Fabric fabric) {
    Optional<Length> round = measured(body).map(length -> fitted(length, fabric));
    if (round.isEmpty() && fit != null) {
      throw DraftingException.of("a measure of the body is needed")
          .at(dimension)
          .value(body)
          .accepted(
              measures.stream()
                  .map(measure -> measure + " (" + measure.meaning() + ")")
                  .collect(Collectors.joining(", or ")));
    }
    return round.map(length -> length.times(factor).plus(plus));
  }

  private Optional<Length> measured(Body body) {
    return body.firstKnown(measures).flatMap(body::measure);
  }

  private Length fitted(Length measured, Fabric fabric) {
    return fit == null ? measured : fit.garment(measured, fabric);
  }

  /** What the fit does to the cloth; empty where nothing lies round the body. */
  Optional<Ease> ease(Body body, Fabric fabric) {
    return fit == null
        ? Optional.empty()
        : measured(body).map(length -> Ease.of(length, fitted(length, fabric)));
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      String dimension, List<BodyMeasure> measures, @Nullable Fit fit, double factor, Length plus)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return new BodyRule(
          Objects.requireNonNull(dimension, "dimension"),
          List.copyOf(measures),
          fit,
          factor,
          Objects.requireNonNull(plus, "plus"));
    }
  }

  private Object writeReplace() {
    return new Kept(dimension, measures, fit, factor, plus);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a body rule is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof BodyRule that
        && that.dimension.equals(dimension)
        && that.measures.equals(measures)
        && Objects.equals(that.fit, fit)
        && Double.compare(that.factor, factor) == 0
        && that.plus.equals(plus);
  }

  @Override
  public int hashCode() {
    return Objects.hash(dimension, toString(), fit, factor, plus);
  }

  @Override
  public String toString() {
    return dimension
        + ": "
        + (factor == 1 ? "" : Wording.percent(factor) + " of ")
        + measures.stream().map(BodyMeasure::toString).collect(Collectors.joining(" or "))
        + (fit == null ? "" : ", " + fit)
        + (plus.isZero()
            ? ""
            : (plus.isNegative() ? " less " : " plus ") + Wording.amount(plus.abs()))
        + (fit == null ? ", or as usual" : "");
  }
}
