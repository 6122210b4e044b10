import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Mutation testing of drafting-core and drafting-knit, package by package, from the smallest to the largest: java
 * .ci/Mutation.java, or with the names of packages such as core.measure. What is measured already stands in
 * MODULE/target/mutation and is not measured again, so that it can be stopped and begun again at any time; to measure a
 * package again, delete its folder there. Of a package that is named, every change that its tests did not notice is told.
 *
 * <p>A change is noticed if a test fails, or runs on for so long that it was stopped; how many were only stopped stands
 * in a column of its own, because a machine that is busy stops tests that would have passed. Tests that could not be run
 * at all count as not noticed.
 */
class Mutation {
  private static final List<String> MODULES = List.of("core", "knit");
  private static final Pattern CHANGE =
      Pattern.compile(
          "<mutation [^>]*status='(\\w+)'.*?<sourceFile>(.*?)</sourceFile>.*?<lineNumber>(.*?)</lineNumber>"
              + ".*?<description>(.*?)</description>");

  public static void main(String[] args) throws IOException, InterruptedException {
    List<Path> packages = packages();
    for (Path sources : packages) {
      String name = name(sources);
      if ((args.length == 0 || List.of(args).contains(name)) && !Files.exists(report(sources))) {
        measure(sources);
      }
    }
    System.out.println("package | changes | noticed by its tests | of them only by running on | %");
    List<Change> all = new ArrayList<>();
    for (Path sources : packages) {
      if (Files.exists(report(sources))) {
        List<Change> changes = changes(Files.readString(report(sources)));
        all.addAll(changes);
        row(name(sources), changes);
        if (List.of(args).contains(name(sources))) {
          changes.stream().filter(change -> !change.isNoticed()).forEach(System.out::println);
        }
      }
    }
    row("all of these", all);
  }

  /** A change of the code, and what became of it. */
  private record Change(String status, String file, String line, String what) {
    boolean isNoticed() {
      return status.equals("KILLED") || status.equals("MEMORY_ERROR") || isStopped();
    }

    boolean isStopped() {
      return status.equals("TIMED_OUT");
    }

    @Override
    public String toString() {
      return "  " + file + ":" + line + " " + what;
    }
  }

  private static List<Change> changes(String report) {
    return CHANGE
        .matcher(report)
        .results()
        .map(found -> new Change(found.group(1), found.group(2), found.group(3), found.group(4)))
        .toList();
  }

  private static void row(String name, List<Change> changes) {
    long noticed = changes.stream().filter(Change::isNoticed).count();
    long stopped = changes.stream().filter(Change::isStopped).count();
    double percent = changes.isEmpty() ? 100 : 100.0 * noticed / changes.size();
    System.out.printf(Locale.ROOT, "%s | %d | %d | %d | %.1f%n", name, changes.size(), noticed, stopped, percent);
  }

  private static List<Path> packages() throws IOException {
    List<Path> packages = new ArrayList<>();
    for (String module : MODULES) {
      Path sources = Path.of("drafting-" + module, "src", "main", "java", "dev", "drafting", module);
      try (Stream<Path> all = Files.walk(sources)) {
        all.filter(Files::isDirectory).filter(folder -> size(folder) > 0).forEach(packages::add);
      }
    }
    packages.sort((a, b) -> Long.compare(size(a), size(b)));
    return packages;
  }

  /** The bytes of its code. */
  private static long size(Path sources) {
    try (Stream<Path> all = Files.list(sources)) {
      return all.filter(Mutation::isCode).mapToLong(file -> file.toFile().length()).sum();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static boolean isCode(Path file) {
    return Files.isRegularFile(file) && !file.endsWith("package-info.java");
  }

  private static String name(Path sources) {
    return sources.subpath(6, sources.getNameCount()).toString().replace('/', '.');
  }

  private static Path report(Path sources) {
    return sources.subpath(0, 1).resolve(Path.of("target", "mutation", name(sources), "mutations.xml"));
  }

  private static void measure(Path sources) throws IOException, InterruptedException {
    String module = sources.subpath(0, 1).toString();
    System.err.println("measuring " + name(sources));
    Files.createDirectories(Path.of(module, "target"));
    Process maven =
        new ProcessBuilder(
                "mvn", "-q", "-ntp", "-Pmutation", "-Dmutated=" + name(sources), "-pl", module, "-am",
                "process-test-classes")
            .redirectErrorStream(true)
            .redirectOutput(Path.of(module, "target", "mutation.log").toFile())
            .start();
    if (maven.waitFor() != 0) {
      System.err.println(name(sources) + " could not be measured; see " + module + "/target/mutation.log");
    } else if (!Files.exists(report(sources))) {
      Files.createDirectories(report(sources).getParent());
      Files.writeString(report(sources), "<mutations/>"); // annotations alone: nothing that can be changed
    }
  }
}
