package dev.drafting.export.hpgl;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.drawing.Lettering;
import dev.drafting.export.drawing.Stroke;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** One drawing on its way to the plotter. */
final class PlotterPen {
  private static final double UNITS_PER_MM = 40;
  private static final double MARGIN_MM = 5;
  private static final Length TOLERANCE = Length.mm(0.01);

  /** A character of the plotter takes one and a half times the width that SI sets. */
  private static final double CELL = 1.5;

  private static final char END_OF_LABEL = 3;

  private final Drawing drawing;
  private final double left;
  private final double bottom;
  private final StringBuilder plot = new StringBuilder();

  PlotterPen(Drawing drawing) {
    this.drawing = drawing;
    Box box = drawing.bounds();
    left = box.minX() - MARGIN_MM;
    bottom = box.minY() - MARGIN_MM;
  }

  String plot() {
    plot.append("IN;SP1;\n");
    for (Group group : drawing.groups()) {
      group.strokes().forEach(this::draw);
      group.labels().forEach(this::write);
    }
    return plot.append("PU;SP0;\n").toString();
  }

  private void draw(Stroke stroke) {
    plot.append("PW").append(decimal(stroke.style().weight().toMm())).append(";\n");
    List<Length> dashes = stroke.style().dashes();
    if (dashes.isEmpty()) {
      draw(stroke.curve());
    } else {
      drawDashed(stroke.curve(), dashes);
    }
  }

  private void drawDashed(Curve curve, List<Length> dashes) {
    double end = curve.length().toMm();
    double from = 0;
    for (int i = 0; from < end; i++) {
      double to = Math.min(end, from + dashes.get(i % dashes.size()).toMm());
      if (i % 2 == 0 && to > from) {
        draw(curve.between(Length.mm(from), Length.mm(to)));
      }
      from = to;
    }
  }

  private void draw(Curve curve) {
    List<String> places = new ArrayList<>();
    for (Point point : points(curve)) {
      String place = at(point);
      if (places.isEmpty() || !places.get(places.size() - 1).equals(place)) {
        places.add(place);
      }
    }
    plot.append("PU").append(places.get(0)).append(";PD");
    plot.append(String.join(",", places.subList(Math.min(1, places.size() - 1), places.size())));
    plot.append(";\n");
  }

  private static List<Point> points(Curve curve) {
    Polyline line = curve.flatten(TOLERANCE);
    List<Point> points =
        new ArrayList<>(IntStream.range(0, line.size()).mapToObj(line::point).toList());
    if (curve.isClosed()) {
      points.add(curve.start());
    }
    return points;
  }

  /** In the width that the drawing keeps free for it, whatever letters the plotter has. */
  private void write(Label label) {
    String text = ascii(label.text());
    double width = Lettering.width(label.text(), label.height()).toMm();
    double letter = width / Math.max(1, text.length()) / CELL;
    plot.append("PU").append(at(label.start())).append(";SI").append(decimal(letter / 10));
    plot.append(',').append(decimal(label.height().toMm() / 10));
    plot.append(";LB").append(text).append(END_OF_LABEL).append('\n');
  }

  private static String ascii(String text) {
    String plain = text.replace("ß", "ss").replace('×', 'x').replace('–', '-').replace('⁄', '/');
    return Normalizer.normalize(plain, Normalizer.Form.NFKD)
        .replace('⁄', '/')
        .replaceAll("\\p{M}", "")
        .replaceAll("[^ -~]", "?");
  }

  private String at(Point point) {
    return Math.round((point.x() - left) * UNITS_PER_MM)
        + ","
        + Math.round((point.y() - bottom) * UNITS_PER_MM);
  }

  private static String decimal(double value) {
    return BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP).toPlainString();
  }
}
