package dev.drafting.export;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.measure.Length;
import dev.drafting.export.pdf.Paper;
import dev.drafting.export.pdf.ProjectorPdf;
import dev.drafting.export.png.PngFormat;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

class TwoThreadsTest {
  private static final Export VEST = Export.of(TestGarment.vest("vest"));
  private static final List<Export> EXPORTS =
      List.of(
          VEST.pdf(Paper.A4),
          VEST.roll(Length.inches(36)),
          VEST.projector(ProjectorPdf.of().onDark()),
          VEST.svg(),
          VEST.png(PngFormat.of().withResolution(30)),
          VEST.sheet(),
          VEST.sheet(Paper.LETTER),
          VEST.hpgl(),
          VEST.dxf(),
          VEST.store());

  private static byte[] bytes(Export export) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    export.to(out, Progress.none());
    return out.toByteArray();
  }

  @Test
  void aHundredExportsOnTwoThreadsAreThoseOfOne() throws Exception {
    List<byte[]> serial = new ArrayList<>();
    for (Export export : EXPORTS) {
      serial.add(bytes(export));
    }
    List<Callable<byte[]>> hundred = new ArrayList<>();
    for (int i = 0; i < 100; i++) {
      Export export = EXPORTS.get(i * 7 % EXPORTS.size());
      hundred.add(() -> bytes(export));
    }
    ExecutorService threads = Executors.newFixedThreadPool(2);
    try {
      List<Future<byte[]>> done = threads.invokeAll(hundred);
      assertEquals(100, done.size());
      for (int i = 0; i < done.size(); i++) {
        assertArrayEquals(serial.get(i * 7 % EXPORTS.size()), done.get(i).get(), "export " + i);
      }
    } finally {
      threads.shutdownNow();
    }
  }
}
