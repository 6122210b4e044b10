package dev.drafting.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.template.Templates;
import dev.drafting.export.drawing.NestedDrawing;
import dev.drafting.export.pdf.Paper;
import dev.drafting.export.pdf.ProjectorPdf;
import dev.drafting.export.png.PngFormat;
import dev.drafting.export.sheet.Tape;
import dev.drafting.export.svg.SvgFormat;
import dev.drafting.knit.Draft;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.size.BodySizes;
import dev.drafting.knit.size.FittedTemplate;
import dev.drafting.knit.size.MadeToMeasure;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every garment of the library in its usual size, made to measure and in all sizes, written in
 * every format by many threads at once from the same values, is what one thread alone writes from
 * values of its own.
 */
class GarmentThreadsTest {
  private static final int THREADS = 8;

  private static final List<UnaryOperator<Export>> FORMATS =
      List.of(
          export -> export.pdf(Paper.A4),
          export -> export.wide(Paper.A0),
          export -> export.roll(Length.inches(36)),
          export -> export.projector(ProjectorPdf.of().onDark()),
          Export::svg,
          export -> export.png(PngFormat.of().withResolution(20)),
          Export::sheet,
          export -> export.sheet(Tape.INCH),
          export -> export.sheet(Paper.LETTER),
          export -> export.gauge(Paper.A4),
          Export::hpgl,
          Export::dxf,
          Export::pieces,
          Export::csv,
          Export::chalking,
          Export::store);

  @TempDir Path work;

  /** One thing to ask; what comes back tells all its bytes. */
  private record Question(String about, Callable<String> asked) {
    String answer() throws Exception {
      try {
        return asked.call();
      } catch (DraftingException e) {
        return "refused: " + e.getMessage();
      }
    }
  }

  private List<Question> questions(String where) {
    List<Question> questions = new ArrayList<>();
    for (String id : Templates.installed().ids()) {
      FittedTemplate template = (FittedTemplate) Templates.installed().get(id);
      Draft usual = cut(Draft.of(template.pattern()));
      for (int i = 0; i < FORMATS.size(); i++) {
        Export export = FORMATS.get(i).apply(Export.of(usual));
        Path folder = work.resolve(where + id + i);
        questions.add(new Question(export.toString(), () -> files(export, folder)));
      }
      for (BodySizes table : List.of(BodySizes.women(), BodySizes.children())) {
        for (int size : List.of(2, table.names().size() / 2)) {
          String name = table.names().get(size);
          BodySizes some = table.between(name, table.names().get(size + 1));
          MadeToMeasure order = MadeToMeasure.of(template, table.body(name), fabric(0.5));
          questions.add(new Question("an order, " + id, () -> order(order)));
          questions.add(new Question("sizes, " + id, () -> sizes(id, some, order)));
        }
      }
    }
    return questions;
  }

  private static Fabric fabric(double stretch) {
    return Fabric.of("jersey " + stretch, Structure.JERSEY, stretch).withRecovery(0.95);
  }

  private static Draft cut(Draft draft) {
    Draft made = draft.withFabric("body", fabric(0.5));
    return made.withFabric("rib", fabric(0.8)).withFabric("binding", fabric(0.6));
  }

  private static String files(Export export, Path folder) throws IOException {
    StringBuilder text = new StringBuilder();
    for (WrittenFile file : export.to(folder, Progress.none())) {
      text.append(file.path().getFileName()).append(' ');
      text.append(Arrays.hashCode(Files.readAllBytes(file.path()))).append(' ');
    }
    return text.toString();
  }

  private static String order(MadeToMeasure order) {
    Draft draft = cut(Draft.of(order.pattern()));
    return order.findings() + " " + draft.findings() + draft.goods() + draft.orderOfWork();
  }

  private static String sizes(String id, BodySizes table, MadeToMeasure order) {
    try {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      SvgFormat.of().write(NestedDrawing.of(id, table.patterns(order)), out);
      return String.valueOf(Arrays.hashCode(out.toByteArray()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void manyAtOnceWriteWhatOneAloneWrites() throws Exception {
    List<String> alone = new ArrayList<>();
    Set<String> made = new HashSet<>();
    for (Question question : questions("alone ")) {
      String answer = question.answer();
      alone.add(answer);
      made.addAll(answer.startsWith("refused") ? List.of() : List.of(question.about()));
    }
    List<Question> shared = questions("shared ");
    ExecutorService threads = Executors.newFixedThreadPool(THREADS);
    try {
      List<Future<String>> answers =
          threads.invokeAll(
              shared.stream().<Callable<String>>map(question -> question::answer).toList());
      for (int i = 0; i < shared.size(); i++) {
        assertEquals(alone.get(i), answers.get(i).get(), shared.get(i).about());
      }
    } finally {
      threads.shutdown();
    }
    assertEquals(240, shared.size());
    shared.forEach(question -> assertTrue(made.contains(question.about()), question.about()));
  }
}
