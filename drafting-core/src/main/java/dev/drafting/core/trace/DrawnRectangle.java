package dev.drafting.core.trace;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealVector;

/**
 * A rectangle of known size that lies beside a piece and was traced, scanned or photographed with
 * it: it tells the scale, and what is askew. A skew print, a photograph taken at an angle and a
 * picture of the other side are all put right by the one projection that makes the rectangle what
 * it is.
 *
 * <p>In what is corrected the rectangle has its lower left corner at (0, 0) and its width along x.
 * Of a half on the fold draw the rectangle with its left side on the fold.
 *
 * <pre>{@code
 * DrawnRectangle sheet = DrawnRectangle.of(Length.mm(210), Length.mm(297),
 *     new Point(10, 10), new Point(1060, 10), new Point(1060, 1495), new Point(10, 1495));
 * sheet.corrected(new Point(535, 10));  // => (105, 0)
 * sheet;  // => 210 mm x 297 mm, 0.200 mm to the unit, out of square by 0.0°
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class DrawnRectangle implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final double SHARPEST = 30;

  private final Length width;
  private final Length height;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Point> corners;

  /** Of x and y as seen: (h0 x + h1 y + h2) / (h6 x + h7 y + 1), and so on. */
  private final double[] projection;

  private DrawnRectangle(Length width, Length height, List<Point> corners, double[] projection) {
    this.width = width;
    this.height = height;
    this.corners = corners;
    this.projection = projection;
  }

  /**
   * A rectangle as it was seen, in whatever unit.
   *
   * @param width its true width, 20 mm to 5 m
   * @param height its true height, 20 mm to 5 m
   * @param lowerLeft its lower left corner as seen
   * @param lowerRight its lower right corner as seen
   * @param upperRight its upper right corner as seen
   * @param upperLeft its upper left corner as seen
   * @return the rectangle
   * @throws DraftingException if a size is out of range, the corners do not follow each other round
   *     a quadrangle, or one of them is sharper than 30° or blunter than 150°
   */
  public static DrawnRectangle of(
      Length width,
      Length height,
      Point lowerLeft,
      Point lowerRight,
      Point upperRight,
      Point upperLeft) {
    checkSize("width", width);
    checkSize("height", height);
    List<Point> corners = List.of(lowerLeft, lowerRight, upperRight, upperLeft);
    checkCorners(corners);
    return new DrawnRectangle(
        width, height, corners, projection(corners, width.toMm(), height.toMm()));
  }

  private static void checkSize(String which, Length size) {
    if (size.toMm() < 20 || size.toMm() > 5_000) {
      throw DraftingException.of("a drawn rectangle is too small or too large")
          .at(which)
          .value(size)
          .accepted("20 mm to 5 m");
    }
  }

  private static void checkCorners(List<Point> corners) {
    boolean left = turn(corners, 0) > 0;
    for (int i = 0; i < 4; i++) {
      double turn = turn(corners, i);
      double inside = 180 - Math.abs(turn);
      if (turn > 0 != left || inside < SHARPEST || inside > 180 - SHARPEST) {
        throw DraftingException.of("the corners of a drawn rectangle lie badly")
            .at(List.of("lower left", "lower right", "upper right", "upper left").get(i))
            .value(corners.get(i))
            .accepted("corners that follow each other, of 30 to 150°");
      }
    }
  }

  /** By how many degrees the way round turns at a corner. */
  private static double turn(List<Point> corners, int i) {
    var in = corners.get(i).minus(corners.get((i + 3) % 4));
    var out = corners.get((i + 1) % 4).minus(corners.get(i));
    return Math.toDegrees(Math.atan2(in.cross(out), in.dot(out)));
  }

  private static double[] projection(List<Point> corners, double width, double height) {
    double[][] targets = {{0, 0}, {width, 0}, {width, height}, {0, height}};
    double[][] rows = new double[8][];
    double[] right = new double[8];
    for (int i = 0; i < 4; i++) {
      double x = corners.get(i).x();
      double y = corners.get(i).y();
      double u = targets[i][0];
      double v = targets[i][1];
      rows[2 * i] = new double[] {x, y, 1, 0, 0, 0, -u * x, -u * y};
      rows[2 * i + 1] = new double[] {0, 0, 0, x, y, 1, -v * x, -v * y};
      right[2 * i] = u;
      right[2 * i + 1] = v;
    }
    RealVector found =
        new LUDecomposition(new Array2DRowRealMatrix(rows, false))
            .getSolver()
            .solve(new ArrayRealVector(right, false));
    return found.toArray();
  }

  /**
   * Where a point that was seen lies in truth.
   *
   * @param seen in the unit of the corners
   * @return in millimetres, the rectangle's lower left corner at (0, 0)
   * @throws DraftingException if it lies beyond the horizon of the picture
   */
  public Point corrected(Point seen) {
    double[] h = projection;
    double depth = h[6] * seen.x() + h[7] * seen.y() + 1;
    double at = h[6] * corners.get(0).x() + h[7] * corners.get(0).y() + 1;
    if (depth * at <= 0) {
      throw DraftingException.of("a point lies beyond the horizon of the picture")
          .value(seen)
          .accepted("points on the cloth, the rectangle beside the piece");
    }
    return new Point(
        (h[0] * seen.x() + h[1] * seen.y() + h[2]) / depth,
        (h[3] * seen.x() + h[4] * seen.y() + h[5]) / depth);
  }

  /**
   * A line of points that was seen, as it is in truth.
   *
   * @param seen in the unit of the corners
   * @return in millimetres
   * @throws DraftingException as {@link #corrected(Point)} does
   */
  public Polyline corrected(Polyline seen) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < seen.size(); i++) {
      points.add(corrected(seen.point(i)));
    }
    return Polyline.of(points);
  }

  /**
   * A tracing that was seen, as it is in truth.
   *
   * @param seen in the unit of the corners
   * @return in millimetres
   * @throws DraftingException as {@link #corrected(Point)} does
   */
  public Tracing corrected(Tracing seen) {
    List<TracedEdge> edges = new ArrayList<>();
    for (TracedEdge edge : seen.edges()) {
      edges.add(edge.through(corrected(edge.points())));
    }
    return Tracing.of(seen.piece(), seen.extent(), edges);
  }

  /**
   * Whether the other side was seen, left for right, or a picture whose y runs down. Correcting
   * turns it over.
   *
   * @return true if the corners run clockwise with y up
   */
  public boolean isTurnedOver() {
    return turn(corners, 0) < 0;
  }

  /**
   * How large a unit of what was seen is, on the average over the rectangle.
   *
   * @return the length of one unit
   */
  public Length unit() {
    double area = 0;
    for (int i = 0; i < 4; i++) {
      Point here = corners.get(i);
      Point next = corners.get((i + 1) % 4);
      area += here.x() * next.y() - next.x() * here.y();
    }
    return Length.mm(Math.sqrt(width.toMm() * height.toMm() / Math.abs(area / 2)));
  }

  /** By how many degrees the corner that is seen farthest from square is off. */
  private double outOfSquare() {
    double most = 0;
    for (int i = 0; i < 4; i++) {
      most = Math.max(most, Math.abs(90 - Math.abs(turn(corners, i))));
    }
    return most;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(
      Length width,
      Length height,
      Point lowerLeft,
      Point lowerRight,
      Point upperRight,
      Point upperLeft)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return of(width, height, lowerLeft, lowerRight, upperRight, upperLeft);
    }
  }

  private Object writeReplace() {
    return new Kept(width, height, corners.get(0), corners.get(1), corners.get(2), corners.get(3));
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a drawn rectangle is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DrawnRectangle that
        && width.equals(that.width)
        && height.equals(that.height)
        && corners.equals(that.corners);
  }

  @Override
  public int hashCode() {
    return Objects.hash(width, height, corners);
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%s x %s, %.3g mm to the unit, out of square by %.1f°%s",
        width,
        height,
        unit().toMm(),
        outOfSquare(),
        isTurnedOver() ? ", turned over" : "");
  }
}
