package dev.drafting.export.store;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import dev.drafting.core.finding.DraftingException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Reads the JSON of a stored file, of a bounded size and depth. */
final class NodeParser {
  /** What the values of a file may take in memory, roughly; a value knows where it stands. */
  private static final int MOST_HELD = 60_000_000;

  private static final int HELD_BY_A_VALUE = 200;
  private static final int HELD_BY_A_NUMBER = 16;

  private final String file;
  private final JsonParser parser;
  private long held;

  private NodeParser(String file, JsonParser parser) {
    this.file = file;
    this.parser = parser;
  }

  /** The one object of a file. */
  static Node parse(String file, byte[] bytes) {
    try (JsonParser parser = Json.FACTORY.createParser(bytes)) {
      return new NodeParser(file, parser).whole();
    } catch (StreamConstraintsException e) {
      throw DraftingException.of("the file is nested too deep or holds too much")
          .at(file)
          .accepted(
              String.format(
                  Locale.ROOT,
                  "at most %d levels, texts of %,d characters, %d MB in all",
                  Json.DEEPEST,
                  Json.LONGEST_TEXT,
                  Json.LARGEST_BYTES / 1_000_000))
          .because(e);
    } catch (JsonProcessingException e) {
      String line = e.getLocation() == null ? "" : ", line " + e.getLocation().getLineNr();
      String said = e.getOriginalMessage();
      throw DraftingException.of(
              said.startsWith("Duplicate field")
                  ? "a field is given twice"
                  : said.startsWith("Unexpected end-of-input")
                      ? "the file ends too early"
                      : "this is not JSON")
          .at(file + line)
          .accepted("a stored draft, as it was written")
          .because(e);
    } catch (IOException e) {
      throw DraftingException.of("the file is not text in UTF-8")
          .at(file)
          .accepted("a stored draft, as it was written")
          .because(e);
    }
  }

  private Node whole() throws IOException {
    JsonToken first = parser.nextToken();
    if (first != JsonToken.START_OBJECT) {
      throw DraftingException.of(first == null ? "the file is empty" : "this is no stored draft")
          .at(file)
          .accepted("one JSON object");
    }
    Node whole = value("");
    if (parser.nextToken() != null) {
      throw DraftingException.of("something follows the end")
          .at(file + ", line " + parser.currentTokenLocation().getLineNr())
          .accepted("one JSON object");
    }
    return whole;
  }

  private String where(String path) {
    return path.isEmpty() ? file : file + ", field " + path;
  }

  private void hold(int bytes) throws StreamConstraintsException {
    held += bytes;
    if (held > MOST_HELD) {
      throw new StreamConstraintsException("too many values");
    }
  }

  private Node value(String path) throws IOException {
    hold(HELD_BY_A_VALUE + file.length() + path.length());
    return switch (parser.currentToken()) {
      case START_OBJECT -> Node.ofFields(where(path), fields(path));
      case START_ARRAY -> list(path);
      case VALUE_STRING -> Node.ofPlain(where(path), parser.getText());
      case VALUE_TRUE -> Node.ofPlain(where(path), true);
      case VALUE_FALSE -> Node.ofPlain(where(path), false);
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> Node.ofPlain(where(path), number(path));
      default ->
          throw DraftingException.of("there is no value")
              .at(where(path))
              .value(parser.getText())
              .accepted("a value");
    };
  }

  private double number(String path) throws IOException {
    double number = parser.getDoubleValue();
    if (!Double.isFinite(number)) {
      throw DraftingException.of("a number is too large")
          .at(where(path))
          .value(parser.getText())
          .accepted("a finite number");
    }
    return number;
  }

  private Map<String, Node> fields(String path) throws IOException {
    Map<String, Node> fields = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String field = parser.currentName();
      parser.nextToken();
      fields.put(field, value(path.isEmpty() ? field : path + " / " + field));
    }
    return fields;
  }

  private Node list(String path) throws IOException {
    JsonToken first = parser.nextToken();
    if (first == JsonToken.END_ARRAY || first.isNumeric()) {
      return Node.ofPlain(where(path), numbers(path));
    }
    List<Node> list = new ArrayList<>();
    while (parser.currentToken() != JsonToken.END_ARRAY) {
      list.add(value(path + " " + (list.size() + 1)));
      parser.nextToken();
    }
    return Node.ofList(where(path), list);
  }

  private double[] numbers(String path) throws IOException {
    double[] numbers = new double[16];
    int size = 0;
    for (; parser.currentToken() != JsonToken.END_ARRAY; parser.nextToken()) {
      if (!parser.currentToken().isNumeric()) {
        throw DraftingException.of("a list of numbers holds something else")
            .at(where(path))
            .value(parser.getText())
            .accepted("numbers only");
      }
      if (size == numbers.length) {
        numbers = Arrays.copyOf(numbers, 2 * size);
      }
      hold(HELD_BY_A_NUMBER);
      numbers[size++] = number(path);
    }
    return Arrays.copyOf(numbers, size);
  }
}
