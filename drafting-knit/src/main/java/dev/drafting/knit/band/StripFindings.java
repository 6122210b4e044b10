package dev.drafting.knit.band;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What will go wrong with a strip, in the maker's words. */
final class StripFindings {
  /** Under this turning a straight strip has nearly no window, and drawing in is what it is for. */
  private static final double NEARLY_STRAIGHT_DEGREES = 60;

  private final Strip strip;
  private final Place place;

  private StripFindings(Strip strip) {
    this.strip = strip;
    this.place = Place.opening(strip.opening().name());
  }

  static List<Finding> of(Strip strip) {
    return new StripFindings(strip).find();
  }

  private List<Finding> find() {
    List<Finding> findings = new ArrayList<>();
    switch (strip.outcome()) {
      case LIES_FLAT -> {}
      case GAPES -> findings.add(gapes());
      case PUCKERS -> findings.add(isNearlyStraight() ? drawsIn() : puckers());
      case CANNOT_STRETCH -> findings.add(cannotStretch());
    }
    if (strip.lengths() > 1) {
      findings.add(pieced());
    }
    return List.copyOf(findings);
  }

  private Finding pieced() {
    String reason =
        noun()
            + " is longer than "
            + strip.fabric().name()
            + " is wide: piece it from "
            + strip.lengths()
            + " lengths of "
            + Wording.amount(strip.lengthOfEach())
            + ", sewn with "
            + Wording.fine(strip.joinAllowance())
            + ".";
    return Finding.note("strip.pieced", place, reason)
        .withRemedy(
            Remedy.of("Put the seams where they show least: at a shoulder or under the arm."));
  }

  private boolean isNearlyStraight() {
    return strip.opening().turning().toDegrees() < NEARLY_STRAIGHT_DEGREES;
  }

  private String noun() {
    return "The " + strip.finish().noun();
  }

  private String edge() {
    return strip.opening().name() + " edge";
  }

  private Finding gapes() {
    String reason =
        noun()
            + " is "
            + Wording.amount(strip.margin().negated())
            + " too long for its edge: it will wave and stand away from the "
            + edge()
            + ".";
    return Finding.warning("strip.gapes", place, reason).withRemedy(cutWithinWindow());
  }

  private Finding puckers() {
    String reason =
        noun()
            + " is "
            + Wording.amount(strip.margin().negated())
            + " too short for its edge: the "
            + edge()
            + " will pucker.";
    return Finding.warning("strip.puckers", place, reason).withRemedy(cutWithinWindow());
  }

  private Finding drawsIn() {
    String reason =
        noun()
            + " is "
            + Wording.amount(strip.margin().negated())
            + " shorter than its edge, which is nearly straight: it draws the edge in. A cuff or a"
            + " waist rib is meant to; a flat band is not.";
    return Finding.note("strip.draws-in", place, reason).withRemedy(cutWithinWindow());
  }

  private Remedy cutWithinWindow() {
    return cut(strip.window().shortest(), strip.window().longest());
  }

  private Remedy cut(Length shortest, Length longest) {
    Length from = strip.cutLength(shortest);
    Length to = strip.cutLength(longest);
    return Remedy.of("Cut it " + Wording.range(from, to) + " long.")
        .with("strip.loop", shortest.plus(longest).dividedBy(2).toString());
  }

  private Finding cannotStretch() {
    String reason =
        noun()
            + " must stretch "
            + Wording.percent(strip.stretchAsked())
            + " to reach its seam, and "
            + strip.fabric().name()
            + " gives "
            + Wording.percent(strip.fabric().usableStretch())
            + " in use: it cannot be sewn on evenly.";
    Finding finding = Finding.problem("strip.cannot-stretch", place, reason);
    for (Remedy remedy : remediesForStretch()) {
      finding = finding.withRemedy(remedy);
    }
    return finding;
  }

  private List<Remedy> remediesForStretch() {
    List<Remedy> remedies = new ArrayList<>();
    Length reaches = strip.joinLine().dividedBy(1 + strip.fabric().usableStretch());
    Length longest = strip.window().longest();
    if (reaches.compareTo(longest) <= 0) {
      remedies.add(cut(reaches.max(strip.window().shortest()), longest));
    }
    narrowerThatReaches(reaches).ifPresent(remedies::add);
    double needed = Fabric.stretchForUse(strip.joinLine().ratioTo(strip.window().middle()) - 1);
    remedies.add(
        Remedy.of("Take a cloth that stretches " + Wording.percent(needed) + " or more for it.")
            .with("strip.stretch", String.valueOf(needed)));
    return remedies;
  }

  /** With the seam where it is, a narrower strip has a longer fold and asks for less stretch. */
  private Optional<Remedy> narrowerThatReaches(Length reaches) {
    double turning = strip.opening().turning().toRadians();
    if (turning <= 0 || reaches.compareTo(strip.window().longest()) <= 0) {
      return Optional.empty();
    }
    double width = Math.floor(strip.joinLine().minus(reaches).times(2 / turning).toMm());
    if (width < 3) {
      return Optional.empty();
    }
    Length narrower = Length.mm(width);
    return Optional.of(
        Remedy.of(
                "Leave the seam where it is and let the "
                    + strip.finish().noun()
                    + " show "
                    + Wording.amount(narrower)
                    + " instead of "
                    + Wording.amount(strip.finish().showing())
                    + ".")
            .with("band.showing", narrower.toString()));
  }
}
