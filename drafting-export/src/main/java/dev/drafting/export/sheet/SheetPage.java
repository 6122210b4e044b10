package dev.drafting.export.sheet;

import dev.drafting.core.cut.CutItem;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.finding.Severity;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.knit.Draft;
import dev.drafting.knit.Goods;
import dev.drafting.knit.Measure;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.sewing.Caution;
import dev.drafting.knit.sewing.SewnLine;
import dev.drafting.knit.sewing.Step;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import javax.xml.stream.XMLStreamException;

/** One making-up sheet being written, section by section. */
final class SheetPage {
  private static final String STYLE = "sheet.css";

  private final Draft draft;
  private final Html html;
  private final SheetPictures pictures;

  SheetPage(Draft draft, Drawing drawing, Html html) {
    this.draft = draft;
    this.html = html;
    this.pictures = new SheetPictures(drawing, html);
  }

  void write() throws XMLStreamException, IOException {
    html.xml().writeDTD("<!DOCTYPE html>");
    html.open("html", "lang", "en-GB");
    head();
    html.open("body");
    html.open("main");
    title();
    findings();
    adaptations();
    measures();
    goods();
    pieces();
    strips();
    stitches();
    orderOfWork();
    cautions();
    html.close();
    html.close();
    html.close();
  }

  private void head() throws XMLStreamException, IOException {
    html.open("head");
    html.empty("meta", "charset", "utf-8");
    html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    html.text("title", draft.name() + ": making-up sheet");
    html.text("style", style());
    html.close();
  }

  private static String style() throws IOException {
    try (InputStream in = SheetPage.class.getResourceAsStream(STYLE)) {
      return new String(Objects.requireNonNull(in, STYLE).readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private void title() throws XMLStreamException {
    html.open("header");
    html.text("h1", draft.name());
    String fabrics =
        draft.fabrics().entrySet().stream()
            .map(e -> e.getKey() + " in " + e.getValue().name())
            .collect(Collectors.joining("; "));
    String version = draft.pattern().version();
    html.text(
        "p",
        "Making-up sheet" + (version.isBlank() ? "" : ", version " + version),
        "class",
        "lead");
    if (!fabrics.isEmpty()) {
      html.text("p", "Fabrics: " + fabrics, "class", "lead");
    }
    html.close();
  }

  private void section(String heading) throws XMLStreamException {
    html.open("section");
    html.text("h2", heading);
  }

  private void findings() throws XMLStreamException {
    List<Finding> findings = new ArrayList<>(draft.findings());
    findings.sort(Comparator.comparing(Finding::severity).reversed());
    section("Look at this first");
    if (findings.isEmpty()) {
      html.text("p", "Nothing was found that would not sew, lie flat or go on.");
    }
    for (Finding finding : findings) {
      finding(finding);
    }
    html.close();
  }

  private void finding(Finding finding) throws XMLStreamException {
    boolean note = finding.severity() == Severity.NOTE;
    html.open("div", "class", note ? "finding note" : "finding");
    html.open("p");
    html.text("span", sentence(finding.severity().name()), "class", "kind");
    html.write(", " + finding.place() + ": " + finding.reason());
    html.close();
    if (!finding.remedies().isEmpty()) {
      html.text("p", finding.remedies().size() == 1 ? "What to do:" : "What to do, one of:");
      html.open("ul");
      for (Remedy remedy : finding.remedies()) {
        html.text("li", remedy.text());
      }
      html.close();
    }
    html.close();
  }

  private static String sentence(String word) {
    return word.substring(0, 1).toUpperCase(Locale.ROOT)
        + word.substring(1).toLowerCase(Locale.ROOT);
  }

  private void adaptations() throws XMLStreamException {
    List<String> said = draft.adaptations();
    if (said.isEmpty()) {
      return;
    }
    section("Changed for these fabrics");
    html.open("ul");
    for (String one : said) {
      html.text("li", one);
    }
    html.close();
    html.close();
  }

  private void measures() throws XMLStreamException {
    section("Finished measures");
    html.text("p", "Of the garment lying flat and at rest. Check them against the one that fits.");
    List<List<String>> rows = new ArrayList<>();
    for (Measure measure : draft.measures()) {
      rows.add(List.of(measure.name(), Tape.cm(measure.length()), Tape.inches(measure.length())));
    }
    html.table("Finished measures", List.of("Measure", "cm", "in"), rows);
    html.close();
  }

  private void goods() throws XMLStreamException {
    section("To buy");
    List<List<String>> rows = new ArrayList<>();
    for (Goods goods : draft.goods()) {
      rows.add(List.of(goods.what(), goods.amount()));
    }
    html.table("To buy", List.of("What", "How much"), rows);
    html.close();
  }

  private void pieces() throws XMLStreamException {
    section("To cut");
    pictures.pieces();
    pictures.lines();
    List<List<String>> rows = new ArrayList<>();
    for (CutItem item : draft.cutList()) {
      rows.add(
          List.of(
              item.name(), Integer.toString(item.count()), item.cloth(), item.size(), item.how()));
    }
    html.table("Cut list", List.of("Piece", "How many", "Cloth", "Size", "How"), rows);
    html.close();
  }

  private void strips() throws XMLStreamException {
    List<Strip> strips = draft.strips();
    if (strips.isEmpty()) {
      return;
    }
    section("Strips");
    for (Strip strip : strips) {
      new StripCard(strip, html).write();
    }
    html.close();
  }

  private void stitches() throws XMLStreamException {
    section("Seams and stitches");
    html.text(
        "p",
        "Stitch numbers are those of ISO 4915, classes of seams those of ISO 4916. Try every one on"
            + " a scrap; if an overlocked edge waves, raise the differential feed (1.3 to 2).");
    List<List<String>> rows = new ArrayList<>();
    for (SewnLine line : draft.sewing().lines()) {
      rows.add(
          List.of(
              line.name(),
              line.stitch().toString(),
              line.seamClass().toString(),
              (line.times() > 1 ? line.times() + " of " : "") + Tape.both(line.length())));
    }
    html.table("Seams and stitches", List.of("Line", "Stitch", "Seam", "Length"), rows);
    html.close();
  }

  private void orderOfWork() throws XMLStreamException {
    section("Order of work");
    html.open("ol", "class", "steps");
    for (Step step : draft.orderOfWork()) {
      html.open("li");
      html.open("p");
      html.text("strong", step.title());
      html.write(". " + step.text());
      html.close();
      pictures.step(draft, step);
      if (!step.caution().isBlank()) {
        html.text("p", step.caution(), "class", "caution");
      }
      html.close();
    }
    html.close();
    html.close();
  }

  private void cautions() throws XMLStreamException {
    section("Cautions");
    List<String> pairs = new ArrayList<>();
    for (Caution caution : draft.cautions()) {
      pairs.add(caution.topic());
      pairs.add(caution.text());
    }
    html.terms(pairs);
    html.close();
  }
}
