package dev.drafting.core.cut;

import dev.drafting.core.Stable;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.offset.OffsetResult;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.MarkingLine;
import dev.drafting.core.pattern.Piece;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A piece of paper to cut from: the cut line with all allowances, the lines on it, notches, marks
 * and what is printed.
 *
 * <pre>{@code
 * Pattern top = Templates.installed().get("sleeveless-top").pattern();
 * CutPiece front = CutPlan.of(top).pieces().get(0);
 * front.name();  // => front
 * front.labels();  // => [cut 1 on the fold from body cloth, cloth doubled, right side inside, allowances included: hem 20 mm; side, shoulder, neck 7 mm; armhole none]
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class CutPiece implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final Piece piece;
  private final OffsetResult offset;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<String> labels;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<DerivedLine> lines;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<CutNotch> notches;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<MarkingLine> markings;

  private CutPiece(
      String name,
      Piece piece,
      OffsetResult offset,
      List<String> labels,
      List<DerivedLine> lines,
      List<CutNotch> notches,
      List<MarkingLine> markings) {
    this.name = name;
    this.piece = piece;
    this.offset = offset;
    this.labels = List.copyOf(labels);
    this.lines = List.copyOf(lines);
    this.notches = List.copyOf(notches);
    this.markings = List.copyOf(markings);
  }

  static CutPiece of(Piece piece, OffsetResult offset, List<DerivedLine> lines, String version) {
    return new CutPiece(
        piece.name(),
        piece,
        offset,
        Labels.of(piece, version),
        lines,
        NotchPlacing.of(piece, offset),
        piece.markings());
  }

  /** This paper with another piece marked on it. */
  CutPiece shared(
      String paper, CutPiece inner, List<MarkingLine> transfers, List<CutNotch> innerNotches) {
    List<String> both = new ArrayList<>();
    labels.forEach(label -> both.add(name + ": " + label));
    inner.labels.forEach(label -> both.add(inner.name + ": " + label));
    List<MarkingLine> marks = new ArrayList<>(markings);
    marks.addAll(transfers);
    List<CutNotch> slits = new ArrayList<>(notches);
    slits.addAll(innerNotches);
    return new CutPiece(paper, piece, offset, both, lines, slits, marks);
  }

  /**
   * What the paper is called.
   *
   * @return the piece's name, or that of the shared paper
   */
  public String name() {
    return name;
  }

  /**
   * What is printed on it besides the name: how to cut, from what cloth, which side up, the
   * allowances that are included, the version.
   *
   * @return one line each
   */
  public List<String> labels() {
    return labels;
  }

  /**
   * The piece whose outline it has.
   *
   * @return the piece; of shared paper the outer one
   */
  public Piece piece() {
    return piece;
  }

  /**
   * The line to cut along; on the fold it runs straight on x = 0.
   *
   * @return a closed curve, counter-clockwise
   */
  public Curve cutLine() {
    return offset.outline();
  }

  /**
   * The lines to sew, fold and topstitch.
   *
   * @return joins first, then folds, then topstitching
   */
  public List<DerivedLine> lines() {
    return lines;
  }

  /**
   * The notches at the cut line.
   *
   * @return slits, in the order of adding
   */
  public List<CutNotch> notches() {
    return notches;
  }

  /**
   * The lines to transfer to the cloth; on shared paper also those of the inner piece.
   *
   * @return an unmodifiable list
   */
  public List<MarkingLine> markings() {
    return markings;
  }

  /**
   * The direction of the grain.
   *
   * @return counter-clockwise from the x axis
   */
  public Angle grain() {
    return piece.grain();
  }

  /**
   * The finished outline within the allowances.
   *
   * @return a closed curve, counter-clockwise
   */
  public Curve outline() {
    return piece.outline();
  }

  /**
   * The allowance that is included at each edge, in the order of the edges, without that on the
   * fold.
   *
   * @return lengths by the names of edges
   */
  public Map<String, Length> allowances() {
    Map<String, Length> allowances = new LinkedHashMap<>();
    for (Edge edge : piece.edges()) {
      if (!edge.isOnFold()) {
        allowances.put(edge.name(), edge.finish().profile().allowance());
      }
    }
    return Collections.unmodifiableMap(allowances);
  }

  /**
   * The cut line with the source of every part.
   *
   * @return the offset of the finished outline
   */
  public OffsetResult offset() {
    return offset;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      String name,
      Piece piece,
      OffsetResult offset,
      List<String> labels,
      List<DerivedLine> lines,
      List<CutNotch> notches,
      List<MarkingLine> markings)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return new CutPiece(
          Objects.requireNonNull(name, "name"),
          Objects.requireNonNull(piece, "piece"),
          Objects.requireNonNull(offset, "offset"),
          labels,
          lines,
          notches,
          markings);
    }
  }

  private Object writeReplace() {
    return new Kept(name, piece, offset, labels, lines, notches, markings);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a piece to cut is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof CutPiece that
        && that.name.equals(name)
        && that.piece.equals(piece)
        && that.offset.equals(offset)
        && that.labels.equals(labels)
        && that.lines.equals(lines)
        && that.notches.equals(notches)
        && that.markings.equals(markings);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, piece, offset, labels, lines, notches, markings);
  }

  @Override
  public String toString() {
    return name
        + ": cut line "
        + cutLine().length().text(LengthUnit.MM)
        + ", "
        + lines.size()
        + " lines, "
        + notches.size()
        + " notches, "
        + markings.size()
        + " marking lines";
  }
}
