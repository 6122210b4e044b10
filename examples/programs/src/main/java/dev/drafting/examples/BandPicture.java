package dev.drafting.examples;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Anchor;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.drawing.Stroke;
import dev.drafting.export.drawing.StrokeStyle;
import dev.drafting.export.svg.SvgPicture;
import dev.drafting.knit.band.BandFit;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.band.WrappedBinding;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * A small picture of a strip beside its edge: the edge bent evenly by all that it turns, the strip
 * laid out below it, marks that meet on both.
 */
final class BandPicture {
  private static final Length MARGIN = Length.mm(5);
  private static final double SCALE = 1.0 / 3;
  private static final double LETTER = 9;
  private static final double TICK = 12;
  private static final double GAP = 45;
  private static final List<String> MARKS = List.of("join", "quarter", "half", "three quarters");

  private final BandFit fit;
  private final double length;

  private BandPicture(BandFit fit) {
    this.fit = fit;
    this.length = fit.cutLength().toMm();
  }

  static BandPicture of(BandFit fit) {
    return new BandPicture(fit);
  }

  Drawing drawing() {
    Transform small = Transform.scaling(SCALE);
    return Drawing.of(
        fit.name() + ", at a third of its size",
        new Group("strip", strip()).map(small),
        new Group("edge", edge()).map(small));
  }

  void write(Path file) throws IOException {
    try (OutputStream out = Files.newOutputStream(file)) {
      XMLStreamWriter xml =
          XMLOutputFactory.newDefaultFactory()
              .createXMLStreamWriter(out, StandardCharsets.UTF_8.name());
      xml.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
      SvgPicture.of(drawing()).withNames().write(xml, MARGIN, false);
      xml.writeEndDocument();
      xml.flush();
    } catch (XMLStreamException e) {
      throw new IOException("the picture cannot be written", e);
    }
  }

  /** The strip from its lower left corner, its length along x. */
  private List<Element> strip() {
    List<Element> elements = new ArrayList<>();
    double width = fit.finish().cutWidth().toMm();
    Point corner = new Point(0, 0);
    elements.add(
        new Stroke(
            StrokeStyle.CUT_LINE,
            "cut line",
            Curve.polyline(
                corner,
                new Point(length, 0),
                new Point(length, width),
                new Point(0, width),
                corner)));
    double join = fit.rule().joinAllowance().toMm();
    elements.add(across(StrokeStyle.JOIN_LINE, "join", join, width));
    elements.add(across(StrokeStyle.JOIN_LINE, "join", length - join, width));
    seams().forEach(y -> elements.add(along(StrokeStyle.JOIN_LINE, "seam", y)));
    folds().forEach(y -> elements.add(along(StrokeStyle.FOLD, "fold", y)));
    for (int i = 0; i <= 4; i++) {
      double x = join + fit.loop().toMm() * i / 4;
      elements.add(
          new Stroke(StrokeStyle.NOTCH, "mark", Curve.line(new Point(x, 0), new Point(x, TICK))));
      elements.add(word(MARKS.get(i % 4), x, -1.8 * LETTER, Anchor.MIDDLE));
      elements.add(word(Words.centimetres(Length.mm(x - join)), x, -3.3 * LETTER, Anchor.MIDDLE));
    }
    String cut =
        Words.centimetres(fit.cutLength()) + " by " + Words.centimetres(fit.finish().cutWidth());
    elements.add(word("strip, cut " + cut, 0, width + LETTER, Anchor.START));
    elements.add(outcome(width + LETTER));
    return elements;
  }

  private Element outcome(double y) {
    Label label = word(fit.outcome().plainName(), length, y, Anchor.END);
    return fit.isAsMeant() ? label : label.asFinding();
  }

  private List<Double> seams() {
    double width = fit.finish().cutWidth().toMm();
    if (fit.finish() instanceof FoldedBand band) {
      double sewn = band.allowance().toMm();
      return band.isReadyEdged() ? List.of(sewn) : List.of(sewn, width - sewn);
    }
    double showing = fit.finish().showing().toMm();
    return List.of(fit.finish() instanceof WrappedBinding ? showing : width - showing);
  }

  private List<Double> folds() {
    boolean folded = fit.finish() instanceof FoldedBand band && !band.isReadyEdged();
    return folded ? List.of(fit.finish().cutWidth().toMm() / 2) : List.of();
  }

  private Stroke along(StrokeStyle style, String name, double y) {
    return new Stroke(style, name, Curve.line(new Point(0, y), new Point(length, y)));
  }

  private static Stroke across(StrokeStyle style, String name, double x, double width) {
    return new Stroke(style, name, Curve.line(new Point(x, 0), new Point(x, width)));
  }

  private static Label word(String text, double x, double y, Anchor anchor) {
    return Label.of(text, new Point(x, y), Length.mm(LETTER)).withAnchor(anchor);
  }

  /** Above the strip: seam and finished edge with their quarters. */
  private List<Element> edge() {
    double turning = fit.turning().toRadians();
    boolean bent = turning > 0.2 && turning < 2 * Math.PI - 0.05;
    return bent ? bent(turning) : straight();
  }

  private List<Element> straight() {
    double y = fit.finish().cutWidth().toMm() + GAP;
    double showing = fit.finish().joinDistance().negated().toMm();
    List<Element> elements = new ArrayList<>();
    double seam = fit.joinLine().toMm();
    elements.add(line(StrokeStyle.JOIN_LINE, "seam", seam, y + showing));
    elements.add(line(StrokeStyle.FOLD, "finished edge", fit.finishedEdge().toMm(), y));
    for (int i = 0; i <= 4; i++) {
      double x = seam * i / 4;
      Curve tick = Curve.line(new Point(x, y), new Point(x, y + inward() + TICK));
      elements.add(new Stroke(StrokeStyle.NOTCH, "mark", tick));
      elements.add(word(MARKS.get(i % 4), x, y + inward() + 1.5 * TICK, Anchor.MIDDLE));
    }
    elements.add(word(measured(), 0, y + inward() + 3.5 * TICK, Anchor.START));
    return elements;
  }

  private double inward() {
    return fit.finish().showing().toMm();
  }

  private static Stroke line(StrokeStyle style, String name, double length, double y) {
    return new Stroke(style, name, Curve.line(new Point(0, y), new Point(length, y)));
  }

  private String measured() {
    return fit.edgeName()
        + "; dashed: seam "
        + Words.centimetres(fit.joinLine())
        + "; dots and dashes: finished edge "
        + Words.centimetres(fit.finishedEdge());
  }

  /** An arc that turns as far as the edge, open at the top. */
  private List<Element> bent(double turning) {
    double seam = fit.joinLine().toMm() / turning;
    double fold = fit.finishedEdge().toMm() / turning;
    double width = fit.finish().cutWidth().toMm();
    Point centre = new Point(length / 2, width + GAP + seam + 3 * TICK);
    double start = Math.PI / 2 + (2 * Math.PI - turning) / 2;
    List<Element> elements = new ArrayList<>();
    elements.add(arc(StrokeStyle.JOIN_LINE, "seam", centre, seam, start, turning));
    elements.add(arc(StrokeStyle.FOLD, "finished edge", centre, fold, start, turning));
    for (int i = 0; i <= 4; i++) {
      double angle = start + turning * i / 4;
      Curve tick = Curve.line(at(centre, seam, angle), at(centre, seam + TICK, angle));
      elements.add(new Stroke(StrokeStyle.NOTCH, "mark", tick));
      Point beside = at(centre, seam + 1.6 * TICK, angle);
      Anchor anchor =
          Math.abs(Math.cos(angle)) < 0.3
              ? Anchor.MIDDLE
              : Math.cos(angle) > 0 ? Anchor.START : Anchor.END;
      double y = beside.y() - (Math.sin(angle) < -0.5 ? LETTER : LETTER / 2);
      elements.add(word(MARKS.get(i % 4), beside.x(), y, anchor));
    }
    elements.add(word(fit.edgeName(), centre.x(), centre.y() + 2 * LETTER, Anchor.MIDDLE));
    String sewn = "dashed: seam " + Words.centimetres(fit.joinLine());
    elements.add(word(sewn, centre.x(), centre.y() - LETTER, Anchor.MIDDLE));
    String ends = Words.centimetres(fit.finishedEdge());
    elements.add(word("dots and dashes:", centre.x(), centre.y() - 3.5 * LETTER, Anchor.MIDDLE));
    elements.add(
        word("finished edge " + ends, centre.x(), centre.y() - 5.3 * LETTER, Anchor.MIDDLE));
    return elements;
  }

  private static Stroke arc(
      StrokeStyle style, String name, Point centre, double radius, double start, double sweep) {
    Arc arc = Arc.of(centre, Length.mm(radius), Angle.radians(start), Angle.radians(sweep));
    return new Stroke(style, name, Curve.of(arc));
  }

  private static Point at(Point centre, double radius, double angle) {
    return new Point(centre.x() + radius * Math.cos(angle), centre.y() + radius * Math.sin(angle));
  }
}
