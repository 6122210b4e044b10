package dev.drafting.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The jars as they are packed: what they carry, and that they run as modules and as plain jars. */
class PackagedIT {
  private static final Path TARGET = Path.of("target");
  private static final String MAIN = "dev.drafting.examples/dev.drafting.examples.CopyGarment";
  private static final Map<String, String> MODULES =
      Map.of(
          "drafting-core", "dev.drafting.core",
          "drafting-knit", "dev.drafting.knit",
          "drafting-export", "dev.drafting.export",
          "programs", "dev.drafting.examples");

  @TempDir Path folder;

  @Test
  void everyJarCarriesItsModuleNameAndTheLicence() throws IOException {
    for (Map.Entry<String, String> module : MODULES.entrySet()) {
      try (JarFile jar = new JarFile(jar(module.getKey()).toFile())) {
        assertEquals(
            module.getValue(),
            jar.getManifest().getMainAttributes().getValue("Automatic-Module-Name"));
        JarEntry licence = jar.getJarEntry("META-INF/LICENSE");
        assertNotNull(licence, module.getKey());
        String text =
            new String(jar.getInputStream(licence).readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(text.contains("Apache License") && text.contains("END OF TERMS"), text);
      }
    }
  }

  @Test
  void noTwoJarsShareAPackage() throws IOException {
    Map<String, String> owners = new HashMap<>();
    for (String module : MODULES.keySet()) {
      for (String name : packages(jar(module))) {
        assertNull(owners.put(name, module), name + " is in " + module + " and in another jar");
      }
    }
  }

  @Test
  void runsOnTheModulePathAsOnTheClassPath() throws Exception {
    Path asModules = folder.resolve("modules");
    Path asJar = folder.resolve("jar");
    String path = jar("programs") + System.getProperty("path.separator") + TARGET.resolve("lib");
    run("-p", path, "--add-modules", "ALL-MODULE-PATH", "-m", MAIN, "--out", asModules.toString());
    run("-jar", jar("programs").toString(), "--out", asJar.toString());
    Map<String, Integer> files = files(asModules);
    assertFalse(files.isEmpty(), "no files");
    assertEquals(files(asJar), files);
  }

  /** The sample of another project on the module path, compiled and run as README says. */
  @Test
  void anotherModuleCompilesAgainstTheJarsAndRuns() throws Exception {
    Path classes = folder.resolve("classes");
    String lib = TARGET.resolve("lib").toString();
    List<String> options = new ArrayList<>(List.of("-Xlint:all,-requires-automatic", "-Werror"));
    options.addAll(List.of("-p", lib, "-d", classes.toString()));
    for (String source : List.of("module-info.java", "boathouse/HeadOpenings.java")) {
      options.add(Path.of("module-path", source).toString());
    }
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    int code =
        ToolProvider.getSystemJavaCompiler().run(null, said, said, options.toArray(new String[0]));
    assertEquals(0, code, said.toString(StandardCharsets.UTF_8));
    String path = classes + System.getProperty("path.separator") + lib;
    String words =
        java(
            "-p",
            path,
            "--add-modules",
            "ALL-MODULE-PATH",
            "-m",
            "boathouse/boathouse.HeadOpenings",
            "garments/vest");
    assertEquals(
        """
        A cotton jersey: goes over the head
        B interlock: goes over the head
        C pique: does not go over the head
        """,
        words.replace("\r", ""));
  }

  private void run(String... arguments) throws Exception {
    List<String> all = new ArrayList<>(Arrays.asList(arguments));
    all.addAll(List.of("--garment", "garments/vest"));
    assertFalse(java(all.toArray(new String[0])).isEmpty(), "it said nothing");
  }

  /** What a fresh Java machine says that ends with 0. */
  private String java(String... arguments) throws Exception {
    Path java = Path.of(System.getProperty("java.home"), "bin", "java");
    List<String> command = new ArrayList<>(List.of(java.toString(), "-Xmx128m"));
    command.addAll(Arrays.asList(arguments));
    Path said = folder.resolve("said.txt");
    int code =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start()
            .waitFor();
    assertEquals(0, code, Files.readString(said));
    return Files.readString(said);
  }

  /** Names and contents of all files in a folder. */
  private static Map<String, Integer> files(Path root) throws IOException {
    Map<String, Integer> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(root)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(root.relativize(file).toString(), Arrays.hashCode(Files.readAllBytes(file)));
      }
    }
    return files;
  }

  private static Path jar(String module) throws IOException {
    Path place = module.equals("programs") ? TARGET : TARGET.resolve("lib");
    try (Stream<Path> jars = Files.list(place)) {
      return jars.filter(
              jar -> jar.getFileName().toString().matches(module + "-[\\d.]+(-SNAPSHOT)?\\.jar"))
          .findFirst()
          .orElseThrow();
    }
  }

  private static List<String> packages(Path file) throws IOException {
    try (JarFile jar = new JarFile(file.toFile())) {
      return jar.stream()
          .map(JarEntry::getName)
          .filter(name -> name.endsWith(".class"))
          .map(name -> name.substring(0, name.lastIndexOf('/')))
          .distinct()
          .toList();
    }
  }
}
