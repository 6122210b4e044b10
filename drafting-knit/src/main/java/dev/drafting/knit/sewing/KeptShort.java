package dev.drafting.knit.sewing;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.assembly.Junction;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Seam;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The seams that must not stretch. */
final class KeptShort {
  private KeptShort() {}

  static Set<String> seams(Assembly sewn, String headOpening, Collection<String> wanted) {
    Set<String> names = new LinkedHashSet<>();
    for (Seam seam : sewn.pattern().seams()) {
      if (endsAt(sewn, seam, headOpening) && SeamRun.isAcross(sewn.pattern(), seam)) {
        names.add(seam.name());
      }
    }
    for (String name : wanted) {
      require(sewn.pattern(), name);
      names.add(name);
    }
    return names;
  }

  static void require(Pattern pattern, String name) {
    List<String> seams = pattern.seams().stream().map(Seam::name).toList();
    if (!seams.contains(name)) {
      throw DraftingException.of("a tape is for a seam that is not there")
          .at(pattern.name())
          .value(name)
          .accepted(String.join(", ", seams));
    }
  }

  private static boolean endsAt(Assembly sewn, Seam seam, String opening) {
    List<EdgeRef> edges =
        sewn.openings().stream()
            .filter(known -> known.name().equals(opening))
            .map(Opening::parts)
            .flatMap(List::stream)
            .map(part -> part.edge())
            .toList();
    return sewn.junctions().stream()
        .filter(junction -> junction.ending().contains(seam.name()))
        .map(Junction::openEdges)
        .flatMap(List::stream)
        .anyMatch(edges::contains);
  }
}
