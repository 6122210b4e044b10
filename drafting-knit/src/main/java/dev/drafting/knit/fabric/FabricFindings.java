package dev.drafting.knit.fabric;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.knit.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a fabric says about itself before it is cut. */
final class FabricFindings {
  /** Over this, compensating on paper is unsafe (trade articles: 7 to 8 %). */
  private static final double MUCH_SHRINKAGE = 0.07;

  private FabricFindings() {}

  static List<Finding> of(Fabric fabric) {
    List<Finding> findings = new ArrayList<>();
    Place place = Place.fabric(fabric.name());
    if (fabric.recoveryVerdict() == Recovery.POOR) {
      findings.add(poorRecovery(fabric, place));
    }
    if (!fabric.shrinkageToCome().isNone()) {
      findings.add(shrinks(fabric, place));
    }
    if (fabric.stretchAlong().orElse(0) > fabric.stretchAcross() + fabric.uncertainty()) {
      findings.add(givesMoreAlong(fabric, place));
    }
    unusual(fabric, place).ifPresent(findings::add);
    return List.copyOf(findings);
  }

  private static Finding poorRecovery(Fabric fabric, Place place) {
    String back = Wording.percent(fabric.recovery().orElse(0));
    return Finding.warning(
            "fabric.recovery-poor",
            place,
            "Only " + back + " of the stretch goes back: it bags where it is stretched.")
        .withRemedy(
            Remedy.of("Take a fabric that comes back at least 95 % for bands and close fits."));
  }

  private static Finding shrinks(Fabric fabric, Place place) {
    Shrinkage loss = fabric.shrinkageToCome();
    String amounts = "It shrinks " + loss + " in the wash, and what is cut from it is drawn larger";
    if (Math.max(loss.across(), loss.along()) <= MUCH_SHRINKAGE) {
      return Finding.note("fabric.shrinks", place, amounts + " for it.")
          .withRemedy(
              Remedy.of("Cut it unwashed. If it is washed before, say so and draft again.")
                  .with("fabric.prewashed", "true"));
    }
    return Finding.warning(
            "fabric.shrinks", place, amounts + " for it; that is too much to leave to chance.")
        .withRemedy(
            Remedy.of(
                    "Wash and dry the cloth before cutting, as the garment will be, and draft again"
                        + " for prewashed cloth.")
                .with("fabric.prewashed", "true"));
  }

  private static Finding givesMoreAlong(Fabric fabric, Place place) {
    return Finding.warning(
            "fabric.gives-more-along",
            place,
            "It gives "
                + Wording.percent(fabric.stretchAlong().orElse(0))
                + " along and "
                + Wording.percent(fabric.stretchAcross())
                + " across; most knits give more across, jersey and interlock about twice as much.")
        .withRemedy(
            Remedy.of(
                "Pull it again: across is the way of the rows of stitches. If it is so, lay the"
                    + " pieces with the greatest stretch round the body."));
  }

  private static Optional<Finding> unusual(Fabric fabric, Place place) {
    Structure structure = fabric.structure();
    List<String> unusual = new ArrayList<>();
    if (!structure.typicalStretch().holds(fabric.stretchAcross())) {
      unusual.add(
          "gives "
              + Wording.percent(fabric.stretchAcross())
              + " across, where "
              + structure.typicalStretch()
              + " is usual");
    }
    if (fabric.mass().isPresent() && !structure.typicalMass().holds(fabric.mass().getAsDouble())) {
      unusual.add(
          "weighs "
              + Math.round(fabric.mass().getAsDouble())
              + " g/m2, where "
              + structure.typicalMass()
              + " is usual");
    }
    return unusual.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Finding.note(
                    "fabric.unusual",
                    place,
                    "This "
                        + structure.plainName()
                        + " "
                        + String.join(" and ", unusual)
                        + " (common practice).")
                .withRemedy(Remedy.of("Look at the figure again; if it is right, go on.")));
  }
}
