package dev.drafting.knit.band;

import dev.drafting.core.Stable;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Finish;

/**
 * An edge finished with a strip of its own: a band, a binding, a cuff, or a strip turned to the
 * inside. The finished edge stays where it is, however wide the strip.
 *
 * <pre>{@code
 * BandFinish band = WrappedBinding.of(Length.mm(10));
 * band.cutWidth();  // => 42.5 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public sealed interface BandFinish extends Finish permits FoldedBand, WrappedBinding, FacedStrip {

  /**
   * How wide the strip shows on the right side; of a strip that is turned in, how wide it lies on
   * the wrong side.
   *
   * @return a width over nothing
   */
  Length showing();

  /**
   * What the strip is cut from: the part that the cloth plays in the garment, such as "rib".
   *
   * @return a name that the draft has a fabric for
   */
  String cloth();

  /**
   * How wide the strip is cut.
   *
   * @return the whole width with all turnings
   */
  Length cutWidth();

  /**
   * How much of that width is sewn in.
   *
   * @return the allowances along its edges; nothing for a strip that goes round its seam
   */
  default Length sewnIn() {
    return Length.ZERO;
  }

  /**
   * What the strip is called on the garment.
   *
   * @return such as "band", "binding" or "cuff"
   */
  String noun();

  /**
   * What the strip is meant to do at its edge.
   *
   * @return lies flat, hugs or draws in
   */
  Intent intent();

  /**
   * Where the strip is sewn to the garment, measured from the finished edge.
   *
   * @return the showing width inward, so a negative distance, or nothing for a strip that is turned
   *     in
   */
  Length joinDistance();
}
