package dev.drafting.export.drawing;

import dev.drafting.core.Experimental;
import dev.drafting.core.Stable;
import dev.drafting.core.cut.CutNotch;
import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.cut.DerivedLine;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.OffsetPart;
import dev.drafting.core.offset.OffsetTag;
import dev.drafting.core.pattern.LineRole;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * One paper piece as it is drawn: cut line, join lines, folds, stitches, notches and markings, the
 * grain with the greatest stretch across it, and everything the maker must know, in words, where
 * nothing else is drawn.
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * PieceDrawing.of(top.cutPieces().get(0)).withGarment("Top").group().name();  // => front
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class PieceDrawing {
  private static final Length CHALK_MARK = Length.mm(5);
  private static final Length RING = Length.mm(8);
  private static final Length ON_PAPER = Length.mm(3.5);

  private final CutPiece piece;
  private final String garment;
  private final String fabric;
  private final List<Finding> findings;
  private final Length letters;

  private PieceDrawing(
      CutPiece piece, String garment, String fabric, List<Finding> findings, Length letters) {
    this.piece = Objects.requireNonNull(piece, "piece");
    this.garment = Objects.requireNonNull(garment, "garment");
    this.fabric = Objects.requireNonNull(fabric, "fabric");
    this.findings = List.copyOf(findings);
    this.letters = letters;
  }

  /**
   * A drawing of a piece.
   *
   * @param piece as it is cut
   * @return the drawing, which names neither garment nor fabric yet
   */
  public static PieceDrawing of(CutPiece piece) {
    return new PieceDrawing(piece, "", "", List.of(), ON_PAPER);
  }

  /**
   * The same with the name of the garment.
   *
   * @param name with the size, if there is one
   * @return the drawing
   */
  public PieceDrawing withGarment(String name) {
    return new PieceDrawing(piece, name, fabric, findings, letters);
  }

  /**
   * The same with the fabric to cut it from.
   *
   * @param name of the fabric
   * @return the drawing
   */
  public PieceDrawing withFabric(String name) {
    return new PieceDrawing(piece, garment, name, findings, letters);
  }

  /**
   * The same with what was found at its edges and corners. An edge is followed by a line, a corner
   * is ringed; findings about other things leave the drawing as it is.
   *
   * @param newFindings of the whole draft
   * @return the drawing
   */
  public PieceDrawing withFindings(List<Finding> newFindings) {
    return new PieceDrawing(piece, garment, fabric, newFindings, letters);
  }

  /**
   * The same with letters of another size.
   *
   * @param capital how high capitals of the words are where there is room for them, 3.5 mm unless
   *     said otherwise; names of lines are lower, the name of the piece is higher
   * @return the drawing
   * @throws DraftingException if it is not from 1 to 50 mm
   */
  @Experimental
  public PieceDrawing withLetters(Length capital) {
    if (!(capital.toMm() >= 1 && capital.toMm() <= 50)) {
      throw DraftingException.of("letters of this size do not serve")
          .value(capital)
          .accepted("from 1 to 50 mm");
    }
    return new PieceDrawing(piece, garment, fabric, findings, capital);
  }

  /**
   * Draws the piece.
   *
   * @return lines and texts in mm, where the piece itself lies
   */
  public Group group() {
    PieceLettering lettering = new PieceLettering(piece.cutLine(), lines(), letters);
    lettering.markNames();
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
    findings.stream().map(Finding::place).distinct().flatMap(this::marks).forEach(strokes::add);
    return strokes;
  }

  private Stream<Stroke> marks(Place place) {
    List<String> names = place.names();
    if (names.isEmpty() || !names.get(0).equals(piece.piece().name())) {
      return Stream.empty();
    }
    return switch (place.kind()) {
      case "edge" -> Stream.of(found(names.get(1), piece.piece().edge(names.get(1)).curve()));
      case "corner" -> {
        Point at = piece.piece().corner(names.get(1), names.get(2)).at();
        Arc ring = Arc.of(at, RING, Angle.degrees(0), Angle.degrees(360));
        yield Stream.of(found(names.get(1) + " and " + names.get(2), Curve.of(ring)));
      }
      default -> Stream.empty();
    };
  }

  private static Stroke found(String name, Curve curve) {
    return new Stroke(StrokeStyle.FINDING, name, curve);
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
