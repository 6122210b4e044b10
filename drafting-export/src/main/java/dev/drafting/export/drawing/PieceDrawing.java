package dev.drafting.export.drawing;

import dev.drafting.core.cut.CutNotch;
import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.cut.DerivedLine;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.OffsetPart;
import dev.drafting.core.offset.OffsetTag;
import dev.drafting.core.pattern.LineRole;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * One paper piece as it is drawn: cut line, join lines, folds, stitches, notches and markings, the
 * grain with the greatest stretch across it, and everything the maker must know, in words, where
 * nothing else is drawn.
 *
 * @since 0.1
 */
public final class PieceDrawing {
  private static final Length CHALK_MARK = Length.mm(5);

  private final CutPiece piece;
  private final String garment;
  private final String fabric;

  private PieceDrawing(CutPiece piece, String garment, String fabric) {
    this.piece = Objects.requireNonNull(piece, "piece");
    this.garment = Objects.requireNonNull(garment, "garment");
    this.fabric = Objects.requireNonNull(fabric, "fabric");
  }

  /**
   * A drawing of a piece.
   *
   * @param piece as it is cut
   * @return the drawing, which names neither garment nor fabric yet
   */
  public static PieceDrawing of(CutPiece piece) {
    return new PieceDrawing(piece, "", "");
  }

  /**
   * The same with the name of the garment.
   *
   * @param name with the size, if there is one
   * @return the drawing
   */
  public PieceDrawing withGarment(String name) {
    return new PieceDrawing(piece, name, fabric);
  }

  /**
   * The same with the fabric to cut it from.
   *
   * @param name of the fabric
   * @return the drawing
   */
  public PieceDrawing withFabric(String name) {
    return new PieceDrawing(piece, garment, name);
  }

  /**
   * Draws the piece.
   *
   * @return lines and texts in mm, where the piece itself lies
   */
  public Group group() {
    PieceLettering lettering = new PieceLettering(piece.cutLine(), lines());
    lettering.grain(piece.grain());
    lettering.words(piece.name(), words());
    lettering.lineNames();
    return new Group(piece.name(), lettering.elements());
  }

  private List<String> words() {
    List<String> words = new ArrayList<>();
    if (!garment.isBlank()) {
      words.add(garment);
    }
    if (!fabric.isBlank()) {
      words.add("Fabric: " + fabric);
    }
    piece.labels().stream().map(PieceDrawing::sentence).forEach(words::add);
    return words;
  }

  private static String sentence(String label) {
    return label.substring(0, 1).toUpperCase(Locale.ROOT) + label.substring(1);
  }

  private List<Stroke> lines() {
    List<Stroke> strokes = new ArrayList<>(edges());
    for (DerivedLine line : piece.lines()) {
      if (line.role() != LineRole.CUT && !isOnFold(line.edge())) {
        strokes.add(new Stroke(style(line.role()), line.edge(), line.curve()));
      }
    }
    piece.notches().forEach(notch -> strokes.add(notch(notch)));
    piece.markings().stream()
        .map(m -> new Stroke(StrokeStyle.MARKING, m.label(), m.curve()))
        .forEach(strokes::add);
    return strokes;
  }

  /** A slit as deep as it is cut; where there is nothing to slit, a short mark. */
  private static Stroke notch(CutNotch notch) {
    boolean slit = notch.depth().isPositive();
    Length depth = slit ? notch.depth() : CHALK_MARK;
    Curve line = Curve.line(notch.at(), notch.at().plus(notch.inward().times(depth.toMm())));
    return new Stroke(slit ? StrokeStyle.NOTCH : StrokeStyle.MARKING, notch.label(), line);
  }

  private static StrokeStyle style(LineRole role) {
    return switch (role) {
      case CUT -> StrokeStyle.CUT_LINE;
      case JOIN -> StrokeStyle.JOIN_LINE;
      case FOLD -> StrokeStyle.FOLD;
      case TOPSTITCH -> StrokeStyle.TOPSTITCH;
    };
  }

  /** The edge on the fold of the cloth is not cut; the cut line runs round the rest. */
  private List<Stroke> edges() {
    List<OffsetPart> parts = new ArrayList<>(piece.offset().parts());
    if (parts.stream().noneMatch(this::isOnFold)) {
      return List.of(new Stroke(StrokeStyle.CUT_LINE, "cut line", piece.cutLine()));
    }
    while (!isOnFold(parts.get(0)) || isOnFold(parts.get(parts.size() - 1))) {
      Collections.rotate(parts, 1);
    }
    Curve fold = chain(parts.stream().filter(this::isOnFold).toList());
    Curve rest = chain(parts.stream().filter(part -> !isOnFold(part)).toList());
    return List.of(
        new Stroke(StrokeStyle.FOLD, PieceLettering.FOLD_OF_THE_CLOTH, fold),
        new Stroke(StrokeStyle.CUT_LINE, "cut line", rest));
  }

  private static Curve chain(List<OffsetPart> parts) {
    return parts.stream().map(OffsetPart::curve).reduce(Curve::then).orElseThrow();
  }

  private boolean isOnFold(OffsetPart part) {
    return part.tag() == OffsetTag.EDGE && isOnFold(part.sourceName());
  }

  private boolean isOnFold(String edge) {
    return piece.piece().edge(edge).isOnFold();
  }
}
