package dev.drafting.knit;

import dev.drafting.core.assembly.Opening;
import dev.drafting.core.assembly.OpeningPart;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.knit.band.BodyPart;
import dev.drafting.knit.band.BodyPassage;
import dev.drafting.knit.band.HeadGirths;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.sewing.SewingPlan;
import dev.drafting.knit.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Sets the openings against what they have to go over on this wearer: the neck against the head,
 * the end of a sleeve against the hand, of a leg against the foot, a waist against the hips, and
 * the lower edge of what has a neck against the shoulders. Armholes go over nothing.
 */
final class PassageCheck {
  static final String NECK = "neck";

  private PassageCheck() {}

  static List<BodyPassage> of(
      Pattern pattern,
      List<Opening> openings,
      List<Strip> strips,
      Wearer wearer,
      SewingPlan sewing,
      Function<String, Fabric> fabrics) {
    boolean hasNeck = openings.stream().anyMatch(opening -> opening.name().equals(NECK));
    return openings.stream()
        .flatMap(
            opening ->
                part(opening, hasNeck)
                    .flatMap(
                        part ->
                            girth(part, wearer)
                                .map(
                                    girth ->
                                        sewn(
                                            against(
                                                    part,
                                                    girth,
                                                    opening,
                                                    strips,
                                                    body(pattern, opening, fabrics))
                                                .withPlacket(Plackets.opens(pattern, opening)),
                                            sewing.stretchAt(opening))))
                    .stream())
        .toList();
  }

  private static BodyPassage sewn(BodyPassage passage, OptionalDouble stitches) {
    return stitches.isPresent() ? passage.withStitchesGiving(stitches.getAsDouble()) : passage;
  }

  private static Optional<Length> girth(BodyPart part, Wearer wearer) {
    return wearer.girth(part).or(() -> part == BodyPart.HEAD ? ofAge(wearer) : Optional.empty());
  }

  private static Optional<Length> ofAge(Wearer wearer) {
    return wearer.age().isEmpty() ? Optional.empty() : HeadGirths.forYears(wearer.age().getAsInt());
  }

  /** What the passages say, and whether a head was taken from a table. */
  static List<Finding> findings(List<BodyPassage> passages, Wearer wearer) {
    List<Finding> findings = new ArrayList<>();
    passages.forEach(passage -> findings.addAll(passage.findings()));
    if (wearer.head().isEmpty() && passages.stream().anyMatch(p -> p.part() == BodyPart.HEAD)) {
      ofAge(wearer).ifPresent(girth -> findings.add(fromTable(girth)));
    }
    return findings;
  }

  private static Finding fromTable(Length girth) {
    return Finding.warning(
            "head.not-measured",
            Place.opening(NECK),
            "The head was not measured. This plan takes "
                + Wording.amount(girth)
                + ", the median of children in the United States at the end of this year of age;"
                + " half of them have a larger head.")
        .withRemedy(Remedy.of("Measure the head above the ears, and draft again."));
  }

  private static Optional<BodyPart> part(Opening opening, boolean hasNeck) {
    if (opening.name().equals(NECK)) {
      return Optional.of(BodyPart.HEAD);
    }
    if (isCalled(opening, "armhole")) {
      return Optional.empty();
    }
    if (isCalled(opening, "sleeve", "cuff", "wrist")) {
      return Optional.of(BodyPart.HAND);
    }
    if (isCalled(opening, "waist")) {
      return Optional.of(BodyPart.HIPS);
    }
    if (isCalled(opening, "leg", "ankle")) {
      return Optional.of(BodyPart.FOOT);
    }
    return hasNeck && isCalled(opening, "hem") ? Optional.of(BodyPart.SHOULDERS) : Optional.empty();
  }

  /** Tells whether the opening, one of its edges or one of its pieces is called so. */
  private static boolean isCalled(Opening opening, String... words) {
    return Stream.of(words)
        .anyMatch(
            word ->
                opening.name().toLowerCase(Locale.ROOT).contains(word)
                    || opening.parts().stream()
                        .map(OpeningPart::edge)
                        .map(edge -> (edge.piece() + " " + edge.edge()).toLowerCase(Locale.ROOT))
                        .anyMatch(name -> name.contains(word)));
  }

  private static BodyPassage against(
      BodyPart part, Length girth, Opening opening, List<Strip> strips, Fabric body) {
    return strips.stream()
        .filter(strip -> strip.opening().equals(opening))
        .findFirst()
        .map(strip -> BodyPassage.of(strip, body, part, girth))
        .orElseGet(() -> BodyPassage.of(opening, body, part, girth));
  }

  /** What the garment is cut from at the opening. */
  static Fabric body(Pattern pattern, Opening opening, Function<String, Fabric> fabrics) {
    String piece = opening.parts().get(0).edge().piece();
    return fabrics.apply(pattern.piece(piece).cloth());
  }
}
