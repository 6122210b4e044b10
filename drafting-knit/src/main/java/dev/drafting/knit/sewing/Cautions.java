package dev.drafting.knit.sewing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * The usual cautions for a garment. They name the rules that a maker should ask about; they do not
 * say whether a garment meets them.
 *
 * <pre>{@code
 * Cautions.of(java.util.OptionalInt.empty()).get(0).topic();  // => Blades
 * Cautions.of(java.util.OptionalInt.of(2)).size() > Cautions.of(java.util.OptionalInt.of(40)).size();  // => true
 * }</pre>
 *
 * @since 0.1
 */
public final class Cautions {
  /** Up to the fourteenth birthday: EN 14682 (cords) and EN 14878 (nightwear). */
  private static final int CHILD_UNDER = 14;

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
  private static final Caution NIGHTWEAR =
      Caution.of(
          "Nightwear",
          "Not assessed for nightwear. Children's nightwear must pass flammability tests or fit"
              + " tightly within set limits (16 CFR 1615 and 1616, EN 14878 and others)."
              + LOCAL_RULES);
  private static final Caution CORDS =
      Caution.of(
          "Cords",
          "Put no cord, drawstring or tie at the hood, head or neck of a child's garment; elsewhere"
              + " their length is limited (16 CFR 1120 with ASTM F1816, EN 14682)."
              + LOCAL_RULES);
  private static final Caution SMALL_PARTS =
      Caution.of(
          "Small parts",
          "Under three years nothing may come off that a child can swallow (16 CFR 1501): no"
              + " buttons, snaps or beads. No elastic in neck bands for infants."
              + LOCAL_RULES);

  private Cautions() {}

  /**
   * The cautions for a wearer.
   *
   * @param age the wearer's completed years, or empty when it is not known
   * @return the general cautions, then those for children if the wearer is under fourteen, or one
   *     line about children if not
   */
  public static List<Caution> of(OptionalInt age) {
    List<Caution> cautions = new ArrayList<>(List.of(BLADES, PINS, IRON, PRESSURE));
    if (age.isEmpty() || age.getAsInt() >= CHILD_UNDER) {
      cautions.add(NOT_FOR_CHILDREN);
      return List.copyOf(cautions);
    }
    cautions.addAll(List.of(APPROVAL, NIGHTWEAR, CORDS));
    if (age.getAsInt() < SMALL_PARTS_UNDER) {
      cautions.add(SMALL_PARTS);
    }
    return List.copyOf(cautions);
  }
}
