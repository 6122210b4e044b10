package dev.drafting.knit.band;

import dev.drafting.core.assembly.Opening;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.io.Serializable;

/** An edge that a strip goes round: on an outline, or known by tape measure alone. */
interface BandEdge extends Serializable {

  String name();

  Angle turning();

  /**
   * The length all round.
   *
   * @param distance from the finished edge, outward positive
   * @param seam where the strip's seam lies, in case that is what was measured
   */
  Length lengthAt(Length distance, Length seam);

  /** An opening of a drafted garment. */
  record OnOutline(Opening opening) implements BandEdge {
    @Override
    public String name() {
      return opening.name();
    }

    @Override
    public Angle turning() {
      return opening.turning();
    }

    @Override
    public Length lengthAt(Length distance, Length seam) {
      return opening.lengthAt(distance);
    }
  }
}
