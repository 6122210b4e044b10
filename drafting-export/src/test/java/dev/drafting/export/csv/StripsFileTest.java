package dev.drafting.export.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.measure.Length;
import dev.drafting.export.Export;
import dev.drafting.export.Progress;
import dev.drafting.export.TestGarment;
import dev.drafting.knit.Draft;
import dev.drafting.knit.Measure;
import dev.drafting.knit.band.Strip;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StripsFileTest {
  private final Draft draft = TestGarment.vest("vest");

  @TempDir Path folder;

  private List<CSVRecord> rows(String ending) throws IOException {
    var unused = Export.of(draft).csv().to(folder, Progress.none());
    try (Reader reader = Files.newBufferedReader(folder.resolve("vest" + ending))) {
      return CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .get()
          .parse(reader)
          .getRecords();
    }
  }

  @Test
  void stripsReadBackAsTheyWereWritten() throws IOException {
    List<CSVRecord> rows = rows(StripsFile.FILE_ENDING);
    assertEquals(draft.strips().size(), rows.size());
    for (int i = 0; i < rows.size(); i++) {
      Strip strip = draft.strips().get(i);
      CSVRecord row = rows.get(i);
      assertEquals(strip.name(), row.get("name"));
      assertEquals(strip.finish().cloth(), row.get("fabric"));
      assertEquals(strip.cutLength().toMm(), number(row, "cut_length_mm"));
      assertEquals(strip.cutWidth().toMm(), number(row, "cut_width_mm"));
      assertEquals(strip.finishedEdge().toMm(), number(row, "finished_edge_mm"));
      assertEquals(strip.outcome().plainName(), row.get("outcome"));
      double stretch = number(row, "join_line_mm") / number(row, "loop_mm") - 1;
      assertEquals(stretch, number(row, "stretch_percent") / 100, 1e-9);
    }
  }

  @Test
  void measuresReadBackAsTheyWereWritten() throws IOException {
    List<Measure> measures =
        rows(MeasuresFile.FILE_ENDING).stream()
            .map(row -> new Measure(row.get("name"), Length.mm(number(row, "length_mm"))))
            .toList();
    assertEquals(draft.measures(), measures);
  }

  @Test
  void filesSayHowManyThereAre() {
    assertEquals("strips: 1", StripsFile.of(draft.strips().subList(0, 1)).toString());
    assertEquals("measures: 0", MeasuresFile.of(List.of()).toString());
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }
}
