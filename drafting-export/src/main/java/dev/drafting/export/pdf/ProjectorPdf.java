package dev.drafting.export.pdf;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.Format;
import dev.drafting.export.drawing.Group;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * A pattern on one page at full size, to be thrown on the cloth by a projector: lines three times
 * as heavy as on paper, black on a light ground unless said otherwise, and two large squares to set
 * the projector by.
 *
 * <pre>{@code
 * ProjectorPdf.of().onDark().mirrored();  // => PDF for a projector, lines 3 times as heavy, on a dark ground, mirrored
 * ProjectorPdf.of().fileEnding();  // => -projector.pdf
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class ProjectorPdf implements Format {
  /** How high capitals are in drawings made for it, so that they are read on cloth. */
  public static final Length LETTERS = Length.mm(7);

  private static final double AROUND = 40;
  private static final double HEAD = 16;
  private static final double WORDS = 8;

  private final Ink ink;
  private final boolean dark;
  private final boolean mirrored;

  private ProjectorPdf(double heavier, boolean dark, boolean mirrored) {
    this.ink = (dark ? Ink.ON_DARK : Ink.ON_PAPER).heavier(heavier);
    this.dark = dark;
    this.mirrored = mirrored;
  }

  /**
   * One page on a light ground, not mirrored.
   *
   * @return the format
   */
  public static ProjectorPdf of() {
    return new ProjectorPdf(3, false, false);
  }

  /**
   * The same with other lines.
   *
   * @param times how many times as heavy as on paper, from 1 to 10
   * @return the format
   * @throws DraftingException if the number is out of range
   */
  public ProjectorPdf withHeavierLines(double times) {
    if (!(times >= 1 && times <= 10)) {
      throw DraftingException.of("lines of this weight do not serve")
          .value(times)
          .accepted("from 1 to 10 times");
    }
    return new ProjectorPdf(times, dark, mirrored);
  }

  /**
   * The same with light lines on a dark ground, for light cloth in a dark room.
   *
   * @return the format
   */
  public ProjectorPdf onDark() {
    return new ProjectorPdf(ink.heavier(), true, mirrored);
  }

  /**
   * The same the other way round, letters too, for projectors that shine over a mirror or from
   * below the table: on the cloth it reads right.
   *
   * @return the format
   */
  public ProjectorPdf mirrored() {
    return new ProjectorPdf(ink.heavier(), dark, true);
  }

  @Override
  public String fileEnding() {
    return "-projector" + (dark ? "-dark" : "") + (mirrored ? "-mirrored" : "") + ".pdf";
  }

  /**
   * {@inheritDoc}
   *
   * @throws DraftingException if the page would be longer than 5 m
   */
  @Override
  public void write(Drawing drawing, OutputStream out) throws IOException {
    List<Element> elements = new ArrayList<>();
    drawing.groups().forEach(group -> elements.addAll(group.elements()));
    elements.addAll(check(drawing.title(), drawing.bounds()));
    Box box = new Group(drawing.title(), elements).bounds().widened(Length.mm(AROUND));
    double width = box.width().toMm();
    double height = box.height().toMm();
    if (Math.max(width, height) > PdfPages.LONGEST_MM) {
      throw DraftingException.of("the pieces do not go on one page")
          .at(drawing.title())
          .value(Math.round(width) + " x " + Math.round(height) + " mm")
          .accepted("up to " + Math.round(PdfPages.LONGEST_MM) + " mm; fewer pieces at a time");
    }
    Transform move = Transform.translation(new Vector(-box.minX(), -box.minY()));
    List<Element> onPage = elements.stream().map(element -> element.map(move)).toList();
    PdfPages.write(
        drawing.title(),
        ink,
        out,
        pages ->
            pages.page(
                width,
                height,
                canvas -> {
                  if (mirrored) {
                    canvas.mirror(width);
                  }
                  canvas.drawLayers(onPage);
                }));
  }

  /** Squares left of the pieces, and what to do with them. */
  private static List<Element> check(String title, Box pieces) {
    TestSquare metric = TestSquare.ofCentimetres(30);
    TestSquare inches = TestSquare.ofInches(12);
    double left = pieces.minX() - AROUND - inches.size();
    double bottom = pieces.minY();
    List<Element> check = new ArrayList<>(inches.at(left, bottom, HEAD));
    check.addAll(metric.at(left, bottom + inches.size() + AROUND, HEAD));
    TextColumn words =
        new TextColumn(left, 0, inches.size())
            .line(HEAD, title)
            .text(
                WORDS,
                "Lay a tape along all sides of a square on the table. Move the projector, or set"
                    + " the zoom, until they measure 300 mm (or 12 in), within 1 mm.");
    double top = bottom + inches.size() + metric.size() + 1.5 * AROUND - words.bottom();
    Transform up = Transform.translation(new Vector(0, top));
    words.labels().forEach(label -> check.add(label.map(up)));
    return check;
  }

  @Override
  public String toString() {
    return "PDF for a projector, lines "
        + BigDecimal.valueOf(ink.heavier()).stripTrailingZeros().toPlainString()
        + " times as heavy"
        + (dark ? ", on a dark ground" : "")
        + (mirrored ? ", mirrored" : "");
  }
}
