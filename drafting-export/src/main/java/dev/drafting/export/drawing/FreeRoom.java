package dev.drafting.export.drawing;

import dev.drafting.core.Stable;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.measure.Length;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Finds room for texts where nothing is drawn. Grows as things are put down; for one thread.
 *
 * <pre>{@code
 * FreeRoom room = FreeRoom.within(new Box(0, 0, 100, 100));
 * Point corner = room.find(Length.mm(20), Length.mm(10), new Point(50, 50)).orElseThrow();
 * corner;  // => (40, 45)
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class FreeRoom {
  private static final Length FLATNESS = Length.mm(0.5);
  private static final double STEP = 4;
  private static final double GAP = 2;

  private final Box bounds;
  private final @Nullable Path2D outline;
  private final List<double[]> lines = new ArrayList<>();
  private final List<Box> boxes = new ArrayList<>();

  private FreeRoom(Box bounds, @Nullable Path2D outline) {
    this.bounds = bounds;
    this.outline = outline;
  }

  /**
   * The room in a box.
   *
   * @param box in mm
   * @return all of it is free
   */
  public static FreeRoom within(Box box) {
    return new FreeRoom(box, null);
  }

  /**
   * The room inside a closed outline.
   *
   * @param outline a closed curve, in mm
   * @return all of it is free, but for a little along the outline
   */
  public static FreeRoom inside(Curve outline) {
    return inside(outline, outline.bounds());
  }

  /**
   * The part of the room inside a closed outline that lies in a box.
   *
   * @param outline a closed curve, in mm
   * @param box in mm, for instance what one sheet of paper shows
   * @return all of it is free, but for a little along the outline
   */
  public static FreeRoom inside(Curve outline, Box box) {
    FreeRoom room = new FreeRoom(box, path(outline));
    room.take(outline);
    return room;
  }

  /** The outline as a shape of the Java platform, for its tests of inside and outside. */
  private static Path2D path(Curve outline) {
    Polyline points = outline.flatten(FLATNESS);
    Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD, points.size());
    path.moveTo(points.x(0), points.y(0));
    for (int i = 1; i < points.size(); i++) {
      path.lineTo(points.x(i), points.y(i));
    }
    path.closePath();
    return path;
  }

  /**
   * Keeps later texts off an element.
   *
   * @param element a line or a text
   */
  public void take(Element element) {
    if (element instanceof Stroke stroke) {
      take(stroke.curve());
    } else {
      take(element.bounds());
    }
  }

  /**
   * Keeps later texts off a box.
   *
   * @param box in mm
   */
  public void take(Box box) {
    boxes.add(box);
  }

  private void take(Curve curve) {
    Polyline points = curve.flatten(FLATNESS);
    for (int i = 1; i < points.size(); i++) {
      lines.add(new double[] {points.x(i - 1), points.y(i - 1), points.x(i), points.y(i)});
    }
  }

  /**
   * The free place nearest to a point.
   *
   * @param width of the text
   * @param height of the text
   * @param near where its middle would best be, in mm
   * @return the lower left corner of the place; empty if there is none
   */
  public Optional<Point> find(Length width, Length height, Point near) {
    double w = width.toMm();
    double h = height.toMm();
    double x = near.x() - w / 2;
    double y = near.y() - h / 2;
    double reach = reach(x, y);
    Optional<Point> nearest = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    for (int ring = 0; ring * STEP <= Math.min(reach, least); ring++) {
      for (int[] step : ring(ring)) {
        double distance = STEP * Math.hypot(step[0], step[1]);
        Point corner = new Point(x + step[0] * STEP, y + step[1] * STEP);
        if (distance < least && isWithin(corner, w, h) && isFree(corner, w, h)) {
          nearest = Optional.of(corner);
          least = distance;
        }
      }
    }
    return nearest;
  }

  /** How far the farthest part of the room lies from a place. */
  private double reach(double x, double y) {
    double across = Math.max(Math.abs(bounds.minX() - x), Math.abs(bounds.maxX() - x));
    double up = Math.max(Math.abs(bounds.minY() - y), Math.abs(bounds.maxY() - y));
    return Math.max(across, up);
  }

  /** The steps to the places of a square ring, always in the same order. */
  private static List<int[]> ring(int radius) {
    List<int[]> steps = new ArrayList<>();
    for (int i = -radius; i <= radius; i++) {
      boolean side = Math.abs(i) == radius;
      for (int j = -radius; j <= radius; j += side ? 1 : Math.max(1, 2 * radius)) {
        steps.add(new int[] {i, j});
      }
    }
    return steps;
  }

  private boolean isWithin(Point corner, double w, double h) {
    return corner.x() >= bounds.minX()
        && corner.y() >= bounds.minY()
        && corner.x() + w <= bounds.maxX()
        && corner.y() + h <= bounds.maxY();
  }

  private boolean isFree(Point corner, double w, double h) {
    Rectangle2D wanted =
        new Rectangle2D.Double(corner.x() - GAP, corner.y() - GAP, w + 2 * GAP, h + 2 * GAP);
    return (outline == null || outline.contains(corner.x(), corner.y()))
        && boxes.stream().noneMatch(b -> touches(wanted, b))
        && lines.stream().noneMatch(l -> wanted.intersectsLine(l[0], l[1], l[2], l[3]));
  }

  private static boolean touches(Rectangle2D wanted, Box box) {
    return box.minX() < wanted.getMaxX()
        && box.maxX() > wanted.getMinX()
        && box.minY() < wanted.getMaxY()
        && box.maxY() > wanted.getMinY();
  }
}
