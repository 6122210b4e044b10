package dev.drafting.core.trace;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Piece;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Collections;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A front or a back measured with a tape as it lies flat, without tracing it: widths from side to
 * side at heights above the hem, neck, shoulder and underarm. An outline is drawn from them: the
 * side runs through the widths as a spline (commons-math3), neck and hem cross the fold squarely,
 * and neck and armhole meet the shoulder squarely.
 *
 * <p>A tape says less than a pencil: the curves between the measures are those of common practice.
 * Measure along neck and armhole as well, and compare with the edges of the piece.
 *
 * <pre>{@code
 * TapedHalf front = TapedHalf.of("front", Length.cm(64))
 *     .withHem(Length.cm(48))
 *     .withWidth(Length.cm(25), Length.cm(44))
 *     .withUnderarm(Length.cm(46), Length.cm(22))
 *     .withShoulder(Length.cm(7), Length.cm(2))
 *     .withNeck(Length.cm(20), Length.cm(10));
 * front.piece().edge("shoulder").length().text(LengthUnit.MM);  // => 70 mm
 * front.piece().edge("fold").length();  // => 540 mm
 * front.withNeck(Length.cm(20), Length.cm(4)).piece("back").edge("fold").length();  // => 600 mm
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class TapedHalf implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final Length SHORTEST = Length.mm(50);
  private static final Length LONGEST = Length.mm(2_000);

  private final String name;
  private final Length length;
  private final @Nullable Taped hem;
  private final @Nullable Taped underarm;
  private final @Nullable Taped shoulder;
  private final @Nullable Taped neck;
  private final @Nullable Taped across;

  /** Widths by heights above the hem. */
  @SuppressWarnings("serial") // always an unmodifiable map of the JDK
  private final Map<Length, Length> widths;

  /** Two measures that belong together. */
  record Taped(Length first, Length second) implements Serializable {
    private static final long serialVersionUID = 1L;
  }

  private TapedHalf(
      String name,
      Length length,
      @Nullable Taped hem,
      @Nullable Taped underarm,
      @Nullable Taped shoulder,
      @Nullable Taped neck,
      @Nullable Taped across,
      Map<Length, Length> widths) {
    this.name = name;
    this.length = length;
    this.hem = hem;
    this.underarm = underarm;
    this.shoulder = shoulder;
    this.neck = neck;
    this.across = across;
    this.widths = Collections.unmodifiableMap(widths);
  }

  /**
   * Begins with the length.
   *
   * @param name what the piece is called: "front"
   * @param length from the neck point, where neck and shoulder meet, straight down to the hem; 50
   *     mm to 2 m
   * @return measures to be completed
   * @throws DraftingException if the name is blank or the length out of range
   */
  public static TapedHalf of(String name, Length length) {
    if (name.isBlank()) {
      throw DraftingException.of("a piece has no name").accepted("a name such as front or back");
    }
    checkSize("length", length);
    return new TapedHalf(name, length, null, null, null, null, null, new TreeMap<>());
  }

  private static void checkSize(String what, Length size) {
    if (size.compareTo(SHORTEST) < 0 || size.compareTo(LONGEST) > 0) {
      throw DraftingException.of("a measure is out of range")
          .at(what)
          .value(size)
          .accepted("50 mm to 2 m");
    }
  }

  private static void checkDepth(String what, Length depth, Length most) {
    if (depth.isNegative() || depth.compareTo(most) >= 0) {
      throw DraftingException.of("a measure is out of range")
          .at(what)
          .value(depth)
          .accepted("0 mm up to less than " + most);
    }
  }

  /**
   * A hem that is level.
   *
   * @param width from side to side as the garment lies flat, 50 mm to 2 m
   * @return the measures with this one
   * @throws DraftingException if it is out of range
   */
  public TapedHalf withHem(Length width) {
    return withHem(width, Length.ZERO);
  }

  /**
   * A hem that rises towards the sides.
   *
   * @param width from side to side as the garment lies flat, 50 mm to 2 m
   * @param rise how much higher it lies at the sides than on the fold
   * @return the measures with this one
   * @throws DraftingException if one is out of range
   */
  public TapedHalf withHem(Length width, Length rise) {
    checkSize("hem", width);
    checkDepth("rise of the hem", rise, length);
    return new TapedHalf(
        name, length, new Taped(width, rise), underarm, shoulder, neck, across, widths);
  }

  /**
   * A width between hem and underarm.
   *
   * @param above how far above the hem, along the fold
   * @param width from side to side as the garment lies flat, 50 mm to 2 m
   * @return the measures with this one
   * @throws DraftingException if it is out of range
   */
  public TapedHalf withWidth(Length above, Length width) {
    checkSize("width", width);
    checkDepth("above the hem", above, length);
    Map<Length, Length> more = new TreeMap<>(widths);
    more.put(above, width);
    return new TapedHalf(name, length, hem, underarm, shoulder, neck, across, more);
  }

  /**
   * Where side and armhole meet.
   *
   * @param width from underarm to underarm as the garment lies flat, 50 mm to 2 m
   * @param below how far the underarms lie below the neck points
   * @return the measures with this one
   * @throws DraftingException if one is out of range
   */
  public TapedHalf withUnderarm(Length width, Length below) {
    checkSize("underarm", width);
    checkDepth("underarm below the neck points", below, length);
    return new TapedHalf(
        name, length, hem, new Taped(width, below), shoulder, neck, across, widths);
  }

  /**
   * The shoulder seam.
   *
   * @param along its length, or that of the strap's edge there
   * @param drop how much lower its outer end lies than the neck point
   * @return the measures with this one
   * @throws DraftingException if it drops by more than three quarters of its length
   */
  public TapedHalf withShoulder(Length along, Length drop) {
    checkDepth("drop of the shoulder", drop, along.times(0.75));
    return new TapedHalf(name, length, hem, underarm, new Taped(along, drop), neck, across, widths);
  }

  /**
   * The neck.
   *
   * @param width from neck point to neck point
   * @param depth how far its lowest point, on the fold, lies below the neck points
   * @return the measures with this one
   * @throws DraftingException if one is out of range
   */
  public TapedHalf withNeck(Length width, Length depth) {
    checkSize("width of the neck", width);
    checkDepth("depth of the neck", depth, length);
    return new TapedHalf(
        name, length, hem, underarm, shoulder, new Taped(width, depth), across, widths);
  }

  /**
   * Where the armholes come nearest to each other.
   *
   * @param width from armhole to armhole there, 50 mm to 2 m
   * @param below how far that is below the neck points
   * @return the measures with this one
   * @throws DraftingException if one is out of range
   */
  public TapedHalf withAcross(Length width, Length below) {
    checkSize("across", width);
    checkDepth("across below the neck points", below, length);
    return new TapedHalf(
        name, length, hem, underarm, shoulder, neck, new Taped(width, below), widths);
  }

  /**
   * The half that these measures give.
   *
   * @return a piece with the edges fold, hem, side, armhole, shoulder and neck
   * @throws DraftingException if hem, underarm, shoulder or neck is missing, or they do not fit
   *     each other
   */
  public Piece piece() {
    return piece(name);
  }

  /**
   * The half that these measures give, under another name.
   *
   * @param called what the piece is called: "back"
   * @return as {@link #piece()}
   * @throws DraftingException as {@link #piece()} does
   */
  public Piece piece(String called) {
    return new TapedOutline(
            called,
            length,
            given("hem", hem),
            given("underarm", underarm),
            given("shoulder", shoulder),
            given("neck", neck),
            across,
            widths)
        .piece();
  }

  private <T> T given(String what, @Nullable T measure) {
    if (measure == null) {
      throw DraftingException.of("a measure is missing")
          .at(name)
          .value(what)
          .accepted("hem, underarm, shoulder and neck");
    }
    return measure;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      String name,
      Length length,
      @Nullable Taped hem,
      @Nullable Taped underarm,
      @Nullable Taped shoulder,
      @Nullable Taped neck,
      @Nullable Taped across,
      Map<Length, Length> widths)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      TapedHalf half = of(name, length);
      half = hem == null ? half : half.withHem(hem.first, hem.second);
      half = underarm == null ? half : half.withUnderarm(underarm.first, underarm.second);
      half = shoulder == null ? half : half.withShoulder(shoulder.first, shoulder.second);
      half = neck == null ? half : half.withNeck(neck.first, neck.second);
      half = across == null ? half : half.withAcross(across.first, across.second);
      for (Map.Entry<Length, Length> width : widths.entrySet()) {
        half = half.withWidth(width.getKey(), width.getValue());
      }
      return half;
    }
  }

  private Object writeReplace() {
    return new Kept(name, length, hem, underarm, shoulder, neck, across, widths);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a taped half is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TapedHalf that
        && name.equals(that.name)
        && length.equals(that.length)
        && Objects.equals(hem, that.hem)
        && Objects.equals(underarm, that.underarm)
        && Objects.equals(shoulder, that.shoulder)
        && Objects.equals(neck, that.neck)
        && Objects.equals(across, that.across)
        && widths.equals(that.widths);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, length, hem, underarm, shoulder, neck, across, widths);
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(name + ", " + length + " long");
    say(text, ", hem ", hem, " higher at the sides");
    say(text, ", underarm ", underarm, " below the neck points");
    say(text, ", shoulder ", shoulder, " lower at its end");
    say(text, ", neck ", neck, " deep");
    say(text, ", across ", across, " below the neck points");
    widths.forEach((above, width) -> text.append(", ").append(width).append(" at ").append(above));
    return text.toString();
  }

  private static void say(StringBuilder text, String what, @Nullable Taped measure, String second) {
    if (measure != null) {
      text.append(what).append(measure.first).append(" and ").append(measure.second).append(second);
    }
  }
}
