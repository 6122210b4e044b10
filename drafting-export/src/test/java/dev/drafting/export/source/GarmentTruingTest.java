package dev.drafting.export.source;

import static dev.drafting.export.source.TubeSkirt.DESCRIPTION;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.assembly.TruedPattern;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.pattern.Pattern;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a description asks of the truing, of one edge and of the pieces together. */
class GarmentTruingTest {
  @TempDir Path folder;

  @BeforeEach
  void write() throws IOException {
    TubeSkirt.write(folder, DESCRIPTION);
  }

  private String refused(String from, String to) throws IOException {
    return TubeSkirt.refused(folder, from, to);
  }

  @Test
  void whatWasTracedMayLieOutsideTheFinishedEdge() throws IOException {
    Files.writeString(
        folder.resolve("garment.json"),
        DESCRIPTION.replace(
            "\"straight\": [\"waist\"]",
            "\"outside\": [{\"edges\": [\"side\"], \"by\": \"1 cm\"}]"));
    Pattern pattern = GarmentFolder.read(folder).pattern();
    assertEquals(190, pattern.piece("back").edge("hem").length().toMm(), 1e-3);
    assertEquals(200, pattern.piece("front").edge("hem").length().toMm(), 1e-6);
    assertTrue(
        refused(
                "\"straight\": [\"waist\"]",
                "\"outside\": [{\"edges\": [\"sleeve\"], \"by\": \"1 cm\"}]")
            .contains("sleeve"));
  }

  @Test
  void whatHasStretchedInWearIsTakenBack() throws IOException {
    String[] stretched = {
      "\"straight\": [\"waist\"]", "\"grown\": [{\"edges\": [\"hem\"], \"by\": \"5 %\"}]"
    };
    Files.writeString(
        folder.resolve("garment.json"), DESCRIPTION.replace(stretched[0], stretched[1]));
    Pattern pattern = GarmentFolder.read(folder).pattern();
    assertEquals(200 / 1.05, pattern.piece("back").edge("hem").length().toMm(), 1e-6);
    assertEquals(200, pattern.piece("front").edge("hem").length().toMm(), 1e-6);
    assertEquals(-2, sideOffEase(), 1e-6);
    assertTrue(refused(stretched[0], stretched[1].replace("5 %", "60 %")).contains("to 50 %"));
  }

  @Test
  void seamsAreEvenedIfAsked() throws IOException {
    assertEquals(-2, sideOffEase(), 1e-6);
    Files.writeString(
        folder.resolve("garment.json"),
        DESCRIPTION.replace("\"pieces\": [", "\"evened\": \"5 mm\", \"pieces\": ["));
    assertEquals(0, sideOffEase(), 1e-6);
    TruedPattern together = GarmentFolder.read(folder).together();
    assertFalse(together.moved().isEmpty());
    assertEquals(
        List.of("truing.moved", "truing.moved"),
        together.findings().stream().map(Finding::id).toList());
  }

  @Test
  void edgesAreDrawnSmoothlyAcrossSeamsIfAsked() throws IOException {
    assertEquals(2, bends()); // lower and upper edge of the wrist warmer, 28 degrees each
    Files.writeString(
        folder.resolve("garment.json"),
        DESCRIPTION.replace("\"pieces\": [", "\"smoothed\": \"30 °\", \"pieces\": ["));
    assertEquals(0, bends());
    String accepted = refused("\"pieces\": [", "\"smoothed\": \"50°\", \"pieces\": [");
    assertTrue(accepted.contains("to 45 °"), accepted);
  }

  private long bends() {
    return Assembly.of(GarmentFolder.read(folder).pattern()).findings().stream()
        .filter(finding -> finding.id().equals("crossing.not-smooth"))
        .count();
  }

  private double sideOffEase() {
    Pattern pattern = GarmentFolder.read(folder).pattern();
    double front = pattern.piece("front").edge("side").length().toMm();
    double back = pattern.piece("back").edge("side").length().toMm();
    return front - back - pattern.seams().get(0).ease().toMm();
  }
}
