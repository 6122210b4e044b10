package dev.drafting.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.template.GarmentTemplate;
import dev.drafting.core.template.TemplateContractTest;
import dev.drafting.core.template.Templates;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OwnTemplateTest implements TemplateContractTest {
  @TempDir Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(Path target) {
    return OwnTemplate.run(
        new String[] {"--out", target.toString()},
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8));
  }

  /** This is all that it takes to test a template of one's own. */
  @Override
  public GarmentTemplate template() {
    return new LegWarmer();
  }

  @Override
  public int tries() {
    return 2000;
  }

  @Test
  void worksBesideThoseThatAreBuiltIn() {
    Templates all = Templates.installed().with(new LegWarmer());
    assertEquals("Leg warmers", all.get("leg-warmer").pattern().name());
  }

  @Test
  void isDraftedAndWritten() throws Exception {
    assertEquals(0, run(folder.resolve("made")), err.toString(StandardCharsets.UTF_8));
    String said = out.toString(StandardCharsets.UTF_8);
    assertTrue(said.contains("Drawn from 200 sets of dimensions: it keeps the contract"), said);
    assertTrue(said.contains("  leg, length at the centre: 40 cm"), said);
    assertTrue(said.contains("lower end cuff: cut "), said);
    try (Stream<Path> files = Files.list(folder.resolve("made").resolve("leg-warmer"))) {
      assertEquals(3, files.count());
    }
  }

  @Test
  void leavesNothingBehindWhereItCannotWrite() throws Exception {
    Path taken = Files.writeString(folder.resolve("taken"), "");
    assertEquals(2, run(taken));
    assertTrue(err.toString(StandardCharsets.UTF_8).contains("Nothing was written."));
  }

  /** README's chapter on templates shows the class as it stands in its file. */
  @Test
  void readmeShowsIt() throws Exception {
    String source = Files.readString(Path.of("src/main/java/dev/drafting/examples/LegWarmer.java"));
    String garment = source.substring(source.indexOf("class LegWarmer"));
    assertTrue(Files.readString(Path.of("..", "..", "README.md")).contains(garment));
  }
}
