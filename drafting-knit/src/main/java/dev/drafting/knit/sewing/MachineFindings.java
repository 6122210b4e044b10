package dev.drafting.knit.sewing;

import dev.drafting.core.assembly.Opening;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.Patch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.knit.hem.TurnedHem;
import dev.drafting.knit.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the machines at hand will not sew well. */
final class MachineFindings {
  /** A row closer to the fold than this slips off it; common practice, no source. */
  private static final Length LEAST_FROM_FOLD = Length.mm(3);

  /** Rows this far apart draw up a ridge between them; common practice, no source. */
  private static final Length TUNNELLING_GAP = Length.mm(4);

  private final Machines machines;

  MachineFindings(Machines machines) {
    this.machines = machines;
  }

  List<Finding> of(Pattern pattern, List<SewnLine> lines, List<Opening> openings) {
    List<Finding> findings = new ArrayList<>();
    lines.stream().filter(line -> !line.givesEnough()).forEach(line -> findings.add(stiff(line)));
    for (Opening opening : openings) {
      rows(opening.finish(), opening.name(), Place.opening(opening.name()))
          .ifPresent(findings::add);
    }
    for (Patch patch : pattern.patches()) {
      for (EdgeRef open : PatchSteps.openEdges(patch)) {
        rows(pattern.edge(open).finish(), open.edge(), Place.edge(open.piece(), open.edge()))
            .ifPresent(findings::add);
      }
    }
    lines.stream()
        .filter(line -> line.stitch().type() == StitchType.TWIN_NEEDLE)
        .filter(line -> line.stitch().width().compareTo(TUNNELLING_GAP) >= 0)
        .findFirst()
        .ifPresent(line -> findings.add(tunnelling(line)));
    return List.copyOf(findings);
  }

  private static Finding stiff(SewnLine line) {
    return Finding.warning(
            "sewing.seam-gives-less",
            line.place(),
            "The cloth gives "
                + Wording.percent(line.stretchOfCloth())
                + " along this line, a seam in "
                + line.stitch().type().plainName()
                + " about "
                + Wording.percent(line.stitch().type().stretch())
                + ": its thread can break in wear.")
        .withRemedy(Remedy.of("Sew it with an overlock, a cover stitch or a wide zigzag."))
        .withRemedy(Remedy.of("Stretch the cloth slightly while sewing, and test a scrap."));
  }

  /** Both rows of two needles must lie on the turned-up cloth. */
  private Optional<Finding> rows(Finish finish, String name, Place place) {
    Stitch stitch = machines.stitchOfHem(name);
    if (!(finish instanceof TurnedHem hem) || !stitch.hasRows()) {
      return Optional.empty();
    }
    Length upper = hem.profile().topstitch().get(0).abs();
    Length lower = upper.minus(stitch.width());
    if (lower.compareTo(LEAST_FROM_FOLD) >= 0) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.warning(
                "sewing.rows-miss-the-hem",
                place,
                "The hem is too narrow for two rows "
                    + Wording.fine(stitch.width())
                    + " apart: the lower one would run "
                    + (lower.isNegative() ? "off" : Wording.fine(lower) + " from")
                    + " the fold.")
            .withRemedy(
                Remedy.of(
                    "Turn up at least "
                        + Wording.fine(LEAST_FROM_FOLD.minus(lower).plus(hem.depth()))
                        + ".")));
  }

  private static Finding tunnelling(SewnLine line) {
    return Finding.note(
            "sewing.tunnelling",
            line.place(),
            "Rows "
                + Wording.fine(line.stitch().width())
                + " apart can draw up a ridge between them. A twin needle takes two top threads and"
                + " one bobbin.")
        .withRemedy(
            Remedy.of(
                "Test on a scrap: a looser bobbin thread, a longer stitch or a strip of wash-away"
                    + " stabiliser under the hem keeps it flat."));
  }
}
