package dev.drafting.export.source;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.measure.Length;
import java.util.Arrays;
import java.util.List;

/**
 * One stroke of the pencil, along one edge or, without the name of an edge, past corners, as it
 * stands in the file; points in centimetres.
 */
final class Stroke {
  private final String file;
  private final String piece;
  private final String edge;
  private final int firstLine;
  private int lastLine;
  private double[] xy = new double[8];
  private int size;

  Stroke(String file, String piece, String edge, int firstLine) {
    this.file = file;
    this.piece = piece;
    this.edge = edge;
    this.firstLine = firstLine;
    this.lastLine = firstLine;
  }

  /** The same stroke of the piece of this name. */
  Stroke named(String newPiece) {
    Stroke named = new Stroke(file, newPiece, edge, firstLine);
    named.lastLine = lastLine;
    named.xy = xy.clone();
    named.size = size;
    return named;
  }

  /** The same stroke along another line, which is in millimetres. */
  Stroke along(Polyline line) {
    Stroke along = new Stroke(file, piece, edge, firstLine);
    for (int i = 0; i < line.size(); i++) {
      along.add(lastLine, Length.mm(line.x(i)).toCm(), Length.mm(line.y(i)).toCm());
    }
    return along;
  }

  /** Adds a point; a pencil that rests on the spot adds nothing. */
  void add(int line, double x, double y) {
    lastLine = line;
    if (size > 0 && xy[size - 2] == x && xy[size - 1] == y) {
      return;
    }
    if (size == xy.length) {
      xy = Arrays.copyOf(xy, 2 * size);
    }
    xy[size++] = x;
    xy[size++] = y;
  }

  /** Refuses a stroke that is no line. */
  void requireLine() {
    if (size < 4) {
      throw DraftingException.of("the edge has one point")
          .at(where() + ", " + piece + (isNamed() ? " / " + edge : ""))
          .value(xy[0] + ", " + xy[1])
          .accepted("two different points or more");
    }
  }

  /** The lines of the file that hold it. */
  String where() {
    return lines(file, firstLine, lastLine);
  }

  /** The lines of the file that hold these strokes. */
  static String lines(List<Stroke> strokes) {
    Stroke first = strokes.get(0);
    return lines(first.file, first.firstLine, strokes.get(strokes.size() - 1).lastLine);
  }

  private static String lines(String file, int first, int last) {
    return file + (first == last ? ", line " + first : ", lines " + first + " to " + last);
  }

  String piece() {
    return piece;
  }

  String edge() {
    return edge;
  }

  /** Whether it runs along one edge that it names. */
  boolean isNamed() {
    return !edge.isEmpty();
  }

  /** In millimetres. */
  Polyline line() {
    double[] line = new double[size];
    for (int i = 0; i < size; i++) {
      line[i] = Length.cm(xy[i]).toMm();
    }
    return Polyline.of(line);
  }

  int points() {
    return size / 2;
  }

  double x(int index) {
    return xy[2 * index];
  }

  double y(int index) {
    return xy[2 * index + 1];
  }
}
