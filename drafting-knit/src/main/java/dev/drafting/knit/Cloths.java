package dev.drafting.knit;

import dev.drafting.core.assembly.Opening;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.knit.band.BandFinish;
import dev.drafting.knit.fabric.Fabric;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** The cloths of a garment, by the parts that they play, and what they are. */
final class Cloths {
  private Cloths() {}

  /** The cloths that pieces and strips are cut from, in the order of the pattern. */
  static Set<String> names(Pattern pattern, List<Opening> openings) {
    Set<String> cloths = new LinkedHashSet<>();
    pattern.pieces().forEach(piece -> cloths.add(piece.cloth()));
    for (Opening opening : openings) {
      if (opening.finish() instanceof BandFinish band) {
        cloths.add(band.cloth());
      }
    }
    return cloths;
  }

  /** These fabrics and one more. */
  static Map<String, Fabric> with(Map<String, Fabric> fabrics, String cloth, Fabric fabric) {
    Map<String, Fabric> more = new LinkedHashMap<>(fabrics);
    more.put(Objects.requireNonNull(cloth, "cloth"), Objects.requireNonNull(fabric, "fabric"));
    return Collections.unmodifiableMap(more);
  }

  static DraftingException missing(String cloth, Map<String, Fabric> fabrics, Set<String> needed) {
    return DraftingException.of("no fabric is given for the cloth \"" + cloth + "\"")
        .accepted(
            fabrics.isEmpty()
                ? "a fabric for each of " + String.join(", ", needed)
                : "a fabric for it beside those for " + String.join(", ", fabrics.keySet()));
  }
}
