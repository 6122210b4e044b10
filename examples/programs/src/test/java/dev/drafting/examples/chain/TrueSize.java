package dev.drafting.examples.chain;

import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Measures cut lines in the text of drawings, as anybody could, and compares with the pieces. */
final class TrueSize {
  /** A drawing has four decimals. */
  private static final double SVG_MM = 0.001;

  /** A file of pieces has chords, none farther from the line than this; ends lie on it. */
  private static final double DXF_MM = 0.001;

  private static final Pattern PAGE =
      Pattern.compile(
          "<svg[^>]* width=\"([0-9.]+)mm\"[^>]* viewBox=\"[-0-9.]+ [-0-9.]+ ([0-9.]+) ");
  private static final Pattern CUT_LINE =
      Pattern.compile("<path id=\"[^\"]*\\.cut-line\\.cut-line\"[^>]* d=\"([^\"]*)\"");
  private static final Pattern COMMAND = Pattern.compile("[MLCA][^MLCAZ]*");
  private static final Pattern VERTEX =
      Pattern.compile("VERTEX\\s+8\\s+1\\s+10\\s+(\\S+)\\s+20\\s+(\\S+)");
  private static final String END_OF_PIECE = "ENDBLK";

  private TrueSize() {}

  /** What is wrong in an SVG drawing. */
  static List<String> ofDrawing(String svg, List<CutPiece> pieces) {
    Matcher page = PAGE.matcher(svg);
    if (!page.find() || !page.group(1).equals(page.group(2))) {
      return List.of("a unit of the drawing is no millimetre");
    }
    List<List<Point>> lines = new ArrayList<>();
    for (MatchResult path : CUT_LINE.matcher(svg).results().toList()) {
      lines.add(COMMAND.matcher(path.group(1)).results().map(TrueSize::end).toList());
    }
    return compared(lines, pieces, SVG_MM, "drawing");
  }

  private static Point end(MatchResult command) {
    String[] numbers = command.group().substring(1).strip().split("[ ,]+", -1);
    int n = numbers.length;
    return new Point(Double.parseDouble(numbers[n - 2]), -Double.parseDouble(numbers[n - 1]));
  }

  /** What is wrong in a DXF file of pieces. */
  static List<String> ofPieces(String dxf, List<CutPiece> pieces) {
    List<List<Point>> lines = new ArrayList<>();
    for (String block : dxf.split(END_OF_PIECE, -1)) {
      List<Point> line = VERTEX.matcher(block).results().map(TrueSize::vertex).toList();
      if (!line.isEmpty()) {
        lines.add(line);
      }
    }
    return compared(lines, pieces, DXF_MM, "file of pieces");
  }

  private static Point vertex(MatchResult pair) {
    return new Point(Double.parseDouble(pair.group(1)), Double.parseDouble(pair.group(2)));
  }

  private static List<String> compared(
      List<List<Point>> lines, List<CutPiece> pieces, double within, String file) {
    List<String> faults = new ArrayList<>();
    if (lines.size() != pieces.size()) {
      faults.add(lines.size() + " cut lines in the " + file);
    }
    for (int i = 0; i < Math.min(lines.size(), pieces.size()); i++) {
      double off = off(lines.get(i), pieces.get(i).cutLine());
      if (!(off <= within)) {
        faults.add(pieces.get(i).name() + " is off by " + off + " mm in the " + file);
      }
    }
    return faults;
  }

  /** The farthest that a point of a line lies from the cut line, wherever that was drawn. */
  private static double off(List<Point> line, Curve cut) {
    double farthest = 0;
    Point at = line.get(0);
    for (Point point : line) {
      Point there =
          new Point(point.x() - at.x() + cut.start().x(), point.y() - at.y() + cut.start().y());
      farthest = Math.max(farthest, cut.nearest(there).distance().toMm());
    }
    Box box = cut.bounds();
    double reach = line.stream().mapToDouble(point -> point.distanceTo(at).toMm()).max().orElse(0);
    return reach < (box.maxY() - box.minY()) / 4 ? Double.MAX_VALUE : farthest;
  }
}
