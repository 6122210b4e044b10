package dev.drafting.benchmarks;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.trace.TracedEdge;
import dev.drafting.core.trace.Truing;
import dev.drafting.core.trace.UnnamedTracing;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntFunction;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * How the time grows from ten thousand to a million points: the exponent of the power of the number
 * of points that fits best. The points lie 0.05 mm apart, so that a million of them make 50 m.
 */
final class GrowthTable implements Table {
  private static final int[] SIZES = {10_000, 31_623, 100_000, 316_228, 1_000_000};
  private static final int[] TRACED = {10_000, 31_623, 100_000};
  private static final double BUDGET_S = 1;
  private static final double STEEPEST = 1.1;
  private static final int RUNS = 3;
  private static final double ENOUGH_S = 5;
  private static final int PLACES = 1000;
  private static final Length STEP = Length.mm(0.05);
  private static final Length ALLOWANCE = Length.mm(1);

  @Override
  public String name() {
    return "growth";
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    add(rows, "offset", tracing -> tracing.offset(ALLOWANCE)::result);
    add(rows, "length", tracing -> onCurve(tracing, Curve::length));
    add(rows, "nearest point of 1,000 places", tracing -> onCurve(tracing, GrowthTable::nearest));
    add(rows, "crossings with itself, moved", tracing -> onCurve(tracing, GrowthTable::crossings));
    addTraced(rows, "truing", GrowthTable::truing);
    addTraced(rows, "corners of a line drawn in one go", GrowthTable::corners);
    return rows;
  }

  /** The strokes of a scanned line, which wanders by half the step from point to point. */
  private static List<List<Point>> strokes(TrueGarment garment, int points) {
    double step = garment.edges.stream().mapToDouble(TrueEdge::length).sum() / points;
    return new Pencil(1, step / 2, step).strokes(garment);
  }

  private static Work truing(int points) {
    TrueGarment garment = TrueGarment.ALL.get(0);
    List<List<Point>> strokes = strokes(garment, points);
    List<TracedEdge> edges = new ArrayList<>();
    for (TrueEdge edge : garment.edges) {
      edges.add(TracedEdge.of(edge.name(), strokes.get(edges.size())));
    }
    return () ->
        Truing.of(dev.drafting.core.trace.Tracing.of("piece", garment.extent, edges)).result();
  }

  private static Work corners(int points) {
    TrueGarment garment = TrueGarment.ALL.get(0);
    List<Point> round = new ArrayList<>();
    strokes(garment, points).forEach(round::addAll);
    Polyline line = Polyline.of(round);
    return () -> UnnamedTracing.of("piece", garment.extent, line);
  }

  /** What is timed, ready to start. */
  private interface Work {
    Object run();
  }

  /** The curve is made anew, since it remembers its lengths. */
  private static Work onCurve(Tracing tracing, Function<Curve, Object> work) {
    Curve curve = tracing.curve();
    return () -> work.apply(Curve.of(curve.segments()));
  }

  private static Object nearest(Curve curve) {
    double sum = 0;
    Point start = curve.start();
    for (int i = 0; i < PLACES; i++) {
      double angle = 2 * Math.PI * i / PLACES;
      Vector way = new Vector(Math.cos(angle), 0.7 * Math.sin(angle));
      sum += curve.nearest(new Point(0, 0).plus(way.times(start.x()))).distance().toMm();
    }
    return sum;
  }

  private static Object crossings(Curve curve) {
    double aside = curve.start().x() / 10;
    return curve.intersections(curve.map(Transform.translation(new Vector(aside, aside))));
  }

  private void add(List<Row> rows, String subject, Function<Tracing, Work> work) {
    Growth growth = growth(SIZES, size -> work.apply(Tracing.of(size, STEP)));
    rows.add(Row.plain(name(), subject + ", a million points", growth.last(), "s"));
    rows.add(Row.atMost(name(), subject + ", exponent", growth.exponent(), "1", STEEPEST));
  }

  private void addTraced(List<Row> rows, String subject, IntFunction<Work> work) {
    Growth growth = growth(TRACED, work);
    String largest = subject + ", a hundred thousand points";
    rows.add(Row.atMost(name(), largest, growth.last(), "s", BUDGET_S));
    rows.add(Row.atMost(name(), subject + ", exponent", growth.exponent(), "1", STEEPEST));
  }

  /** The seconds for the largest size, and the power with which they grow. */
  private record Growth(double last, double exponent) {}

  private static Growth growth(int[] sizes, IntFunction<Work> work) {
    SimpleRegression fit = new SimpleRegression();
    double last = 0;
    for (int size : sizes) {
      last = seconds(work.apply(size));
      fit.addData(Math.log(size), Math.log(last));
    }
    return new Growth(last, fit.getSlope());
  }

  /** The least of a few runs, after one to warm up; long runs are taken once. */
  private static double seconds(Work work) {
    double[] seconds = new double[RUNS + 1];
    Arrays.fill(seconds, Double.POSITIVE_INFINITY);
    for (int i = 0; i <= RUNS; i++) {
      long start = System.nanoTime();
      Object result = work.run();
      seconds[i] = (System.nanoTime() - start) / 1e9;
      if (result.hashCode() == 0 || seconds[i] > ENOUGH_S) {
        break;
      }
    }
    return Arrays.stream(seconds).min().orElseThrow();
  }
}
