package dev.drafting.export.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.cut.CutItem;
import dev.drafting.core.cut.CutPlan;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class CutListFileTest {
  @Test
  void readsBackAsItWasWritten() throws IOException {
    CutItem item = CutPlan.of(Pattern.of("Mending", List.of(patch()), List.of())).cutList().get(0);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CutListFile.of(List.of(item, item.withCount(3))).write(out);
    List<CSVRecord> rows =
        CSVFormat.RFC4180
            .parse(new StringReader(out.toString(StandardCharsets.UTF_8)))
            .getRecords();
    assertEquals(
        List.of("name", "fabric", "count", "length_mm", "width_mm", "how"), rows.get(0).toList());
    assertEquals("patch, small", rows.get(1).get(0));
    assertEquals(item.cloth(), rows.get(1).get(1));
    assertEquals(item.count(), Integer.parseInt(rows.get(1).get(2)));
    assertEquals(item.length().toMm(), Double.parseDouble(rows.get(1).get(3)));
    assertEquals(item.width().toMm(), Double.parseDouble(rows.get(1).get(4)));
    assertEquals(item.how(), rows.get(1).get(5));
    assertEquals("3", rows.get(2).get(2));
  }

  private static Piece patch() {
    return Piece.of(
        "patch, small",
        List.of(
            Edge.of("below", Curve.line(new Point(0, 0), new Point(90, 0))),
            Edge.of("right", Curve.line(new Point(90, 0), new Point(90, 60))),
            Edge.of("above", Curve.line(new Point(90, 60), new Point(0, 60))),
            Edge.of("left", Curve.line(new Point(0, 60), new Point(0, 0)))));
  }
}
