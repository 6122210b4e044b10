package dev.drafting.notebooks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Runs every example of Javadoc and README, and every notebook, as a user would in JShell.
 *
 * <p>Behind a statement, {@code // => TEXT} promises what it prints. In Javadoc each block stands
 * alone; in README later blocks know what earlier ones declared. All run after the startup script,
 * whose imports must compile.
 */
class DocumentationTest {
  private static final Pattern PUBLIC =
      Pattern.compile(
          "^public (?:final |sealed |abstract )*(?:class|interface|enum|record) ",
          Pattern.MULTILINE);

  private static Shell shell;

  @BeforeAll
  static void openShell() throws IOException {
    shell = new Shell(Project.startup());
  }

  @AfterAll
  static void closeShell() {
    shell.close();
  }

  @TestFactory
  Stream<DynamicTest> javadocOfCore() throws IOException {
    return testsOf("drafting-core");
  }

  @TestFactory
  Stream<DynamicTest> javadocOfKnit() throws IOException {
    return testsOf("drafting-knit");
  }

  @TestFactory
  Stream<DynamicTest> javadocOfExport() throws IOException {
    return testsOf("drafting-export");
  }

  @Test
  void everyPublicTypeHasAnExample() throws IOException {
    List<String> without = new ArrayList<>();
    for (String module : Project.LIBRARIES) {
      for (Path file : Project.sources(module)) {
        if (PUBLIC.matcher(Files.readString(file)).find() && Example.ofJavadoc(file).isEmpty()) {
          without.add(String.valueOf(file.getFileName()));
        }
      }
    }
    assertEquals(List.of(), without);
  }

  @Test
  void readme() throws IOException {
    List<Example> examples = Example.ofMarkdown(Project.README);
    assertFalse(examples.isEmpty(), "README has no Java");
    try {
      examples.forEach(shell::run);
    } finally {
      shell.forget();
    }
  }

  /** The lines of the guide know each other, as a reader types them. */
  @Test
  void guide() throws IOException {
    List<Example> examples = Example.ofMarkdown(Project.GUIDE);
    assertTrue(examples.size() > 10, "the guide has Java for every step");
    try {
      examples.forEach(shell::run);
    } finally {
      shell.forget();
    }
  }

  @TestFactory
  Stream<DynamicTest> notebooks() throws IOException {
    return Project.notebooks().stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    String.valueOf(file.getFileName()), () -> runAlone(Example.ofScript(file))));
  }

  private static Stream<DynamicTest> testsOf(String module) throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    for (Path file : Project.sources(module)) {
      for (Example example : Example.ofJavadoc(file)) {
        String name = file.getFileName() + ":" + example.line();
        tests.add(DynamicTest.dynamicTest(name, () -> runAlone(example)));
      }
    }
    assertFalse(tests.isEmpty(), module + " has no examples");
    return tests.stream();
  }

  private static void runAlone(Example example) {
    try {
      shell.run(example);
    } finally {
      shell.forget();
    }
  }
}
