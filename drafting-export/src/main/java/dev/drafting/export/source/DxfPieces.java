package dev.drafting.export.source;

import dev.drafting.core.finding.DraftingException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads the cut lines and folds of pieces from a DXF file in the style of ASTM D6673: a block for
 * each piece, the cut line a polyline on layer 1, points where its curves and lines meet on layer
 * 2, the fold a line on layer 6. In the DXF of R12 a file is a row of pairs, a group code on one
 * line and its value on the next.
 */
final class DxfPieces {
  private static final int LONGEST_LINE = 1_000;
  private static final int MOST_LINES = 5_000_000;
  private static final int MOST_POINTS = 100_000;
  private static final String CUT = "1";
  private static final String CORNERS = "2";
  private static final String FOLD = "6";
  private static final double ON_FOLD_CM = 0.0001;
  private static final String PIECE_NAME = "PIECE NAME: ";
  private static final Pattern LETTER = Pattern.compile("\\\\U\\+([0-9A-F]{4})");

  private final String name;
  private final StrictText text;
  private final List<Stroke> strokes = new ArrayList<>();

  private String piece = "";
  private boolean inBlock;
  private String entity = "";
  private String layer = "";
  private double x;
  private double y;
  private double endX;
  private double endY;
  private Stroke corners;
  private @Nullable Stroke cut;
  private @Nullable Stroke fold;

  private DxfPieces(String name, StrictText text) {
    this.name = name;
    this.text = text;
    this.corners = noCorners();
  }

  /** Reads all pieces in the order of the file. */
  static List<Stroke> read(Path file) {
    String name = StrictText.name(file);
    try (StrictText text = StrictText.open(file, LONGEST_LINE, MOST_LINES)) {
      return new DxfPieces(name, text).strokes();
    } catch (IOException e) {
      throw StrictText.unreadable(name, e);
    }
  }

  private DraftingException fault(String what) {
    return DraftingException.of(what).at(name + ", line " + text.line());
  }

  private List<Stroke> strokes() throws IOException {
    for (Optional<String> code = text.readLine(); code.isPresent(); code = text.readLine()) {
      String value =
          text.readLine().orElseThrow(() -> fault("a group code has no value").accepted("pairs"));
      pair(code.get().strip(), value);
    }
    if (strokes.isEmpty()) {
      throw DraftingException.of("the file has no pieces")
          .at(name)
          .accepted("a block for each piece, its cut line on layer 1");
    }
    return strokes;
  }

  private void pair(String code, String value) {
    switch (code) {
      case "0" -> begin(value.strip());
      case "2" -> piece = entity.equals("BLOCK") ? plain(value) : piece;
      case "8" -> layer = value.strip();
      case "10" -> x = number(value);
      case "20" -> y = number(value);
      case "11" -> endX = number(value);
      case "21" -> endY = number(value);
      case "1" -> piece = inBlock && value.startsWith(PIECE_NAME) ? piece(value) : piece;
      default -> {
        // Other groups say nothing about the cut line.
      }
    }
  }

  private static String piece(String value) {
    return plain(value.substring(PIECE_NAME.length()));
  }

  /** Letters beyond ASCII were written by their numbers. */
  private static String plain(String value) {
    Matcher letters = LETTER.matcher(value.strip().replace("^ ", "^"));
    return letters.replaceAll(
        letter ->
            Matcher.quoteReplacement(String.valueOf((char) Integer.parseInt(letter.group(1), 16))));
  }

  private void begin(String next) {
    finish();
    entity = next;
    switch (next) {
      case "BLOCK" -> inBlock = true;
      case "POLYLINE" -> layer = "";
      case "ENDBLK" -> endOfBlock();
      default -> {
        // Nothing begins or ends with it.
      }
    }
  }

  /** The entity before the next one is complete. */
  private void finish() {
    if (!inBlock) {
      return;
    }
    if (entity.equals("VERTEX") && layer.equals(CUT)) {
      cut = cut == null ? new Stroke(name, "", DrawnCutLines.CUT_LINE, text.line()) : cut;
      if (cut.points() + corners.points() >= MOST_POINTS) {
        throw fault("a cut line has too many points").accepted("at most " + MOST_POINTS);
      }
      cut.add(text.line(), x / 10, y / 10);
    } else if (entity.equals("POINT") && layer.equals(CORNERS)) {
      corners.add(text.line(), x / 10, y / 10);
    } else if (entity.equals("LINE") && layer.equals(FOLD)) {
      fold = new Stroke(name, "", DrawnCutLines.FOLD, text.line());
      fold.add(text.line(), x / 10, y / 10);
      fold.add(text.line(), endX / 10, endY / 10);
    }
  }

  private void endOfBlock() {
    if (cut != null) {
      cut.requireLine();
      strokes.add(fold == null ? closed(cut) : opened(cut));
      if (fold != null) {
        strokes.add(fold.named(piece));
      }
      if (corners.points() > 1) {
        strokes.add(corners.named(piece));
      }
    }
    corners = noCorners();
    cut = null;
    fold = null;
    inBlock = false;
  }

  private Stroke noCorners() {
    return new Stroke(name, "", DrawnCutLines.CORNERS, text.line());
  }

  private Stroke closed(Stroke round) {
    Stroke closed = round.named(piece);
    closed.add(text.line(), round.x(0), round.y(0));
    return closed;
  }

  /** The part of a closed cut line that is cut: from one end of the fold round to the other. */
  private Stroke opened(Stroke round) {
    int n = round.points();
    int start = 0;
    while (start < n && !(isOnFold(round, start) && !isOnFold(round, (start + 1) % n))) {
      start++;
    }
    Stroke open = new Stroke(name, piece, DrawnCutLines.CUT_LINE, text.line());
    for (int i = 0; i < n; i++) {
      int at = (start + i) % n;
      open.add(text.line(), round.x(at), round.y(at));
      if (i > 0 && isOnFold(round, at)) {
        break;
      }
    }
    open.requireLine();
    return open;
  }

  private static boolean isOnFold(Stroke round, int index) {
    return Math.abs(round.x(index)) < ON_FOLD_CM;
  }

  private double number(String value) {
    try {
      double number = Double.parseDouble(value.strip());
      if (Math.abs(number) <= 10 * TracingFile.FARTHEST_CM) {
        return number;
      }
    } catch (NumberFormatException e) {
      throw fault("a coordinate is no number").value(value).accepted("millimetres").because(e);
    }
    throw fault("the point is too far away").value(value).accepted("within 500 cm");
  }
}
