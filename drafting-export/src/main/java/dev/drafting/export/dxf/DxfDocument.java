package dev.drafting.export.dxf;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.measure.Length;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.drawing.Stroke;
import dev.drafting.export.drawing.StrokeStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The sections of one drawing as a DXF file of the edition AC1015 (after the published DXF
 * reference of that edition): header, tables, blocks, entities and objects, every object with its
 * handle and owner.
 */
final class DxfDocument {
  private static final String TEXTS = "TEXT";
  private static final String MODEL = "1F";
  private static final String PAPER = "1B";
  private static final int RED = 1;
  private static final int BLACK_OR_WHITE = 7;
  private static final int MILLIMETRES = 4;

  private final Drawing drawing;
  private final Optional<Length> tolerance;
  private final Groups out = new Groups();

  DxfDocument(Drawing drawing, Optional<Length> tolerance) {
    this.drawing = drawing;
    this.tolerance = tolerance;
  }

  byte[] bytes() {
    header();
    out.begin("CLASSES").end();
    tables();
    blocks();
    entities();
    objects();
    return out.bytes();
  }

  private void header() {
    Box box = drawing.bounds();
    out.begin("HEADER").add(9, "$ACADVER").add(1, "AC1015");
    out.add(9, "$DWGCODEPAGE").add(3, "ANSI_1252");
    out.add(9, "$EXTMIN").add(10, new Point(box.minX(), box.minY()));
    out.add(9, "$EXTMAX").add(10, new Point(box.maxX(), box.maxY()));
    out.add(9, "$INSUNITS").add(70, MILLIMETRES).add(9, "$MEASUREMENT").add(70, 1);
    out.add(9, "$HANDSEED").add(5, "FFFFFF").end();
  }

  private void tables() {
    out.begin("TABLES");
    emptyTable("VPORT");
    lineTypes();
    layers();
    String style = table("STYLE", 1);
    record("STYLE", style, "AcDbTextStyleTableRecord", "Standard", 0);
    out.add(40, 0.0).add(41, 1.0).add(50, 0.0).add(71, 0).add(42, 2.5).add(3, "txt").add(4, "");
    out.add(0, "ENDTAB");
    emptyTable("VIEW");
    emptyTable("UCS");
    String app = table("APPID", 1);
    record("APPID", app, "AcDbRegAppTableRecord", "ACAD", 0);
    out.add(0, "ENDTAB");
    begin("DIMSTYLE", out.nextHandle(), 0);
    out.add(100, "AcDbDimStyleTable").add(0, "ENDTAB");
    String blocks = table("BLOCK_RECORD", 2);
    out.add(0, "BLOCK_RECORD").add(5, MODEL).add(330, blocks).add(100, "AcDbSymbolTableRecord");
    out.add(100, "AcDbBlockTableRecord").add(2, "*Model_Space");
    out.add(0, "BLOCK_RECORD").add(5, PAPER).add(330, blocks).add(100, "AcDbSymbolTableRecord");
    out.add(100, "AcDbBlockTableRecord").add(2, "*Paper_Space");
    out.add(0, "ENDTAB").end();
  }

  private void emptyTable(String name) {
    begin(name, out.nextHandle(), 0);
    out.add(0, "ENDTAB");
  }

  /** Begins a table; its handle. */
  private String table(String name, int records) {
    String handle = out.nextHandle();
    begin(name, handle, records);
    return handle;
  }

  private void begin(String table, String handle, int records) {
    out.add(0, "TABLE").add(2, table).add(5, handle).add(330, "0");
    out.add(100, "AcDbSymbolTable").add(70, records);
  }

  private void record(String type, String owner, String kind, String name, int flags) {
    out.add(0, type).add(5, out.nextHandle()).add(330, owner);
    out.add(100, "AcDbSymbolTableRecord").add(100, kind).add(2, name).add(70, flags);
  }

  private void lineTypes() {
    StrokeStyle[] styles = StrokeStyle.values();
    String table = table("LTYPE", styles.length + 3);
    for (String name : List.of("ByBlock", "ByLayer", "Continuous")) {
      record("LTYPE", table, "AcDbLinetypeTableRecord", name, 0);
      out.add(3, "").add(72, 65).add(73, 0).add(40, 0.0);
    }
    for (StrokeStyle style : styles) {
      record("LTYPE", table, "AcDbLinetypeTableRecord", layer(style), 0);
      double whole = style.dashes().stream().mapToDouble(Length::toMm).sum();
      out.add(3, style.toString()).add(72, 65).add(73, style.dashes().size()).add(40, whole);
      int sign = 1;
      for (Length dash : style.dashes()) {
        out.add(49, sign * dash.toMm()).add(74, 0);
        sign = -sign;
      }
    }
    out.add(0, "ENDTAB");
  }

  private void layers() {
    StrokeStyle[] styles = StrokeStyle.values();
    String table = table("LAYER", styles.length + 2);
    for (String name : List.of("0", TEXTS)) {
      record("LAYER", table, "AcDbLayerTableRecord", name, 0);
      out.add(62, BLACK_OR_WHITE).add(6, "Continuous");
    }
    for (StrokeStyle style : styles) {
      record("LAYER", table, "AcDbLayerTableRecord", layer(style), 0);
      out.add(62, style == StrokeStyle.FINDING ? RED : BLACK_OR_WHITE).add(6, layer(style));
      out.add(370, (int) Math.round(100 * style.weight().toMm()));
    }
    out.add(0, "ENDTAB");
  }

  private static String layer(StrokeStyle style) {
    return style.toString().toUpperCase(Locale.ROOT).replace(' ', '_');
  }

  private void blocks() {
    out.begin("BLOCKS");
    block(MODEL, "*Model_Space");
    block(PAPER, "*Paper_Space");
    out.end();
  }

  private void block(String owner, String name) {
    out.add(0, "BLOCK").add(5, out.nextHandle()).add(330, owner).add(100, "AcDbEntity");
    out.add(8, "0").add(100, "AcDbBlockBegin").add(2, name).add(70, 0);
    out.add(10, new Point(0, 0)).add(3, name).add(1, "");
    out.add(0, "ENDBLK").add(5, out.nextHandle()).add(330, owner).add(100, "AcDbEntity");
    out.add(8, "0").add(100, "AcDbBlockEnd");
  }

  private void entities() {
    out.begin("ENTITIES");
    for (Group group : drawing.groups()) {
      for (Element element : group.elements()) {
        if (element instanceof Stroke stroke) {
          stroke(stroke);
        } else if (element instanceof Label label) {
          label(label);
        }
      }
    }
    out.end();
  }

  private void stroke(Stroke stroke) {
    String layer = layer(stroke.style());
    if (tolerance.isPresent()) {
      polyline(stroke.curve().flatten(tolerance.get()), layer);
      return;
    }
    for (Segment segment : stroke.curve().segments()) {
      if (segment instanceof Line line) {
        entity("LINE", layer, "AcDbLine");
        out.add(10, line.start()).add(11, line.end());
      } else if (segment instanceof Arc arc) {
        arc(arc, layer);
      } else if (segment instanceof Cubic cubic) {
        spline(cubic, layer);
      }
    }
  }

  private void entity(String type, String layer, String kind) {
    out.add(0, type).add(5, out.nextHandle()).add(330, MODEL).add(100, "AcDbEntity");
    out.add(8, layer).add(100, kind);
  }

  private void arc(Arc arc, String layer) {
    double from = arc.from().toDegrees();
    double to = from + arc.sweep().toDegrees();
    boolean forwards = to > from;
    entity("ARC", layer, "AcDbCircle");
    out.add(10, arc.centre()).add(40, arc.radius().toMm()).add(100, "AcDbArc");
    out.add(50, forwards ? from : to).add(51, forwards ? to : from);
  }

  private void spline(Cubic cubic, String layer) {
    entity("SPLINE", layer, "AcDbSpline");
    out.add(210, 0.0).add(220, 0.0).add(230, 1.0);
    out.add(70, 8).add(71, 3).add(72, 8).add(73, 4).add(74, 0);
    for (double knot : new double[] {0, 0, 0, 0, 1, 1, 1, 1}) {
      out.add(40, knot);
    }
    for (Point point : List.of(cubic.start(), cubic.control1(), cubic.control2(), cubic.end())) {
      out.add(10, point);
    }
  }

  private void polyline(Polyline points, String layer) {
    boolean closed = points.isClosed();
    int count = closed ? points.size() - 1 : points.size();
    entity("LWPOLYLINE", layer, "AcDbPolyline");
    out.add(90, count).add(70, closed ? 1 : 0);
    for (int i = 0; i < count; i++) {
      out.add(10, points.x(i)).add(20, points.y(i));
    }
  }

  private void label(Label label) {
    entity("TEXT", TEXTS, "AcDbText");
    out.add(10, label.start()).add(40, label.height().toMm());
    out.addText(1, label.text()).add(100, "AcDbText");
  }

  private void objects() {
    String root = "C";
    String group = "D";
    out.begin("OBJECTS");
    out.add(0, "DICTIONARY").add(5, root).add(330, "0").add(100, "AcDbDictionary").add(281, 1);
    out.add(3, "ACAD_GROUP").add(350, group);
    out.add(0, "DICTIONARY").add(5, group).add(330, root).add(100, "AcDbDictionary").add(281, 1);
    out.end();
  }
}
