package dev.drafting.export.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SvgFileTest {
  private static final String HEAD =
      "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='200mm' viewBox='0 0 100 200'>";

  @TempDir Path folder;

  private List<Stroke> read(String drawing) throws IOException {
    Path file = folder.resolve("tracing.svg");
    Files.writeString(file, drawing);
    return SvgFile.read(file, new DrawnEdges());
  }

  private Stroke path(String data) throws IOException {
    return read(HEAD + "<path id='front.side_seam' d='" + data + "'/></svg>").get(0);
  }

  private static void assertEnds(double x, double y, Stroke stroke) {
    assertEquals(x, stroke.x(stroke.points() - 1), 1e-9);
    assertEquals(y, stroke.y(stroke.points() - 1), 1e-9);
  }

  @Test
  void idsNameThePieceAndTheEdge() throws IOException {
    List<Stroke> strokes =
        read(
            HEAD
                + "<title>A vest</title><g transform='translate(10)'>"
                + "<path id='back.side' d='M0 0V10'/><path id='back.side.2' d='M5 0V10'/></g></svg>");
    assertEquals(2, strokes.size());
    assertEquals("back", strokes.get(1).piece());
    assertEquals("side", strokes.get(1).edge());
    assertEquals("side seam", path("M0 0V10").edge());
    assertEquals(1.5, strokes.get(1).x(0), 1e-12);
  }

  @Test
  void aPieceMayBeDrawnInOneGo() throws IOException {
    Stroke stroke = read(HEAD + "<path id='left_front' d='M0 0V10H5'/></svg>").get(0);
    assertEquals("left front", stroke.piece());
    assertFalse(stroke.isNamed());
    assertTrue(path("M0 0V10").isNamed());
  }

  @Test
  void everyCommandOfTheStandardIsRead() throws IOException {
    assertEnds(3, -4, path("M 10,20 L 30 40"));
    assertEnds(4, -6, path("m10 20 10 10,20 30"));
    assertEnds(3, -2, path("M10 20h20"));
    assertEnds(1, -3, path("M10 20V30"));
    assertEnds(4, -2, path("M10 20C10 10 40 10 40 20"));
    assertEnds(7, -2, path("M10 20c0-10 30-10 30 0s30 10 30 0"));
    assertEnds(5, -2, path("M10 20q10-10 20 0t20 0"));
    assertEnds(1, -2, path("M10 20 30 20 30 40z"));
    assertEnds(.5, -.5, path("M0 0L.5.5.5.5 5e0 5"));
  }

  /** A quarter of a circle, its flags written without spaces: all points lie on the circle. */
  @Test
  void anArcLiesOnItsCircle() throws IOException {
    Stroke arc = path("M60 0a60 60 0 01-60 60");
    assertEnds(0, -6, arc);
    for (int i = 0; i < arc.points(); i++) {
      assertEquals(6, Math.hypot(arc.x(i), arc.y(i)), 1e-9);
    }
    Stroke large = path("M0 -30A30 30 0 1 1 -30 0");
    assertEquals(3, Math.hypot(large.x(40), large.y(40)), 1e-9);
    assertTrue(large.x(20) > 0);
  }

  /** 96 px, 72 pt, 6 pc and 25.4 mm are an inch (CSS, absolute lengths). */
  @Test
  void everyUnitIsAnInchOfItsOwn() throws IOException {
    for (String inch : List.of("1in", "96px", "96", "72pt", "6pc", "2.54cm", "25.4mm")) {
      Stroke stroke =
          read("<svg width='" + inch + "' viewBox='0 0 10 10'><path id='a.b' d='M0 0H10'/></svg>")
              .get(0);
      assertEquals(2.54, stroke.x(stroke.points() - 1), 1e-9, inch);
    }
    assertEquals(2.54, read("<svg><path id='a.b' d='M0 0H96'/></svg>").get(0).x(12), 1e-9);
  }

  @Test
  void transformsApplyFromTheInside() throws IOException {
    String[] transforms = {
      "translate(10,20) rotate(90)",
      "matrix(0 1 -1 0 10 20)",
      "rotate(90 -5 15)",
      "scale(-1) rotate(-90 5 -15)"
    };
    double[][] ends = {{1, -3}, {1, -3}, {1, -3}, {-2, -1}};
    for (int i = 0; i < 3; i++) {
      Stroke stroke =
          read(HEAD + "<g transform='" + transforms[i] + "'><path id='a.b' d='M0 0H10'/></g></svg>")
              .get(0);
      assertEnds(ends[i][0], ends[i][1], stroke);
    }
    assertEnds(
        2, 0, read(HEAD + "<path id='a.b' transform='skewX(45)' d='M0 0L20 0'/></svg>").get(0));
  }

  @Test
  void whatReachesOutOrRunsIsRefusedWithItsLine() {
    for (String bad :
        List.of(
            "<script>1</script>",
            "<g onload='x()'/>",
            "<use href='other.svg'/>",
            "<image xmlns:xlink='http://www.w3.org/1999/xlink' xlink:href='a.png'/>",
            "<g style='fill:url(http://example.org)'/>",
            "<defs><script/></defs>",
            "<rect width='1'/>",
            "<path id='front.' d='M0 0H1'/>",
            "<path id='a.b' d='M0 0H1M2 2H3'/>",
            "<path id='a.b' d='M0 0L1'/>",
            "<path id='a.b' d='M0 0 X 1'/>",
            "<path id='a.b' d='M0 0 H 1e99'/>",
            "<g transform='turn(3)'/>")) {
      DraftingException refused =
          assertThrows(DraftingException.class, () -> read(HEAD + "\n" + bad + "</svg>"), bad);
      assertEquals("tracing.svg, line 2", refused.where(), bad);
    }
  }

  @Test
  void documentTypesAndEntitiesAreRefused() throws IOException {
    Files.writeString(folder.resolve("secret.txt"), "M0 0H10");
    for (String head :
        List.of(
            "<!DOCTYPE svg [<!ENTITY a SYSTEM 'secret.txt'>]>",
            "<!DOCTYPE svg SYSTEM 'http://example.org/svg.dtd'>",
            "<?xml-stylesheet href='a.css'?>")) {
      assertThrows(
          DraftingException.class, () -> read(head + "<svg><path id='a.b' d='&a;'/></svg>"), head);
    }
    assertThrows(DraftingException.class, () -> read("<svg><path id='a.b' d='&a;'/></svg>"));
    assertThrows(DraftingException.class, () -> read("<svg>"));
    assertThrows(DraftingException.class, () -> read("<html/>"));
  }

  /** The parser of the JDK has no words for some of them, or tells on the standard streams. */
  @Test
  void aDocumentTypeIsRefusedBeforeAnythingInItIsRead() {
    for (String declared :
        List.of(
            "<!DOCTYPE svg [\u0001]>",
            "<!DOCTYPE svg [<!ELEMENT",
            "<!DOCTYPE svg [ & ]>",
            "<!DOCTYPE svg [<!ENTITY a \u0001>]>",
            "<!DOCTYPE svg [ \uFFFE")) {
      DraftingException refused =
          assertThrows(
              DraftingException.class, () -> read("<?xml version='1.0'?>\n" + declared), declared);
      assertEquals(
          "tracing.svg, line 2: the drawing declares a document type. Accepted: a drawing without"
              + " one.",
          refused.getMessage(),
          declared);
    }
  }

  /** Whatever is in the file, it is read or refused by a message with its place. */
  @Test
  void spoiledDrawingsAreReadOrRefused() throws IOException {
    String good =
        HEAD
            + "<g transform='rotate(3) scale(2)'><path id='front.neck' d='M0 0C1 2 3 4 5 6s1-2 3 4"
            + "A5 5 0 0 1 9 9z'/></g></svg>";
    Random random = new Random(7);
    int refused = 0;
    for (int i = 0; i < 2_000; i++) {
      byte[] bytes = good.getBytes(StandardCharsets.UTF_8);
      for (int k = 0; k <= random.nextInt(3); k++) {
        bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
      }
      Path file = folder.resolve("tracing.svg");
      Files.write(file, bytes);
      try {
        assertTrue(SvgFile.read(file, new DrawnEdges()).get(0).points() > 1);
      } catch (DraftingException e) {
        assertTrue(e.where().startsWith("tracing.svg"), e::toString);
        refused++;
      }
    }
    assertTrue(refused > 500, "refused " + refused);
  }
}
