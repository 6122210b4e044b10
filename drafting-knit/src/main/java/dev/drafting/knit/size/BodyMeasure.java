package dev.drafting.knit.size;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * What is measured on a body, by the names of ISO 8559-1 and of its forerunner, ISO 8559:1989, as
 * they are listed in "Anthropometry, Apparel Sizing and Design", 2nd edition, pages 50 to 52 and
 * 96.
 *
 * <pre>{@code
 * BodyMeasure.HIP_GIRTH;  // => hip girth
 * BodyMeasure.of("bust girth").meaning();  // => horizontally across the bust prominence, with moderate tension
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public enum BodyMeasure {
  /** How tall. */
  HEIGHT("height", "from the floor to the top of the head, without shoes", 30, 250),
  /** Above the ears. */
  HEAD_GIRTH("head girth", "the largest girth, horizontally above the ears", 25, 80),
  /** Where a round neck lies. */
  NECK_BASE_GIRTH(
      "neck-base girth",
      "through the back neck point, both side neck points and the front neck point",
      15,
      80),
  /** Under the arms. */
  CHEST_GIRTH(
      "chest girth",
      "the largest girth, horizontally over the shoulder blades and under the arms, breathing"
          + " normally",
      20,
      250),
  /** Across the bust. */
  BUST_GIRTH(
      "bust girth", "horizontally across the bust prominence, with moderate tension", 20, 250),
  /** Between ribs and hips. */
  WAIST_GIRTH(
      "waist girth",
      "horizontally, midway between the lowest rib and the top of the hip bone",
      20,
      250),
  /** At the fullest part. */
  HIP_GIRTH("hip girth", "horizontally at the fullest part of the seat", 30, 300),
  /** Of the arm above the elbow. */
  UPPER_ARM_GIRTH("upper-arm girth", "the largest girth above the elbow", 8, 90),
  /** At the wrist. */
  WRIST_GIRTH("wrist girth", "over the wrist bones", 6, 40),
  /** At the top of the leg. */
  THIGH_GIRTH("thigh girth", "horizontally, at the top of the leg", 12, 130),
  /** Below the knee. */
  CALF_GIRTH("calf girth", "the largest girth below the knee", 8, 90),
  /** At the ankle. */
  ANKLE_GIRTH("ankle girth", "the smallest girth above the ankle bones", 7, 60),
  /** Along the shoulder. */
  SHOULDER_LENGTH("shoulder length", "from the side neck point to the shoulder point", 3, 30),
  /** From shoulder to wrist. */
  ARM_LENGTH("arm length", "from the shoulder point over the bent elbow to the wrist", 10, 110),
  /** How deep the arm sits. */
  SCYE_DEPTH("scye depth", "from the back neck point down to the height of the underarm", 5, 50),
  /** Length of the back. */
  CERVICAL_TO_WAIST(
      "cervical to waist", "from the back neck point down the back to the waist", 10, 80),
  /** Seat to waist. */
  BODY_RISE("body rise", "from the waist to the seat of a chair, at the side, sitting", 8, 60),
  /** Length of the leg. */
  INSIDE_LEG("inside leg", "from the crotch straight down to the floor", 8, 130);

  private final String iso;
  private final String meaning;
  private final int leastCm;
  private final int mostCm;

  BodyMeasure(String iso, String meaning, int leastCm, int mostCm) {
    this.iso = iso;
    this.meaning = meaning;
    this.leastCm = leastCm;
    this.mostCm = mostCm;
  }

  /**
   * The measure of a name.
   *
   * @param name as it prints: "hip girth"
   * @return the measure
   * @throws DraftingException if there is none; it lists them
   */
  public static BodyMeasure of(String name) {
    for (BodyMeasure measure : values()) {
      if (measure.iso.equals(name)) {
        return measure;
      }
    }
    throw DraftingException.of("there is no such measure of the body")
        .value(name)
        .accepted(Arrays.stream(values()).map(m -> m.iso).collect(Collectors.joining(", ")));
  }

  /**
   * How it is taken.
   *
   * @return a clause without a full stop
   */
  public String meaning() {
    return meaning;
  }

  /** What is measured there, for a sentence: "hip". */
  String place() {
    return iso.replace(" girth", "");
  }

  Length checked(Length length) {
    if (length.compareTo(Length.cm(leastCm)) < 0 || length.compareTo(Length.cm(mostCm)) > 0) {
      throw DraftingException.of("the measure of the body is out of range")
          .at(iso)
          .value(length)
          .accepted(leastCm + " cm to " + mostCm + " cm");
    }
    return length;
  }

  @Override
  public String toString() {
    return iso;
  }
}
