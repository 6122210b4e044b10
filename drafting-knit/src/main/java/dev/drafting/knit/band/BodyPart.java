package dev.drafting.knit.band;

import dev.drafting.core.Stable;

/**
 * What an opening has to go over when the garment is put on.
 *
 * <pre>{@code
 * BodyPart.HEAD.plainName();  // => head
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public enum BodyPart {
  /** Through a neck: the girth horizontally above the ears. */
  HEAD("head", "over the head"),
  /** Through the lower edge of what is pulled on over the head: round both shoulders. */
  SHOULDERS("shoulders", "over the shoulders"),
  /** Through a waist: the fullest girth below it. */
  HIPS("hips", "over the hips"),
  /** Through a cuff or the end of a sleeve: round the knuckles with the thumb laid in. */
  HAND("hand", "over the hand"),
  /** Through the end of a leg: round heel and instep. */
  FOOT("foot", "over the foot");

  private final String plainName;
  private final String over;

  BodyPart(String plainName, String over) {
    this.plainName = plainName;
    this.over = over;
  }

  /**
   * The name in a sentence.
   *
   * @return for instance "head"
   */
  public String plainName() {
    return plainName;
  }

  /**
   * The way that the opening takes.
   *
   * @return for instance "over the head"
   */
  public String over() {
    return over;
  }

  /** As in "the head needs 58 cm" and "the hips need 98 cm". */
  String needs() {
    return plainName + (this == SHOULDERS || this == HIPS ? " need " : " needs ");
  }

  /** What is left open where nothing else helps. */
  String leftOpen() {
    return switch (this) {
      case HEAD -> "Leave one shoulder open and close it with a placket or snaps.";
      case SHOULDERS, HIPS -> "Leave a side seam open at its end and close it with a zip or snaps.";
      case HAND, FOOT -> "Leave the seam open at the opening and close it with a placket or snaps.";
    };
  }

  /** Where that is. */
  String leftOpenAt() {
    return switch (this) {
      case HEAD -> "shoulder";
      case SHOULDERS, HIPS -> "side";
      case HAND, FOOT -> "seam";
    };
  }
}
