package dev.drafting.notebooks;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import jdk.jshell.EvalException;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

/** Runs examples statement by statement and compares what they print with what they promise. */
final class Shell implements AutoCloseable {
  private static final Pattern SPACE = Pattern.compile("(?:\\s+|//(?! =>)[^\\n]*)+");

  private static final Pattern COMMENTED =
      Pattern.compile("(.*?[;}])\\s*(?://[^\\n]*\\s*)*", Pattern.DOTALL);

  private final ByteArrayOutputStream printed = new ByteArrayOutputStream();
  private final PrintStream out = new PrintStream(printed, true, StandardCharsets.UTF_8);
  private final JShell shell;
  private final Set<Snippet> ofStartup;

  Shell(Example startup) {
    shell = JShell.builder().executionEngine("local").out(out).build();
    shell.addToClasspath(System.getProperty("java.class.path"));
    run(startup);
    ofStartup = shell.snippets().collect(Collectors.toSet());
  }

  /** Runs an example; what it declares stays. */
  void run(Example example) {
    int at = space(example.code());
    while (at < example.code().length()) {
      at = step(example, at);
    }
  }

  /** Forgets what the examples declared, but neither what they imported nor the startup script. */
  void forget() {
    shell
        .snippets()
        .filter(snippet -> snippet.kind() != Snippet.Kind.IMPORT && !ofStartup.contains(snippet))
        .filter(snippet -> shell.status(snippet).isActive())
        .toList()
        .forEach(shell::drop);
  }

  @Override
  public void close() {
    shell.close();
  }

  private int step(Example example, int at) {
    String code = example.code();
    String place = example.file() + ":" + (example.line() + breaks(code, at)) + ": ";
    CompletionInfo statement = shell.sourceCodeAnalysis().analyzeCompletion(code.substring(at));
    if (!statement.completeness().isComplete()) {
      throw new AssertionError(place + "not a whole statement: " + code.substring(at));
    }
    String source = withoutComments(statement.source());
    if (source.contains("// =>")) {
      throw new AssertionError(place + "a promise in the middle of a statement");
    }
    Outcome outcome = evaluate(source, place);
    int end = at + source.length();
    Promise promise = Promise.at(code.substring(end));
    promise.check(outcome, place + source.strip());
    int next = end + promise.length();
    return next + space(code.substring(next));
  }

  private static String withoutComments(String source) {
    Matcher matcher = COMMENTED.matcher(source);
    return matcher.matches() ? matcher.group(1) : source;
  }

  private Outcome evaluate(String source, String place) {
    printed.reset();
    PrintStream before = System.out;
    System.setOut(out);
    try {
      SnippetEvent event =
          shell.eval(source).stream()
              .filter(each -> each.causeSnippet() == null)
              .findFirst()
              .orElseThrow();
      return outcome(event, place + source.strip());
    } finally {
      System.setOut(before);
    }
  }

  private Outcome outcome(SnippetEvent event, String place) {
    if (event.status() != Snippet.Status.VALID) {
      throw new AssertionError(place + "\ndoes not compile: " + faults(event.snippet()));
    }
    if (event.exception() instanceof EvalException thrown) {
      String name = thrown.getExceptionClassName();
      String text = name.substring(name.lastIndexOf('.') + 1) + ": " + thrown.getMessage();
      return new Outcome(text, true);
    }
    if (event.exception() != null) {
      throw new AssertionError(place, event.exception());
    }
    String text = printed.toString(StandardCharsets.UTF_8).strip();
    return new Outcome(text.isEmpty() && event.value() != null ? event.value() : text, false);
  }

  private String faults(Snippet snippet) {
    return shell
        .diagnostics(snippet)
        .map(fault -> fault.getMessage(Locale.ROOT))
        .collect(Collectors.joining("\n"));
  }

  private static int breaks(String code, int end) {
    return (int) code.substring(0, end).chars().filter(c -> c == '\n').count();
  }

  /** How much of the text's beginning is blank or a comment that promises nothing. */
  private static int space(String text) {
    Matcher matcher = SPACE.matcher(text);
    return matcher.lookingAt() ? matcher.end() : 0;
  }
}
