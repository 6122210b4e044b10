package dev.drafting.knit.band;

import dev.drafting.core.assembly.Opening;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.wording.Wording;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Whether an opening goes over the head.
 *
 * <p>It stretches as far as the tighter of two: its strip, {@code loop x (1 + usable stretch of the
 * strip)}, and the garment's own edge at the seam of the strip, {@code join line x (1 + usable
 * stretch of the body)}. That must reach the head girth and a little clearance. The usable share of
 * the stretch is {@link Fabric#usableStretch()}.
 *
 * @since 0.1
 */
public final class HeadOpening implements Serializable {
  private static final long serialVersionUID = 1L;

  /** One to two centimetres: common practice, no source. */
  private static final Length USUAL_CLEARANCE = Length.cm(1);

  /** What an opening is held by when it is pulled over the head. */
  public enum Limit {
    /** The strip round it. */
    STRIP,
    /** The garment's own edge. */
    BODY
  }

  private final Opening opening;
  private final @Nullable Strip strip;
  private final Fabric body;
  private final Length head;
  private final Length clearance;

  private HeadOpening(
      Opening opening, @Nullable Strip strip, Fabric body, Length head, Length clearance) {
    this.opening = opening;
    this.strip = strip;
    this.body = Objects.requireNonNull(body, "body");
    this.head = head;
    this.clearance = clearance;
  }

  /**
   * An opening with a band or binding.
   *
   * @param strip the strip round it
   * @param body what the garment is cut from
   * @param head the girth of the head, over nothing
   * @return the opening against the head, with 1 cm of clearance
   * @throws DraftingException if the head has no girth
   */
  public static HeadOpening of(Strip strip, Fabric body, Length head) {
    return new HeadOpening(strip.opening(), strip, body, positive(head), USUAL_CLEARANCE);
  }

  /**
   * An opening without a strip: hemmed, faced or raw.
   *
   * @param opening the opening
   * @param body what the garment is cut from
   * @param head the girth of the head, over nothing
   * @return the opening against the head, with 1 cm of clearance
   * @throws DraftingException if the head has no girth
   */
  public static HeadOpening of(Opening opening, Fabric body, Length head) {
    return new HeadOpening(opening, null, body, positive(head), USUAL_CLEARANCE);
  }

  private static Length positive(Length head) {
    if (!head.isPositive()) {
      throw DraftingException.of("the head has no girth").value(head).accepted("more than 0");
    }
    return head;
  }

  /**
   * The same with another clearance.
   *
   * @param more what the opening must be wider than the head, 0 to 10 cm
   * @return the opening against the head
   * @throws DraftingException if it is out of range
   */
  public HeadOpening withClearance(Length more) {
    Length checked = BandWidths.within("clearance", more, Length.ZERO, Length.cm(10));
    return new HeadOpening(opening, strip, body, head, checked);
  }

  /**
   * The opening.
   *
   * @return the opening
   */
  public Opening opening() {
    return opening;
  }

  /**
   * The strip round it.
   *
   * @return the strip, or empty when there is none
   */
  public Optional<Strip> strip() {
    return Optional.ofNullable(strip);
  }

  Fabric body() {
    return body;
  }

  Length head() {
    return head;
  }

  Length clearance() {
    return clearance;
  }

  /** Where the garment's own cloth ends: the strip's seam, or the seam of a facing, or the edge. */
  Length bodyEdge() {
    return strip != null
        ? strip.joinLine()
        : opening.lengthAt(opening.finish().profile().join().orElse(Length.ZERO));
  }

  private Length bodyStretched() {
    return bodyEdge().times(1 + body.usableStretch());
  }

  /**
   * How wide the opening goes.
   *
   * @return the girth that it can be pulled to
   */
  public Length stretchedOpening() {
    return strip == null ? bodyStretched() : stretched(strip).min(bodyStretched());
  }

  private static Length stretched(Strip strip) {
    return strip.loop().times(1 + strip.fabric().usableStretch());
  }

  /**
   * How wide it has to go.
   *
   * @return the head girth and the clearance
   */
  public Length needed() {
    return head.plus(clearance);
  }

  /**
   * How much wider it goes than it has to.
   *
   * @return negative when it will not go over the head
   */
  public Length margin() {
    return stretchedOpening().minus(needed());
  }

  /**
   * Tells whether it goes over the head.
   *
   * @return true when the margin is not negative
   */
  public boolean passes() {
    return !margin().isNegative();
  }

  /**
   * What holds the opening when it is pulled.
   *
   * @return the strip or the body, whichever is tighter
   */
  public Limit limit() {
    return strip != null && stretched(strip).compareTo(bodyStretched()) <= 0
        ? Limit.STRIP
        : Limit.BODY;
  }

  /**
   * What is wrong when the opening does not go over the head, with the remedies in the order to try
   * them: lower the neck, a longer loop, a narrower band, a cloth with more stretch, an opening at
   * the shoulder. Those that cannot help are left out.
   *
   * @return one finding, or none when it passes
   */
  public List<Finding> findings() {
    return passes() ? List.of() : List.of(HeadRemedies.finding(this));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof HeadOpening
        && ((HeadOpening) other).opening.equals(opening)
        && Objects.equals(((HeadOpening) other).strip, strip)
        && ((HeadOpening) other).body.equals(body)
        && ((HeadOpening) other).head.equals(head)
        && ((HeadOpening) other).clearance.equals(clearance);
  }

  @Override
  public int hashCode() {
    return Objects.hash(opening, strip, body, head, clearance);
  }

  @Override
  public String toString() {
    return opening.name()
        + " stretches to "
        + Wording.amount(stretchedOpening())
        + ", head needs "
        + Wording.amount(needed())
        + ": "
        + (passes() ? "goes over the head" : "does not go over the head");
  }
}
