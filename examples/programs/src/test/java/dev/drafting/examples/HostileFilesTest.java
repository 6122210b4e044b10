package dev.drafting.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.examples.damage.Door;
import dev.drafting.examples.damage.Doors;
import dev.drafting.export.source.CutOutlines;
import dev.drafting.export.source.GarmentFolder;
import dev.drafting.export.source.SizeTable;
import dev.drafting.export.store.StoredDraft;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files that were written to reach out of themselves, to be read twofold or to overflow. */
class HostileFilesTest {
  @TempDir static Path written;
  private static Doors doors;

  @TempDir Path folder;

  @BeforeAll
  static void open() throws IOException {
    doors = Doors.open(Vest.FOLDER, written);
  }

  @AfterAll
  static void close() {
    doors.close();
  }

  private String refusal(Executable reading) {
    DraftingException refusal = assertThrows(DraftingException.class, reading);
    assertFalse(refusal.accepted().isEmpty(), () -> "not helpful: " + refusal);
    return String.valueOf(refusal.getMessage());
  }

  private void assertRefused(String door, String what, String by) throws IOException {
    Door hostile = doors.door(door);
    String sound = new String(hostile.sound(), StandardCharsets.UTF_8);
    assertTrue(sound.contains(what), () -> door + " has no " + what);
    String changed = sound.replace(what, by);
    assertFalse(hostile.takes(changed.getBytes(StandardCharsets.UTF_8)), () -> door + by);
  }

  @ParameterizedTest
  @CsvSource({"tracing.svg", "cut.svg"})
  void entitiesAreNeitherExpandedNorFetched(String door) throws IOException {
    Path secret = Files.writeString(folder.resolve("secret"), "M 0 0 L 9 9");
    assertRefused(door, "<svg", "<!DOCTYPE svg SYSTEM '" + secret.toUri() + "'><svg");
    assertRefused(door, "<svg", "<!DOCTYPE svg [<!ENTITY a SYSTEM '" + secret.toUri() + "'>]><svg");
    StringBuilder laughs = new StringBuilder("<!DOCTYPE svg [<!ENTITY a0 'ha'>");
    for (int i = 1; i < 30; i++) {
      laughs.append("<!ENTITY a").append(i).append(" '");
      laughs.append(("&a" + (i - 1) + ";").repeat(10)).append("'>");
    }
    assertRefused(door, "<svg", laughs + "]><svg");
    assertRefused(door, "<path", "&a;<path");
    assertRefused(door, " d=", " x='&a;' d=");
    assertRefused(door, "<path", "<image href='" + secret.toUri() + "'/><path");
    assertRefused(door, "<path", "<style>@import '" + secret.toUri() + "'</style><script/><path");
  }

  @ParameterizedTest
  @CsvSource({
    "garment.json, '\"name\"', '\"name\" : \"other\", \"name\"'",
    "stored draft, '\"format\"', '\"format\" : \"other\", \"format\"'",
    "stored draft, '\"name\"', '\"name\" : \"other\", \"name\"'"
  })
  void aFieldGivenTwiceIsRefused(String door, String what, String by) throws IOException {
    assertRefused(door, what, by);
  }

  @ParameterizedTest
  @CsvSource({
    "garment.json, ' mm\"', 'e999 mm\"'",
    "garment.json, ' mm\"', '00000000000000000000 mm\"'",
    "stored draft, ' mm\"', 'e999 mm\"'",
    "stored draft, '\"version\" : 1', '\"version\" : 1e999'",
    "stored draft, '\"version\" : 1', '\"version\" : 4294967297'",
    "stored draft, '\"version\" : 1', '\"version\" : 1.5'",
    "sizes.csv, 98 cm, 1e999 cm",
    "sizes.csv, 98 cm, 98000000000000 cm",
    "tracing.csv, .5, 999999999999999",
    "tracing.svg, ' L', ' L 1e999'",
    "cut.dxf, '.5', '.5e999'"
  })
  void numbersThatOverflowAreRefused(String door, String what, String by) throws IOException {
    assertRefused(door, what, by);
  }

  @Test
  void whatIsNoPlainFileIsRefused() throws IOException {
    Path endless = Files.createSymbolicLink(folder.resolve("endless.svg"), Path.of("/dev/zero"));
    Path round = Files.createSymbolicLink(folder.resolve("round.svg"), Path.of("round.svg"));
    Path place = Files.createSymbolicLink(folder.resolve("folder.svg"), folder);
    for (Path hostile : List.of(endless, round, place)) {
      assertTrue(refusal(() -> CutOutlines.read(hostile)).contains(".svg"));
      assertTrue(refusal(() -> StoredDraft.read(hostile)).contains(".svg"));
      assertTrue(refusal(() -> SizeTable.read(hostile)).contains(".svg"));
      assertFalse(refusal(() -> GarmentFolder.read(hostile)).isEmpty());
      Files.delete(hostile);
    }
  }

  @Test
  void aLinkInAGarmentFolderIsFollowedToAPlainFileOnly() throws IOException {
    Path garment = Vest.copyTo(folder.resolve("vest"));
    Path tracing = garment.resolve(GarmentFolder.TRACING);
    Path elsewhere = Files.move(tracing, folder.resolve("elsewhere.csv"));
    Files.createSymbolicLink(tracing, elsewhere);
    assertEquals(3, GarmentFolder.read(garment).makes().size());
    Files.delete(tracing);
    Files.createSymbolicLink(tracing, Path.of("/dev/zero"));
    assertEquals(
        "tracing.csv: this is no plain file. Accepted: a text file.",
        refusal(() -> GarmentFolder.read(garment)));
    Files.delete(tracing);
  }

  @Test
  void namesCannotBePaths() throws IOException {
    assertRefused("tracing.csv", "front,", "../../front,");
    assertRefused("garment.json", "\"front\"", "\"../front\"");
    assertRefused("sizes.csv", "second L", "../L");
  }
}
