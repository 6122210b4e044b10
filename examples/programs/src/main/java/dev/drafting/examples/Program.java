package dev.drafting.examples;

import dev.drafting.core.finding.DraftingException;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/** How every program here is run, and how it says what is wrong. */
final class Program {
  private static final int FAILED = 2;

  private Program() {}

  /** Runs a command of its own streams, and ends the Java machine with its exit code. */
  interface Run {
    int with(String[] args, PrintStream out, PrintStream err);
  }

  static void main(String[] args, Run run) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
    int code = run.with(args, out, err);
    if (code != 0) {
      System.exit(code);
    }
  }

  /** Gives 0, or 2 when something was wrong and nothing was written. */
  static int run(Callable<Integer> command, String[] args, PrintStream out, PrintStream err) {
    CommandLine line = new CommandLine(command);
    line.setOut(new PrintWriter(out, true, StandardCharsets.UTF_8));
    line.setErr(new PrintWriter(err, true, StandardCharsets.UTF_8));
    line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
    line.setExecutionExceptionHandler((fault, failed, parsed) -> failed(err, message(fault)));
    line.setParameterExceptionHandler(
        (fault, wrong) -> failed(err, fault.getMessage() + " Ask for --help."));
    return line.execute(args);
  }

  private static int failed(PrintStream err, String message) {
    err.println(message);
    err.println("Nothing was written.");
    return FAILED;
  }

  private static String message(Exception fault) {
    if (fault instanceof DraftingException) {
      return String.valueOf(fault.getMessage());
    }
    if (fault instanceof IOException) {
      return "The files cannot be written: " + fault.getMessage() + ".";
    }
    return "The program failed and should not have: " + fault + ".";
  }
}
