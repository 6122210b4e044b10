package dev.drafting.examples;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.examples.service.DraftService;
import java.io.IOException;
import java.io.PrintStream;
import java.net.BindException;
import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/**
 * Drafts garments for other programs over HTTP, until it is stopped: a sample of the library inside
 * other software.
 *
 * @since 0.1
 */
@Command(
    name = "serve-drafts",
    description = "Drafts garments that are sent as zips to POST /draft, on this machine alone.",
    sortOptions = false)
public final class ServeDrafts implements Callable<Integer> {
  private static final int LAST_PORT = 65_535;
  private static final int MOST_SECONDS = 600;

  private final PrintStream out;

  @Option(
      names = "--port",
      paramLabel = "NUMBER",
      defaultValue = "8080",
      description = "Where it listens; 8080 unless given, 0 for any port that is free.")
  private int port;

  @Option(
      names = "--seconds",
      paramLabel = "NUMBER",
      defaultValue = "20",
      description = "How long one garment may take; 20 unless given.")
  private int seconds;

  @Option(names = "--help", usageHelp = true, description = "Shows this help.")
  @SuppressWarnings("UnusedVariable") // the library of options reads it
  private boolean help;

  private ServeDrafts(PrintStream out) {
    this.out = out;
  }

  /**
   * Runs the program until it is stopped.
   *
   * @param args the options, see {@code --help}
   */
  public static void main(String[] args) {
    Program.main(args, ServeDrafts::run);
  }

  /**
   * Runs the program until its thread is interrupted.
   *
   * @param args the options, see {@code --help}
   * @param out where it says where it listens
   * @param err where it says what is wrong
   * @return 0, or 2 if it could not begin
   */
  public static int run(String[] args, PrintStream out, PrintStream err) {
    return Program.run(new ServeDrafts(out), args, out, err);
  }

  @Override
  public Integer call() throws IOException {
    check("the port", port, 0, LAST_PORT);
    check("the time for a garment", seconds, 1, MOST_SECONDS);
    try (DraftService service = DraftService.start(port, Duration.ofSeconds(seconds))) {
      out.println(
          "Send a garment folder as a zip to http://127.0.0.1:" + service.port() + "/draft");
      new CountDownLatch(1).await();
    } catch (BindException e) {
      throw DraftingException.of("the port cannot be had")
          .value(port)
          .accepted("a port that is free; 0 takes any")
          .because(e);
    } catch (InterruptedException e) {
      out.println("Stopped.");
    }
    return 0;
  }

  private static void check(String what, int value, int least, int most) {
    if (value < least || value > most) {
      throw DraftingException.of(what + " is out of bounds")
          .value(value)
          .accepted("a number from " + least + " to " + most);
    }
  }
}
