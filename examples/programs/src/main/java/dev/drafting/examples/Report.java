package dev.drafting.examples;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.finding.Severity;
import dev.drafting.core.measure.Length;
import dev.drafting.core.trace.EdgeReport;
import dev.drafting.core.trace.Lopsidedness;
import dev.drafting.core.trace.TruedPiece;
import dev.drafting.export.source.Garment;
import dev.drafting.knit.Draft;
import dev.drafting.knit.Goods;
import dev.drafting.knit.Measure;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.fabric.Fabric;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/** What came out, in the words of the trade, as lines for the console. */
final class Report {
  private static final Length HARDLY = Length.mm(0.05);
  private static final String CHEST = "chest, all round";

  private final List<String> lines = new ArrayList<>();

  /** All that is to be said of a garment and its makes. */
  static List<String> of(Garment garment) {
    Report report = new Report();
    report.tracing(garment);
    List<Draft> drafts = List.copyOf(garment.makes().values());
    report.measures(Draft.of(garment.pattern()));
    List<Finding> common = common(drafts);
    report.inEveryMake(common);
    garment.makes().forEach((name, draft) -> report.make(name, draft, common));
    report.sideBySide(List.copyOf(garment.makes().keySet()), drafts);
    return report.lines;
  }

  private void title(String title) {
    lines.add("");
    lines.add(title);
  }

  private void tracing(Garment garment) {
    title("The tracing of the " + garment.name() + ", trued");
    garment.findings().forEach(this::finding);
    for (TruedPiece trued : garment.trued()) {
      List<EdgeReport> edges = trued.report().edges();
      int points = edges.stream().mapToInt(EdgeReport::points).sum();
      Length largest = edges.stream().map(EdgeReport::largest).reduce(Length.ZERO, Length::max);
      String said =
          points
              + " points, which lie within "
              + Words.millimetres(largest)
              + " of the outline."
              + lopsided(trued);
      paragraph(trued.piece().name() + ": " + said);
      trued.report().findings().forEach(this::finding);
    }
    garment.together().findings().forEach(this::finding);
  }

  private static String lopsided(TruedPiece trued) {
    Length most =
        trued.report().lopsidedness().stream()
            .map(Lopsidedness::largest)
            .reduce(Length.ZERO, Length::max);
    return most.compareTo(HARDLY) > 0
        ? " Left and right differ by up to " + Words.millimetres(most) + "; the middle is taken."
        : "";
  }

  private void measures(Draft draft) {
    title("Finished measures of the garment as it was traced");
    Columns columns = new Columns(2);
    for (Measure measure : draft.measures()) {
      columns.add(measure.name(), Words.centimetres(measure.length()));
    }
    lines.addAll(columns.lines());
  }

  private void make(String name, Draft draft, List<Finding> common) {
    title(name);
    for (Map.Entry<String, Fabric> cloth : draft.fabrics().entrySet()) {
      Fabric fabric = cloth.getValue();
      paragraph(
          cloth.getKey()
              + " of "
              + fabric.name()
              + ", which stretches "
              + Words.percent(fabric.stretchAcross())
              + " across");
    }
    draft.adaptations().forEach(this::paragraph);
    strips(draft);
    for (Goods goods : draft.goods()) {
      paragraph("to buy: " + goods.what() + ", " + goods.amount());
    }
    List<Finding> own = draft.findings().stream().filter(f -> !common.contains(f)).toList();
    if (own.isEmpty()) {
      paragraph("nothing found that would sew or fit badly");
    }
    own.forEach(this::finding);
  }

  /** A left and a right strip that are alike are said once. */
  private void strips(Draft draft) {
    Map<String, Integer> strips = new LinkedHashMap<>();
    draft.strips().forEach(strip -> strips.merge(said(strip), 1, Integer::sum));
    strips.forEach(
        (said, count) -> paragraph(count == 1 ? said : said + "; " + count + " of them"));
  }

  private static String said(Strip strip) {
    return eitherSide(strip)
        + ": cut "
        + Words.centimetres(strip.cutLength())
        + " by "
        + Words.centimetres(strip.cutWidth())
        + " of "
        + strip.fabric().name()
        + "; "
        + strip.outcome().plainName()
        + ", with "
        + Words.millimetres(strip.margin())
        + " to spare";
  }

  private static String eitherSide(Strip strip) {
    return strip.name().replace(" (left)", "").replace(" (right)", "");
  }

  private void paragraph(String text) {
    lines.addAll(Words.paragraph("  ", text));
  }

  private void finding(Finding finding) {
    paragraph(finding.severity() + ", " + finding.place() + ": " + finding.reason());
    for (Remedy remedy : finding.remedies()) {
      lines.addAll(Words.paragraph("    - ", remedy.text()));
    }
  }

  private void inEveryMake(List<Finding> common) {
    if (!common.isEmpty()) {
      title("In every make");
      common.forEach(this::finding);
    }
  }

  private static List<Finding> common(List<Draft> drafts) {
    List<Finding> common = new ArrayList<>(drafts.get(0).findings());
    drafts.forEach(draft -> common.retainAll(draft.findings()));
    return drafts.size() < 2 ? List.of() : common;
  }

  private void sideBySide(List<String> names, List<Draft> drafts) {
    if (drafts.size() < 2) {
      return;
    }
    title("Side by side");
    Columns columns = new Columns(2);
    columns.add(Stream.concat(Stream.of(""), names.stream()).toList());
    row(columns, CHEST, drafts, Report::chest);
    drafts.get(0).strips().stream()
        .map(Report::eitherSide)
        .distinct()
        .forEach(name -> row(columns, name + ", cut length", drafts, d -> cutLength(d, name)));
    drafts
        .get(0)
        .headOpening()
        .map(head -> "neck stretches to, " + Words.centimetres(head.needed()) + " needed")
        .ifPresent(name -> row(columns, name, drafts, Report::neck));
    for (Severity severity : List.of(Severity.PROBLEM, Severity.WARNING, Severity.NOTE)) {
      row(columns, plural(severity), drafts, draft -> count(draft, severity));
    }
    lines.addAll(columns.lines());
  }

  private static void row(
      Columns columns, String name, List<Draft> drafts, Function<Draft, String> cell) {
    columns.add(Stream.concat(Stream.of(name), drafts.stream().map(cell)).toList());
  }

  private static String chest(Draft draft) {
    return draft.measures().stream()
        .filter(measure -> measure.name().equals(CHEST))
        .findFirst()
        .map(measure -> Words.centimetres(measure.length()))
        .orElse("unknown");
  }

  private static String cutLength(Draft draft, String name) {
    return draft.strips().stream()
        .filter(strip -> eitherSide(strip).equals(name))
        .findFirst()
        .map(strip -> Words.centimetres(strip.cutLength()))
        .orElse("none");
  }

  private static String neck(Draft draft) {
    return draft
        .headOpening()
        .map(head -> Words.centimetres(head.stretchedOpening()))
        .orElse("unknown");
  }

  private static String plural(Severity severity) {
    return switch (severity) {
      case PROBLEM -> "problems";
      case WARNING -> "warnings";
      case NOTE -> "notes";
    };
  }

  private static String count(Draft draft, Severity severity) {
    long count = draft.findings().stream().filter(f -> f.severity() == severity).count();
    return count == 0 ? "none" : String.valueOf(count);
  }
}
