package dev.drafting.core.alter;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a place of the sewn garment measures, and what it should measure. Each proposes the
 * alteration that makes it so.
 *
 * <pre>{@code
 * WantedMeasure.strap("shoulder", Length.mm(48), Length.mm(60));  // => shoulder: 48 mm measured, 60 mm wanted
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class WantedMeasure implements Serializable {
  private static final long serialVersionUID = 1L;

  /** What is measured, and which alteration changes it. */
  private enum Kind {
    GIRTH,
    LENGTH,
    STRAP,
    ARMHOLE,
    NECK
  }

  private final Kind kind;
  private final String place;
  private final Length measured;
  private final Length wanted;

  private WantedMeasure(Kind kind, String place, Length measured, Length wanted) {
    this.kind = kind;
    this.place = place;
    this.measured = positive(measured, place);
    this.wanted = positive(wanted, place);
  }

  private static Length positive(Length length, String place) {
    if (!length.isPositive()) {
      throw DraftingException.of("a measure is not above zero")
          .at(place)
          .value(length)
          .accepted("more than 0 mm");
    }
    return length;
  }

  /**
   * All round the garment where a seam runs, such as the chest at the side seams.
   *
   * @param seam the seam's name
   * @param measured what it measures
   * @param wanted what it should measure
   * @return the measure
   * @throws DraftingException if a measure is not above zero
   */
  public static WantedMeasure girth(String seam, Length measured, Length wanted) {
    return new WantedMeasure(Kind.GIRTH, seam, measured, wanted);
  }

  /**
   * The length of the garment along a seam.
   *
   * @param seam the seam's name
   * @param measured what it measures
   * @param wanted what it should measure
   * @return the measure
   * @throws DraftingException if a measure is not above zero
   */
  public static WantedMeasure length(String seam, Length measured, Length wanted) {
    return new WantedMeasure(Kind.LENGTH, seam, measured, wanted);
  }

  /**
   * The width of a strap, along the shoulder seam.
   *
   * @param shoulder the shoulder seam's name
   * @param measured what it measures
   * @param wanted what it should measure
   * @return the measure
   * @throws DraftingException if a measure is not above zero
   */
  public static WantedMeasure strap(String shoulder, Length measured, Length wanted) {
    return new WantedMeasure(Kind.STRAP, shoulder, measured, wanted);
  }

  /**
   * How deep the armhole is at the side seam.
   *
   * @param side the side seam's name
   * @param measured what it measures
   * @param wanted what it should measure
   * @return the measure
   * @throws DraftingException if a measure is not above zero
   */
  public static WantedMeasure armholeDepth(String side, Length measured, Length wanted) {
    return new WantedMeasure(Kind.ARMHOLE, side, measured, wanted);
  }

  /**
   * How deep the neck is at the centre.
   *
   * @param edge the neck edge of one piece: "front neck"
   * @param measured what it measures
   * @param wanted what it should measure
   * @return the measure
   * @throws DraftingException if a measure is not above zero
   */
  public static WantedMeasure neckDepth(String edge, Length measured, Length wanted) {
    return new WantedMeasure(Kind.NECK, edge, measured, wanted);
  }

  /**
   * The alterations that make the garment what it should be.
   *
   * @param pattern the pattern of the garment that was measured
   * @param measures what was measured
   * @return an alteration for each measure that is off, in the order given
   * @throws DraftingException if the pattern has no such place
   */
  public static List<Alteration> proposals(Pattern pattern, List<WantedMeasure> measures) {
    List<Alteration> proposals = new ArrayList<>();
    measures.forEach(measure -> measure.proposal(pattern).ifPresent(proposals::add));
    return List.copyOf(proposals);
  }

  /**
   * The alteration that makes this measure what it should be.
   *
   * @param pattern the pattern of the garment that was measured
   * @return the alteration; empty if nothing is off
   * @throws DraftingException if the pattern has no such place
   */
  public Optional<Alteration> proposal(Pattern pattern) {
    Length more = wanted.minus(measured);
    if (more.isZero()) {
      return Optional.empty();
    }
    return Optional.of(
        switch (kind) {
          case GIRTH -> Alteration.letOut(place, more.dividedBy(copies(pattern)));
          case LENGTH -> Alteration.lengthen(place, halfway(pattern), more);
          case STRAP -> Alteration.widenStrap(place, more);
          case ARMHOLE -> Alteration.deepenArmhole(place, more);
          case NECK -> Alteration.lowerNeck(EdgeRef.parse(place).toString(), more);
        });
  }

  /** How many edges of the cut pieces meet in the seam, left and right. */
  private int copies(Pattern pattern) {
    int copies = 0;
    for (SeamSide side : SeamSide.of(pattern, place)) {
      Piece piece = side.piece();
      copies += piece.cutting().kind() == Cutting.Kind.SINGLE ? 1 : 2;
    }
    return copies;
  }

  private Length halfway(Pattern pattern) {
    return SeamSide.of(pattern, place).get(0).curve().length().dividedBy(2);
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(Kind kind, String place, Length measured, Length wanted)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return new WantedMeasure(
          Objects.requireNonNull(kind, "kind"),
          Objects.requireNonNull(place, "place"),
          Objects.requireNonNull(measured, "measured"),
          Objects.requireNonNull(wanted, "wanted"));
    }
  }

  private Object writeReplace() {
    return new Kept(kind, place, measured, wanted);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a wanted measure is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof WantedMeasure that
        && that.kind == kind
        && that.place.equals(place)
        && that.measured.equals(measured)
        && that.wanted.equals(wanted);
  }

  @Override
  public int hashCode() {
    return Objects.hash(kind, place, measured, wanted);
  }

  @Override
  public String toString() {
    return place
        + ": "
        + Settings.amount(measured)
        + " measured, "
        + Settings.amount(wanted)
        + " wanted";
  }
}
