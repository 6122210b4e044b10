package dev.drafting.export.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TracingFileTest {
  private static final String GOOD = "piece,edge,x,y\nfront,hem,0,1\nfront,hem,2.5,-1\n";

  @TempDir Path folder;

  private List<Stroke> read(byte[] bytes) throws IOException {
    Path file = folder.resolve("tracing.csv");
    Files.write(file, bytes);
    return TracingFile.read(file);
  }

  private List<Stroke> read(String text) throws IOException {
    return read(text.getBytes(StandardCharsets.UTF_8));
  }

  private String refused(String text) {
    return Refusal.of(() -> read(text));
  }

  @Test
  void linesWithTheSameEdgeAreOneStroke() throws IOException {
    List<Stroke> strokes =
        read(GOOD + "front,side,2.5,-1\nfront,side,3,9\nfront,hem,0,0\nfront,hem,1,1\n");
    assertEquals(List.of("hem", "side", "hem"), strokes.stream().map(Stroke::edge).toList());
    assertEquals(2.5, strokes.get(0).x(1));
    assertEquals(-1, strokes.get(0).y(1));
    assertEquals("tracing.csv, lines 4 to 5", strokes.get(1).where());
  }

  @Test
  void aByteOrderMarkAndAnyLineEndAreAccepted() throws IOException {
    for (String text :
        List.of(
            "\uFEFF" + GOOD,
            GOOD.replace("\n", "\r\n"),
            GOOD.replace("\n", "\r"),
            GOOD.strip(),
            "\uFEFF" + GOOD.replace("\n", "\r\n\r\n"),
            GOOD.replace(",", " , "))) {
      List<Stroke> strokes = read(text);
      assertEquals(1, strokes.size());
      assertEquals("front", strokes.get(0).piece());
      assertEquals(2, strokes.get(0).points());
    }
  }

  @Test
  void aPencilThatRestsAddsNoPoint() throws IOException {
    assertEquals(2, read(GOOD + "front,hem,2.5,-1\n").get(0).points());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "NaN | this is no number. Found: NaN",
        "Infinity | this is no number. Found: Infinity",
        "1e300 | this is no number. Found: 1e300",
        "600 | the point is too far away. Found: 600",
        "-500.1 | the point is too far away. Found: -500.1",
        "1 cm | this is no number. Found: 1 cm",
        "0x1p3 | this is no number. Found: 0x1p3",
      })
  void aCoordinateThatIsNoneIsRefused(String number, String said) {
    assertEquals(
        "tracing.csv, line 3, field x: "
            + said
            + ". Accepted: centimetres from -500 to 500 with a decimal point, such as 12.5.",
        refused(GOOD.replace("2.5", number)));
  }

  @Test
  void aDecimalCommaIsCalledByItsName() {
    assertEquals(
        "tracing.csv, line 3, field x: the number has a decimal comma. Found: 2,5. "
            + "Accepted: centimetres from -500 to 500 with a decimal point, such as 12.5.",
        refused(GOOD.replace("2.5", "\"2,5\"")));
    assertEquals(
        "tracing.csv, line 3: there are more than four columns. Found: front,hem,2,5,-1. "
            + "Accepted: piece,edge,x,y, the numbers with decimal points, not commas.",
        refused(GOOD.replace("2.5", "2,5")));
  }

  @Test
  void columnsAndTheirNamesHaveToBeThere() {
    assertEquals(
        "tracing.csv, line 3: a column is missing. Found: front,hem,2.5. Accepted: piece,edge,x,y.",
        refused(GOOD.replace("2.5,-1", "2.5")));
    assertEquals(
        "tracing.csv, line 1: the first line does not name the columns. Found: front,hem,0,1. "
            + "Accepted: piece,edge,x,y.",
        refused(GOOD.substring(GOOD.indexOf('\n') + 1)));
    assertEquals(
        "tracing.csv, line 1: the first line does not name the columns. Found: piece;edge;x;y. "
            + "Accepted: piece,edge,x,y.",
        refused(GOOD.replace(',', ';')));
  }

  @Test
  void aFileWithoutPointsIsRefused() {
    String said =
        "tracing.csv: the file has no points. "
            + "Accepted: the line piece,edge,x,y and a line for each point.";
    assertEquals(said, refused(""));
    assertEquals(said, refused("\uFEFF"));
    assertEquals(said, refused("piece,edge,x,y\n\n"));
  }

  @Test
  void anEdgeOfOnePointIsRefused() {
    assertEquals(
        "tracing.csv, lines 4 to 5, front / side: the edge has one point. Found: 1.0, 2.0. "
            + "Accepted: two different points or more.",
        refused(GOOD + "front,side,1,2\nfront,side,1,2\nfront,neck,1,2\nfront,neck,0,0\n"));
  }

  @Test
  void aNameIsAName() {
    assertTrue(
        refused(GOOD.replace("hem", "../hem"))
            .startsWith("tracing.csv, line 2, field edge: this cannot be a name. Found: ../hem."));
    assertTrue(refused(GOOD.replace("front", "")).contains("line 2, field piece: this cannot be"));
    assertTrue(
        refused(GOOD.replace("hem", "\"h\"em")).contains("a quotation mark is out of place"));
    assertTrue(refused(GOOD + "\"front").contains("a quotation mark is out of place"));
  }

  @Test
  void textThatIsNotUtf8IsRefusedWithItsLine() {
    byte[] latin = GOOD.replace("2.5", "\u00fc").getBytes(StandardCharsets.ISO_8859_1);
    String said = Refusal.of(() -> read(latin));
    assertTrue(said.startsWith("tracing.csv, line 3: the text is not UTF-8."), said);
    byte[] utf16 = GOOD.getBytes(StandardCharsets.UTF_16);
    assertTrue(Refusal.of(() -> read(utf16)).contains("not UTF-8"));
  }

  @Test
  void tenMillionLinesAreRefusedAtTheFirstOneTooMany() throws IOException {
    Path file = folder.resolve("tracing.csv");
    byte[] thousand = "f,e,1,1\n".repeat(1_000).getBytes(StandardCharsets.UTF_8);
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      out.write("piece,edge,x,y\n".getBytes(StandardCharsets.UTF_8));
      for (int i = 0; i < 10_000; i++) {
        out.write(thousand);
      }
    }
    assertEquals(
        "tracing.csv, line 100001: the file is too long. Accepted: at most 100,000 lines.",
        Refusal.of(() -> TracingFile.read(file)));
  }

  @Test
  void aLineWithoutEndIsRefused() {
    assertEquals(
        "tracing.csv, line 4: the line is too long. Accepted: at most 1,000 bytes.",
        refused(GOOD + "x".repeat(5_000)));
  }

  @Test
  void aFileThatIsNotThereIsRefused() throws IOException {
    Path missing = folder.resolve("none.csv");
    assertEquals(
        "none.csv: the file is missing. Accepted: a text file.",
        Refusal.of(() -> TracingFile.read(missing)));
    Path directory = Files.createDirectory(folder.resolve("folder.csv"));
    assertEquals(
        "folder.csv: this is no plain file. Accepted: a text file.",
        Refusal.of(() -> TracingFile.read(directory)));
  }
}
