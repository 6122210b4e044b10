package dev.drafting.knit.fabric;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.knit.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/** What is to be known about a change of fabric before anything is cut. */
final class ChangeFindings {
  private final FabricChange change;
  private final Place place;
  private final List<Finding> findings = new ArrayList<>();

  private ChangeFindings(FabricChange change) {
    this.change = change;
    this.place = Place.fabric(change.candidate().name());
  }

  static List<Finding> of(FabricChange change) {
    ChangeFindings found = new ChangeFindings(change);
    found.refused();
    found.unknown();
    found.capped();
    found.shortens();
    found.compresses();
    return List.copyOf(found.findings);
  }

  private void refused() {
    if (change.comparison().verdict() == FabricComparison.Verdict.REFUSE) {
      findings.add(
          Finding.warning(
                  "fabric.refused",
                  place,
                  "Set against "
                      + change.original().name()
                      + ", which the original is made of, it "
                      + String.join("; it ", change.comparison().reasons())
                      + ".")
              .withRemedy(Remedy.of("Take a fabric nearer to the original's.")));
    }
  }

  private void unknown() {
    if (change.before().isPresent() || isSameStretch()) {
      return;
    }
    String cannot =
        "It gives "
            + Wording.percent(change.candidate().stretchAcross())
            + " across and the original's fabric "
            + Wording.percent(change.original().stretchAcross())
            + ". How much of that is used in wear cannot be known from the garment alone, so the"
            + " pattern is left as wide as it is.";
    String between =
        change.bounds().map(bounds -> " To fit alike it would be " + bounds + " round.").orElse("");
    findings.add(
        Finding.warning("change.girth-unknown", place, cannot + between)
            .withRemedy(Remedy.of("Measure the wearer's chest, and draft again.")));
  }

  private boolean isSameStretch() {
    return change.original().stretchAcross() == change.candidate().stretchAcross();
  }

  private void capped() {
    change
        .before()
        .filter(ease -> WornStretch.isCapped(ease, change.original(), change.candidate()))
        .ifPresent(
            ease ->
                findings.add(
                    Finding.note(
                            "change.capped",
                            place,
                            "To fit as closely it would be stretched "
                                + Wording.percent(
                                    WornStretch.wanted(ease, change.original(), change.candidate()))
                                + " in wear; "
                                + recovery()
                                + " it is drawn for "
                                + Wording.percent(WornStretch.most(change.candidate()))
                                + " and will fit less closely.")
                        .withRemedy(Remedy.of("Take a fabric that comes back at least 95 %."))));
  }

  private String recovery() {
    return switch (change.candidate().recoveryVerdict()) {
      case GOOD -> "as more than four fifths of the stretch is never used,";
      case FAIR -> "as it comes back only fairly,";
      case POOR -> "as it comes back poorly,";
      case UNKNOWN -> "as nobody has tried how it comes back,";
    };
  }

  private void shortens() {
    if (change.before().isEmpty() || change.after().isEmpty()) {
      return;
    }
    double was = change.before().get().extension();
    double is = change.after().get().extension();
    if (is > was + 0.005) {
      findings.add(
          Finding.note(
                  "change.shortens",
                  place,
                  "Worn, it is stretched "
                      + Wording.percent(is)
                      + " across, where the original is stretched "
                      + Wording.percent(was)
                      + ": what is stretched across draws up and becomes shorter.")
              .withRemedy(
                  Remedy.of(
                      "Leave some length over, try it on before the hem is turned, and level it then.")));
    }
  }

  private void compresses() {
    change.after().map(ease -> ease.compression(place, "body")).ifPresent(findings::addAll);
  }
}
