package dev.drafting.export.pdf;

import dev.drafting.core.Experimental;
import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.Format;
import dev.drafting.export.drawing.Legend;
import dev.drafting.export.drawing.PlainName;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * A pattern at true size on sheets that a home printer takes. Sheet 1 proves the scale, sheet 2
 * shows how the sheets go together, every piece has sheets of its own, on paper turned as needs
 * fewest; sheets with nothing on them are left out. Margin and overlap are 10 mm unless said
 * otherwise.
 *
 * <pre>{@code
 * TiledPdf.on(Paper.A4);  // => PDF on A4, margin 10 mm, overlap 10 mm
 * TiledPdf.on(Paper.LETTER).withOverlap(Length.mm(15)).fileEnding();  // => -letter.pdf
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class TiledPdf implements Format {
  private final Paper paper;
  private final Length margin;
  private final Length overlap;

  private TiledPdf(Paper paper, Length margin, Length overlap) {
    this.paper = Objects.requireNonNull(paper, "paper");
    this.margin = margin;
    this.overlap = overlap;
  }

  /**
   * Sheets of one kind of paper.
   *
   * @param paper what is in the printer
   * @return the format
   */
  public static TiledPdf on(Paper paper) {
    return new TiledPdf(paper, Length.mm(10), Length.mm(10));
  }

  /**
   * The same with another white margin on all sides of a sheet.
   *
   * @param newMargin from 5 to 30 mm; most printers cannot print closer to the edge than 5 mm
   * @return the format
   * @throws DraftingException if the margin is out of range
   */
  public TiledPdf withMargin(Length newMargin) {
    return new TiledPdf(paper, checked("margin", newMargin, 5), overlap);
  }

  /**
   * The same with another strip that neighbouring sheets share.
   *
   * @param newOverlap from 8 to 30 mm
   * @return the format
   * @throws DraftingException if the overlap is out of range
   */
  public TiledPdf withOverlap(Length newOverlap) {
    return new TiledPdf(paper, margin, checked("overlap", newOverlap, 8));
  }

  /**
   * The same with sheets that are laid edge to edge, where overlaps would be too thick: the margins
   * are cut off on both sides of a joint.
   *
   * @return the format
   */
  @Experimental
  public TiledPdf withButtJoints() {
    return new TiledPdf(paper, margin, Length.ZERO);
  }

  private static Length checked(String what, Length length, int least) {
    if (!(length.toMm() >= least && length.toMm() <= 30)) {
      throw DraftingException.of("the " + what + " of the sheets does not serve")
          .value(length)
          .accepted("from " + least + " to 30 mm");
    }
    return length;
  }

  @Override
  public String fileEnding() {
    return "-" + PlainName.of(paper.name()) + ".pdf";
  }

  @Override
  public void write(Drawing drawing, OutputStream out) throws IOException {
    PdfPages.write(drawing.title(), Ink.ON_PAPER, out, pages -> new Printing(pages).print(drawing));
  }

  /** One run of printing. */
  private final class Printing {
    private final PdfPages pages;

    Printing(PdfPages pages) {
      this.pages = pages;
    }

    void print(Drawing drawing) throws IOException {
      List<PieceSheets> pieces =
          drawing.groups().stream()
              .map(g -> PieceSheets.of(g, paper, margin.toMm(), overlap.toMm()))
              .toList();
      PlanPages plan = new PlanPages(paper, Legend.of(drawing), pieces);
      List<Integer> firstSheets = new ArrayList<>();
      int next = 2 + plan.count();
      for (PieceSheets piece : pieces) {
        firstSheets.add(next);
        next += piece.cells().size();
      }
      int total = next - 1;
      List<String> contents = contents(pieces, firstSheets, plan.count());
      upright(ScalePage.of(drawing.title(), paper, contents));
      for (List<Element> elements : plan.pages(firstSheets)) {
        upright(elements);
      }
      for (int i = 0; i < pieces.size(); i++) {
        piece(drawing.title(), pieces.get(i), firstSheets.get(i), total);
      }
    }

    private List<String> contents(
        List<PieceSheets> pieces, List<Integer> firstSheets, int planPages) {
      List<String> lines = new ArrayList<>();
      lines.add(range(1, 1) + ": the test squares");
      lines.add(range(2, planPages) + ": how the sheets go together");
      IntStream.range(0, pieces.size())
          .limit(8)
          .mapToObj(
              i ->
                  range(firstSheets.get(i), pieces.get(i).cells().size())
                      + ": "
                      + pieces.get(i).piece().name())
          .forEach(lines::add);
      if (pieces.size() > 8) {
        lines.add("and " + (pieces.size() - 8) + " more pieces: see sheet 2");
      }
      return lines;
    }

    private void piece(String title, PieceSheets sheets, int first, int total) throws IOException {
      JoinMarks marks = new JoinMarks(sheets);
      int number = first;
      for (Cell cell : sheets.cells()) {
        List<String> words =
            List.of("sheet " + number + " of " + total, title, TilePage.trimWords(sheets, cell));
        TilePage page = TilePage.of(sheets, cell, marks, margin.toMm(), words);
        Box window = sheets.tiling().window(cell);
        Point corner = new Point(margin.toMm(), margin.toMm());
        double width = (sheets.across() ? paper.height() : paper.width()).toMm();
        double height = (sheets.across() ? paper.width() : paper.height()).toMm();
        pages.page(
            width,
            height,
            canvas -> {
              canvas.draw(page.label());
              canvas.drawWindow(sheets.on(cell), window, corner);
              canvas.draw(page.furniture());
            });
        number++;
      }
    }

    private void upright(List<Element> elements) throws IOException {
      pages.page(paper.width().toMm(), paper.height().toMm(), canvas -> canvas.draw(elements));
    }
  }

  private static String range(int first, int count) {
    return count == 1 ? "Sheet " + first : "Sheets " + first + " to " + (first + count - 1);
  }

  @Override
  public String toString() {
    String joints = overlap.isZero() ? "edge to edge" : "overlap " + overlap;
    return "PDF on " + paper.name() + ", margin " + margin + ", " + joints;
  }
}
