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

  /** The line that was in the way last: mostly it is in the way of the next place, too. */
  private double @Nullable [] inTheWay;

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
    Point middle = new Point(near.x() - w / 2, near.y() - h / 2);
    double reach = reach(middle.x(), middle.y());
    Place best = new Place(null, Double.POSITIVE_INFINITY);
    for (int ring = 0; ring * STEP <= Math.min(reach, best.distance()); ring++) {
      best = nearest(ring, middle, w, h, best);
    }
    return Optional.ofNullable(best.corner());
  }

  /** A place for a text, by its lower left corner, and how far it lies from where it should be. */
  private record Place(@Nullable Point corner, double distance) {}

  /** The nearest free place of a square ring of steps, always tried in the same order. */
  private Place nearest(int ring, Point middle, double w, double h, Place before) {
    Place best = before;
    for (int i = -ring; i <= ring; i++) {
      double x = middle.x() + i * STEP;
      if (!(x >= bounds.minX() && x + w <= bounds.maxX())) {
        continue;
      }
      int next = Math.abs(i) == ring ? 1 : 2 * ring;
      for (int j = -ring; j <= ring; j += next) {
        double y = middle.y() + j * STEP;
        if (!(y >= bounds.minY() && y + h <= bounds.maxY())) {
          continue;
        }
        double distance = STEP * Math.hypot(i, j);
        if (distance < best.distance() && isFree(x, y, w, h)) {
          best = new Place(new Point(x, y), distance);
        }
      }
    }
    return best;
  }

  /** How far the farthest part of the room lies from a place. */
  private double reach(double x, double y) {
    double across = Math.max(Math.abs(bounds.minX() - x), Math.abs(bounds.maxX() - x));
    double up = Math.max(Math.abs(bounds.minY() - y), Math.abs(bounds.maxY() - y));
    return Math.max(across, up);
  }

  private boolean isFree(double x, double y, double w, double h) {
    Rectangle2D wanted = new Rectangle2D.Double(x - GAP, y - GAP, w + 2 * GAP, h + 2 * GAP);
    return touchesNoBox(wanted)
        && touchesNoLine(wanted)
        && (outline == null || outline.contains(x, y));
  }

  private boolean touchesNoBox(Rectangle2D wanted) {
    for (Box box : boxes) {
      if (touches(wanted, box)) {
        return false;
      }
    }
    return true;
  }

  private boolean touchesNoLine(Rectangle2D wanted) {
    if (inTheWay != null && touches(wanted, inTheWay)) {
      return false;
    }
    for (double[] line : lines) {
      if (touches(wanted, line)) {
        inTheWay = line;
        return false;
      }
    }
    return true;
  }

  private static boolean touches(Rectangle2D wanted, double[] line) {
    return wanted.intersectsLine(line[0], line[1], line[2], line[3]);
  }

  private static boolean touches(Rectangle2D wanted, Box box) {
    return box.minX() < wanted.getMaxX()
        && box.maxX() > wanted.getMinX()
        && box.minY() < wanted.getMaxY()
        && box.maxY() > wanted.getMinY();
  }
}
