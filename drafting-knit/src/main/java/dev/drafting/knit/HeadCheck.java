package dev.drafting.knit;

import dev.drafting.core.assembly.Opening;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.knit.band.HeadOpening;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.fabric.Fabric;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Finds the opening for the head among all openings and sets it against the wearer's head. */
final class HeadCheck {
  static final String NECK = "neck";

  private HeadCheck() {}

  static Optional<HeadOpening> of(
      Pattern pattern,
      List<Opening> openings,
      List<Strip> strips,
      Wearer wearer,
      Function<String, Fabric> fabrics) {
    return wearer
        .head()
        .flatMap(
            head ->
                openings.stream()
                    .filter(opening -> opening.name().equals(NECK))
                    .findFirst()
                    .map(neck -> against(head, neck, strips, body(pattern, neck, fabrics))));
  }

  private static HeadOpening against(Length head, Opening neck, List<Strip> strips, Fabric body) {
    return strips.stream()
        .filter(strip -> strip.opening().equals(neck))
        .findFirst()
        .map(strip -> HeadOpening.of(strip, body, head))
        .orElseGet(() -> HeadOpening.of(neck, body, head));
  }

  /** What the garment is cut from at the opening. */
  static Fabric body(Pattern pattern, Opening opening, Function<String, Fabric> fabrics) {
    String piece = opening.parts().get(0).edge().piece();
    return fabrics.apply(pattern.piece(piece).cloth());
  }
}
