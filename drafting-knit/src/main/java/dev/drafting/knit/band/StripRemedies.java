package dev.drafting.knit.band;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.wording.Wording;
import java.util.Optional;

/** What to do about a strip, first things first. */
final class StripRemedies {
  private static final double NARROWEST_MM = 3;

  /** What is off by less than this share of the loop can be eased in (common practice). */
  private static final double EASED = 0.02;

  private final BandFit fit;

  StripRemedies(BandFit fit) {
    this.fit = fit;
  }

  /** For a loop that is too long or too short: cut it, another width, easing. */
  Finding ofLength(Finding finding) {
    Finding remedied = finding.withRemedy(cutAsWanted());
    Optional<Remedy> width = isTooLong() ? narrower() : wider();
    if (width.isPresent()) {
      remedied = remedied.withRemedy(width.get());
    }
    return canBeEased() ? remedied.withRemedy(easeOnCurves()) : remedied;
  }

  private boolean isTooLong() {
    return fit.loop().compareTo(fit.wanted().longest()) > 0;
  }

  Remedy cutAsWanted() {
    Length shortest = fit.wanted().shortest();
    Length longest = fit.wanted().longest();
    String by = Wording.amount(Length.mm(Math.ceil(fit.margin().negated().toMm() - 1e-6)));
    String to = range(shortest, longest);
    String text =
        !fit.rule().isAlreadyCut()
            ? "Cut it " + to + " long: at least " + by + (isTooLong() ? " shorter." : " longer.")
            : isTooLong()
                ? "Cut at least " + by + " off it, so that it is " + to + " long."
                : "Cut a new one " + to + " long: at least " + by + " longer.";
    return Remedy.of(text).with("strip.loop", middle(shortest, longest));
  }

  private String range(Length shortest, Length longest) {
    return Wording.range(fit.cutLength(shortest), fit.cutLength(longest));
  }

  private static String middle(Length shortest, Length longest) {
    return shortest.plus(longest).dividedBy(2).toString();
  }

  /** With the seam where it is, the halfway line of a narrower strip is as long as the loop. */
  private Optional<Remedy> narrower() {
    double width = Math.floor(shortBy(fit.loop()) * 2 / turning());
    return widthChanges() && width >= NARROWEST_MM && width < widthNow()
        ? Optional.of(showing("Or leave", Length.mm(width)))
        : Optional.empty();
  }

  /** With the seam where it is, the fold of a wider strip is as short as the loop. */
  private Optional<Remedy> wider() {
    Length stretched = fit.loop().times(1 + fit.fabric().tension());
    double width = Math.ceil(shortBy(stretched) / turning());
    return widthChanges() && width > widthNow() && width <= 2 * widthNow()
        ? Optional.of(showing("Or leave", Length.mm(width)))
        : Optional.empty();
  }

  private double widthNow() {
    return fit.finish().showing().toMm();
  }

  private double turning() {
    return fit.turning().toRadians();
  }

  private double shortBy(Length loop) {
    return fit.joinLine().minus(loop).toMm();
  }

  /** Only a strip that lies beyond its seam on a convex edge gets another fold from its width. */
  private boolean widthChanges() {
    return fit.finish().intent() == Intent.LIES_FLAT
        && fit.finish().joinDistance().isNegative()
        && turning() > 0;
  }

  private Remedy showing(String leave, Length width) {
    return Remedy.of(
            leave
                + " the seam where it is and let the "
                + fit.finish().noun()
                + " show "
                + Wording.amount(width)
                + " instead of "
                + Wording.amount(fit.finish().showing())
                + ".")
        .with("band.showing", width.toString());
  }

  private boolean canBeEased() {
    return fit.turning().toDegrees() > 0
        && fit.finish().intent() == Intent.LIES_FLAT
        && fit.rule().marks() == MarkSpacing.EVEN
        && fit.margin().negated().compareTo(fit.loop().times(EASED)) <= 0;
  }

  private Remedy easeOnCurves() {
    return Remedy.of(
            "Or sew this one with marks of its own, stretched more on curves and hardly on"
                + " straights, and press it: so little is eased in there.")
        .with("strip.marks", MarkSpacing.MORE_ON_CURVES.plainName());
  }

  /** For a strip that does not reach its seam: longer, narrower, another cloth. */
  Finding ofStretch(Finding finding) {
    Finding remedied = finding;
    Length reaches = fit.furthestSewn().dividedBy(1 + fit.usableStretch());
    Length longest = fit.wanted().longest();
    if (reaches.compareTo(longest) <= 0) {
      Length shortest = reaches.max(fit.wanted().shortest());
      remedied =
          remedied.withRemedy(
              Remedy.of("Cut it " + range(shortest, longest) + " long.")
                  .with("strip.loop", middle(shortest, longest)));
    } else if (widthChanges()) {
      double width = Math.floor(shortBy(reaches) * 2 / turning());
      if (width >= NARROWEST_MM) {
        remedied = remedied.withRemedy(showing("Leave", Length.mm(width)));
      }
    }
    double needed = Fabric.stretchForUse(fit.furthestSewn().ratioTo(fit.wanted().middle()) - 1);
    return remedied.withRemedy(
        Remedy.of("Take a cloth that stretches " + Wording.percent(needed) + " or more for it.")
            .with("strip.stretch", String.valueOf(needed)));
  }
}
