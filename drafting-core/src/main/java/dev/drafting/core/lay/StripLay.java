package dev.drafting.core.lay;

import dev.drafting.core.Experimental;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.JtsBridge;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Envelope;

/**
 * Outlines of any kind on a strip of one width, in the least length: what a {@link Lay} does with
 * the pieces of a garment, for shapes without fold, grain and cloth. Curves become chords within
 * 0.01 mm.
 *
 * <pre>{@code
 * Curve square = Curve.polyline(new Point(0, 0), new Point(50, 0), new Point(50, 50), new Point(0, 50), new Point(0, 0));
 * StripLay lay = StripLay.of(Length.mm(100)).with(square, 4, Angle.ZERO);
 * StripLay.Result result = lay.plan(1, java.time.Duration.ofMillis(200), length -> true);
 * result.outlines().size();  // => 4
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class StripLay implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final Length FLAT = Length.mm(0.01);

  private final Length width;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Shape> shapes;

  /** An outline, how often, and turned how. */
  private record Shape(Curve outline, int times, List<Angle> turns) implements Serializable {}

  /**
   * Where the outlines lie.
   *
   * @param length how long the strip is
   * @param outlines each in its place, x along the strip, in the order in which they were given
   */
  public record Result(Length length, List<Curve> outlines) implements Serializable {

    /**
     * Copies the list.
     *
     * @param length how long the strip is
     * @param outlines each in its place
     */
    public Result {
      Objects.requireNonNull(length, "length");
      outlines = List.copyOf(outlines);
    }
  }

  private StripLay(Length width, List<Shape> shapes) {
    this.width = width;
    this.shapes = List.copyOf(shapes);
  }

  /**
   * An empty strip.
   *
   * @param width how wide it is
   * @return the strip
   * @throws DraftingException if the width is not above zero
   */
  public static StripLay of(Length width) {
    if (!width.isPositive()) {
      throw DraftingException.of("a strip has no width").value(width).accepted("more than 0 mm");
    }
    return new StripLay(width, List.of());
  }

  /**
   * One more outline.
   *
   * @param outline a closed curve
   * @param times how often it is laid
   * @param turns by what angles it may be turned, one or more
   * @return the strip with it
   * @throws DraftingException if the curve is open, there is no turn, or it is wider than the strip
   *     in every turn
   */
  public StripLay with(Curve outline, int times, Angle... turns) {
    if (!outline.isClosed()) {
      throw DraftingException.of("an outline is open")
          .value(outline)
          .accepted("a curve that ends where it starts");
    }
    if (times < 1 || turns.length == 0) {
      throw DraftingException.of("an outline is laid never, or in no way")
          .value(times + " times, " + turns.length + " turns")
          .accepted("once or more, in one way or more");
    }
    Shape shape = new Shape(outline, times, List.of(turns));
    boolean fits =
        shape.turns().stream()
            .anyMatch(
                turn ->
                    outline
                            .map(Transform.rotation(new Point(0, 0), turn))
                            .bounds()
                            .height()
                            .compareTo(width.plus(FLAT))
                        <= 0);
    if (!fits) {
      throw DraftingException.of("an outline is wider than the strip")
          .value(outline.bounds().height())
          .accepted("up to " + width);
    }
    List<Shape> more = new ArrayList<>(shapes);
    more.add(shape);
    return new StripLay(width, more);
  }

  /**
   * Searches for some time for a short strip.
   *
   * @param seed which of many equally good beginnings
   * @param time how long to search
   * @param goOn is told the length of every shorter strip, and says whether to search on
   * @return the shortest one found, without overlaps
   * @throws DraftingException if there is nothing to lay
   */
  public Result plan(long seed, Duration time, Predicate<Length> goOn) {
    if (shapes.isEmpty()) {
      throw DraftingException.of("there is nothing to lay").accepted("one outline or more");
    }
    TimeBudget budget = new TimeBudget(time);
    List<TurnedShape[]> turned = new ArrayList<>();
    List<Room> rooms = new ArrayList<>();
    for (int type = 0; type < shapes.size(); type++) {
      turned.add(turned(shapes.get(type)));
      for (int i = 0; i < shapes.get(type).times(); i++) {
        rooms.add(Room.anywhere(type, width.toMm()));
      }
    }
    StripProblem problem = new StripProblem(turned, rooms, List.of(), width.toMm());
    StripSearch search = new StripSearch(problem, seed);
    search.run(budget::spent, length -> budget.tell(goOn, Length.mm(length)));
    return new Result(Length.mm(search.length()), outlines(search.best(), rooms));
  }

  private static TurnedShape[] turned(Shape shape) {
    Curve outline = shape.outline();
    Curve turning = outline.areaSquareMm() < 0 ? outline.reversed() : outline;
    TurnedShape straight = TurnedShape.of(JtsBridge.toPolygon(turning, FLAT), new Envelope());
    return shape.turns().stream()
        .map(turn -> straight.turned(turn.toDegrees()))
        .toArray(TurnedShape[]::new);
  }

  private List<Curve> outlines(Layout layout, List<Room> rooms) {
    List<Curve> outlines = new ArrayList<>();
    for (int i = 0; i < rooms.size(); i++) {
      Shape shape = shapes.get(rooms.get(i).type());
      Transform there =
          Transform.rotation(new Point(0, 0), shape.turns().get(layout.turn[i]))
              .then(Transform.translation(new Vector(layout.x[i], layout.y[i])));
      outlines.add(shape.outline().map(there));
    }
    return outlines;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(Length width, List<Shape> shapes) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      StripLay lay = of(width);
      for (Shape shape : shapes) {
        lay = lay.with(shape.outline(), shape.times(), shape.turns().toArray(Angle[]::new));
      }
      return lay;
    }
  }

  private Object writeReplace() {
    return new Kept(width, shapes);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a strip lay is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof StripLay that && that.width.equals(width) && that.shapes.equals(shapes);
  }

  @Override
  public int hashCode() {
    return Objects.hash(width, shapes);
  }

  @Override
  public String toString() {
    int count = shapes.stream().mapToInt(Shape::times).sum();
    return count + (count == 1 ? " outline" : " outlines") + " on a strip " + width + " wide";
  }
}
