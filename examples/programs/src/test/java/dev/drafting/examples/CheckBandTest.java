package dev.drafting.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CheckBandTest {
  @TempDir Path folder;

  private Vest.Run run(String options) {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    ByteArrayOutputStream complained = new ByteArrayOutputStream();
    String out = " --out " + folder.resolve("out");
    int code =
        CheckBand.run(
            (options + out).split(" ", -1),
            new PrintStream(said, true, StandardCharsets.UTF_8),
            new PrintStream(complained, true, StandardCharsets.UTF_8));
    return new Vest.Run(
        code, said.toString(StandardCharsets.UTF_8), complained.toString(StandardCharsets.UTF_8));
  }

  private static boolean says(Vest.Run run, String name, String value) {
    return run.out().lines().anyMatch(line -> line.strip().matches(name + " +" + value));
  }

  /** The recorded top (common practice, no source): 5 cm shorter lies flat, 7 cm puckers. */
  @ParameterizedTest
  @CsvSource({
    "--seam 64cm --slope 20 --shorter 5cm, lies flat",
    "--seam 64cm --slope 25 --shorter 7cm, puckers",
    "--opening armhole --seam 42cm --slope 20 --shorter 5cm, lies flat",
    "--opening armhole --seam 42cm --turning 230 --cut 37cm, puckers",
    "--seam 64cm --slope 20 --ratio 99%, gapes",
    "--seam 64cm --slope 20 --loop 30cm, cannot stretch so far"
  })
  void theMakersStripIsJudged(String options, String outcome) throws IOException {
    Vest.Run run = run(options + " --width 13mm --stretch 80%");
    assertEquals("", run.err());
    assertEquals(0, run.code());
    assertTrue(says(run, "it", outcome), run.out());
    String picture = Files.readString(folder.resolve("out/band.svg"));
    assertTrue(picture.contains(">" + outcome + "<") && picture.contains(">three quarters<"));
  }

  /** CV-13, the V point in flat cloth: 48.87 cm. */
  @Test
  void aVPoint() {
    Vest.Run run = run("--seam 62cm --turning 360 --corner 80 --width 2cm --stretch 80%");
    assertTrue(says(run, "edge where the garment ends", "48\\.9 cm"), run.out());
    assertTrue(says(run, "it", "lies flat"));
  }

  @ParameterizedTest
  @CsvSource({
    "--opening hem --edge 90cm --finish rib, Hem waist rib, draws in",
    "--opening wrist --edge 20cm --finish cuff, Wrist cuff, draws in",
    "--edge 60cm --slope 20 --finish strip, Neck strip, hugs",
    "--edge 60cm --slope 20 --finish binding, Neck binding, lies flat"
  })
  void otherFinishes(String options, String name, String outcome) {
    Vest.Run run = run(options + " --width 2cm --stretch 80%");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().startsWith(name + ": "), run.out());
    assertTrue(says(run, "it", outcome), run.out());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--slope 20 --width 13mm --stretch 80% | either --seam or --edge",
        "--seam 64cm --width 13mm --stretch 80% | Accepted: --slope or --turning",
        "--seam 64cm --slope 50 --width 13mm --stretch 80% | Found: 50. Accepted: 0 to 45 degrees",
        "--seam 64kg --slope 20 --width 13mm --stretch 80% | option --seam",
        "--seam 64cm --slope 20 --width 2mm --stretch 80% | option --width",
        "--seam 64cm --slope 20 --width 13mm --stretch 80 | such as 80%",
        "--seam 64cm --slope 20 --width 13mm --stretch much% | this is no number",
        "--seam 64cm --slope 20 --width 13mm --stretch 80% --finish lace | Found: lace",
        "--seam 64cm --slope 20 --width 13mm --stretch 80% --loop 5cm --ratio 80% | one of --ratio",
        "--seam 9cm --turning 360 --width 20mm --stretch 80% | nothing is left of its fold",
        "--seam 64cm --slope 20 --stretch 80% | --width",
      })
  void whatIsWrongIsSaidAndNothingIsWritten(String options, String words) throws IOException {
    Vest.Run run = run(options);
    assertEquals(2, run.code());
    assertTrue(run.err().contains(words), run.err());
    assertFalse(run.err().contains("Exception"));
    assertEquals("", run.out());
    try (var left = Files.list(folder)) {
      assertEquals(List.of(), left.toList());
    }
  }

  @Test
  void theSameMeasuresGiveTheSameBytes() throws IOException {
    String options = "--seam 64cm --slope 20 --width 13mm --stretch 80%";
    Vest.Run first = run(options);
    byte[] picture = Files.readAllBytes(folder.resolve("out/band.svg"));
    assertEquals(first, run(options));
    assertEquals(
        new String(picture, StandardCharsets.UTF_8),
        Files.readString(folder.resolve("out/band.svg")));
  }
}
