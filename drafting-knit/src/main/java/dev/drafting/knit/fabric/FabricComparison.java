package dev.drafting.knit.fabric;

import dev.drafting.core.Stable;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The fabric of a garment that fits beside the one that it is to be made of next: may the pattern
 * be used as it is, must it be adapted, or is the fabric not for it?
 *
 * <p>Stretch counts as the same when the two differ by no more than the root of the sum of the
 * squares of both uncertainties. The other limits are this library's choice, in line with common
 * practice.
 *
 * <pre>{@code
 * Fabric original = Fabric.of("old jersey", Structure.JERSEY, 0.60);
 * FabricComparison.of(original, Fabric.of("new jersey", Structure.JERSEY, 0.35));
 * // => adapt: gives 35 % across instead of 60 %
 * FabricComparison.of(original, Fabric.of("pique", Structure.PIQUE, 0.12)).verdict();  // => REFUSE
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class FabricComparison implements Serializable {
  private static final long serialVersionUID = 1L;

  /** A quarter more or less weight hangs differently (common practice, no source). */
  private static final double OTHER_WEIGHT = 1.25;

  /** What follows for the pattern. */
  public enum Verdict {
    /** The pattern may be used as it is. */
    ALIKE("alike"),
    /** The pattern must be changed, or something about it be looked at. */
    ADAPT("adapt"),
    /** The garment cannot be made of it as it is drawn. */
    REFUSE("refuse");

    private final String plainName;

    Verdict(String plainName) {
      this.plainName = plainName;
    }

    /**
     * The word in a sentence.
     *
     * @return for instance "adapt"
     */
    public String plainName() {
      return plainName;
    }
  }

  private final Fabric original;
  private final Fabric candidate;

  @SuppressWarnings("serial") // always unmodifiable lists of the JDK
  private final List<String> toRefuse;

  @SuppressWarnings("serial")
  private final List<String> toAdapt;

  private FabricComparison(Fabric original, Fabric candidate) {
    this.original = Objects.requireNonNull(original, "original");
    this.candidate = Objects.requireNonNull(candidate, "candidate");
    this.toRefuse = List.copyOf(toRefuse());
    this.toAdapt = List.copyOf(toAdapt());
  }

  /**
   * Compares two fabrics.
   *
   * @param original what the garment that fits is made of
   * @param candidate what it is to be made of
   * @return the comparison
   */
  public static FabricComparison of(Fabric original, Fabric candidate) {
    return new FabricComparison(original, candidate);
  }

  private List<String> toRefuse() {
    List<String> reasons = new ArrayList<>();
    boolean stretched = original.stretchClass().compareTo(StretchClass.STRETCHY) >= 0;
    if (stretched
        && candidate.stretchAcross() + candidate.uncertainty() < StretchClass.MODERATE_FROM) {
      reasons.add(
          "gives "
              + Wording.percent(candidate.stretchAcross())
              + " across instead of "
              + Wording.percent(original.stretchAcross())
              + ": what was pulled on needs an opening, and other ease");
    }
    if (candidate.recoveryVerdict() == Recovery.POOR
        && original.recoveryVerdict() != Recovery.POOR) {
      reasons.add(
          "comes back only "
              + Wording.percent(candidate.recovery().orElse(0))
              + ": not for anything that is stretched in wear");
    }
    return reasons;
  }

  private List<String> toAdapt() {
    List<String> reasons = new ArrayList<>();
    double both = Math.hypot(original.uncertainty(), candidate.uncertainty());
    if (toRefuse.isEmpty() && differ(original.stretchAcross(), candidate.stretchAcross(), both)) {
      reasons.add(gives(candidate.stretchAcross(), original.stretchAcross(), "across"));
    }
    if (original.stretchAlong().isPresent() && candidate.stretchAlong().isPresent()) {
      double before = original.stretchAlong().getAsDouble();
      double now = candidate.stretchAlong().getAsDouble();
      if (differ(before, now, both)) {
        reasons.add(gives(now, before, "along"));
      }
    }
    if (candidate.recoveryVerdict() == Recovery.FAIR
        && original.recoveryVerdict() == Recovery.GOOD) {
      reasons.add("comes back less well");
    }
    if (!candidate.shrinkageToCome().isNone()) {
      reasons.add("still shrinks " + candidate.shrinkageToCome());
    }
    if (original.mass().isPresent() && candidate.mass().isPresent()) {
      double ratio = candidate.mass().getAsDouble() / original.mass().getAsDouble();
      if (ratio > OTHER_WEIGHT || ratio < 1 / OTHER_WEIGHT) {
        reasons.add(
            "weighs "
                + Math.round(candidate.mass().getAsDouble())
                + " instead of "
                + Math.round(original.mass().getAsDouble())
                + " g/m2 and hangs differently");
      }
    }
    if (candidate.curls() && !original.curls()) {
      reasons.add("curls at its cut edges");
    }
    return reasons;
  }

  private static boolean differ(double one, double other, double uncertainty) {
    return Math.abs(one - other) > uncertainty + 1e-9;
  }

  private static String gives(double now, double before, String way) {
    return "gives " + Wording.percent(now) + " " + way + " instead of " + Wording.percent(before);
  }

  /**
   * What the garment that fits is made of.
   *
   * @return the original's fabric
   */
  public Fabric original() {
    return original;
  }

  /**
   * What it is to be made of.
   *
   * @return the candidate
   */
  public Fabric candidate() {
    return candidate;
  }

  /**
   * What follows for the pattern.
   *
   * @return refuse if anything speaks against the candidate, alike if nothing is different
   */
  public Verdict verdict() {
    if (!toRefuse.isEmpty()) {
      return Verdict.REFUSE;
    }
    return toAdapt.isEmpty() ? Verdict.ALIKE : Verdict.ADAPT;
  }

  /**
   * Why, what speaks against the candidate first.
   *
   * @return unmodifiable; what the candidate does, without a subject; empty when the two are alike
   */
  public List<String> reasons() {
    List<String> reasons = new ArrayList<>(toRefuse);
    reasons.addAll(toAdapt);
    return List.copyOf(reasons);
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(Fabric original, Fabric candidate) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return of(original, candidate);
    }
  }

  private Object writeReplace() {
    return new Kept(original, candidate);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a comparison of fabrics is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FabricComparison
        && ((FabricComparison) other).original.equals(original)
        && ((FabricComparison) other).candidate.equals(candidate);
  }

  @Override
  public int hashCode() {
    return Objects.hash(original, candidate);
  }

  /** The verdict and why. */
  @Override
  public String toString() {
    List<String> reasons = reasons();
    return verdict().plainName() + (reasons.isEmpty() ? "" : ": " + String.join("; ", reasons));
  }
}
