package dev.drafting.notebooks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The startup script imports every public type of the library, or says that it leaves it out. */
class StartupScriptTest {
  private static final Pattern NAMED =
      Pattern.compile("(?m)^(?:import|// left out:) (dev\\.drafting\\.[\\w.]+)");

  @Test
  void namesEveryPublicTypeAndNoOther() throws Exception {
    Set<String> named = new TreeSet<>();
    Matcher matcher = NAMED.matcher(Files.readString(Project.STARTUP));
    while (matcher.find()) {
      named.add(matcher.group(1));
    }
    assertEquals(
        String.join("\n", publicTypes()),
        String.join("\n", named),
        "types imported or left out by " + Project.STARTUP);
  }

  private static Set<String> publicTypes() throws Exception {
    Set<String> names = new TreeSet<>();
    for (String module : Project.LIBRARIES) {
      for (Path file : Project.sources(module)) {
        Class<?> type = Class.forName(Project.typeOf(file));
        if (Modifier.isPublic(type.getModifiers())) {
          names.add(type.getName());
        }
      }
    }
    return names;
  }
}
