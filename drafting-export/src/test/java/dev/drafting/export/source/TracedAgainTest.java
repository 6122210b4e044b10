package dev.drafting.export.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.trace.Tracing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A piece that was traced several times, and one that is like another but for some lines. */
class TracedAgainTest {
  private static final String LIKE =
      "{\"name\": \"back\", \"like\": \"front\", \"cut\": \"on the fold\"}";
  private static final String BACK =
      "{\"name\": \"back\", \"traced\": \"whole\", \"cut\": \"on the fold\", \"straight\":"
          + " [\"waist\"]}";

  @TempDir Path folder;

  @BeforeEach
  void write() throws IOException {
    TubeSkirt.write(folder, TubeSkirt.DESCRIPTION);
  }

  private void describe(String from, String to) throws IOException {
    assertTrue(TubeSkirt.DESCRIPTION.contains(from), from);
    Files.writeString(folder.resolve("garment.json"), TubeSkirt.DESCRIPTION.replace(from, to));
  }

  private void trace(String more) throws IOException {
    Files.writeString(folder.resolve("tracing.csv"), TubeSkirt.TRACING + more);
  }

  /** Without the strokes of the back. */
  private void traceWithoutBack(String more) throws IOException {
    String others =
        String.join(
            "\n", TubeSkirt.TRACING.lines().filter(line -> !line.startsWith("back,")).toList());
    Files.writeString(folder.resolve("tracing.csv"), others + "\n" + more);
  }

  /** The front a second time, 2 cm higher on the table and by a share wider. */
  private String again(double wider) {
    StringBuilder again = new StringBuilder();
    double width = 20 * (1 + wider);
    again.append("front 2,hem,0,2\nfront 2,hem,").append(width).append(",2\n");
    again.append("front 2,side,").append(width).append(",2\nfront 2,side,").append(width);
    again.append(",52\nfront 2,waist,").append(width).append(",52\nfront 2,waist,0,52\n");
    return again.toString();
  }

  private void describeTwice(String names) throws IOException {
    describe(
        "\"traced\": \"half on the fold\"",
        "\"traced\": \"half on the fold\", \"again\": [" + names + "]");
  }

  @Test
  void severalTracingsAreLaidOnEachOther() throws IOException {
    describeTwice("\"front 2\"");
    trace(again(0.02));
    Garment garment = GarmentFolder.read(folder);
    assertEquals(202, garment.pattern().piece("front").edge("hem").length().toMm(), 0.5);
    Tracing front = garment.tracings().get(0);
    assertEquals("front", front.piece());
    assertEquals(4, front.edges().get(0).points().size());
    assertEquals(List.of(), garment.findings());
  }

  @Test
  void aStretchedLayIsAmongTheFindings() throws IOException {
    describeTwice("\"front 2\"");
    trace(again(0.05));
    List<Finding> findings = GarmentFolder.read(folder).findings();
    assertEquals(
        List.of("trace.stretched", "trace.stretched"), findings.stream().map(Finding::id).toList());
  }

  @Test
  void whatWasNotTracedAgainIsRefused() throws IOException {
    describeTwice("\"front 3\"");
    trace(again(0));
    String refused = refused();
    assertTrue(refused.contains("no points are traced for this piece. Found: front 3"), refused);
    describeTwice("\"front 2\", \"front 2\"");
    assertTrue(refused().contains("Found: front 2"), refused());
    describeTwice("\"front\"");
    assertTrue(refused().contains("Found: front"), refused());
  }

  /** The waist of the back lies 2 cm higher on the fold, traced through both layers. */
  @Test
  void aBackMayBeLikeTheFrontButForItsOwnLine() throws IOException {
    describe(BACK, LIKE);
    traceWithoutBack("back,waist,20,50\nback,waist,10,51\nback,waist,0,52\n");
    Piece back = GarmentFolder.read(folder).pattern().piece("back");
    assertEquals(500, back.edge("side").length().toMm(), 1e-6);
    assertEquals(520, back.edge("fold").length().toMm(), 0.5);
  }

  /** An apron is as wide as the back at the hem, and its sides run in by 2 cm. */
  @Test
  void anEdgeThatWasTracedLeftAndRightHasTwoLinesOfItsOwn() throws IOException {
    describe(
        "\"straight\": [\"waist\"]},",
        "\"straight\": [\"waist\"]}, "
            + LIKE.replace("back", "apron").replace("front", "back")
            + ",");
    String described = Files.readString(folder.resolve("garment.json"));
    Files.writeString(
        folder.resolve("garment.json"),
        described.replace(
            "\"finishes\": [",
            "\"finishes\": [{\"edges\": [\"apron side\", \"apron hem\", \"apron waist\"],"
                + " \"finish\": \"raw\"},"));
    trace(
        """
        apron,side,102,50
        apron,side,100,0
        apron,waist,102,50
        apron,waist,138,50
        apron,side,138,50
        apron,side,140,0
        """);
    Piece apron = GarmentFolder.read(folder).pattern().piece("apron");
    assertEquals(180, apron.edge("waist").length().toMm(), 1e-6);
    assertEquals(200, apron.edge("hem").length().toMm(), 1e-6);
    assertEquals(Math.hypot(500, 20), apron.edge("side").length().toMm(), 1e-6);
  }

  @Test
  void aPieceLikeNothingIsRefused() throws IOException {
    describe(BACK, LIKE.replace("front", "yoke"));
    traceWithoutBack("back,waist,20,50\nback,waist,0,52\n");
    assertTrue(refused().contains("Found: yoke. Accepted: front."), refused());
    describe(BACK, LIKE.replace("\"cut\"", "\"traced\": \"whole\", \"cut\""));
    assertTrue(refused().contains("Accepted: \"traced\" left out"), refused());
    describe(BACK, LIKE);
    traceWithoutBack("back,yoke,20,50\nback,yoke,0,52\n");
    assertTrue(refused().contains("no such edge was traced. Found: yoke"), refused());
    traceWithoutBack("");
    assertTrue(refused().contains("no points are traced for this piece. Found: back"), refused());
  }

  private String refused() {
    return Refusal.of(() -> GarmentFolder.read(folder));
  }
}
