package dev.drafting.architecture;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import dev.drafting.core.Experimental;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The public surface is listed for developers, package by package, and the list is true. */
class SurfaceTest {
  private static final Path DEVELOPERS = Path.of("..", "DEVELOPERS.md");

  @Test
  void everyPublicTypeIsListed() throws IOException {
    String text = Files.readString(DEVELOPERS);
    List<String> rows = rows();
    assertTrue(
        text.contains(String.join("\n", rows)),
        () -> "The list in DEVELOPERS.md has to be\n" + String.join("\n", rows));
  }

  private static List<String> rows() {
    Map<String, List<JavaClass>> packages =
        Library.CLASSES.stream()
            .filter(JavaClass::isTopLevelClass)
            .filter(type -> type.getModifiers().contains(JavaModifier.PUBLIC))
            .filter(type -> !type.getSimpleName().equals("package-info"))
            .collect(
                Collectors.groupingBy(
                    JavaClass::getPackageName, TreeMap::new, Collectors.toList()));
    List<String> rows = new ArrayList<>(List.of("| package | types |", "|---|---|"));
    packages.forEach(
        (name, types) ->
            rows.add(
                "| `"
                    + name.replace("dev.drafting.", "")
                    + "` | "
                    + types.stream()
                        .map(SurfaceTest::shown)
                        .sorted()
                        .collect(Collectors.joining(", "))
                    + " |"));
    return rows;
  }

  private static String shown(JavaClass type) {
    boolean experimental = type.isAnnotatedWith(Experimental.class);
    return experimental ? type.getSimpleName() + "*" : type.getSimpleName();
  }
}
