package dev.drafting.examples;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.band.BandFit;
import dev.drafting.knit.band.Intent;
import dev.drafting.knit.sewing.Caution;
import dev.drafting.knit.sewing.Cautions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What came out for one strip, as lines for the console. */
final class BandReport {
  private BandReport() {}

  static List<String> of(BandFit fit) {
    List<String> lines = new ArrayList<>();
    lines.add(Words.capital(fit.name()) + ": " + fit.finish().describe());
    lines.addAll(measures(fit));
    for (Finding finding : fit.findings()) {
      lines.addAll(Words.paragraph("  ", finding.severity() + ": " + finding.reason()));
      for (Remedy remedy : finding.remedies()) {
        lines.addAll(Words.paragraph("    - ", remedy.text()));
      }
    }
    lines.addAll(
        Words.paragraph(
            "  ",
            "By the lengths of parallel curves and what one recorded garment did. Sew a trial band"
                + " on a scrap before you cut the good cloth."));
    for (Caution caution : Cautions.of(OptionalInt.empty(), Optional.empty(), List.of())) {
      if (caution.topic().equals("Close fit and elastic")) {
        lines.addAll(Words.paragraph("  ", caution.text()));
      }
    }
    return lines;
  }

  private static List<String> measures(BandFit fit) {
    Columns columns = new Columns(2);
    columns.add("edge along the seam of the strip", Words.centimetres(fit.joinLine()));
    columns.add("edge where the garment ends", Words.centimetres(fit.finishedEdge()));
    columns.add("loops that lie flat", range(fit.window().shortest(), fit.window().longest()));
    Intent intent = fit.finish().intent();
    if (intent != Intent.LIES_FLAT) {
      String does = intent == Intent.HUGS ? "hug" : "draw in";
      columns.add("loops that " + does, range(fit.wanted().shortest(), fit.wanted().longest()));
    }
    columns.add("this loop", Words.centimetres(fit.loop()));
    columns.add("which is, of its seam", Words.percent(fit.loop().ratioTo(fit.joinLine())));
    columns.add("it", fit.outcome().plainName());
    columns.add(
        fit.margin().isNegative() ? "wrong by" : "to spare",
        Words.millimetres(round(fit.margin())));
    columns.add("cut long", Words.centimetres(fit.cutLength()));
    columns.add("cut wide", Words.centimetres(fit.finish().cutWidth()));
    columns.add("stretched while sewing", Words.percent(fit.stretchAsked()));
    columns.add("gives in use", Words.percent(fit.usableStretch()));
    columns.add("marks every", Words.centimetres(fit.loop().dividedBy(4)));
    columns.add("stretches the opening to", Words.centimetres(fit.stretchesTo()));
    return columns.lines();
  }

  private static String range(Length shortest, Length longest) {
    return Words.centimetres(shortest) + " to " + Words.centimetres(longest);
  }

  private static Length round(Length margin) {
    return Length.mm(Math.rint(margin.abs().toMm()));
  }
}
