package dev.drafting.export.source;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import dev.drafting.core.finding.DraftingException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Reads a JSON file of a bounded size and depth and remembers where every value stands. */
final class JsonFile {
  static final int LARGEST_BYTES = 1_000_000;
  static final int DEEPEST = 12;
  private static final int LONGEST_TEXT = 4_000;
  private static final int LONGEST_NAME = 100;
  private static final int LONGEST_NUMBER = 40;

  /** What the values of a file may take in memory, roughly; a value knows where it stands. */
  private static final int MOST_HELD = 50_000_000;

  private static final int HELD_BY_A_VALUE = 200;

  private static final JsonFactory FACTORY =
      new JsonFactoryBuilder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(DEEPEST)
                  .maxStringLength(LONGEST_TEXT)
                  .maxNameLength(LONGEST_NAME)
                  .maxNumberLength(LONGEST_NUMBER)
                  .maxDocumentLength(LARGEST_BYTES)
                  .build())
          .build();

  private final String name;
  private final StrictText text;
  private final JsonParser parser;
  private long held;

  private JsonFile(String name, StrictText text, JsonParser parser) {
    this.name = name;
    this.text = text;
    this.parser = parser;
  }

  /** Reads a file that holds one object. */
  static Entry read(Path file) {
    String name = StrictText.name(file);
    try (StrictText text = StrictText.open(file, LARGEST_BYTES, LARGEST_BYTES);
        JsonParser parser = FACTORY.createParser(text)) {
      return new JsonFile(name, text, parser).checked();
    } catch (IOException e) {
      throw StrictText.unreadable(name, e);
    }
  }

  private Entry checked() throws IOException {
    try {
      return whole();
    } catch (StreamConstraintsException e) {
      throw at(parser.currentLocation(), "the file is nested too deep or holds too much")
          .accepted(
              String.format(
                  Locale.ROOT,
                  "at most %d levels, texts of %,d characters, 1 MB in all",
                  DEEPEST,
                  LONGEST_TEXT))
          .because(e);
    } catch (JsonProcessingException e) {
      if (e.getOriginalMessage().startsWith("Unexpected end-of-input")) {
        throw at(parser.currentLocation(), "the file ends too early")
            .accepted("a bracket or quotation mark closed for each one opened")
            .because(e);
      }
      throw at(e.getLocation(), "this is not JSON")
          .value(text.lastLine())
          .accepted("JSON: fields and values with a colon between, commas between fields")
          .because(e);
    }
  }

  private DraftingException at(JsonLocation place, String what) {
    return DraftingException.of(what).at(place(name, place));
  }

  private static String place(String name, JsonLocation at) {
    return name + ", line " + at.getLineNr() + ", column " + at.getColumnNr();
  }

  private Entry whole() throws IOException {
    JsonToken first = parser.nextToken();
    if (first == null) {
      throw DraftingException.of("the file is empty").at(name).accepted("one JSON object");
    }
    Entry whole = value("");
    if (parser.nextToken() != null) {
      throw here("something follows the end").accepted("one JSON object");
    }
    return whole;
  }

  private Entry value(String path) throws IOException {
    String where = place(name, parser.currentTokenLocation());
    held += HELD_BY_A_VALUE + where.length() + path.length();
    if (held > MOST_HELD) {
      throw new StreamConstraintsException("too many values");
    }
    switch (parser.currentToken()) {
      case START_OBJECT:
        return Entry.ofFields(where, path, fields(path));
      case START_ARRAY:
        return Entry.ofList(where, path, list(path));
      case VALUE_STRING:
        return Entry.ofText(where, path, parser.getText());
      case VALUE_NULL:
        throw at(where, path, "there is no value").value("null").accepted("a value");
      default:
        return Entry.ofOther(where, path, parser.getText());
    }
  }

  private List<Entry> list(String path) throws IOException {
    List<Entry> list = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      list.add(value(path + " " + (list.size() + 1)));
    }
    return list;
  }

  private Map<String, Entry> fields(String path) throws IOException {
    Map<String, Entry> fields = new LinkedHashMap<>();
    Map<String, Integer> lines = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String field = parser.currentName();
      Integer before = lines.putIfAbsent(field, parser.currentTokenLocation().getLineNr());
      if (before != null) {
        throw at(place(name, parser.currentTokenLocation()), path, "a field is given twice")
            .value(field)
            .accepted("each field once; it stands already in line " + before);
      }
      parser.nextToken();
      fields.put(field, value(path.isEmpty() ? field : path + " / " + field));
    }
    return fields;
  }

  private static DraftingException at(String where, String path, String what) {
    return DraftingException.of(what).at(path.isEmpty() ? where : where + ", field " + path);
  }

  private DraftingException here(String what) {
    return at(parser.currentTokenLocation(), what);
  }
}
