package dev.drafting.export.pdf;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.Format;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.drawing.Legend;
import dev.drafting.export.drawing.Lettering;
import dev.drafting.export.drawing.PlainName;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A pattern at true size with whole pieces on wide paper, as copy shops print it: on large sheets,
 * or on a roll, whose length is cut to need. Nothing is taped together. The first sheet begins with
 * squares to be measured before anything is cut; the legend stands where there is room.
 *
 * <pre>{@code
 * WidePdf.on(Paper.A0).fileEnding();  // => -wide-a0.pdf
 * WidePdf.onRoll(Length.inches(36));  // => PDF of whole pieces on a roll 914.4 mm wide, margin 10 mm
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class WidePdf implements Format {
  private static final double FOOT = 2.5;
  private static final double CHECK_WIDTH = 215;

  private final String paper;
  private final String ending;
  private final Length width;
  private final Length height;
  private final boolean roll;
  private final Length margin;

  private WidePdf(
      String paper, String ending, Length width, Length height, boolean roll, Length margin) {
    this.paper = Objects.requireNonNull(paper, "paper");
    this.ending = ending;
    this.width = width;
    this.height = height;
    this.roll = roll;
    this.margin = margin;
  }

  /**
   * Sheets that take whole pieces.
   *
   * @param paper for instance {@link Paper#A0}; upright
   * @return the format
   */
  public static WidePdf on(Paper paper) {
    String ending = "-wide-" + PlainName.of(paper.name()) + ".pdf";
    return new WidePdf(paper.name(), ending, paper.width(), paper.height(), false, Length.mm(10));
  }

  /**
   * A roll that is cut off where the pattern ends; after 5 m a second length begins.
   *
   * @param width of the paper, from 270 mm to 5 m; 36 in and 914 mm are usual
   * @return the format
   * @throws DraftingException if the width is out of range
   */
  public static WidePdf onRoll(Length width) {
    if (!(width.toMm() >= 270 && width.toMm() <= 5000)) {
      throw DraftingException.of("the roll does not serve")
          .value(width)
          .accepted("from 270 mm to 5 m wide");
    }
    String ending = "-roll-" + Math.round(width.toMm()) + "mm.pdf";
    Length longest = Length.mm(5000);
    return new WidePdf("a roll " + width + " wide", ending, width, longest, true, Length.mm(10));
  }

  /**
   * The same with another white margin on all sides.
   *
   * @param newMargin from 5 to 50 mm
   * @return the format
   * @throws DraftingException if the margin is out of range
   */
  public WidePdf withMargin(Length newMargin) {
    if (!(newMargin.toMm() >= 5 && newMargin.toMm() <= 50)) {
      throw DraftingException.of("the margin does not serve")
          .value(newMargin)
          .accepted("from 5 to 50 mm");
    }
    return new WidePdf(paper, ending, width, height, roll, newMargin);
  }

  @Override
  public String fileEnding() {
    return ending;
  }

  /**
   * {@inheritDoc}
   *
   * @throws DraftingException if a piece is larger than a sheet within its margins
   */
  @Override
  public void write(Drawing drawing, OutputStream out) throws IOException {
    double inner = width.toMm() - 2 * margin.toMm();
    double room = height.toMm() - 2 * margin.toMm();
    List<Group> others = new ArrayList<>(drawing.groups());
    others.add(Legend.of(drawing));
    List<Shelves.Sheet> sheets = Shelves.of(check(drawing.title()), others, inner, room);
    PdfPages.write(
        drawing.title(),
        Ink.ON_PAPER,
        out,
        pages -> {
          for (int i = 0; i < sheets.size(); i++) {
            String foot = "sheet " + (i + 1) + " of " + sheets.size() + ", " + drawing.title();
            sheet(pages, sheets.get(i), foot);
          }
        });
  }

  private void sheet(PdfPages pages, Shelves.Sheet sheet, String foot) throws IOException {
    double edge = margin.toMm();
    double high = roll ? sheet.height() + 2 * edge : height.toMm();
    Transform move = Transform.translation(new Vector(edge, high - edge));
    Length letters = Length.mm(FOOT);
    String line = Lettering.shortened(foot, letters, width.minus(margin.times(2)));
    Label name = Label.of(line, new Point(edge, (edge - FOOT) / 2), letters);
    pages.page(
        width.toMm(),
        high,
        canvas -> {
          for (Group group : sheet.groups()) {
            canvas.drawLayers(group.map(move).elements());
          }
          canvas.draw(List.of(name));
        });
  }

  /** The squares and what to do with them. */
  private Group check(String title) {
    TestSquare metric = TestSquare.ofCentimetres(10);
    TestSquare inches = TestSquare.ofInches(4);
    List<Element> elements = new ArrayList<>(metric.at(0, 0, 6));
    elements.addAll(inches.at(metric.size() + 10, 0, 6));
    TextColumn words =
        new TextColumn(0, 0, CHECK_WIDTH)
            .text(6, "Measure a square first")
            .line(3.2, title)
            .text(2.5, "Pattern at true size, whole pieces, for " + paper + ".")
            .text(
                2.5,
                "Right: every side is 100 mm (or 4 in), at most 0.5 mm (1/64 in) more or less. If it is"
                    + " off, do not cut: have it printed again at 100 %, with nothing fitted,"
                    + " shrunk or centred.")
            .text(2.5, "Cut the paper along the heaviest lines.");
    Vector above = new Vector(0, inches.size() + 6 - words.bottom());
    words.labels().forEach(label -> elements.add(label.map(Transform.translation(above))));
    return new Group("test squares", elements);
  }

  @Override
  public String toString() {
    return "PDF of whole pieces on " + paper + ", margin " + margin;
  }
}
