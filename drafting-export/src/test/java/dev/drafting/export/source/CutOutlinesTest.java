package dev.drafting.export.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.SeamFinish;
import dev.drafting.core.template.Templates;
import dev.drafting.core.trace.Extent;
import dev.drafting.core.trace.TracedStretch;
import dev.drafting.core.trace.Truing;
import dev.drafting.core.trace.UnnamedTracing;
import dev.drafting.export.Export;
import dev.drafting.export.Progress;
import dev.drafting.export.TestGarment;
import dev.drafting.knit.Draft;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What this library drew is traced again, and is what it was. */
class CutOutlinesTest {
  @TempDir Path folder;

  private Path written(Draft draft, String format) throws IOException {
    Export export = Export.of(draft);
    return (format.equals("svg") ? export.svg() : export.pieces())
        .to(folder, Progress.none())
        .get(0)
        .path();
  }

  /** SVG is drawn with four decimals; DXF with chords within 0.1 mm. */
  @ParameterizedTest
  @CsvSource({"svg, 0.02", "dxf, 0.1001"})
  void everyPointLiesOnTheCutLine(String format, double within) throws IOException {
    Draft vest = TestGarment.vest("vest");
    List<UnnamedTracing> read = CutOutlines.read(written(vest, format));
    List<CutPiece> pieces = vest.cutPieces();
    assertEquals(List.of("front", "back"), read.stream().map(UnnamedTracing::piece).toList());
    for (int i = 0; i < read.size(); i++) {
      assertEquals(Extent.HALF_ON_FOLD, read.get(i).extent());
      Curve cut = pieces.get(i).cutLine();
      double down = lowest(read.get(i)) - cut.bounds().minY();
      int points = 0;
      for (TracedStretch stretch : read.get(i).stretches()) {
        for (int k = 0; k < stretch.points().size(); k++) {
          Point point = stretch.points().point(k);
          Point there = new Point(point.x(), point.y() - down);
          assertTrue(cut.nearest(there).distance().toMm() <= within, there.toString());
          points++;
        }
      }
      assertTrue(points > 40, "points " + points);
    }
  }

  private static double lowest(UnnamedTracing tracing) {
    return tracing.stretches().stream()
        .mapToDouble(stretch -> stretch.points().bounds().minY())
        .min()
        .orElseThrow();
  }

  private static Draft patch() {
    Point a = new Point(0, 0);
    Point b = new Point(120, 0);
    Point c = new Point(120, 80);
    Point d = new Point(0, 100);
    SeamFinish seam = SeamFinish.of(Length.mm(10));
    Piece patch =
        Piece.of(
            "élan patch",
            List.of(
                Edge.of("below", Curve.line(a, b)).withFinish(seam),
                Edge.of("right", Curve.line(b, c)).withFinish(seam),
                Edge.of("above", Curve.line(c, d)).withFinish(seam),
                Edge.of("left", Curve.line(d, a)).withFinish(seam)));
    return Draft.of(Pattern.of("patch", List.of(patch), List.of()))
        .withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.3));
  }

  @ParameterizedTest
  @CsvSource({"svg", "dxf"})
  void thePatternIsThereAgain(String format) throws IOException {
    UnnamedTracing read = CutOutlines.read(written(patch(), format)).get(0);
    assertEquals("élan patch", read.piece());
    assertEquals(Extent.AS_IT_LIES, read.extent());
    Truing truing = Truing.of(read.named("below", "right", "above", "left"));
    for (String edge : List.of("below", "right", "above", "left")) {
      truing = truing.withTracedOutside(edge, Length.mm(10));
    }
    Piece trued = truing.result().piece();
    for (Edge edge : patch().pattern().piece("élan patch").edges()) {
      assertEquals(edge.length().toMm(), trued.edge(edge.name()).length().toMm(), 0.001);
    }
  }

  /** Each garment of the library in its usual size; all its pieces have corners. */
  @ParameterizedTest
  @CsvSource({"svg", "dxf"})
  void everyGarmentIsReadAgain(String format) throws IOException {
    List<String> ids = Templates.installed().ids();
    assertEquals(10, ids.size());
    for (String id : ids) {
      Draft draft = Draft.of(Templates.installed().get(id).pattern());
      for (String cloth : List.of("body", "rib", "binding")) {
        draft = draft.withFabric(cloth, Fabric.of("jersey", Structure.JERSEY, 0.5));
      }
      List<UnnamedTracing> read = CutOutlines.read(written(draft, format));
      assertEquals(
          draft.cutPieces().stream().map(CutPiece::name).toList(),
          read.stream().map(UnnamedTracing::piece).toList(),
          id);
    }
  }

  /** Every corner is told apart from all points, which thousands of both would make a long job. */
  @Test
  void refusesCornersWithoutEnd() throws IOException {
    StringBuilder toothed = new StringBuilder("  0\nBLOCK\n  2\npatch\n");
    StringBuilder told = new StringBuilder();
    for (int i = 0; i < 1_000; i++) {
      String place = " 10\n" + i / 2.0 + "\n 20\n" + i % 2 + "\n";
      toothed.append("  0\nVERTEX\n  8\n1\n").append(place);
      told.append("  0\nPOINT\n  8\n2\n").append(place);
    }
    for (int i = 0; i < 100; i++) {
      toothed.append("  0\nVERTEX\n  8\n1\n 10\n" + (500 - 5 * i) + "\n 20\n600\n");
    }
    Path file = folder.resolve("a.dxf");
    Files.writeString(file, toothed.append(told).append("  0\nENDBLK\n"));
    DraftingException refused = assertThrows(DraftingException.class, () -> CutOutlines.read(file));
    assertEquals("a cut line has too many corners", refused.what());
    assertEquals("at most 200", refused.accepted());
  }

  @Test
  void refusesWhatHasNoPieces() throws IOException {
    Path text = Files.writeString(folder.resolve("a.txt"), "0");
    assertThrows(DraftingException.class, () -> CutOutlines.read(text));
    Path empty = Files.writeString(folder.resolve("a.dxf"), "  0\nEOF\n");
    assertEquals(
        "a.dxf: the file has no pieces. Accepted: a block for each piece, its cut line on layer 1.",
        assertThrows(DraftingException.class, () -> CutOutlines.read(empty)).getMessage());
    Path odd = Files.writeString(folder.resolve("b.dxf"), "  0\n");
    assertThrows(DraftingException.class, () -> CutOutlines.read(odd));
    Path drawing =
        Files.writeString(
            folder.resolve("a.svg"),
            "<svg xmlns='http://www.w3.org/2000/svg' width='1mm' viewBox='0 0 1 1'></svg>");
    assertEquals(
        "a.svg: the drawing has no paths. Accepted: the cut lines of pieces, as this library draws"
            + " them.",
        assertThrows(DraftingException.class, () -> CutOutlines.read(drawing)).getMessage());
  }

  /** Seeded damage: still pieces, or refused in words. */
  @ParameterizedTest
  @CsvSource({"svg", "dxf"})
  void damagedFilesAreReadOrRefused(String format) throws IOException {
    Path file = written(patch(), format);
    String sound = Files.readString(file);
    Random random = new Random(7);
    int read = 0;
    for (int i = 0; i < 1_000; i++) {
      StringBuilder damaged = new StringBuilder(sound);
      int at = random.nextInt(damaged.length());
      switch (random.nextInt(3)) {
        case 0 -> damaged.setCharAt(at, (char) (32 + random.nextInt(95)));
        case 1 -> damaged.delete(at, Math.min(damaged.length(), at + random.nextInt(40)));
        default -> damaged.insert(at, sound, at / 2, at / 2 + random.nextInt(20));
      }
      Files.writeString(file, damaged);
      try {
        read += CutOutlines.read(file).isEmpty() ? 0 : 1;
      } catch (DraftingException e) {
        assertTrue(!e.what().isEmpty() && !e.accepted().isEmpty(), () -> "not helpful: " + e);
      }
    }
    assertTrue(read > 50 && read < 990, "read " + read);
  }
}
