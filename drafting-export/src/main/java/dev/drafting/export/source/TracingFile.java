package dev.drafting.export.source;

import dev.drafting.core.finding.DraftingException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads traced points, a line each: piece, edge, x and y in centimetres. Lines that follow each
 * other with the same piece and edge are one stroke of the pencil. Where the edge is left empty,
 * the stroke runs past corners.
 */
final class TracingFile {
  static final int MOST_LINES = 100_000;
  static final double FARTHEST_CM = 500;
  private static final int LONGEST_LINE = 1_000;
  private static final List<String> HEADER = List.of("piece", "edge", "x", "y");
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(?:\\d{1,9}(?:\\.\\d{0,12})?|\\.\\d{1,12})");
  static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).setTrim(true).get();

  private final String name;
  private final StrictText text;
  private final List<Stroke> strokes = new ArrayList<>();

  /** Of each piece, whether its lines name their edge. */
  private final Map<String, Boolean> named = new HashMap<>();

  private TracingFile(String name, StrictText text) {
    this.name = name;
    this.text = text;
  }

  /** Reads all strokes in the order of the file. */
  static List<Stroke> read(Path file) {
    String name = StrictText.name(file);
    try (StrictText text = StrictText.open(file, LONGEST_LINE, MOST_LINES);
        CSVParser parser = FORMAT.parse(text)) {
      return new TracingFile(name, text).strokes(parser);
    } catch (IOException e) {
      throw StrictText.unreadable(name, e);
    }
  }

  private List<Stroke> strokes(CSVParser parser) {
    try {
      boolean headed = false;
      for (CSVRecord line : parser) {
        if (headed) {
          add(line);
        } else {
          requireHeader(line);
          headed = true;
        }
      }
    } catch (UncheckedIOException e) {
      throw unreadable(e);
    }
    if (strokes.isEmpty()) {
      throw DraftingException.of("the file has no points")
          .at(name)
          .accepted("the line " + String.join(",", HEADER) + " and a line for each point");
    }
    strokes.forEach(Stroke::requireLine);
    return List.copyOf(strokes);
  }

  private DraftingException unreadable(UncheckedIOException e) {
    if (e.getCause() instanceof CSVException) {
      return fault("a quotation mark is out of place")
          .accepted("names without quotation marks")
          .because(e);
    }
    return StrictText.unreadable(name, e);
  }

  private void requireHeader(CSVRecord line) {
    List<String> found = line.toList().stream().map(s -> s.toLowerCase(Locale.ROOT)).toList();
    if (!found.equals(HEADER)) {
      throw fault("the first line does not name the columns")
          .value(String.join(",", line.toList()))
          .accepted(String.join(",", HEADER));
    }
  }

  private void add(CSVRecord line) {
    if (line.size() != HEADER.size()) {
      boolean missing = line.size() < HEADER.size();
      throw fault(missing ? "a column is missing" : "there are more than four columns")
          .value(String.join(",", line.toList()))
          .accepted(
              "piece,edge,x,y" + (missing ? "" : ", the numbers with decimal points, not commas"));
    }
    String piece = name(line, 0);
    String edge = line.get(1).isEmpty() ? "" : name(line, 1);
    requireAllOrNone(piece, edge);
    Stroke last = strokes.isEmpty() ? null : strokes.get(strokes.size() - 1);
    if (last == null || !last.piece().equals(piece) || !last.edge().equals(edge)) {
      last = new Stroke(name, piece, edge, text.line());
      strokes.add(last);
    }
    last.add(text.line(), centimetres(line, 2), centimetres(line, 3));
  }

  /** Either all lines of a piece name their edge, or none. */
  private void requireAllOrNone(String piece, String edge) {
    Boolean before = named.putIfAbsent(piece, !edge.isEmpty());
    if (before != null && before == edge.isEmpty()) {
      throw fault(1, "some lines of a piece name their edge and some do not")
          .value(edge.isEmpty() ? "nothing" : edge)
          .accepted("an edge in every line of the piece, or in none");
    }
  }

  private String name(CSVRecord line, int column) {
    String text = line.get(column);
    if (!Entry.isName(text)) {
      throw fault(column, "this cannot be a name")
          .value(text.isEmpty() ? "nothing" : text)
          .accepted(Entry.NAME_ACCEPTED);
    }
    return text;
  }

  private double centimetres(CSVRecord line, int column) {
    String number = line.get(column);
    String accepted = "centimetres from -500 to 500 with a decimal point, such as 12.5";
    if (!NUMBER.matcher(number).matches()) {
      boolean comma = number.contains(",");
      throw fault(column, comma ? "the number has a decimal comma" : "this is no number")
          .value(number.isEmpty() ? "nothing" : number)
          .accepted(accepted);
    }
    double centimetres = Double.parseDouble(number);
    if (Math.abs(centimetres) > FARTHEST_CM) {
      throw fault(column, "the point is too far away").value(number).accepted(accepted);
    }
    return centimetres;
  }

  private DraftingException fault(int column, String what) {
    return DraftingException.of(what)
        .at(name + ", line " + text.line() + ", field " + HEADER.get(column));
  }

  private DraftingException fault(String what) {
    return DraftingException.of(what).at(name + ", line " + text.line());
  }
}
