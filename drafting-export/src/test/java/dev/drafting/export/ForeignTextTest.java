package dev.drafting.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.DraftDrawing;
import dev.drafting.export.drawing.Lettering;
import dev.drafting.export.pdf.Paper;
import dev.drafting.export.pdf.ProjectorPdf;
import dev.drafting.export.png.PngFormat;
import dev.drafting.export.store.StoredDraft;
import dev.drafting.knit.Draft;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Hostile and foreign names of a draft and its fabrics in every format that there is. */
class ForeignTextTest {
  private static final List<String> NAMES =
      List.of(
          "\"quoted\" 'twice' <b>&amp;</b> ]]> <!-- --> %n {0} ;LB\u0003 \\U+0041 =1+1",
          "Gr\u00f6\u00dfe \u00e9\u0301 \u00f1 \u0151 \u0142",
          "\ud83e\uddf5\ud83d\ude00 \u5927\u304d\u3044 \ud800 \uffff",
          "\u05e9\u05dc\u05d5\u05dd \u202e\u05d7\u05d5\u05dc\u05e6\u05d4 (M) 12",
          "../../../etc/passwd\u0000.svg",
          "x".repeat(10_000));

  @TempDir Path work;

  private List<WrittenFile> written(String name) throws IOException {
    Draft draft =
        TestGarment.vest(name)
            .withFabric("body", Fabric.of(name, Structure.JERSEY, 0.3).prewashed());
    return Export.of(draft)
        .pdf(Paper.A4)
        .wide(Paper.A0)
        .roll(Length.inches(36))
        .projector(ProjectorPdf.of())
        .svg()
        .png(PngFormat.of().withResolution(20))
        .sheet()
        .sheet(Paper.A4)
        .gauge(Paper.A4)
        .hpgl()
        .dxf()
        .pieces()
        .csv()
        .chalking()
        .store()
        .to(work.resolve("out"), Progress.none());
  }

  @Test
  void everyFileIsWrittenWithinTheFolderAndReadable() throws Exception {
    for (String name : NAMES) {
      for (WrittenFile file : written(name)) {
        assertEquals(work.resolve("out"), file.path().getParent());
        String plain = file.path().getFileName().toString();
        assertTrue(plain.matches("[a-z0-9][a-z0-9-]*(\\.[a-z0-9]+)+"), plain);
        assertTrue(plain.length() < 100, plain);
        read(file.path(), name);
      }
    }
  }

  private static void read(Path file, String name) throws Exception {
    String kind = file.toString().replaceAll(".*\\.", "").toLowerCase(Locale.ROOT);
    switch (kind) {
      case "pdf" -> pdf(file);
      case "svg", "html" ->
          DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder().parse(file.toFile());
      case "png" -> assertTrue(ImageIO.read(file.toFile()).getWidth() > 0);
      case "plt", "dxf" -> ascii(file);
      case "csv" -> csv(file, name);
      case "json" -> assertTrue(StoredDraft.read(file).findings().isEmpty());
      default -> throw new AssertionError("not checked: " + file);
    }
  }

  /** Every letter lies on its page. */
  private static void pdf(Path file) throws IOException {
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      PDFTextStripper inside =
          new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition text) {
              PDRectangle page = getCurrentPage().getMediaBox();
              float x = text.getTextMatrix().getTranslateX();
              float y = text.getTextMatrix().getTranslateY();
              assertTrue(x >= 0 && y >= 0, file + ": " + text);
              assertTrue(x <= page.getWidth() && y <= page.getHeight(), file + ": " + text);
            }
          };
      inside.getText(document);
    }
  }

  private static void ascii(Path file) throws IOException {
    for (byte b : Files.readAllBytes(file)) {
      assertTrue(b >= 0, file + " is not plain");
    }
  }

  /** The same number of cells in every row, the cloth as it was given. */
  private static void csv(Path file, String name) throws IOException {
    try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, CSVFormat.RFC4180)) {
      int cells = 0;
      for (CSVRecord row : parser) {
        cells = cells == 0 ? row.size() : cells;
        assertEquals(cells, row.size(), file.toString());
      }
      assertTrue(cells > 1, name);
    }
  }

  /** What can be printed is found in the file; what cannot is shown as a square. */
  @Test
  void pdfsHoldTheNames() throws IOException {
    for (String name : NAMES.subList(0, 3)) {
      Path file = written(name).get(0).path();
      try (PDDocument document = Loader.loadPDF(file.toFile())) {
        String text = new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0]+", "");
        String title = DraftDrawing.of(TestGarment.vest(name)).title();
        String wanted = Lettering.printable(title).replaceAll("[\\s\u00a0]+", "");
        assertTrue(text.contains(wanted), wanted);
      }
    }
  }
}
