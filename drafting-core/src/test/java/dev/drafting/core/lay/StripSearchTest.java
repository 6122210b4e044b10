package dev.drafting.core.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * A rectangle of 240 by 120 mm that was cut along crooked lines: no strip on which its parts lie
 * can be shorter than the rectangle was. Invented data.
 */
class StripSearchTest {
  private static final double LENGTH = 240;
  private static final double HEIGHT = 120;

  /** Corners of the parts, column after column from below: x and y in turn. */
  private static final double[][] COLUMNS = {
    {0, 0, 0, 70, 0, 120},
    {91, 0, 96, 61, 88, 120},
    {139, 0, 145, 46, 138, 120},
    {240, 0, 240, 56, 240, 120}
  };

  private final List<TurnedShape[]> shapes = new ArrayList<>();
  private final List<Room> rooms = new ArrayList<>();
  private final List<StripProblem.Flaw> flaws = new ArrayList<>();
  private final List<Double> told = new ArrayList<>();

  private static double[] part(int column, int row) {
    double[] left = COLUMNS[column];
    double[] right = COLUMNS[column + 1];
    int low = 2 * row;
    int high = low + 2;
    double x = left[low];
    double y = left[low + 1];
    return new double[] {
      0,
      0,
      right[low] - x,
      right[low + 1] - y,
      right[high] - x,
      right[high + 1] - y,
      left[high] - x,
      left[high + 1] - y
    };
  }

  /** All parts, each upright or turned end for end; one of them may be a flaw in its place. */
  private StripProblem problem(int flaw) {
    for (int i = 0; i < 6; i++) {
      TurnedShape shape = TurnedShape.of(part(i / 2, i % 2));
      if (i == flaw) {
        double[] column = COLUMNS[i / 2];
        flaws.add(new StripProblem.Flaw(shape, column[2 * (i % 2)], column[2 * (i % 2) + 1]));
      } else {
        shapes.add(new TurnedShape[] {shape, shape.turned(180)});
        rooms.add(Room.anywhere(shapes.size() - 1, HEIGHT));
      }
    }
    return new StripProblem(shapes, rooms, flaws, HEIGHT);
  }

  private StripSearch searched(StripProblem problem, long seed, int rounds) {
    StripSearch search = new StripSearch(problem, seed);
    int[] asked = {0};
    search.run(() -> (double) asked[0]++ / rounds, told::add);
    return search;
  }

  private Polygon laid(StripProblem problem, Layout layout, int item) {
    return polygon(problem.shape(item, layout.turn[item]), layout.x[item], layout.y[item]);
  }

  private static Polygon polygon(TurnedShape shape, double x, double y) {
    int n = shape.xy.length / 2;
    Coordinate[] ring = new Coordinate[n + 1];
    for (int i = 0; i <= n; i++) {
      ring[i] = new Coordinate(x + shape.xy[2 * (i % n)], y + shape.xy[2 * (i % n) + 1]);
    }
    return new GeometryFactory().createPolygon(ring);
  }

  /** JTS looks at what overlaps and at what leaves the strip. */
  private void holds(StripProblem problem, StripSearch search) {
    List<Polygon> all = new ArrayList<>();
    flaws.forEach(flaw -> all.add(polygon(flaw.shape(), flaw.x(), flaw.y())));
    for (int i = 0; i < problem.count(); i++) {
      Polygon next = laid(problem, search.best(), i);
      all.forEach(other -> assertEquals(0, other.intersection(next).getArea(), 1e-3));
      assertTrue(next.getEnvelopeInternal().getMinX() >= -1e-9);
      assertTrue(next.getEnvelopeInternal().getMaxX() <= search.length() + 1e-9);
      assertTrue(next.getEnvelopeInternal().getMinY() >= -1e-9);
      assertTrue(next.getEnvelopeInternal().getMaxY() <= HEIGHT + 1e-9);
      all.add(next);
    }
  }

  private static List<String> places(StripSearch search) {
    List<String> places = new ArrayList<>();
    Layout best = search.best();
    for (int i = 0; i < best.x.length; i++) {
      String upright = best.turn[i] == 0 ? "upright" : "turned";
      places.add(String.format(Locale.ROOT, "%s %.3f %.3f", upright, best.x[i], best.y[i]));
    }
    return places;
  }

  @ParameterizedTest
  @ValueSource(longs = {2, 3, 4})
  void thePartsFormTheirRectangleAgain(long seed) {
    StripProblem problem = problem(-1);
    StripSearch search = searched(problem, seed, 240);
    holds(problem, search);
    assertEquals(LENGTH, search.length(), 0.05);
  }

  @Test
  void theyDoSoRoundAFlawTheShapeOfOneOfThem() {
    StripProblem problem = problem(2);
    StripSearch search = searched(problem, 3, 240);
    holds(problem, search);
    assertEquals(LENGTH, search.length(), 0.05);
  }

  /** What no layout can be shorter than: the longest part alone, from 138 to 240 mm. */
  @Test
  void theLongestPartIsTheLeast() {
    assertEquals(102, problem(-1).longest(), 1e-9);
  }

  /**
   * A plan is found again by its seed. These steps were looked at once: each layout is shorter than
   * the one before, and the last leaves out what the parts alone could not fill.
   */
  @Test
  void theSameSeedTakesTheSameStepsAsEver() {
    StripProblem problem = problem(-1);
    StripSearch search = searched(problem, 2, 120);
    holds(problem, search);
    assertEquals(
        List.of(
            348.0, 273.95872, 264.37017, 257.8931, 253.47023, 250.42732, 248.32285, 248.20883,
            248.11007, 248.02654, 247.95822, 247.92537),
        told.stream().map(length -> Math.rint(length * 1e5) / 1e5).toList());
    assertEquals(
        List.of(
            "turned 247.925 120.000",
            "turned 247.925 50.000",
            "upright -0.000 0.000",
            "upright 8.000 60.108",
            "upright 51.318 0.000",
            "upright 56.919 46.000"),
        places(search));
  }

  @Test
  void norDoFlawsChangeThem() {
    StripProblem problem = problem(3);
    StripSearch search = searched(problem, 2, 80);
    holds(problem, search);
    assertEquals(
        List.of(308.90437, 293.45916, 293.3304, 293.22865, 293.15388, 293.10606, 293.08517),
        told.stream().map(length -> Math.rint(length * 1e5) / 1e5).toList());
    assertEquals(
        List.of(
            "upright -0.000 0.000",
            "upright -0.000 70.000",
            "turned 195.906 61.000",
            "upright 192.085 0.000",
            "upright 198.085 46.000"),
        places(search));
  }
}
