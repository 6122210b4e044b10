package dev.drafting.export.drawing;

import dev.drafting.core.Experimental;
import dev.drafting.core.Stable;
import dev.drafting.core.measure.Length;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.PDFont;

/**
 * The letters of every drawing: Liberation Sans, under the SIL Open Font License, as it is packed
 * with PDFBox. Says how wide a text comes out and which characters there are.
 *
 * <pre>{@code
 * Lettering.printable("Größe \u5927 M");  // => Größe □ M
 * Lettering.wrap("cut 1 on the fold", Length.mm(3.5), Length.mm(30));  // => [cut 1 on the, fold]
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Lettering {
  /** Height of the em square over height of a capital. */
  public static final double EM = 2048.0 / 1409;

  /** How far letters reach over the base line, over height of a capital. */
  static final double ASCENT = 1.1;

  /** How far letters reach under the base line, over height of a capital. */
  static final double DESCENT = 0.31;

  /** Drawn in place of a character that the font lacks. */
  private static final int MISSING = '\u25a1';

  private static final String DOTS = "\u2026";

  private static final Pattern WORDS = Pattern.compile("\\s+");

  private Lettering() {}

  /** The widths of the font, read once. */
  private static final class Widths {
    private static final short[] ADVANCE = read();

    private static short[] read() {
      short[] advance = new short[Character.MIN_SUPPLEMENTARY_CODE_POINT];
      try (InputStream in = open();
          TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in))) {
        CmapLookup glyphs = font.getUnicodeCmapLookup();
        for (int c = ' '; c < advance.length; c++) {
          int glyph = glyphs.getGlyphId(c);
          advance[c] = (short) (glyph == 0 ? -1 : font.getAdvanceWidth(glyph));
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      return advance;
    }
  }

  /**
   * The font file.
   *
   * @return its bytes from the beginning; the caller closes the stream
   */
  public static InputStream open() {
    String file = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    InputStream in = PDFont.class.getResourceAsStream(file);
    if (in == null) {
      throw new IllegalStateException("the font is missing from the class path: " + file);
    }
    return in;
  }

  /**
   * How wide a text comes out.
   *
   * @param text one line
   * @param height the height of a capital
   * @return its width
   */
  public static Length width(String text, Length height) {
    return height.times(heights(text));
  }

  /** How wide a text comes out, in heights of a capital. */
  private static double heights(String text) {
    long units = printable(text).codePoints().mapToLong(c -> Math.max(0, Widths.ADVANCE[c])).sum();
    return units * EM / 2048;
  }

  /**
   * The text with a square in place of every character that the font lacks, so that nothing
   * disappears unseen.
   *
   * @param text any text
   * @return a text that the font can print
   */
  public static String printable(String text) {
    StringBuilder shown = new StringBuilder(text.length());
    text.codePoints().forEach(c -> shown.appendCodePoint(has(c) ? c : MISSING));
    return shown.toString();
  }

  /**
   * The printable text in the order in which its letters are drawn from left to right: scripts that
   * are written from right to left, such as Hebrew, are turned round.
   *
   * @param text any text
   * @return a text for programs that draw letter by letter
   */
  @Experimental
  public static String drawn(String text) {
    return VisualOrder.of(printable(text));
  }

  /**
   * The text cut short, with three dots at its end, where it is wider than its room.
   *
   * @param text any text
   * @param height the height of a capital
   * @param room how wide it may be
   * @return one line
   */
  @Experimental
  public static String shortened(String text, Length height, Length room) {
    String line = oneLine(text);
    if (fits(line, height, room)) {
      return line;
    }
    Length left = room.minus(width(DOTS, height));
    return line.substring(0, longestStart(line, height, left)).strip() + DOTS;
  }

  private static boolean has(int character) {
    return character >= ' ' && character < Widths.ADVANCE.length && Widths.ADVANCE[character] >= 0;
  }

  /** The text on one line, without control characters and halves of characters. */
  static String oneLine(String text) {
    StringBuilder line = new StringBuilder(text.length());
    text.codePoints()
        .map(c -> Character.isISOControl(c) ? ' ' : allowed(c))
        .forEach(line::appendCodePoint);
    return line.toString().strip();
  }

  private static int allowed(int character) {
    boolean half = character >= 0xD800 && character <= 0xDFFF;
    boolean broken = half || (character & 0xFFFE) == 0xFFFE;
    return broken ? MISSING : character;
  }

  /**
   * Breaks a text into lines between words; a word that is too long is broken within.
   *
   * @param text words with blanks between them
   * @param height the height of a capital
   * @param width the room for a line
   * @return the lines, each within the room unless it is one character
   */
  public static List<String> wrap(String text, Length height, Length width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : WORDS.split(oneLine(text), -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (fits(longer, height, width)) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = word;
      while (!fits(line, height, width) && line.codePointCount(0, line.length()) > 1) {
        int end = longestStart(line, height, width);
        lines.add(line.substring(0, end));
        line = line.substring(end);
      }
    }
    lines.add(line);
    return List.copyOf(lines);
  }

  private static boolean fits(String text, Length height, Length width) {
    return heights(text) * height.toMm() <= width.toMm();
  }

  private static int longestStart(String word, Length height, Length width) {
    int end = word.offsetByCodePoints(0, 1);
    while (end < word.length()) {
      int next = word.offsetByCodePoints(end, 1);
      if (!fits(word.substring(0, next), height, width)) {
        break;
      }
      end = next;
    }
    return end;
  }
}
