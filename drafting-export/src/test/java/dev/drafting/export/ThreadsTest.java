package dev.drafting.export;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.export.drawing.DraftDrawing;
import dev.drafting.export.pdf.Paper;
import dev.drafting.export.pdf.TiledPdf;
import dev.drafting.export.sheet.MakingUpSheet;
import dev.drafting.export.store.StoredDraft;
import dev.drafting.export.store.sample.RandomDraft;
import dev.drafting.export.svg.SvgFormat;
import dev.drafting.knit.Draft;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Many threads on the same values say what one alone says of values of its own. */
class ThreadsTest {
  private static final int THREADS = 8;
  private static final int DRAFTS = 12;

  private static final List<Function<Draft, String>> QUESTIONS =
      List.of(
          draft -> draft.findings().toString(),
          draft -> draft.cutPieces().toString(),
          draft -> draft.strips().toString(),
          draft -> draft.goods() + " " + draft.orderOfWork(),
          draft -> draft.lay("body").plan(1, 0).pieces().toString(),
          draft -> StoredDraft.of(draft).toJson(),
          draft -> drawn(draft, out -> SvgFormat.of().write(DraftDrawing.of(draft), out)),
          draft -> drawn(draft, out -> TiledPdf.on(Paper.A4).write(DraftDrawing.of(draft), out)),
          draft -> drawn(draft, out -> MakingUpSheet.of(draft, DraftDrawing.of(draft)).write(out)));

  /** Writes to memory. */
  private interface Writing {
    void to(ByteArrayOutputStream out) throws IOException;
  }

  private static String drawn(Draft draft, Writing writing) {
    try {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      writing.to(out);
      return draft.name() + out.toString(StandardCharsets.ISO_8859_1);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Draft> drafts() {
    Stream<Draft> random =
        LongStream.range(0, DRAFTS).mapToObj(RandomDraft::of).map(StoredDraft::draft);
    return Stream.concat(Stream.of(TestGarment.vest("vest")), random).toList();
  }

  private static String answer(Draft draft, int question) {
    try {
      return QUESTIONS.get(question).apply(draft);
    } catch (DraftingException e) {
      return "refused: " + e.getMessage();
    }
  }

  @Test
  void manyAtOnceSayWhatOneAloneSays() throws Exception {
    List<Draft> alone = drafts();
    List<Draft> shared = drafts();
    ExecutorService threads = Executors.newFixedThreadPool(THREADS);
    try {
      for (int d = 0; d < shared.size(); d++) {
        Draft draft = shared.get(d);
        List<Callable<String>> asking =
            IntStream.range(0, 2 * QUESTIONS.size())
                .<Callable<String>>mapToObj(i -> () -> answer(draft, i % QUESTIONS.size()))
                .toList();
        List<Future<String>> answers = threads.invokeAll(asking);
        for (int i = 0; i < answers.size(); i++) {
          String expected = answer(alone.get(d), i % QUESTIONS.size());
          assertEquals(expected, answers.get(i).get(), "draft " + d + ", question " + i);
        }
      }
    } finally {
      threads.shutdown();
    }
  }
}
