package dev.drafting.export.png;

import dev.drafting.export.drawing.Lettering;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The outlines of the letters of every drawing, as wide as {@link Lettering} says. */
final class Glyphs implements AutoCloseable {
  private final TrueTypeFont font;
  private final CmapLookup numbers;

  Glyphs() throws IOException {
    try (InputStream file = Lettering.open()) {
      font = new TTFParser().parse(new RandomAccessReadBuffer(file));
    }
    numbers = font.getUnicodeCmapLookup();
  }

  /** A line of text from the origin to the right, in units of the em square, y up. */
  Path2D outlines(String text) throws IOException {
    Path2D outlines = new Path2D.Double(Path2D.WIND_NON_ZERO);
    double em = font.getUnitsPerEm();
    double x = 0;
    for (int character : text.codePoints().toArray()) {
      int number = numbers.getGlyphId(character);
      GlyphData glyph = font.getGlyph().getGlyph(number);
      if (glyph != null) {
        AffineTransform place = AffineTransform.getTranslateInstance(x / em, 0);
        place.scale(1 / em, 1 / em);
        outlines.append(glyph.getPath().getPathIterator(place), false);
      }
      x += font.getAdvanceWidth(number);
    }
    return outlines;
  }

  @Override
  public void close() throws IOException {
    font.close();
  }
}
