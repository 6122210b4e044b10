package dev.drafting.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the library gives does not depend on where and when it runs. */
class SurroundingsTest {
  private final Locale locale = Locale.getDefault();
  private final TimeZone zone = TimeZone.getDefault();

  @TempDir Path folder;

  @AfterEach
  void asBefore() {
    Locale.setDefault(locale);
    TimeZone.setDefault(zone);
  }

  private Map<String, String> files(String name) throws IOException {
    Vest.Run run = Vest.run(Vest.FOLDER, folder.resolve(name));
    assertEquals(0, run.code(), run.err());
    return Vest.contents(folder.resolve(name));
  }

  /** Turkish has an i of its own, Arabic digits of its own, German a decimal comma. */
  @Test
  void neitherLanguageNorTimeZoneChangesAByte() throws IOException {
    Map<String, String> usual = files("usual");
    for (String tag : new String[] {"tr-TR", "ar-EG-u-nu-arab", "de-DE", "th-TH-u-ca-buddhist"}) {
      Locale.setDefault(Locale.forLanguageTag(tag));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      assertEquals(usual, files(tag), tag);
    }
  }
}
