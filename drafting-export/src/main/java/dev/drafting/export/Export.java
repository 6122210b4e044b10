package dev.drafting.export;

import dev.drafting.core.Experimental;
import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.export.csv.ChalkingFile;
import dev.drafting.export.csv.CutListFile;
import dev.drafting.export.csv.MeasuresFile;
import dev.drafting.export.csv.StripsFile;
import dev.drafting.export.drawing.DraftDrawing;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Format;
import dev.drafting.export.drawing.GaugeDrawing;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.PlainName;
import dev.drafting.export.drawing.TransferDrawing;
import dev.drafting.export.dxf.DxfFormat;
import dev.drafting.export.dxf.PieceFile;
import dev.drafting.export.folder.FileSet;
import dev.drafting.export.hpgl.HpglFormat;
import dev.drafting.export.pdf.PagesPdf;
import dev.drafting.export.pdf.Paper;
import dev.drafting.export.pdf.ProjectorPdf;
import dev.drafting.export.pdf.TiledPdf;
import dev.drafting.export.pdf.WidePdf;
import dev.drafting.export.png.PngFormat;
import dev.drafting.export.sheet.MakingUpSheet;
import dev.drafting.export.sheet.Tape;
import dev.drafting.export.store.StoredDraft;
import dev.drafting.export.svg.SvgFormat;
import dev.drafting.knit.Draft;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.ClosedByInterruptException;
import java.nio.channels.FileLockInterruptionException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Writes a draft to files. Say which, then say where:
 *
 * <pre>{@code
 * Piece patch = Piece.of("patch", List.of(
 *     Edge.of("below", Curve.line(new Point(0, 0), new Point(90, 0))),
 *     Edge.of("right", Curve.line(new Point(90, 0), new Point(90, 90))),
 *     Edge.of("above", Curve.line(new Point(90, 90), new Point(0, 90))),
 *     Edge.of("left", Curve.line(new Point(0, 90), new Point(0, 0)))));
 * Draft draft = Draft.of(Pattern.of("Mending", List.of(patch), List.of()))
 *     .withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.3));
 * Export.of(draft).pdf(Paper.A4).svg().sheet();  // => Mending to -a4.pdf, .svg, -making-up.html
 * }</pre>
 *
 * <p>and then {@code to(Path.of("mending"), Progress.none())}.
 *
 * <p>Every file is named after the draft in plain letters. Either all files are written or none:
 * they are made in a hidden folder and moved in at the end, by one writer at a time; files of the
 * same names are replaced. While old and new files lie side by side, a note in the folder says so;
 * if the process is killed then, the next export to that folder, or the next reader of one of its
 * files, first moves in what was left. {@link FileSet} tells the limits. An interrupted thread
 * cancels. An export is immutable: every method gives a new one.
 *
 * @since 0.1
 */
@Stable
public final class Export {
  private final Draft draft;
  private final Map<String, Output> outputs;

  /** One file, as far as it is decided before the folder is known. */
  private interface Output {
    void write(Drawing drawing, OutputStream out) throws IOException;
  }

  private Export(Draft draft, Map<String, Output> outputs) {
    this.draft = Objects.requireNonNull(draft, "draft");
    this.outputs = outputs;
  }

  /**
   * An export that writes nothing yet.
   *
   * @param draft what to write
   * @return the export
   */
  public static Export of(Draft draft) {
    return new Export(draft, Map.of());
  }

  /**
   * Also a PDF of the pattern at true size, on sheets to be taped together. Where two pieces share
   * one paper, the lines in which the inner one differs come on sheets of their own as well.
   *
   * @param paper what is in the printer
   * @return the export
   */
  public Export pdf(Paper paper) {
    return onPaper(TiledPdf.on(paper));
  }

  private Export onPaper(Format format) {
    return with(
        format.fileEnding(),
        (drawing, out) -> {
          Drawing whole = drawing;
          for (Group transfer : TransferDrawing.of(draft)) {
            whole = whole.with(transfer);
          }
          format.write(whole, out);
        });
  }

  /**
   * Also a PDF of whole pieces at true size on wide sheets.
   *
   * @param paper for instance {@link Paper#A0}
   * @return the export
   */
  @Experimental
  public Export wide(Paper paper) {
    return onPaper(WidePdf.on(paper));
  }

  /**
   * Also a PDF of whole pieces at true size on a roll, its length cut to need.
   *
   * @param width of the paper, from 270 mm to 5 m, for instance 36 in
   * @return the export
   * @throws DraftingException if the width is out of range
   */
  @Experimental
  public Export roll(Length width) {
    return onPaper(WidePdf.onRoll(width));
  }

  /**
   * Also a PDF of one page at full size for a projector, its letters large enough for it.
   *
   * @param projector lines, ground, mirrored or not
   * @return the export
   */
  @Experimental
  public Export projector(ProjectorPdf projector) {
    return with(
        projector.fileEnding(),
        (drawing, out) -> projector.write(DraftDrawing.of(draft, ProjectorPdf.LETTERS), out));
  }

  /**
   * Also a drawing of all pieces and a legend as SVG, at true size.
   *
   * @return the export
   */
  public Export svg() {
    SvgFormat svg = SvgFormat.of();
    return with(
        svg.fileEnding(), (drawing, out) -> svg.write(DraftDrawing.withLegend(drawing), out));
  }

  /**
   * Also a picture of all pieces and a legend as PNG, for screens and letters.
   *
   * @return the export
   */
  @Experimental
  public Export png() {
    return png(PngFormat.of());
  }

  /**
   * Also a picture of all pieces and a legend as PNG in a resolution of one's own.
   *
   * @param png how fine
   * @return the export
   */
  @Experimental
  public Export png(PngFormat png) {
    return with(
        png.fileEnding(), (drawing, out) -> png.write(DraftDrawing.withLegend(drawing), out));
  }

  /**
   * Also the making-up sheet as a page for browser, phone and printer.
   *
   * @return the export
   */
  public Export sheet() {
    return sheet(Tape.BOTH);
  }

  /**
   * Also the making-up sheet as a page, in centimetres or in inches. It takes the place of {@link
   * #sheet()}.
   *
   * @param tape in whose units the sheet is written
   * @return the export
   */
  @Experimental
  public Export sheet(Tape tape) {
    Objects.requireNonNull(tape, "tape");
    return with(
        MakingUpSheet.FILE_ENDING,
        (drawing, out) -> MakingUpSheet.of(draft, drawing).withTape(tape).write(out));
  }

  /**
   * Also the making-up sheet as PDF.
   *
   * @param paper what is in the printer, for instance {@link Paper#A4}
   * @return the export
   */
  @Experimental
  public Export sheet(Paper paper) {
    return sheet(paper, Tape.BOTH);
  }

  /**
   * Also the making-up sheet as PDF, in centimetres or in inches. It takes the place of {@link
   * #sheet(Paper)}.
   *
   * @param paper what is in the printer
   * @param tape in whose units the sheet is written
   * @return the export
   */
  @Experimental
  public Export sheet(Paper paper, Tape tape) {
    Objects.requireNonNull(tape, "tape");
    return with(
        "-making-up-" + PlainName.of(paper.name()) + ".pdf",
        (drawing, out) -> MakingUpSheet.of(draft, drawing).withTape(tape).writePdf(paper, out));
  }

  /**
   * Also a page with a gauge for turn-ups and ladders for the stretch test, as PDF.
   *
   * @param paper what is in the printer
   * @return the export
   */
  @Experimental
  public Export gauge(Paper paper) {
    return with(
        "-gauge-" + PlainName.of(paper.name()) + ".pdf",
        (drawing, out) -> PagesPdf.on(paper).write(GaugeDrawing.of(), out));
  }

  /**
   * Also the pattern at true size for a roll plotter, as HPGL/2.
   *
   * @return the export
   */
  public Export hpgl() {
    return format(HpglFormat.of());
  }

  /**
   * Also the drawing as DXF, for cutters and drawing programs.
   *
   * @return the export
   */
  public Export dxf() {
    return format(DxfFormat.of());
  }

  /**
   * Also the pieces as data for other pattern software, as DXF in the style of ASTM D6673.
   *
   * @return the export
   */
  public Export pieces() {
    return with(PieceFile.FILE_ENDING, (drawing, out) -> PieceFile.of(draft).write(out));
  }

  /**
   * Also the cut list, the strips and the finished measures as CSV, for spreadsheets.
   *
   * @return the export
   */
  public Export csv() {
    return with(
            CutListFile.FILE_ENDING, (drawing, out) -> CutListFile.of(draft.cutList()).write(out))
        .with(StripsFile.FILE_ENDING, (drawing, out) -> StripsFile.of(draft.strips()).write(out))
        .with(
            MeasuresFile.FILE_ENDING,
            (drawing, out) -> MeasuresFile.of(draft.measures()).write(out));
  }

  /**
   * Also the pieces as tables of points to be chalked straight on the cloth, as CSV.
   *
   * @return the export
   */
  @Experimental
  public Export chalking() {
    return with(
        ChalkingFile.FILE_ENDING, (drawing, out) -> ChalkingFile.of(draft.cutPieces()).write(out));
  }

  /**
   * Also the draft itself, to be read again by {@link StoredDraft#read}.
   *
   * @return the export
   */
  public Export store() {
    return store(StoredDraft.of(draft));
  }

  /**
   * Also the draft itself with its tracings and lay plans.
   *
   * @param stored this draft, as it is to be kept
   * @return the export
   * @throws DraftingException if it is another draft
   */
  @Experimental
  public Export store(StoredDraft stored) {
    if (!stored.draft().equals(draft)) {
      throw DraftingException.of("this would keep another draft")
          .at(draft.name())
          .value(stored.draft().name())
          .accepted("StoredDraft.of the draft that is written");
    }
    return with(StoredDraft.FILE_ENDING, (drawing, out) -> stored.write(out));
  }

  /**
   * Also the pattern drawing in another format.
   *
   * @param format how to write it
   * @return the export
   */
  public Export format(Format format) {
    return with(format.fileEnding(), format::write);
  }

  private Export with(String fileEnding, Output output) {
    Map<String, Output> more = new LinkedHashMap<>(outputs);
    more.put(fileEnding, output);
    return new Export(draft, more);
  }

  /**
   * Writes the files.
   *
   * @param folder made if it is not there
   * @param progress told before every file and at the end
   * @return the files in the order asked for
   * @throws IOException if they cannot be written; then none is
   * @throws DraftingException if nothing was asked for, the thread is interrupted, or the folder
   *     holds files of two sets that cannot be told apart; then no file is written either
   */
  public List<WrittenFile> to(Path folder, Progress progress) throws IOException {
    if (outputs.isEmpty()) {
      throw DraftingException.of("nothing to write")
          .at(draft.name())
          .accepted("pdf, svg, sheet, store or another");
    }
    Drawing drawing = DraftDrawing.of(draft);
    String name = PlainName.of(draft.name());
    try (FileSet files = FileSet.into(folder)) {
      int done = 0;
      for (Map.Entry<String, Output> entry : outputs.entrySet()) {
        String file = name + entry.getKey();
        progress.step("writing " + file, done++, outputs.size());
        refuseIfInterrupted(file);
        try (OutputStream out = files.open(file)) {
          entry.getValue().write(drawing, out);
        }
      }
      refuseIfInterrupted(folder.toString());
      List<WrittenFile> written = written(folder, files.moveIn());
      progress.step("done", outputs.size(), outputs.size());
      return written;
    } catch (ClosedByInterruptException | FileLockInterruptionException e) {
      throw cancelled(folder.toString()).because(e);
    }
  }

  private static List<WrittenFile> written(Path folder, Map<String, Long> bytes) {
    Path place = folder.toAbsolutePath().normalize();
    return bytes.entrySet().stream()
        .map(file -> new WrittenFile(place.resolve(file.getKey()), file.getValue()))
        .toList();
  }

  /**
   * Writes the one file that was asked for to a stream, which is left open: for programs that
   * answer or send it. It is made first and sent after, so that a failure sends nothing.
   *
   * @param out where the bytes go
   * @param progress told before the file and at the end
   * @throws IOException if the stream fails
   * @throws DraftingException if not exactly one file was asked for, or the thread is interrupted
   */
  @Experimental
  public void to(OutputStream out, Progress progress) throws IOException {
    if (outputs.size() != 1) {
      throw DraftingException.of("a stream takes one file")
          .at(draft.name())
          .value(outputs.isEmpty() ? "none" : String.join(", ", outputs.keySet()))
          .accepted("one of pdf, svg, sheet, store or another; or a folder for several");
    }
    Map.Entry<String, Output> entry = outputs.entrySet().iterator().next();
    String file = PlainName.of(draft.name()) + entry.getKey();
    progress.step("writing " + file, 0, 1);
    refuseIfInterrupted(file);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    entry.getValue().write(DraftDrawing.of(draft), bytes);
    refuseIfInterrupted(file);
    bytes.writeTo(out);
    progress.step("done", 1, 1);
  }

  private static void refuseIfInterrupted(String where) {
    if (Thread.currentThread().isInterrupted()) {
      throw cancelled(where);
    }
  }

  private static DraftingException cancelled(String where) {
    return DraftingException.of("cancelled").at(where);
  }

  /**
   * What will be written.
   *
   * @return for instance "Boathouse vest to -a4.pdf, .svg"
   */
  @Override
  public String toString() {
    return draft.name() + " to " + String.join(", ", outputs.keySet());
  }
}
