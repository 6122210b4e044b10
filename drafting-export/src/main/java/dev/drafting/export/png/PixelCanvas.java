package dev.drafting.export.png;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.drawing.Lettering;
import dev.drafting.export.drawing.Stroke;
import dev.drafting.export.drawing.StrokeStyle;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;

/** Draws the elements of a drawing on pixels. */
final class PixelCanvas {
  private static final Length FLATNESS = Length.mm(0.001);
  private static final Color ACCENT = new Color(0xb5, 0x38, 0x1f);
  private static final float MITRE_LIMIT = 10;

  private final BufferedImage image;
  private final AffineTransform toPixels;

  /** Shows a box of the drawing, its upper left corner at the upper left pixel. */
  PixelCanvas(Box box, double perMm, int width, int height) {
    image = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
    toPixels = AffineTransform.getScaleInstance(perMm, -perMm);
    toPixels.translate(-box.minX(), -box.maxY());
  }

  BufferedImage image() {
    return image;
  }

  void draw(Drawing drawing) throws IOException {
    Graphics2D graphics = image.createGraphics();
    try (Glyphs glyphs = new Glyphs()) {
      graphics.setColor(Color.WHITE);
      graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
      graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      graphics.setRenderingHint(
          RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      graphics.transform(toPixels);
      for (Group group : drawing.groups()) {
        if (Thread.currentThread().isInterrupted()) {
          throw DraftingException.of("cancelled").at(group.name());
        }
        for (Element element : group.elements()) {
          draw(graphics, glyphs, element);
        }
      }
    } finally {
      graphics.dispose();
    }
  }

  private static void draw(Graphics2D graphics, Glyphs glyphs, Element element) throws IOException {
    if (element instanceof Stroke stroke) {
      StrokeStyle style = stroke.style();
      graphics.setColor(style == StrokeStyle.FINDING ? ACCENT : Color.BLACK);
      graphics.setStroke(pen(style));
      graphics.draw(path(stroke.curve()));
    } else if (element instanceof Label label) {
      graphics.setColor(label.isFinding() ? ACCENT : Color.BLACK);
      Path2D letters = glyphs.outlines(Lettering.drawn(label.text()));
      double size = label.height().toMm() * Lettering.EM;
      Point start = label.start();
      AffineTransform place = AffineTransform.getTranslateInstance(start.x(), start.y());
      place.scale(size, size);
      graphics.fill(letters.createTransformedShape(place));
    }
  }

  private static BasicStroke pen(StrokeStyle style) {
    float weight = (float) style.weight().toMm();
    List<Length> dashes = style.dashes();
    if (dashes.isEmpty()) {
      return new BasicStroke(weight, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }
    float[] pattern = new float[dashes.size()];
    for (int i = 0; i < pattern.length; i++) {
      pattern[i] = (float) dashes.get(i).toMm();
    }
    return new BasicStroke(
        weight, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, MITRE_LIMIT, pattern, 0);
  }

  private static Path2D path(Curve curve) {
    Path2D path = new Path2D.Double();
    path.moveTo(curve.start().x(), curve.start().y());
    for (Segment segment : curve.segments()) {
      if (segment instanceof Cubic cubic) {
        add(path, cubic);
      } else if (segment instanceof Arc arc) {
        arc.toCubics(FLATNESS).forEach(cubic -> add(path, cubic));
      } else {
        path.lineTo(segment.end().x(), segment.end().y());
      }
    }
    if (curve.isClosed()) {
      path.closePath();
    }
    return path;
  }

  private static void add(Path2D path, Cubic cubic) {
    path.curveTo(
        cubic.control1().x(),
        cubic.control1().y(),
        cubic.control2().x(),
        cubic.control2().y(),
        cubic.end().x(),
        cubic.end().y());
  }
}
