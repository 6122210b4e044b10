package dev.drafting.knit.fabric;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.knit.wording.Wording;
import java.util.ArrayList;
import java.util.List;

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
    if (!fabric.isPrewashed() && (fabric.shrinkageAcross() > 0 || fabric.shrinkageAlong() > 0)) {
      findings.add(shrinks(fabric, place));
    }
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
    String amounts =
        "It shrinks "
            + Wording.percent(fabric.shrinkageAlong())
            + " along and "
            + Wording.percent(fabric.shrinkageAcross())
            + " across in the wash, and the pieces are not drawn bigger for it.";
    boolean much = Math.max(fabric.shrinkageAcross(), fabric.shrinkageAlong()) > MUCH_SHRINKAGE;
    String reason = much ? amounts + " That is too much to leave to chance." : amounts;
    Finding finding = Finding.warning("fabric.shrinks", place, reason);
    return finding.withRemedy(
        Remedy.of("Wash and dry the cloth before cutting, as the garment will be.")
            .with("fabric.prewashed", "true"));
  }
}
