package dev.drafting.export.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.measure.Length;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JsonFileTest {
  @TempDir Path folder;

  private Entry read(String json) {
    Path file = folder.resolve("garment.json");
    try {
      Files.writeString(file, json, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return JsonFile.read(file);
  }

  private String refused(String json) {
    return Refusal.of(() -> read(json));
  }

  private String refused(String value, Function<Entry, ?> reading) {
    Entry entry = read("{\n  \"list\": [ 1, {\"a\": " + value + "} ]\n}");
    Entry a = entry.fields("list").get("list").list(1, 9).get(1).fields("a").get("a");
    return Refusal.of(() -> reading.apply(a));
  }

  @Test
  void valuesAreReadAsWhatTheyAreNeededFor() {
    Fields fields =
        read("\uFEFF{\"length\": \"3/8 in\", \"share\": \"2.5 %\",\r\n\"count\": 3, \"yes\": true,"
                + " \"word\": \"Rib\", \"mass\": \"180 g/m²\"}")
            .fields("length", "share", "count", "yes", "word", "mass", "more");
    assertEquals(9.525, fields.get("length").length(Length.ZERO, Length.cm(1)).toMm());
    assertEquals(0.025, fields.get("share").share(0, 5));
    assertEquals(3, fields.get("count").count(1, 3));
    assertTrue(fields.get("yes").truth());
    assertEquals(7, fields.get("word").choice("structure", Map.of("rib", 7)));
    assertEquals(180, fields.get("mass").quantity("g/m2", 1, 1000));
    assertEquals(5, fields.or("more", 5, e -> e.count(1, 2)));
  }

  @Test
  void aFaultNamesFileLineColumnAndField() {
    assertEquals(
        "garment.json, line 2, column 22, field list 2 / a: the length is out of range. "
            + "Found: 0 mm. "
            + "Accepted: a length with its unit from 1 mm to 100 mm, such as \"7 mm\".",
        refused("\"0 mm\"", e -> e.length(Length.mm(1), Length.mm(100))));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      value = {
        "\"-1 mm\" | the length is out of range. Found: -1 mm",
        "\"1e300 mm\" | a length is over 100 m. Found: 1.0E300 mm",
        "\"NaN mm\" | a length is not a number. Found: NaN mm",
        "\"7 px\" | a length has no unit that is known. Found: 7 px",
        "\"7\" | a length has no unit that is known. Found: 7",
        "\"0,7 cm\" | a length has a decimal comma. Found: 0,7 cm",
        "7 | a length is a text with its unit. Found: 7",
        "[] | a length is a text with its unit. Found: a list of 0",
        "{} | a length is a text with its unit. Found: an object",
      })
  void lengthsThatAreNoneAreRefused(String value, String said) {
    String message = refused(value, e -> e.length(Length.mm(1), Length.mm(100)));
    assertTrue(message.contains(said), message);
    assertTrue(message.contains("Accepted: "), message);
  }

  @Test
  void otherValuesThatDoNotSuitAreRefused() {
    assertTrue(refused("\"30\"", e -> e.share(0, 300)).contains("a text with a per cent sign"));
    assertTrue(refused("\"301 %\"", e -> e.share(0, 300)).contains("the share is out of range"));
    assertTrue(refused("\"3,5 %\"", e -> e.share(0, 300)).contains("a decimal comma"));
    assertTrue(refused("1.5", e -> e.count(1, 2)).contains("this is no whole number"));
    assertTrue(refused("1e99", e -> e.count(1, 2)).contains("this is no number"));
    assertTrue(refused("\"true\"", Entry::truth).contains("neither true nor false"));
    assertTrue(
        refused("\"silk\"", e -> e.choice("structure", Map.of("rib", 7)))
            .endsWith("the structure is unknown. Found: silk. Accepted: rib."));
    assertTrue(refused("\"a/b\"", Entry::name).contains("this cannot be a name. Found: a/b"));
    assertTrue(
        refused("\" \"", Entry::name).contains("this cannot be a name. Found: an empty text"));
    assertTrue(refused("\" \"", e -> e.text(9)).contains("the text is empty or too long"));
    assertTrue(refused("1", e -> e.list(1, 2)).contains("this is no list"));
    assertTrue(refused("[]", e -> e.list(1, 2)).contains("too short or too long"));
    assertTrue(refused("1", Entry::anyFields).contains("this is no object"));
    assertTrue(refused("\"180 kg\"", e -> e.quantity("g/m2", 1, 9)).contains("unit is missing"));
  }

  @Test
  void anUnknownFieldIsRefusedNamingTheAcceptedOnes() {
    Entry whole = read("{\"a\": 1,\n \"colour\": 2}");
    assertEquals(
        "garment.json, line 2, column 12, field colour: the field is unknown. Found: colour. "
            + "Accepted: a, b.",
        Refusal.of(() -> whole.fields("a", "b")));
  }

  @Test
  void aMissingFieldIsNamed() {
    Fields fields = read("{}").fields("name");
    assertEquals(
        "garment.json, line 1, column 1: a field is missing. Accepted: the field \"name\".",
        Refusal.of(() -> fields.get("name")));
  }

  @Test
  void aFieldGivenTwiceIsRefused() {
    assertEquals(
        "garment.json, line 3, column 2: a field is given twice. Found: a. "
            + "Accepted: each field once; it stands already in line 1.",
        refused("{\"a\": 1,\n\"b\": 2,\n \"a\": 1}"));
  }

  @Test
  void textThatIsNotJsonIsRefusedWithItsPlace() {
    assertTrue(refused("").startsWith("garment.json: the file is empty."));
    assertTrue(
        refused("{\"a\": [1,\n").startsWith("garment.json, line 2, column 1: the file ends too"));
    assertTrue(
        refused("{\"a\" 1}").startsWith("garment.json, line 1, column 6: this is not JSON."));
    assertTrue(refused("{\"a\": NaN}").contains("this is not JSON"));
    assertTrue(refused("{\"a\": null}").contains("there is no value"));
    assertTrue(refused("{} {}").contains("something follows the end"));
    assertTrue(refused("// no\n{}").contains("this is not JSON"));
  }

  @Test
  void deepOrLargeFilesAreRefused() {
    String deep = "[".repeat(100_000);
    assertTrue(refused(deep).startsWith("garment.json, line 1, column 14: the file is nested"));
    assertTrue(refused("{\"a\": \"" + "x".repeat(5_000) + "\"}").contains("holds too much"));
    assertTrue(refused("{\"a\": " + "1".repeat(5_000) + "}").contains("holds too much"));
    assertTrue(refused("{\"" + "x".repeat(5_000) + "\": 1}").contains("holds too much"));
    assertTrue(refused(" ".repeat(1_000_001)).contains("the line is too long"));
    assertTrue(refused("\n".repeat(1_000_001)).contains("the file is too long"));
  }
}
