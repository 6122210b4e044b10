package dev.drafting.export.store;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * A value of a stored file and where it stands. It is read as what the caller needs; what does not
 * suit is refused with its place. An object remembers which of its fields were asked for.
 */
final class Node {
  private static final int LONGEST_SHOWN = 60;

  private final String where;
  private final Object content;
  private final Set<String> asked = new HashSet<>();

  private Node(String where, Object content) {
    this.where = where;
    this.content = content;
  }

  static Node ofFields(String where, Map<String, Node> fields) {
    return new Node(where, fields);
  }

  static Node ofList(String where, List<Node> list) {
    return new Node(where, list);
  }

  /** A list of numbers, or a number, a text, true or false. */
  static Node ofPlain(String where, Object plain) {
    return new Node(where, plain);
  }

  DraftingException fault(String what) {
    return DraftingException.of(what).at(where).value(shown());
  }

  private String shown() {
    if (content instanceof Map) {
      return "an object";
    }
    if (content instanceof List<?> list) {
      return "a list of " + list.size();
    }
    if (content instanceof double[] numbers) {
      return "a list of " + numbers.length + " numbers";
    }
    String text = content.toString();
    return text.length() > LONGEST_SHOWN ? text.substring(0, LONGEST_SHOWN) + "…" : text;
  }

  /** What the work gives; a fault in it gets this place. */
  <T> T placed(Supplier<T> work) {
    try {
      return work.get();
    } catch (DraftingException e) {
      throw e.where().startsWith(file()) ? e : e.at(where);
    }
  }

  private String file() {
    return where.split(", field ", 2)[0];
  }

  @SuppressWarnings("unchecked") // the only maps are those of ofFields
  Map<String, Node> fields() {
    if (!(content instanceof Map)) {
      throw fault("this is no object").accepted("fields between { and }");
    }
    return (Map<String, Node>) content;
  }

  /** All fields of an object whose names are the maker's. */
  Map<String, Node> all() {
    asked.addAll(fields().keySet());
    return fields();
  }

  Optional<Node> find(String field) {
    asked.add(field);
    return Optional.ofNullable(fields().get(field));
  }

  Node get(String field) {
    return find(field)
        .orElseThrow(
            () ->
                DraftingException.of("a field is missing")
                    .at(where)
                    .accepted("the field \"" + field + "\""));
  }

  /** The places of all fields in here that nobody has asked for. */
  void collectUnread(List<String> places) {
    if (content instanceof Map) {
      fields()
          .forEach(
              (name, field) -> {
                if (asked.contains(name)) {
                  field.collectUnread(places);
                } else {
                  places.add(field.where);
                }
              });
    } else if (content instanceof List<?>) {
      nodes().forEach(node -> node.collectUnread(places));
    }
  }

  @SuppressWarnings("unchecked") // the only lists are those of ofList
  private List<Node> nodes() {
    if (content instanceof double[] numbers && numbers.length == 0) {
      return List.of();
    }
    if (!(content instanceof List)) {
      throw fault("this is no such list").accepted("objects or texts between [ and ]");
    }
    return (List<Node>) content;
  }

  <T> List<T> list(Function<Node, T> reading) {
    return nodes().stream().map(reading).toList();
  }

  /** A list of numbers: millimetres for points. */
  double[] numbers() {
    if (!(content instanceof double[] numbers)) {
      throw fault("this is no list of numbers").accepted("numbers between [ and ]");
    }
    return numbers;
  }

  String text() {
    if (!(content instanceof String text)) {
      throw fault("this is no text").accepted("a text between double quotes");
    }
    return text;
  }

  Length length() {
    return placed(() -> Length.parse(text()));
  }

  double number() {
    if (!(content instanceof Double number)) {
      throw fault("this is no number").accepted("a number without quotes");
    }
    return number;
  }

  Angle radians() {
    return Angle.radians(number());
  }

  int count() {
    double number = number();
    if (number != (int) number) {
      throw fault("this is no whole number").accepted("a whole number without quotes");
    }
    return (int) number;
  }

  boolean truth() {
    if (!(content instanceof Boolean truth)) {
      throw fault("this is neither true nor false").accepted("true or false, without quotes");
    }
    return truth;
  }

  /** One of the constants, by its words. */
  <E extends Enum<E>> E constant(Class<E> type) {
    String text = text();
    List<E> constants = Arrays.asList(type.getEnumConstants());
    return constants.stream()
        .filter(constant -> Json.word(constant).equals(text))
        .findFirst()
        .orElseThrow(
            () ->
                fault("the word is unknown")
                    .accepted(String.join(", ", constants.stream().map(Json::word).toList())));
  }
}
