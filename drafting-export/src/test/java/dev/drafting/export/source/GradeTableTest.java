package dev.drafting.export.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.grade.GradeRule;
import dev.drafting.core.measure.Length;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GradeTableTest {
  private static final String HEAD = "piece,edge,next edge,across,along\n";

  @TempDir Path folder;

  private List<GradeRule> read(String table) throws IOException {
    return GradeTable.read(Files.writeString(folder.resolve("grades.csv"), table));
  }

  private String refused(String table) {
    return String.valueOf(assertThrows(DraftingException.class, () -> read(table)).getMessage());
  }

  @Test
  void readsARuleForEachCorner() throws IOException {
    assertEquals(
        List.of(
            GradeRule.of("front", "side", "armhole", Length.mm(10), Length.ZERO),
            GradeRule.of("front", "neck", "fold", Length.ZERO, Length.inches("1/8"))),
        read(HEAD + "front,side,armhole,10 mm,\nfront,neck,fold,,1/8 in\n"));
  }

  @Test
  void saysWhatIsWrongAndWhere() {
    assertTrue(
        refused(HEAD + "front,side,armhole,10,\n")
            .startsWith("grades.csv, line 2, column across: a length has no unit"));
    assertTrue(refused("piece,edge,across,along\n").contains("does not name the columns"));
    assertTrue(refused(HEAD).contains("the table has no grade rules"));
    assertTrue(
        refused("piece,edge,next edge,along,across\nfront,side,hem,,\n")
            .contains("the table has no grade rules"));
    assertTrue(
        refused(HEAD + "front,,hem,,\n").contains("line 2, column edge: a name cannot be used"));
  }
}
