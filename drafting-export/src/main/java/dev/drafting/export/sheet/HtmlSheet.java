package dev.drafting.export.sheet;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.Legend;
import dev.drafting.export.drawing.Stroke;
import dev.drafting.export.drawing.StrokeStyle;
import dev.drafting.export.svg.SvgPicture;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import javax.xml.stream.XMLStreamException;

/** A making-up sheet as a page with its style and pictures inside. */
final class HtmlSheet implements SheetWriter<XMLStreamException> {
  private static final String STYLE = "sheet.css";
  private static final Length AROUND_PIECE = Length.mm(6);
  private static final Length AROUND_STEP = Length.mm(12);
  private static final Length AROUND_SAMPLE = Length.mm(2);

  private final Html html;
  private boolean inSection;

  HtmlSheet(Html html) {
    this.html = html;
  }

  @Override
  public void title(String name, List<String> leads) throws XMLStreamException {
    html.xml().writeDTD("<!DOCTYPE html>");
    html.open("html", "lang", "en-GB");
    html.open("head");
    html.empty("meta", "charset", "utf-8");
    html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    html.text("title", name + ": making-up sheet");
    html.text("style", style());
    html.close();
    html.open("body");
    html.open("main");
    html.open("header");
    html.text("h1", name);
    for (String lead : leads) {
      html.text("p", lead, "class", "lead");
    }
    html.close();
  }

  private static String style() {
    try (InputStream in = HtmlSheet.class.getResourceAsStream(STYLE)) {
      return new String(Objects.requireNonNull(in, STYLE).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void section(String heading) throws XMLStreamException {
    if (inSection) {
      html.close();
    }
    html.open("section");
    html.text("h2", heading);
    inSection = true;
  }

  @Override
  public void heading(String text) throws XMLStreamException {
    html.text("h3", text);
  }

  @Override
  public void paragraph(String text) throws XMLStreamException {
    html.text("p", text);
  }

  @Override
  public void bullets(List<String> texts) throws XMLStreamException {
    html.open("ul");
    for (String text : texts) {
      html.text("li", text);
    }
    html.close();
  }

  @Override
  public void terms(List<String> pairs) throws XMLStreamException {
    html.terms(pairs);
  }

  @Override
  public void table(String caption, List<String> heads, List<List<String>> rows)
      throws XMLStreamException {
    html.table(caption, heads, rows);
  }

  @Override
  public void asideTable(String summary, List<String> heads, List<List<String>> rows)
      throws XMLStreamException {
    html.open("details");
    html.text("summary", summary);
    html.table(summary, heads, rows);
    html.close();
  }

  @Override
  public void finding(boolean note, String kind, String words, List<String> remedies)
      throws XMLStreamException {
    html.open("div", "class", note ? "finding note" : "finding");
    html.open("p");
    html.text("span", kind, "class", "kind");
    html.write(", " + words);
    html.close();
    if (!remedies.isEmpty()) {
      html.text("p", remedies.size() == 1 ? "What to do:" : "What to do, one of:");
      bullets(remedies);
    }
    html.close();
  }

  @Override
  public void pieces(List<Group> pieces, List<String> sizes) throws XMLStreamException {
    html.open("div", "class", "pieces");
    for (int i = 0; i < pieces.size(); i++) {
      Group piece = pieces.get(i);
      html.open("figure");
      Drawing lines = Drawing.of("Small picture of " + piece.name(), piece);
      SvgPicture.of(lines).write(html.xml(), AROUND_PIECE, false);
      html.open("figcaption");
      html.write(piece.name());
      html.text("span", sizes.get(i));
      html.close();
      html.close();
    }
    html.close();
  }

  @Override
  public void lines(List<StrokeStyle> styles) throws XMLStreamException {
    html.open("ul", "class", "lines", "aria-label", "What the lines mean");
    for (StrokeStyle style : styles) {
      html.open("li");
      List<Stroke> line = Legend.sample(style, new Point(0, 0));
      Drawing picture = Drawing.of(style.toString(), new Group("sample", List.copyOf(line)));
      SvgPicture.of(picture).write(html.xml(), AROUND_SAMPLE, false);
      html.text("span", style.meaning());
      html.close();
    }
    html.close();
  }

  @Override
  public void beginSteps() throws XMLStreamException {
    html.open("ol", "class", "steps");
  }

  @Override
  public void step(String title, String text, Drawing picture, String caution)
      throws XMLStreamException {
    html.open("li");
    html.open("p");
    html.text("strong", title);
    html.write(". " + text);
    html.close();
    html.open("div", "class", "step");
    SvgPicture.of(picture).write(html.xml(), AROUND_STEP, false);
    html.close();
    if (!caution.isBlank()) {
      html.text("p", caution, "class", "caution");
    }
    html.close();
  }

  @Override
  public void endSteps() throws XMLStreamException {
    html.close();
  }

  @Override
  public void end() throws XMLStreamException {
    html.close();
    html.close();
    html.close();
    html.close();
  }
}
