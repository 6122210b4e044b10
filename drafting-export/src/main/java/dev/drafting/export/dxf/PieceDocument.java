package dev.drafting.export.dxf;

import dev.drafting.core.cut.CutNotch;
import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.cut.DerivedLine;
import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.LineRole;
import dev.drafting.core.pattern.MarkingLine;
import dev.drafting.knit.Draft;
import java.util.List;

/** The blocks of the pieces, and where they are put in, as a DXF file of the edition AC1009. */
final class PieceDocument {
  private static final Length TOLERANCE = Length.mm(0.1);
  private static final double ON_FOLD_MM = 0.001;
  private static final double SHARE_OF_GRAIN = 0.6;
  private static final double TEXT_MM = 6;
  private static final int CUT = 1;
  private static final int CORNERS = 2;
  private static final int CURVE_POINTS = 3;
  private static final int NOTCHES = 4;
  private static final int FOLD = 6;
  private static final int GRAIN = 7;
  private static final int MARKINGS = 8;
  private static final int SEW = 14;

  private final Draft draft;
  private final Groups out = new Groups();

  PieceDocument(Draft draft) {
    this.draft = draft;
  }

  byte[] bytes() {
    out.begin("HEADER").add(9, "$ACADVER").add(1, "AC1009").end();
    List<CutPiece> pieces = draft.cutPieces();
    out.begin("BLOCKS");
    pieces.forEach(this::block);
    out.end().begin("ENTITIES");
    for (CutPiece piece : pieces) {
      out.add(0, "INSERT").add(8, CUT).addText(2, blockName(piece)).add(10, new Point(0, 0));
    }
    double y = 0;
    for (CutPiece piece : pieces) {
      y = Math.min(y, piece.cutLine().bounds().minY());
    }
    for (String line : style()) {
      y -= 2 * TEXT_MM;
      text(line, new Point(0, y));
    }
    return out.end().bytes();
  }

  private List<String> style() {
    return List.of("STYLE NAME: " + draft.name(), "SAMPLE SIZE: " + size(), "UNITS: METRIC");
  }

  private String size() {
    String version = draft.pattern().version();
    return version.isEmpty() ? "ONE" : version;
  }

  private static String blockName(CutPiece piece) {
    return piece.name().replace(' ', '_');
  }

  private void block(CutPiece piece) {
    out.add(0, "BLOCK").add(8, CUT).addText(2, blockName(piece)).add(70, 0);
    out.add(10, new Point(0, 0));
    polyline(piece.cutLine(), CUT);
    points(piece.cutLine());
    for (CutNotch notch : piece.notches()) {
      point(notch.at(), NOTCHES);
      out.add(39, notch.depth().toMm());
      double degrees = Math.toDegrees(Math.atan2(notch.inward().dy(), notch.inward().dx()));
      out.add(50, degrees);
    }
    fold(piece.cutLine());
    grain(piece);
    for (DerivedLine line : piece.lines()) {
      polyline(line.curve(), line.role() == LineRole.JOIN ? SEW : MARKINGS);
    }
    for (MarkingLine marking : piece.markings()) {
      polyline(marking.curve(), MARKINGS);
    }
    texts(piece);
    out.add(0, "ENDBLK").add(8, CUT);
  }

  private void polyline(Curve curve, int layer) {
    Polyline points = curve.flatten(TOLERANCE);
    boolean closed = points.isClosed();
    out.add(0, "POLYLINE").add(8, layer).add(66, 1).add(10, new Point(0, 0));
    out.add(70, closed ? 1 : 0);
    for (int i = 0; i < (closed ? points.size() - 1 : points.size()); i++) {
      out.add(0, "VERTEX").add(8, layer).add(10, points.point(i));
    }
    out.add(0, "SEQEND").add(8, layer);
  }

  /** Corners of the outline, and the points between them that stand for its curves. */
  private void points(Curve cutLine) {
    for (Segment segment : cutLine.segments()) {
      point(segment.start(), CORNERS);
      if (segment instanceof Cubic || segment instanceof Arc) {
        Polyline flat = Curve.of(segment).flatten(TOLERANCE);
        for (int i = 1; i < flat.size() - 1; i++) {
          point(flat.point(i), CURVE_POINTS);
        }
      }
    }
  }

  private void point(Point at, int layer) {
    out.add(0, "POINT").add(8, layer).add(10, at);
  }

  private void fold(Curve cutLine) {
    for (Segment segment : cutLine.segments()) {
      boolean on =
          segment instanceof Line
              && Math.abs(segment.start().x()) < ON_FOLD_MM
              && Math.abs(segment.end().x()) < ON_FOLD_MM;
      if (on) {
        line(segment.start(), segment.end(), FOLD);
      }
    }
  }

  private void grain(CutPiece piece) {
    var box = piece.cutLine().bounds();
    Point middle = new Point((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
    double half = SHARE_OF_GRAIN / 2 * Math.min(box.width().toMm(), box.height().toMm());
    double angle = piece.grain().toRadians();
    Vector way = new Vector(Math.cos(angle), Math.sin(angle)).times(half);
    line(middle.plus(way.negated()), middle.plus(way), GRAIN);
  }

  private void line(Point from, Point to, int layer) {
    out.add(0, "LINE").add(8, layer).add(10, from).add(11, to);
  }

  private void texts(CutPiece piece) {
    var box = piece.cutLine().bounds();
    double x = box.minX() + box.width().toMm() / 4;
    double y = box.minY() + box.height().toMm() / 2;
    for (String line :
        List.of(
            "PIECE NAME: " + piece.name(),
            "SIZE: " + size(),
            "QUANTITY: " + piece.piece().cutting(),
            "MATERIAL: " + piece.piece().cloth())) {
      text(line, new Point(x, y));
      y -= 2 * TEXT_MM;
    }
  }

  private void text(String words, Point at) {
    out.add(0, "TEXT").add(8, CUT).add(10, at).add(40, TEXT_MM).addText(1, words);
  }
}
