package dev.drafting.knit.sewing;

import dev.drafting.core.assembly.Opening;
import dev.drafting.core.assembly.OpeningPart;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.knit.band.BandFinish;
import java.util.List;

/** Openings that are named alike and finished in one go, and the seam that is still open then. */
record FinishTask(String name, List<Opening> openings, String openSeam, boolean isLapped) {

  static FinishTask of(String name, List<Opening> openings) {
    return new FinishTask(name, List.copyOf(openings), "", false);
  }

  /** The same finish sewn flat, while a seam is open that will run through it. */
  FinishTask before(SeamTask seam) {
    return new FinishTask(name, openings, seam.title(), isLapped);
  }

  /** The same finish sewn to edges that are lapped afterwards. */
  FinishTask beforeLap() {
    return new FinishTask(name, openings, openSeam, true);
  }

  boolean isBand() {
    return openings.get(0).finish() instanceof BandFinish;
  }

  String id() {
    return "finish " + name;
  }

  boolean isFlat() {
    return !openSeam.isEmpty();
  }

  /** Whether the loop runs over both halves of the garment, so that it meets its seams twice. */
  boolean isAllRound() {
    return openings.get(0).parts().stream().map(OpeningPart::mirrored).distinct().count() > 1;
  }

  List<EdgeRef> edges() {
    return openings.stream()
        .flatMap(opening -> opening.parts().stream())
        .map(OpeningPart::edge)
        .distinct()
        .toList();
  }
}
