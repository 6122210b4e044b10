package dev.drafting.notebooks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The runner of examples must notice what is wrong with them. */
class ShellTest {
  private static final Path PAGE = Path.of("page.md");

  @TempDir Path folder;

  @Test
  void acceptsWhatIsPromised() {
    run(
        """
        // a remark
        int two = 1 + 1;  // => 2
        "text".length();
        // => 4
        String word = "word";  // => word
        System.out.println("one\\ntwo");
        // => one
        // => two
        Integer.parseInt("x");  // => NumberFormatException: For input string: "x"
        """);
  }

  @Test
  void refusesAnotherValue() {
    refuses("page.md:11: 1 + 2;\npromised: 4", "int a = 1;\n1 + 2;  // => 4\n");
  }

  @Test
  void refusesWhatDoesNotCompile() {
    refuses("page.md:10: int a = \"text\";\ndoes not compile", "int a = \"text\";\n");
  }

  @Test
  void refusesAnExceptionThatIsNotPromised() {
    refuses("threw NumberFormatException", "Integer.parseInt(\"x\");\n");
  }

  @Test
  void refusesAPromiseThatIsNeverChecked() {
    refuses("middle of a statement", "\"text\"  // => text\n    .length();\n");
  }

  @Test
  void refusesHalfAStatement() {
    refuses("not a whole statement", "int a = (1 +\n");
  }

  @Test
  void findsTheBlocksOfJavadoc() throws Exception {
    Path file = folder.resolve("A.java");
    Files.writeString(
        file,
        "/**\n * Text.\n *\n * <pre>{@code\n * f();\n *   g();\n * }</pre>\n */\nclass A {}\n");
    assertEquals(List.of(new Example(file, 5, "f();\n  g();")), Example.ofJavadoc(file));
  }

  @Test
  void findsTheJavaOfMarkdown() throws Exception {
    Path file = folder.resolve("a.md");
    Files.writeString(file, "# A\n```sh\nls\n```\n\n```java\nf();\n```\n");
    assertEquals(List.of(new Example(file, 7, "f();\n")), Example.ofMarkdown(file));
  }

  private static void refuses(String message, String code) {
    AssertionError error = assertThrows(AssertionError.class, () -> run(code));
    assertTrue(String.valueOf(error.getMessage()).contains(message), error.getMessage());
  }

  private static void run(String code) {
    try (Shell shell = new Shell(new Example(PAGE, 1, ""))) {
      shell.run(new Example(PAGE, 10, code));
    }
  }
}
