package dev.drafting.notebooks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A piece of Java that stands in a document.
 *
 * @param file where it stands
 * @param line the first line of its code, counted from 1
 * @param code the statements
 */
record Example(Path file, int line, String code) {
  private static final Pattern JAVADOC =
      Pattern.compile("<pre>\\{@code\\n(.*?)\\n[ \\t]*\\*[ \\t]*}</pre>", Pattern.DOTALL);
  private static final Pattern MARKDOWN =
      Pattern.compile("^```java\\n(.*?)^```", Pattern.DOTALL | Pattern.MULTILINE);
  private static final Pattern STAR = Pattern.compile("(?m)^[ \\t]*\\*? ?");
  private static final Pattern COMMAND = Pattern.compile("(?m)^/(?!/).*$");

  /** The blocks of a Java source's comments. */
  static List<Example> ofJavadoc(Path file) throws IOException {
    return find(file, JAVADOC, STAR);
  }

  /** The Java blocks of a Markdown page. */
  static List<Example> ofMarkdown(Path file) throws IOException {
    return find(file, MARKDOWN, Pattern.compile("$^"));
  }

  /** A whole script, without the commands to the tool that runs it. */
  static Example ofScript(Path file) throws IOException {
    return new Example(file, 1, COMMAND.matcher(Files.readString(file)).replaceAll(""));
  }

  private static List<Example> find(Path file, Pattern block, Pattern margin) throws IOException {
    String text = Files.readString(file);
    List<Example> found = new ArrayList<>();
    Matcher matcher = block.matcher(text);
    while (matcher.find()) {
      int line = 1 + (int) text.substring(0, matcher.start(1)).lines().count();
      found.add(new Example(file, line, margin.matcher(matcher.group(1)).replaceAll("")));
    }
    return found;
  }
}
