package dev.drafting.core.assembly;

import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Seam;
import java.util.List;

/** A seam whose edges know in which direction they are sewn. */
record SewnSeam(Seam seam, List<Run> first, List<Run> second) {

  /** An edge as it is sewn: as drawn, or from its end to its start. */
  record Run(EdgeRef edge, boolean asDrawn) {
    Run reversed() {
      return new Run(edge, !asDrawn);
    }
  }
}
