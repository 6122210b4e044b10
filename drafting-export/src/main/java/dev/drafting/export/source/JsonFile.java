package dev.drafting.export.source;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import dev.drafting.core.finding.DraftingException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads a JSON file of a bounded size and depth and remembers where every value stands. */
final class JsonFile {
  static final int LARGEST_BYTES = 1_000_000;
  static final int DEEPEST = 12;
  private static final int LONGEST_TEXT = 4_000;
  private static final int LONGEST_NAME = 100;
  private static final int LONGEST_NUMBER = 40;

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
  private final JsonParser parser;

  private JsonFile(String name, JsonParser parser) {
    this.name = name;
    this.parser = parser;
  }

  /** Reads a file that holds one object. */
  static Entry read(Path file) {
    String name = StrictText.name(file);
    try (StrictText text = StrictText.open(file, LARGEST_BYTES, LARGEST_BYTES);
        JsonParser parser = FACTORY.createParser(text)) {
      return new JsonFile(name, parser).whole();
    } catch (StreamConstraintsException e) {
      throw fault(name, e, "the file is nested too deep or holds too much")
          .accepted(
              "at most "
                  + DEEPEST
                  + " levels, texts of "
                  + LONGEST_TEXT
                  + " characters, 1 MB in all");
    } catch (JsonEOFException e) {
      throw fault(name, e, "the file ends too early").accepted("a bracket closed for each opened");
    } catch (JsonProcessingException e) {
      String reason = e.getOriginalMessage().lines().findFirst().orElse("");
      throw fault(name, e, "this is not JSON").value(reason).accepted("one JSON object");
    } catch (IOException e) {
      throw StrictText.unreadable(name, e);
    }
  }

  private static DraftingException fault(String name, JsonProcessingException e, String what) {
    JsonLocation at = e.getLocation();
    String where = at == null ? name : place(name, at);
    return DraftingException.of(what).at(where).because(e);
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
      throw here(DraftingException.of("something follows the end")).accepted("one JSON object");
    }
    return whole;
  }

  private Entry value(String path) throws IOException {
    String where = place(name, parser.currentTokenLocation());
    switch (parser.currentToken()) {
      case START_OBJECT:
        return Entry.ofFields(where, path, fields(path));
      case START_ARRAY:
        return Entry.ofList(where, path, list(path));
      case VALUE_STRING:
        return Entry.ofText(where, path, parser.getText());
      case VALUE_NULL:
        throw here(DraftingException.of("there is no value")).value("null").accepted("a value");
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
        throw here(DraftingException.of("the field is given twice"))
            .value(field)
            .accepted("each field once; it stands already in line " + before);
      }
      parser.nextToken();
      fields.put(field, value(path.isEmpty() ? field : path + " / " + field));
    }
    return fields;
  }

  private DraftingException here(DraftingException fault) {
    return fault.at(place(name, parser.currentTokenLocation()));
  }
}
