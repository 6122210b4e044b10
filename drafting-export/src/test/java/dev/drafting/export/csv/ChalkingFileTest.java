package dev.drafting.export.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.cut.ChalkTable;
import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.cut.CutPlan;
import dev.drafting.export.TestGarment;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChalkingFileTest {
  /** Hem 20 mm turned up: the fold begins at the foot of the paper, the waist notch at 200 mm. */
  @Test
  void everyPointAndNotchHasItsRow() throws IOException {
    List<CutPiece> pieces = CutPlan.of(TestGarment.pattern()).pieces();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ChalkingFile.of(pieces).write(out);
    List<String> rows = out.toString(StandardCharsets.UTF_8).lines().toList();
    assertEquals("piece,point,line,up_mm,across_mm", rows.get(0));
    assertEquals("front,1,hem,0.0,0.0", rows.get(1));
    int points =
        pieces.stream()
            .map(ChalkTable::of)
            .mapToInt(table -> table.points().size() + table.notches().size())
            .sum();
    assertEquals(1 + points, rows.size());
    assertTrue(rows.contains("front,,notch waist,220.0,237.0"), rows.toString());
  }
}
