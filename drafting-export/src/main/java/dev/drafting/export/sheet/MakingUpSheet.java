package dev.drafting.export.sheet;

import dev.drafting.core.Experimental;
import dev.drafting.core.Stable;
import dev.drafting.export.drawing.DraftDrawing;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.pdf.PagesPdf;
import dev.drafting.export.pdf.Paper;
import dev.drafting.knit.Draft;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;

/**
 * The making-up sheet of a draft: findings first, then finished measures, goods to buy, pieces and
 * cut list, strips, order of work, cautions and tables to chalk the pieces without paper. Lengths
 * are in centimetres with inches beside them, or in one of the two.
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * MakingUpSheet.of(top);  // => making-up sheet of Sleeveless top
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class MakingUpSheet {
  /** What its file name ends in after the name of the garment. */
  public static final String FILE_ENDING = "-making-up.html";

  private final Draft draft;
  private final Drawing drawing;
  private final Tape tape;

  private MakingUpSheet(Draft draft, Drawing drawing, Tape tape) {
    this.draft = Objects.requireNonNull(draft, "draft");
    this.drawing = Objects.requireNonNull(drawing, "drawing");
    this.tape = Objects.requireNonNull(tape, "tape");
  }

  /**
   * The sheet of a draft.
   *
   * @param draft what to make
   * @return the sheet
   */
  public static MakingUpSheet of(Draft draft) {
    return of(draft, DraftDrawing.of(draft));
  }

  /**
   * The sheet of a draft whose pieces have been drawn already.
   *
   * @param draft what to make
   * @param drawing one group a piece
   * @return the sheet
   */
  public static MakingUpSheet of(Draft draft, Drawing drawing) {
    return new MakingUpSheet(draft, drawing, Tape.BOTH);
  }

  /**
   * The same sheet for another tape.
   *
   * @param newTape in whose units the sheet is written
   * @return the sheet
   */
  @Experimental
  public MakingUpSheet withTape(Tape newTape) {
    return new MakingUpSheet(draft, drawing, newTape);
  }

  /**
   * Writes the page in UTF-8. The stream is left open.
   *
   * @param out where the bytes go
   * @throws IOException if the stream fails
   */
  public void write(OutputStream out) throws IOException {
    try {
      var xml =
          XMLOutputFactory.newDefaultFactory()
              .createXMLStreamWriter(out, StandardCharsets.UTF_8.name());
      new SheetContents(draft, drawing, tape).write(new HtmlSheet(new Html(xml)));
      xml.flush();
    } catch (XMLStreamException e) {
      throw new IOException("the making-up sheet cannot be written", e);
    }
  }

  /**
   * The sheet set on pages of paper, to be printed by {@link dev.drafting.export.pdf.PagesPdf}.
   *
   * @param paper what is in the printer, upright
   * @return one group a page
   */
  @Experimental
  public Drawing pages(Paper paper) {
    PageFlow flow = new PageFlow(draft.name() + ": making-up sheet", paper);
    new SheetContents(draft, drawing, tape).write(new PaperSheet(flow));
    return flow.pages();
  }

  /**
   * Writes the sheet as PDF. The stream is left open.
   *
   * @param paper what is in the printer, upright
   * @param out where the bytes go
   * @throws IOException if the stream fails
   */
  @Experimental
  public void writePdf(Paper paper, OutputStream out) throws IOException {
    PagesPdf.on(paper).write(pages(paper), out);
  }

  @Override
  public String toString() {
    return "making-up sheet of " + draft.name() + tape.said();
  }
}
