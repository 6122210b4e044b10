package dev.drafting.export.pdf;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.drawing.Lettering;
import dev.drafting.export.drawing.Stroke;
import dev.drafting.export.drawing.StrokeStyle;
import java.awt.Color;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;

/** Draws elements on one page; millimetres become the points of PDF here and nowhere else. */
final class PdfCanvas {
  static final double POINTS_PER_MM = 72 / 25.4;
  private static final Length FLATNESS = Length.mm(0.001);

  private final PDPageContentStream page;
  private final PDFont font;
  private final Layers layers;
  private final Ink ink;

  /** Where the drawing's origin lies on the page, in mm from the lower left corner. */
  private double originX;

  private double originY;

  PdfCanvas(PDPageContentStream page, PDFont font, Layers layers, Ink ink) {
    this.page = page;
    this.font = font;
    this.layers = layers;
    this.ink = ink;
  }

  /** Fills the page where it is not white by itself. */
  void ground(double width, double height) throws IOException {
    if (!ink.ground().equals(Color.WHITE)) {
      page.setNonStrokingColor(ink.ground());
      page.addRect(0, 0, points(width), points(height));
      page.fill();
    }
  }

  /** From here on everything is drawn mirrored, letters too, on a page of this width. */
  void mirror(double width) throws IOException {
    page.transform(new Matrix(-1, 0, 0, 1, points(width), 0));
  }

  /** Draws in the millimetres of the page. */
  void draw(List<? extends Element> elements) throws IOException {
    for (Element element : elements) {
      draw(element);
    }
  }

  /** Draws what a window of the drawing shows, its lower left corner at a point of the page. */
  void drawWindow(List<Element> elements, Box window, Point corner) throws IOException {
    page.saveGraphicsState();
    originX = corner.x() - window.minX();
    originY = corner.y() - window.minY();
    page.addRect(
        x(window.minX()),
        y(window.minY()),
        points(window.width().toMm()),
        points(window.height().toMm()));
    page.clip();
    drawLayers(elements.stream().filter(e -> mayTouch(e.bounds(), window)).toList());
    originX = 0;
    originY = 0;
    page.restoreGraphicsState();
  }

  /** Draws in the millimetres of the page, every kind of line on a layer of its own. */
  void drawLayers(List<Element> elements) throws IOException {
    String open = "";
    for (Element element : elements) {
      String name = Layers.name(element);
      if (!name.equals(open)) {
        if (!open.isEmpty()) {
          page.endMarkedContent();
        }
        page.beginMarkedContent(COSName.OC, layers.get(name));
        open = name;
      }
      draw(element);
    }
    if (!open.isEmpty()) {
      page.endMarkedContent();
    }
  }

  private static boolean mayTouch(Box box, Box window) {
    double wide = StrokeStyle.CUT_LINE.weight().toMm();
    return box.minX() - wide <= window.maxX()
        && box.maxX() + wide >= window.minX()
        && box.minY() - wide <= window.maxY()
        && box.maxY() + wide >= window.minY();
  }

  private void draw(Element element) throws IOException {
    if (element instanceof Stroke stroke) {
      stroke(stroke);
    } else if (element instanceof Label label) {
      label(label);
    }
  }

  private void stroke(Stroke stroke) throws IOException {
    StrokeStyle style = stroke.style();
    page.setStrokingColor(style == StrokeStyle.FINDING ? ink.accent() : ink.lines());
    page.setLineWidth(points(style.weight().toMm() * ink.heavier()));
    page.setLineJoinStyle(1);
    page.setLineDashPattern(dashes(style.dashes()), 0);
    List<Segment> segments = stroke.curve().segments();
    Point start = segments.get(0).start();
    page.moveTo(x(start.x()), y(start.y()));
    for (Segment segment : segments) {
      segment(segment);
    }
    if (stroke.curve().isClosed()) {
      page.closePath();
    }
    page.stroke();
  }

  private void segment(Segment segment) throws IOException {
    if (segment instanceof Cubic cubic) {
      cubic(cubic);
    } else if (segment instanceof Arc arc) {
      for (Cubic cubic : arc.toCubics(FLATNESS)) {
        cubic(cubic);
      }
    } else {
      page.lineTo(x(segment.end().x()), y(segment.end().y()));
    }
  }

  private void cubic(Cubic cubic) throws IOException {
    Point first = cubic.control1();
    Point second = cubic.control2();
    Point end = cubic.end();
    page.curveTo(x(first.x()), y(first.y()), x(second.x()), y(second.y()), x(end.x()), y(end.y()));
  }

  private void label(Label label) throws IOException {
    String text = Lettering.drawn(label.text());
    if (text.isBlank()) {
      return;
    }
    Point start = label.start();
    page.beginText();
    page.setNonStrokingColor(label.isFinding() ? ink.accent() : ink.lines());
    page.setFont(font, points(label.height().toMm() * Lettering.EM));
    page.newLineAtOffset(x(start.x()), y(start.y()));
    page.showText(text);
    page.endText();
  }

  private float[] dashes(List<Length> dashes) {
    float[] pattern = new float[dashes.size()];
    for (int i = 0; i < pattern.length; i++) {
      pattern[i] = points(dashes.get(i).toMm() * ink.heavier());
    }
    return pattern;
  }

  private float x(double mm) {
    return points(originX + mm);
  }

  private float y(double mm) {
    return points(originY + mm);
  }

  private static float points(double mm) {
    return (float) (mm * POINTS_PER_MM);
  }
}
