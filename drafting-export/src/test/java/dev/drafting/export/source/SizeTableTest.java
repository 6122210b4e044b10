package dev.drafting.export.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.template.SizeRun;
import dev.drafting.core.template.Templates;
import dev.drafting.knit.size.BodySizes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SizeTableTest {
  private static final String CREW =
      "\uFEFFsize, chest,length\r\nS,88 cm,60 cm\r\nM,92 cm,\r\nL,\"37 3/4 in\",64 cm\r\n";

  @TempDir Path folder;

  private SizeRun read(String table) throws IOException {
    return SizeTable.read(Files.writeString(folder.resolve("crew.csv"), table));
  }

  private String refused(String table) {
    return String.valueOf(assertThrows(DraftingException.class, () -> read(table)).getMessage());
  }

  @Test
  void aTemplateComesInTheSizesOfTheTable() throws IOException {
    SizeRun crew = read(CREW);
    assertEquals(List.of("S", "M", "L"), crew.names());
    assertEquals(Length.mm(958.85), crew.dimensions("L").length("chest"));
    assertEquals(Map.of("chest", Length.cm(92)), crew.dimensions("M").lengths());
    Map<String, Pattern> drawn = crew.patterns(Templates.installed().get("sleeveless-top"));
    assertEquals(List.of("S", "M", "L"), List.copyOf(drawn.keySet()));
  }

  @Test
  void saysWhatIsWrongAndWhere() {
    assertEquals(
        "crew.csv, line 3, column chest: a length has no unit that is known. Found: 92. Accepted: a"
            + " number and mm, cm or in, such as \"6 mm\", \"2.5 cm\" or \"1 1/4 in\".",
        refused("size,chest\nS,88 cm\nM,92\n"));
    assertTrue(
        refused("size,chest\nS,88 cm\nS,92 cm\n").startsWith("crew.csv, line 3: a size has"));
    assertTrue(refused("chest,length\n1,2\n").contains("does not name the columns"));
    assertTrue(refused("size,chest,chest\nS,1 cm,2 cm\n").contains("does not name the columns"));
    assertTrue(refused("size,chest\nS\n").contains("another number of cells"));
    assertTrue(refused("size,chest\n,88 cm\n").contains("column size: a name cannot be used"));
    assertTrue(refused("").contains("the table has no sizes"));
    assertTrue(refused("size,chest\n").contains("the table has no sizes"));
  }

  private BodySizes bodies(String table) throws IOException {
    return SizeTable.readBodies(Files.writeString(folder.resolve("bodies.csv"), table));
  }

  private String refusedBodies(String table) {
    return String.valueOf(assertThrows(DraftingException.class, () -> bodies(table)).getMessage());
  }

  @Test
  void bodiesGoByTheMeasureThatIsNamedFirst() throws IOException {
    BodySizes sizes = bodies("size,bust girth,hip girth\nS,86 cm,\nM,92 cm,98 cm\n");
    assertEquals("sizes by bust girth: S, M", sizes.toString());
    assertEquals("bust girth 86 cm", sizes.body("S").toString());
    assertEquals("89 cm to 95 cm", sizes.interval("M").toString());
  }

  @Test
  void saysWhatIsWrongWithBodies() {
    assertTrue(
        refusedBodies("size,bust\nS,86 cm\n")
            .startsWith("bodies.csv, line 2: there is no such measure of the body. Found: bust."));
    assertTrue(
        refusedBodies("size,bust girth\nS,86 cm\nM,920 cm\n")
            .startsWith("bodies.csv, line 3: bust girth: the measure of the body is out of range"));
    assertTrue(refusedBodies("size,bust girth\nS,86 cm\nS,92 cm\n").contains("of its own"));
    assertTrue(refusedBodies("size,bust girth\nS,86 cm\nM,80 cm\n").contains("do not grow"));
    assertTrue(refusedBodies("size,height,hip girth\nS,,90 cm\n").contains("no main measure"));
    assertTrue(refusedBodies("size,height\n").contains("the table has no sizes"));
  }

  /** Seeded damage: still a table, or refused in words. */
  @Test
  void damagedTablesAreReadOrRefused() {
    Random random = new Random(3);
    int read = 0;
    for (int i = 0; i < 1_000; i++) {
      StringBuilder damaged = new StringBuilder(CREW);
      int at = random.nextInt(damaged.length());
      switch (random.nextInt(3)) {
        case 0 -> damaged.setCharAt(at, (char) (32 + random.nextInt(95)));
        case 1 -> damaged.delete(at, Math.min(damaged.length(), at + random.nextInt(20)));
        default -> damaged.insert(at, CREW, at / 2, at / 2 + random.nextInt(10));
      }
      try {
        read += read(damaged.toString()).names().isEmpty() ? 0 : 1;
      } catch (DraftingException e) {
        assertTrue(!e.what().isEmpty() && !e.accepted().isEmpty(), () -> "not helpful: " + e);
      } catch (IOException e) {
        throw new AssertionError(e);
      }
    }
    assertTrue(read > 50 && read < 990, "read " + read);
  }
}
