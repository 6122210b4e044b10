package dev.drafting.export.pdf;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Box;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Format;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.PlainName;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Objects;

/**
 * Drawings whose groups are pages: each is printed on a sheet of its own, as it lies, its origin at
 * the lower left corner of the paper. For what is made to fit a page, such as a gauge.
 *
 * <pre>{@code
 * PagesPdf.on(Paper.A4);  // => PDF of single pages on A4
 * PagesPdf.on(Paper.A4).fileEnding();  // => -pages-a4.pdf
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class PagesPdf implements Format {
  private final Paper paper;

  private PagesPdf(Paper paper) {
    this.paper = Objects.requireNonNull(paper, "paper");
  }

  /**
   * Pages on one kind of paper.
   *
   * @param paper what is in the printer, upright
   * @return the format
   */
  public static PagesPdf on(Paper paper) {
    return new PagesPdf(paper);
  }

  @Override
  public String fileEnding() {
    return "-pages-" + PlainName.of(paper.name()) + ".pdf";
  }

  /**
   * {@inheritDoc}
   *
   * @throws DraftingException if a group reaches beyond the paper
   */
  @Override
  public void write(Drawing drawing, OutputStream out) throws IOException {
    double width = paper.width().toMm();
    double height = paper.height().toMm();
    Box page = new Box(0, 0, width, height);
    for (Group group : drawing.groups()) {
      if (!page.union(group.bounds()).equals(page)) {
        throw DraftingException.of("this does not go on the page")
            .at(group.name())
            .value(group.bounds())
            .accepted("within " + page + ", " + paper.name());
      }
    }
    PdfPages.write(
        drawing.title(),
        Ink.ON_PAPER,
        out,
        pages -> {
          for (Group group : drawing.groups()) {
            pages.page(width, height, canvas -> canvas.draw(group.elements()));
          }
        });
  }

  @Override
  public String toString() {
    return "PDF of single pages on " + paper.name();
  }
}
