package dev.drafting.knit.sewing;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The usual cautions for a garment. They name the rules that a maker should ask about; they do not
 * say whether a garment meets them.
 *
 * <pre>{@code
 * Cautions.of(OptionalInt.empty(), Optional.empty(), List.of()).get(0).topic();  // => Blades
 * Cautions.of(OptionalInt.of(2), Optional.empty(), List.of(Detail.NIGHTWEAR)).get(4).topic();  // => Nightwear
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Cautions {
  /** Up to the fourteenth birthday: EN 14682 (cords) and EN 14878 (nightwear). */
  private static final int CHILD_UNDER = 14;

  /** EN 14682: up to seven years or 134 cm no cord at the neck; used where the age is unknown. */
  private static final Length SMALL_CHILD_HEIGHT = Length.cm(134);

  /** 16 CFR 1501: small parts. */
  private static final int SMALL_PARTS_UNDER = 3;

  private static final String LOCAL_RULES = " Check the rules where it will be worn or sold.";

  static final Caution BLADES =
      Caution.of(
          "Blades",
          "Close the rotary cutter after every cut, cut away from your hand, and keep blades out of"
              + " children's reach.");
  static final Caution PINS =
      Caution.of(
          "Pins and needles",
          "Count pins and needles out and count them back; none must stay in the garment.");
  static final Caution IRON =
      Caution.of(
          "Iron",
          "Never leave a hot iron on the cloth or unattended. Try heat and steam on a scrap first:"
              + " heat damages elastane.");
  private static final Caution PRESSURE =
      Caution.of(
          "Close fit and elastic",
          "A band, elastic or close fit must leave no marks, cause no numbness and never restrict"
              + " breathing. Medical compression is a matter for licensed practice.");
  private static final Caution NOT_FOR_CHILDREN =
      Caution.of(
          "Children",
          "This plan is not made for a child. For a child's garment give the wearer's age: the"
              + " cautions for children then come with it.");
  private static final Caution APPROVAL =
      Caution.of(
          "Children",
          "This plan gives sizes, not approval. Rules for children's clothing, nightwear, cords and"
              + " small parts differ by country and change. Ask your local product-safety authority"
              + " before you sell or give away.");
  private static final Caution CHILDS_NIGHTWEAR =
      Caution.of(
          "Nightwear",
          "Not assessed for nightwear. Children's nightwear must pass flammability tests or fit"
              + " tightly within set limits (16 CFR 1615 and 1616, EN 14878 and others)."
              + LOCAL_RULES);
  private static final Caution INFANTS_NIGHTWEAR =
      Caution.of(
          "Nightwear of infants",
          "In the United States sleepwear for infants up to 9 months is exempt from these tests only"
              + " if a one-piece is at most 64.8 cm (25.75 in) long, or no piece of two is over 40"
              + " cm (15.75 in), and it is labelled by age (16 CFR 1615.1)."
              + LOCAL_RULES);
  private static final Caution NIGHTWEAR =
      Caution.of(
          "Nightwear",
          "Loose nightwear catches fire easily. Keep it away from flames and heaters; some countries"
              + " ask for a label or for tested cloth."
              + LOCAL_RULES);
  private static final Caution CORDS =
      Caution.of(
          "Cords",
          "Put no cord, drawstring or tie at the hood, head or neck of a child's garment; elsewhere"
              + " their length is limited (16 CFR 1120 with ASTM F1816, EN 14682)."
              + LOCAL_RULES);
  private static final Caution CORD_LENGTHS =
      Caution.of(
          "Length of cords",
          "At a child's waist or hem: in the United States at most 75 mm (3 in) outside the casing"
              + " with the garment at its full width, without knots or toggles, one cord stitched"
              + " fast in the middle (ASTM F1816); in Europe at most 14 cm at the waist (EN 14682)."
              + LOCAL_RULES);
  static final Caution SMALL_PARTS =
      Caution.of(
          "Small parts",
          "Under three years nothing may come off that a child can swallow (16 CFR 1501): no"
              + " buttons, snaps or beads."
              + LOCAL_RULES);
  private static final Caution FAST_PARTS =
      Caution.of(
          "Small parts",
          "Sew buttons, snaps and beads on so that a child cannot pull them off, and check them"
              + " after every wash.");
  private static final Caution ELASTIC =
      Caution.of(
          "Elastic",
          "Elastic round a waist, leg or arm must leave no marks. For infants never put elastic in a"
              + " neck band, and try every loop on the child before you sew it shut.");

  private Cautions() {}

  /**
   * The cautions that apply.
   *
   * @param age the wearer's completed years, or empty when it is not known
   * @param height the wearer's height, or empty when it is not known
   * @param details what the garment has or is
   * @return those for making; those for what the garment has; those for a child if the wearer is
   *     under fourteen, or of unknown age and at most 134 cm tall, or one line about children if
   *     not
   */
  public static List<Caution> of(
      OptionalInt age, Optional<Length> height, Collection<Detail> details) {
    List<Caution> cautions = new ArrayList<>(List.of(BLADES, PINS, IRON));
    cautions.add(PRESSURE);
    boolean child = isChild(age, height);
    if (details.contains(Detail.NIGHTWEAR) || child) {
      cautions.add(child ? CHILDS_NIGHTWEAR : NIGHTWEAR);
    }
    if (details.contains(Detail.NIGHTWEAR) && child && age.orElse(1) < 1) {
      cautions.add(INFANTS_NIGHTWEAR);
    }
    if (details.contains(Detail.ELASTIC)) {
      cautions.add(ELASTIC);
    }
    if (child) {
      addForChild(age, details, cautions);
    } else {
      cautions.add(NOT_FOR_CHILDREN);
    }
    return List.copyOf(cautions);
  }

  private static void addForChild(
      OptionalInt age, Collection<Detail> details, List<Caution> cautions) {
    cautions.add(APPROVAL);
    cautions.add(CORDS);
    if (details.contains(Detail.CORD)) {
      cautions.add(CORD_LENGTHS);
    }
    if (age.isEmpty() || age.getAsInt() < SMALL_PARTS_UNDER) {
      cautions.add(SMALL_PARTS);
    } else if (details.contains(Detail.SMALL_PARTS)) {
      cautions.add(FAST_PARTS);
    }
  }

  private static boolean isChild(OptionalInt age, Optional<Length> height) {
    return age.isPresent()
        ? age.getAsInt() < CHILD_UNDER
        : height.filter(tall -> tall.compareTo(SMALL_CHILD_HEIGHT) <= 0).isPresent();
  }

  /**
   * What must not be made at all without asking first.
   *
   * @param age the wearer's completed years, or empty when it is not known
   * @param height the wearer's height, or empty when it is not known
   * @param details what the garment has or is
   * @return a problem for a hood with a cord, or small parts, on a child too young for them
   */
  public static List<Finding> findings(
      OptionalInt age, Optional<Length> height, Collection<Detail> details) {
    List<Finding> findings = new ArrayList<>();
    boolean child = isChild(age, height);
    if (child && details.contains(Detail.HOOD) && details.contains(Detail.CORD)) {
      findings.add(
          Finding.problem(
                  "child.cord-at-hood",
                  Place.draft(),
                  "A cord at the hood of a child's garment can strangle (16 CFR 1120 with ASTM"
                      + " F1816, EN 14682).")
              .withRemedy(Remedy.of("Leave the cord out; close the hood with its shape alone.")));
    }
    boolean swallows = child && age.orElse(0) < SMALL_PARTS_UNDER;
    if (swallows && details.contains(Detail.SMALL_PARTS)) {
      findings.add(
          Finding.problem(
                  "child.small-parts",
                  Place.draft(),
                  "A child under three can swallow parts that come off (16 CFR 1501).")
              .withRemedy(Remedy.of("Close the garment without buttons, snaps or beads.")));
    }
    return List.copyOf(findings);
  }
}
