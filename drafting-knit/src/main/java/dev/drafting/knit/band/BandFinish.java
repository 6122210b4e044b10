package dev.drafting.knit.band;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Finish;

/**
 * An edge finished with a strip of its own: a band or a binding. The finished edge is the strip's
 * fold, so a strip of another width leaves it where it was; the strip is sewn on further in.
 *
 * @since 0.1
 */
public sealed interface BandFinish extends Finish permits FoldedBand, WrappedBinding {

  /**
   * How wide the strip shows on the right side.
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
   * What the strip is called on the garment.
   *
   * @return "band" or "binding"
   */
  String noun();

  /**
   * Where the strip is sewn to the garment, measured from the finished edge.
   *
   * @return the showing width inward, so a negative distance
   */
  default Length joinDistance() {
    return showing().negated();
  }
}
