package dev.drafting.core.cut;

import dev.drafting.core.Experimental;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.OffsetPart;
import dev.drafting.core.offset.OffsetTag;
import dev.drafting.core.pattern.Edge;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A piece to be marked straight on the cloth, without paper: points of its cut line by how far they
 * lie up along the fold, or along the grain where there is no fold, and across from it. Straight
 * strokes from each point to the next stay within 1 mm of the cut line.
 *
 * <pre>{@code
 * Pattern top = Templates.installed().get("sleeveless-top").pattern();
 * ChalkTable table = ChalkTable.of(CutPlan.of(top).pieces().get(0));
 * table.alongFold();  // => true
 * table.points().get(0).across();  // => 0 mm
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class ChalkTable implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final Length WITHIN = Length.mm(0.9);
  private static final double SAME = 0.1;
  private static final Point ORIGIN = new Point(0, 0);

  private final String piece;
  private final boolean alongFold;
  private final List<ChalkPoint> points;
  private final List<ChalkPoint> notches;

  private ChalkTable(
      String piece, boolean alongFold, List<ChalkPoint> points, List<ChalkPoint> notches) {
    this.piece = piece;
    this.alongFold = alongFold;
    this.points = List.copyOf(points);
    this.notches = List.copyOf(notches);
  }

  /** A point with the name of what runs from it, before it is known what is lowest. */
  private record Station(String line, Point at) {}

  /**
   * The table of a piece.
   *
   * @param cut as it is cut, with its allowances
   * @return its points in the order of the outline: from the foot of the fold to its top, or once
   *     round
   */
  public static ChalkTable of(CutPiece cut) {
    boolean fold = cut.piece().edges().stream().anyMatch(Edge::isOnFold);
    Transform upright =
        fold
            ? Transform.identity()
            : Transform.rotation(ORIGIN, Angle.degrees(90).minus(cut.grain()));
    List<Station> outline = outline(cut, fold, upright);
    List<Station> notches =
        cut.notches().stream()
            .map(notch -> new Station("notch " + notch.label(), upright.apply(notch.at())))
            .toList();
    double foot = outline.stream().mapToDouble(s -> s.at().y()).min().orElse(0);
    double side = fold ? 0 : outline.stream().mapToDouble(s -> s.at().x()).min().orElse(0);
    Point zero = new Point(side, foot);
    return new ChalkTable(cut.name(), fold, from(zero, outline), from(zero, notches));
  }

  private static List<ChalkPoint> from(Point zero, List<Station> stations) {
    return stations.stream()
        .map(
            s ->
                new ChalkPoint(
                    s.line(), Length.mm(s.at().y() - zero.y()), Length.mm(s.at().x() - zero.x())))
        .toList();
  }

  private static List<Station> outline(CutPiece cut, boolean fold, Transform upright) {
    List<OffsetPart> parts = new ArrayList<>(cut.offset().parts());
    if (fold) {
      while (!isOnFold(cut, parts.get(0)) || isOnFold(cut, parts.get(parts.size() - 1))) {
        Collections.rotate(parts, 1);
      }
      parts.removeIf(part -> isOnFold(cut, part));
    }
    List<Station> stations = new ArrayList<>();
    Point last = ORIGIN;
    for (OffsetPart part : parts) {
      Polyline line = part.curve().map(upright).flatten(WITHIN);
      for (int i = 0; i < line.size() - 1; i++) {
        add(stations, new Station(part.sourceName(), line.point(i)));
      }
      last = line.point(line.size() - 1);
    }
    if (fold) {
      add(stations, new Station("the fold", last));
    }
    return stations;
  }

  /** Corners may be made of parts too short for chalk. */
  private static void add(List<Station> stations, Station next) {
    if (stations.isEmpty() || !isSame(stations.get(stations.size() - 1), next)) {
      stations.add(next);
    }
  }

  private static boolean isSame(Station one, Station other) {
    return one.at().minus(other.at()).length().toMm() < SAME;
  }

  private static boolean isOnFold(CutPiece cut, OffsetPart part) {
    return part.tag() == OffsetTag.EDGE && cut.piece().edge(part.sourceName()).isOnFold();
  }

  /**
   * The piece.
   *
   * @return its name
   */
  public String piece() {
    return piece;
  }

  /**
   * What the points are measured along.
   *
   * @return true if along the fold of the cloth; false if along a line with the grain that touches
   *     the piece at its left
   */
  public boolean alongFold() {
    return alongFold;
  }

  /**
   * The points of the cut line.
   *
   * @return in the order in which they are joined
   */
  public List<ChalkPoint> points() {
    return points;
  }

  /**
   * The notches.
   *
   * @return where they begin on the cut line
   */
  public List<ChalkPoint> notches() {
    return notches;
  }

  /**
   * How to go about it, in words.
   *
   * @return sentences for the maker
   */
  public String how() {
    String base =
        alongFold
            ? "Fold the cloth with the grain and chalk a line square to the fold where the piece is"
                + " to begin. Measure up along the fold from that line, and across from the fold."
            : "Chalk a line with the grain and a line square to it. Measure up along the grain from"
                + " where they meet, and across to the right.";
    return base
        + " Chalk every point and join them in turn, smoothly where they lie close; the allowances"
        + " are included.";
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      String piece, boolean alongFold, List<ChalkPoint> points, List<ChalkPoint> notches)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return new ChalkTable(Objects.requireNonNull(piece, "piece"), alongFold, points, notches);
    }
  }

  private Object writeReplace() {
    return new Kept(piece, alongFold, points, notches);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a chalk table is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ChalkTable that
        && piece.equals(that.piece)
        && alongFold == that.alongFold
        && points.equals(that.points)
        && notches.equals(that.notches);
  }

  @Override
  public int hashCode() {
    return Objects.hash(piece, alongFold, points, notches);
  }

  @Override
  public String toString() {
    String some =
        Stream.concat(points.stream(), notches.stream())
            .limit(8)
            .map(ChalkPoint::toString)
            .collect(Collectors.joining("; "));
    int more = points.size() + notches.size() - 8;
    return piece + " in chalk, " + some + (more > 0 ? " and " + more + " more" : "");
  }
}
