package dev.drafting.knit.band;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.LineRole;
import dev.drafting.core.pattern.Profile;
import dev.drafting.core.pattern.ProfileLine;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Map;
import java.util.Objects;

/**
 * A strip wrapped round the edge: it shows equally on the right and the wrong side, and the
 * garment's edge lies inside it.
 *
 * <p>The garment is cut on the finished edge less the turn of cloth, the little that the cloth
 * takes up as it bends. The strip is cut four times as wide as it shows when both its edges are
 * turned in; three times when the inner one is overlocked and lies flat inside; six times when it
 * is folded in half first; and always wider by the turn of cloth (common practice).
 *
 * <pre>{@code
 * WrappedBinding binding = WrappedBinding.of(Length.mm(10));
 * binding;  // => binding wrapped round the edge, showing 10 mm
 * binding.profile();  // => CUT -2.5 mm, JOIN -10 mm, FOLD 0 mm, TOPSTITCH -8 mm
 * binding.cutWidth();  // => 42.5 mm
 * binding.overlockedInside().cutWidth();  // => 32.5 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class WrappedBinding implements BandFinish {
  private static final long serialVersionUID = 1L;

  /** Two to three millimetres: common practice, to be measured on a scrap. */
  private static final Length USUAL_TURN = Length.mm(2.5);

  private final Length showing;
  private final Length turnOfCloth;
  private final String cloth;
  private final Layers layers;
  private final Intent intent;

  /** How the strip is laid: what is said of it, and how often it is as wide as it shows. */
  private enum Layers {
    DOUBLE_FOLD("both edges turned in", 4),
    DOUBLED("folded in half first", 6),
    OVERLOCKED_INSIDE("overlocked inside", 3);

    private final String said;
    private final int widths;

    Layers(String said, int widths) {
      this.said = said;
      this.widths = widths;
    }
  }

  private WrappedBinding(
      Length showing, Length turnOfCloth, String cloth, Layers layers, Intent intent) {
    this.showing = showing;
    this.turnOfCloth = turnOfCloth;
    this.cloth = cloth;
    this.layers = layers;
    this.intent = intent;
  }

  /**
   * A wrapped binding of rib that lies flat, both its edges turned in, with 2.5 mm for the turn of
   * cloth.
   *
   * @param showing how wide it shows, 3 to 200 mm
   * @return the finish
   * @throws dev.drafting.core.finding.DraftingException if the width is out of range
   */
  public static WrappedBinding of(Length showing) {
    return new WrappedBinding(
        BandWidths.showing(showing), USUAL_TURN, "rib", Layers.DOUBLE_FOLD, Intent.LIES_FLAT);
  }

  /**
   * The same binding with the turn of cloth measured on a scrap.
   *
   * @param turn what the cloth takes up as it bends, from 0 to the width that shows
   * @return the finish
   * @throws dev.drafting.core.finding.DraftingException if it is out of range
   */
  public WrappedBinding withTurnOfCloth(Length turn) {
    Length checked = BandWidths.within("turn of cloth", turn, Length.ZERO, showing);
    return new WrappedBinding(showing, checked, cloth, layers, intent);
  }

  /**
   * The same binding of another cloth.
   *
   * @param newCloth the part that the cloth plays in the garment, such as "body"
   * @return the finish
   * @throws dev.drafting.core.finding.DraftingException if the name is blank
   */
  public WrappedBinding withCloth(String newCloth) {
    return new WrappedBinding(showing, turnOfCloth, BandWidths.cloth(newCloth), layers, intent);
  }

  /**
   * The same binding of a strip that is folded in half lengthwise, sewn on by its raw edges, and
   * wrapped with its fold to the inside.
   *
   * @return the finish
   */
  public WrappedBinding doubled() {
    return new WrappedBinding(showing, turnOfCloth, cloth, Layers.DOUBLED, intent);
  }

  /**
   * The same binding with a single fold: its inner edge is overlocked and lies flat on the wrong
   * side.
   *
   * @return the finish
   */
  public WrappedBinding overlockedInside() {
    return new WrappedBinding(showing, turnOfCloth, cloth, Layers.OVERLOCKED_INSIDE, intent);
  }

  /**
   * The same binding, meant to do something else.
   *
   * @param newIntent lies flat, hugs or draws in
   * @return the finish
   */
  public WrappedBinding withIntent(Intent newIntent) {
    Objects.requireNonNull(newIntent, "newIntent");
    return new WrappedBinding(showing, turnOfCloth, cloth, layers, newIntent);
  }

  @Override
  public Length showing() {
    return showing;
  }

  /**
   * What the cloth takes up as it bends.
   *
   * @return zero or more
   */
  public Length turnOfCloth() {
    return turnOfCloth;
  }

  @Override
  public String cloth() {
    return cloth;
  }

  /**
   * Four times the width that shows, six times when it is doubled, three times when it is
   * overlocked inside, and the turn of cloth.
   */
  @Override
  public Length cutWidth() {
    return showing.times(layers.widths).plus(turnOfCloth);
  }

  /**
   * Tells whether the strip is folded in half first.
   *
   * @return true after {@link #doubled()}
   */
  public boolean isDoubled() {
    return layers == Layers.DOUBLED;
  }

  /**
   * Tells whether the strip's inner edge lies flat.
   *
   * @return true after {@link #overlockedInside()}
   */
  public boolean isOverlockedInside() {
    return layers == Layers.OVERLOCKED_INSIDE;
  }

  @Override
  public Intent intent() {
    return intent;
  }

  /** The width that shows, inward. */
  @Override
  public Length joinDistance() {
    return showing.negated();
  }

  @Override
  public String noun() {
    return "binding";
  }

  @Override
  public String id() {
    return "wrapped-binding";
  }

  @Override
  public Map<String, String> settings() {
    return BandWidths.settings(
        "showing",
        showing.toString(),
        "turn of cloth",
        turnOfCloth.toString(),
        "cloth",
        cloth,
        "layers",
        layers.said,
        "intent",
        intent.plainName());
  }

  @Override
  public Profile profile() {
    return Profile.of(
        new ProfileLine(LineRole.CUT, turnOfCloth.negated()),
        new ProfileLine(LineRole.JOIN, joinDistance()),
        new ProfileLine(LineRole.FOLD, Length.ZERO),
        new ProfileLine(LineRole.TOPSTITCH, BandWidths.TOPSTITCH_MARGIN.minus(showing)));
  }

  @Override
  public String describe() {
    return "binding wrapped round the edge, showing "
        + Wording.fine(showing)
        + (layers == Layers.DOUBLE_FOLD ? "" : ", " + layers.said);
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(
      Length showing, Length turnOfCloth, String cloth, Layers layers, Intent intent)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      WrappedBinding binding =
          of(showing).withTurnOfCloth(turnOfCloth).withCloth(cloth).withIntent(intent);
      return switch (layers) {
        case DOUBLE_FOLD -> binding;
        case DOUBLED -> binding.doubled();
        case OVERLOCKED_INSIDE -> binding.overlockedInside();
      };
    }
  }

  private Object writeReplace() {
    return new Kept(showing, turnOfCloth, cloth, layers, intent);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a wrapped binding is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof WrappedBinding
        && ((WrappedBinding) other).showing.equals(showing)
        && ((WrappedBinding) other).turnOfCloth.equals(turnOfCloth)
        && ((WrappedBinding) other).cloth.equals(cloth)
        && ((WrappedBinding) other).layers == layers
        && ((WrappedBinding) other).intent == intent;
  }

  @Override
  public int hashCode() {
    return Objects.hash(showing, turnOfCloth, cloth, layers.name(), intent.name());
  }

  @Override
  public String toString() {
    return describe();
  }
}
