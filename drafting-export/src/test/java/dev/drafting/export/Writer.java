package dev.drafting.export;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.knit.Draft;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Writes two drafts of the same name to a folder, by turns, in a process of its own. */
final class Writer {
  static final int FILES = 3;

  private Writer() {}

  /** Either draft gives the same names of files, and other contents in each of them. */
  static Export export(boolean second) {
    Draft vest = TestGarment.vest("vest");
    Fabric other = Fabric.of("viscose jersey", Structure.JERSEY, 0.5);
    return Export.of(second ? vest.withFabric("body", other) : vest).svg().sheet().store();
  }

  /** The files of a folder, but not what is hidden. */
  static Map<String, String> contents(Path folder) throws IOException {
    Map<String, String> contents = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file :
          files.filter(path -> !path.getFileName().toString().startsWith(".")).toList()) {
        contents.put(file.getFileName().toString(), Files.readString(file));
      }
    }
    return contents;
  }

  /** A process that writes so many times; the command is put before it. */
  static Process start(Path folder, int times, String... before) throws IOException {
    String classes = System.getProperty("java.class.path");
    List<String> command = new ArrayList<>(List.of(before));
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:-UsePerfData", "-Xmx128m"));
    command.addAll(List.of("-cp", System.getProperty("surefire.test.class.path", classes)));
    command.addAll(List.of(Writer.class.getName(), folder.toString(), String.valueOf(times)));
    return new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(new File("/dev/null"))
        .start();
  }

  /** The folder and how often to write: the second draft, the first one, and so on. */
  public static void main(String[] args) {
    try {
      for (int i = 0; i < Integer.parseInt(args[1]); i++) {
        List<WrittenFile> files = export(i % 2 == 0).to(Path.of(args[0]), Progress.none());
        System.out.println(files);
      }
    } catch (DraftingException | IOException e) {
      System.exit(2);
    }
  }
}
