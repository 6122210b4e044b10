package dev.drafting.examples;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import dev.drafting.examples.damage.Doors;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Files made to exhaust whoever reads them: all are refused in words. The tests of this module run
 * within 256 MB.
 */
class BombsTest {
  private static final int BYTES = 20_000_000;
  private static final Duration FOR_EVER = Duration.ofMinutes(2);
  private static final String SVG = "<svg xmlns='http://www.w3.org/2000/svg'>";
  private static final String PIECE = "  0\nBLOCK\n  2\npatch\n";
  private static final String VERTEX = "  0\nVERTEX\n  8\n1\n 10\n1.5\n 20\n2.5\n";

  @TempDir static Path folder;
  private static Doors doors;

  @BeforeAll
  static void open() throws IOException {
    doors = Doors.open(Vest.FOLDER, folder);
  }

  @AfterAll
  static void close() {
    doors.close();
  }

  static Stream<Arguments> bombs() {
    String deepNames = ("{\"" + "n".repeat(90) + "\":").repeat(10);
    return Stream.of(
        bomb("lists in lists", "garment.json", "{\"name\":", "["),
        bomb("objects in objects", "garment.json", "", "{\"name\":"),
        bomb("a million small values", "garment.json", "{\"pieces\":[", "[],"),
        bomb("a million values with long places", "garment.json", deepNames + "[", "0,"),
        bomb("a number of a million digits", "garment.json", "{\"wander\":", "9"),
        bomb("a text without end", "garment.json", "{\"name\":\"", "a"),
        bomb("one line without end", "tracing.csv", "piece,edge,x,y\n", "front,"),
        bomb("points without end", "tracing.csv", "piece,edge,x,y\n", "front,hem,1.25,2.5\n"),
        bomb("a cell over all lines", "tracing.csv", "piece,edge,x,y\nfront,\"", line(199)),
        bomb("empty lines without end", "tracing.csv", "piece,edge,x,y\n", "\n"),
        bomb("a cell over all lines", "sizes.csv", "size,chest\n\"", line(1_999)),
        bomb("columns without end", "sizes.csv", "size", ",chest"),
        bomb("groups in groups", "tracing.svg", SVG, "<g>"),
        bomb("elements in what is left out", "tracing.svg", SVG + "<metadata>", "<a>"),
        bomb("a comment without end", "tracing.svg", SVG + "<!--", line(9_999)),
        bomb("a text without end", "tracing.svg", SVG + "<text>", line(9_999)),
        bomb("an attribute without end", "tracing.svg", SVG + "<path d='M 0 0", line(9_999)),
        bomb("attributes without end", "tracing.svg", SVG + "<path ", "a='' "),
        bomb("names without end", "tracing.svg", SVG + "<", "a"),
        bomb("points without end", "tracing.svg", SVG + "<path id='front.hem' d='M", "\n1 1 L "),
        bomb("paths without end", "tracing.svg", SVG, "<path id='front.hem' d='M1 1L2 2'/>\n"),
        bomb(
            "paths without end", "cut.svg", SVG, "<path id='a.cut-line.cut-line' d='M1 1L2 2'/>\n"),
        bomb("points without end", "cut.dxf", PIECE, VERTEX),
        bomb("pieces without end", "cut.dxf", "", PIECE + VERTEX + "  0\nENDBLK\n"),
        bomb("texts without end", "cut.dxf", PIECE, "  1\n" + line(900)),
        bomb("lists in lists", "stored draft", "{\"draft\":", "["),
        bomb("ten million small values", "stored draft", "{\"tracings\":[", "[],"),
        bomb("a million values with long places", "stored draft", deepNames + "[[],", "{},"),
        bomb("numbers without end", "stored draft", "{\"tracings\":[", "0,"),
        bomb("a body without end", "request", head(2 * BYTES), line(9_999)),
        bomb("chunks without end", "request", chunked(), "5\r\nabcde\r\n"),
        bomb("headers without end", "request", "POST /draft HTTP/1.1\r\n", "A: b\r\n"),
        bomb("a path without end", "request", "POST /", "../"),
        bomb("a length that is none", "request", head(-1), "a"));
  }

  private static Arguments bomb(String what, String door, String start, String again) {
    return Arguments.of(what, door, start, again);
  }

  private static String line(int length) {
    return "a".repeat(length) + "\n";
  }

  private static String head(long length) {
    return "POST /draft HTTP/1.1\r\nHost: localhost\r\nContent-Length: " + length + "\r\n\r\n";
  }

  private static String chunked() {
    return "POST /draft HTTP/1.1\r\nHost: localhost\r\nTransfer-Encoding: chunked\r\n\r\n";
  }

  @ParameterizedTest(name = "{1}: {0}")
  @MethodSource("bombs")
  void aBombIsRefused(String what, String door, String start, String again) {
    byte[] sent = repeated(start, again);
    assertTimeoutPreemptively(
        FOR_EVER, () -> assertFalse(doors.door(door).takes(sent), what), what + " takes for ever");
  }

  private static byte[] repeated(String start, String again) {
    byte[] part = again.getBytes(StandardCharsets.UTF_8);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(BYTES);
    bytes.writeBytes(start.getBytes(StandardCharsets.UTF_8));
    while (bytes.size() + part.length < BYTES) {
      bytes.writeBytes(part);
    }
    return bytes.toByteArray();
  }
}
