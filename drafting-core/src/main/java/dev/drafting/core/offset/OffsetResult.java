package dev.drafting.core.offset;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * One closed outline, counter-clockwise and without crossings, whose every part knows its source;
 * or one open line beside an open source.
 *
 * <pre>{@code
 * OffsetResult wider = Offset.of(List.of(OffsetEdge.of("hem", Curve.line(new Point(0, 0), new Point(200, 0)), Length.mm(20)), OffsetEdge.of("side", Curve.line(new Point(200, 0), new Point(0, 150)), Length.mm(7)), OffsetEdge.of("front", Curve.line(new Point(0, 150), new Point(0, 0)), Length.ZERO))).result();
 * wider.length("hem").text(LengthUnit.MM);  // => 238.3 mm
 * wider.trimmings();  // => []
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class OffsetResult implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Curve outline;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<String> edges;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<OffsetPart> parts;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Trimming> trimmings;

  OffsetResult(
      Curve outline, List<String> edges, List<OffsetPart> parts, List<Trimming> trimmings) {
    this.outline = outline;
    this.edges = List.copyOf(edges);
    this.parts = List.copyOf(parts);
    this.trimmings = List.copyOf(trimmings);
  }

  /**
   * The whole outline.
   *
   * @return a closed curve, counter-clockwise; an open one beside an open source
   */
  public Curve outline() {
    return outline;
  }

  /**
   * The parts in the order of the outline; the end of each is the start of the next, within 1e-9
   * mm.
   *
   * @return all parts
   */
  public List<OffsetPart> parts() {
    return parts;
  }

  /**
   * The parts parallel to one edge, without joins and steps: usually one, none where the edge was
   * swallowed, more where another edge cuts in.
   *
   * @param edge the edge's name
   * @return its EDGE parts in the order of the outline
   * @throws DraftingException if the outline had no such edge
   */
  public List<OffsetPart> parts(String edge) {
    if (!edges.contains(edge)) {
      throw DraftingException.of("the outline has no such edge").value(edge).accepted("" + edges);
    }
    return parts.stream()
        .filter(part -> part.tag() == OffsetTag.EDGE && part.sourceName().equals(edge))
        .toList();
  }

  /**
   * The length of an edge's parallel, including its straight continuation to a mitred corner.
   *
   * @param edge the edge's name
   * @return the length of its EDGE parts together
   * @throws DraftingException if the outline had no such edge
   */
  public Length length(String edge) {
    return parts(edge).stream()
        .map(part -> part.curve().length())
        .reduce(Length.ZERO, Length::plus);
  }

  /**
   * What had no room: first what was lost at corners, then the rest in the order of the outline.
   *
   * @return the trimmings; empty where every edge kept its parallel up to its corners
   */
  public List<Trimming> trimmings() {
    return trimmings;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      Curve outline, List<String> edges, List<OffsetPart> parts, List<Trimming> trimmings)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return new OffsetResult(Objects.requireNonNull(outline, "outline"), edges, parts, trimmings);
    }
  }

  private Object writeReplace() {
    return new Kept(outline, edges, parts, trimmings);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("an offset line is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof OffsetResult that
        && outline.equals(that.outline)
        && edges.equals(that.edges)
        && parts.equals(that.parts)
        && trimmings.equals(that.trimmings);
  }

  @Override
  public int hashCode() {
    return Objects.hash(outline, edges, parts, trimmings);
  }

  @Override
  public String toString() {
    StringBuilder text =
        new StringBuilder(outline.isClosed() ? "Offset outline, " : "Offset line, ");
    text.append(OffsetText.rounded(outline.length()));
    text.append(outline.isClosed() ? " round" : " long");
    for (int i = 0; i < parts.size() && text.length() < 700; i++) {
      text.append(i == 0 ? ": " : "; ").append(parts.get(i));
    }
    if (!trimmings.isEmpty()) {
      text.append("; trimmed in ").append(trimmings.size()).append(" places");
    }
    return text.toString();
  }
}
