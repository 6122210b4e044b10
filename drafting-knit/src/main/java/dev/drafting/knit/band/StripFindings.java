package dev.drafting.knit.band;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.knit.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/** What will go wrong with a strip, in the maker's words. */
final class StripFindings {
  /** Under this turning a straight strip has nearly no window, and drawing in is what it is for. */
  private static final double NEARLY_STRAIGHT_DEGREES = 60;

  private final BandFit fit;
  private final Place place;
  private final StripRemedies remedies;

  private StripFindings(BandFit fit) {
    this.fit = fit;
    this.place = Place.opening(fit.edgeName());
    this.remedies = new StripRemedies(fit);
  }

  static List<Finding> of(BandFit fit) {
    return new StripFindings(fit).find();
  }

  private List<Finding> find() {
    List<Finding> findings = new ArrayList<>();
    if (!fit.isAsMeant()) {
      findings.add(
          switch (fit.outcome()) {
            case GAPES -> gapes();
            case LIES_FLAT, HUGS, DRAWS_IN -> tooLoose();
            case PUCKERS -> isLeftOpen() ? drawsIn() : puckers();
            case CANNOT_STRETCH -> cannotStretch();
          });
    }
    if (fit.lengths() > 1) {
      findings.add(pieced());
    }
    return List.copyOf(findings);
  }

  private Finding pieced() {
    String reason =
        noun()
            + " is longer than "
            + fit.fabric().name()
            + " is wide: piece it from "
            + fit.lengths()
            + " lengths of "
            + Wording.amount(fit.lengthOfEach())
            + ", sewn with "
            + Wording.fine(fit.rule().joinAllowance())
            + ".";
    return Finding.note("strip.pieced", place, reason)
        .withRemedy(
            Remedy.of("Put the seams where they show least: at a shoulder or under the arm."));
  }

  /** A band on a straight edge that nobody has said the intent of. */
  private boolean isLeftOpen() {
    return fit.finish().intent() == Intent.LIES_FLAT
        && fit.turning().toDegrees() < NEARLY_STRAIGHT_DEGREES;
  }

  private String noun() {
    return "The " + fit.finish().noun();
  }

  private String edge() {
    return fit.edgeName() + " edge";
  }

  private String off() {
    return Wording.amount(fit.margin().negated());
  }

  private Finding gapes() {
    String reason =
        noun()
            + " is "
            + off()
            + " too long for its edge: it will wave and stand away from the "
            + edge()
            + ".";
    return remedies.ofLength(Finding.warning("strip.gapes", place, reason));
  }

  private Finding puckers() {
    String reason =
        noun() + " is " + off() + " too short for its edge: the " + edge() + " will pucker.";
    return remedies.ofLength(Finding.warning("strip.puckers", place, reason));
  }

  private Finding tooLoose() {
    String meant = fit.finish().intent() == Intent.HUGS ? "hug" : "draw in";
    String does = fit.outcome() == Outcome.HUGS ? "hold the edge a little" : "lie flat";
    String reason =
        noun() + " is " + off() + " too long to " + meant + ": it will only " + does + ".";
    return Finding.note("strip.too-loose", place, reason).withRemedy(remedies.cutAsWanted());
  }

  private Finding drawsIn() {
    String reason =
        noun()
            + " is "
            + off()
            + " shorter than its edge, which is nearly straight: it draws the edge in. A cuff or a"
            + " waist rib is meant to; a flat band is not.";
    return Finding.note("strip.draws-in", place, reason).withRemedy(remedies.cutAsWanted());
  }

  private Finding cannotStretch() {
    String reason =
        noun()
            + " must stretch "
            + Wording.percent(fit.stretchAsked())
            + " to reach its seam, and "
            + fit.fabric().name()
            + " gives "
            + Wording.percent(fit.usableStretch())
            + " in use: it cannot be sewn on evenly.";
    return remedies.ofStretch(Finding.problem("strip.cannot-stretch", place, reason));
  }
}
