package dev.drafting.core.offset;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Takes the EDGE tag from stretches of a finished outline that lie nearer to their own edge than
 * its distance, and reports them. Strips end square at the ends of their edge, so that a parallel
 * that comes round an end may be nearer to it than its distance; and where inward and outward
 * strips cover each other, what is left may be nearer to another stretch of the edge.
 */
final class TooNear {
  private static final int FEWEST_STATIONS = 4;
  private static final int MOST_STATIONS = 50;
  private static final int HALVINGS = 40;

  private final List<OffsetEdge> edges;
  private final double tolerance;
  private final List<Strand> strands = new ArrayList<>();
  private final List<Trimming> trimmings = new ArrayList<>();

  private TooNear(List<OffsetEdge> edges, double tolerance) {
    this.edges = edges;
    this.tolerance = tolerance;
  }

  /**
   * The outline with its tags put right.
   *
   * @param trimmed a simple outline
   * @param edges the source
   * @param tolerance millimetres
   */
  static Trimmer untagged(Trimmer trimmed, List<OffsetEdge> edges, double tolerance) {
    TooNear check = new TooNear(edges, tolerance);
    boolean whole =
        trimmed.chainWasSimple()
            && trimmed.strands().stream().noneMatch(strand -> strand.tag() == OffsetTag.STEP);
    for (Strand strand : trimmed.strands()) {
      check.add(strand, whole);
    }
    check.trimmings.addAll(0, trimmed.trimmings());
    return new Trimmer(check.strands, check.trimmings, whole);
  }

  private void add(Strand strand, boolean whole) {
    OffsetEdge edge = edges.get(strand.edge());
    double least = Math.abs(edge.distance().toMm()) - tolerance;
    boolean doubtful =
        strand.tag() == OffsetTag.EDGE
            && least > 0
            && (!whole || nearEnd(strand, edge.curve(), least));
    List<Segment> source = edge.curve().segments();
    if (!doubtful || (source.size() == 1 && source.get(0) instanceof Line)) {
      strands.add(strand);
      return;
    }
    double from = 0;
    double last = 0;
    boolean near = isNear(strand, 0, edge, least);
    for (double station : stations(strand, edge.curve(), least)) {
      if (isNear(strand, station, edge, least) != near) {
        double change = change(strand, last, station, edge, least, near);
        addPart(strand, from, change, near, edge);
        from = change;
        near = !near;
      }
      last = station;
    }
    addPart(strand, from, 1, near, edge);
  }

  /**
   * Two for each distance along the strand, and where it is nearest to the ends of its edge and,
   * where they are few, to the joints of its segments.
   */
  private static SortedSet<Double> stations(Strand strand, Curve edge, double least) {
    Segment segment = strand.segment();
    double wanted = 2 * segment.length().toMm() / least;
    int count = (int) Math.max(FEWEST_STATIONS, Math.min(MOST_STATIONS, wanted));
    TreeSet<Double> stations = new TreeSet<>();
    for (int i = 1; i <= count; i++) {
      stations.add((double) i / count);
    }
    for (Point point : corners(edge)) {
      Length along = Curve.of(segment).nearest(point).along();
      stations.add(segment.parameterAt(along.min(segment.length())));
    }
    return stations;
  }

  private static List<Point> corners(Curve edge) {
    List<Segment> segments = edge.segments();
    List<Point> corners = new ArrayList<>(List.of(edge.start(), edge.end()));
    if (segments.size() <= MOST_STATIONS) {
      segments.subList(1, segments.size()).forEach(segment -> corners.add(segment.start()));
    }
    return corners;
  }

  private static boolean nearEnd(Strand strand, Curve edge, double least) {
    return near(strand, edge.start(), least) || near(strand, edge.end(), least);
  }

  private static boolean near(Strand strand, Point end, double least) {
    Box box = strand.segment().bounds();
    double dx = Math.max(0, Math.max(box.minX() - end.x(), end.x() - box.maxX()));
    double dy = Math.max(0, Math.max(box.minY() - end.y(), end.y() - box.maxY()));
    return dx * dx + dy * dy < least * least
        && !(strand.segment() instanceof Cubic cubic
            && new CubicCoefficients(cubic).leastSquareDistance(end) >= least * least)
        && Curve.of(strand.segment()).nearest(end).distance().toMm() < least;
  }

  private static boolean isNear(Strand strand, double u, OffsetEdge edge, double least) {
    return edge.curve().nearest(strand.segment().pointAt(u)).distance().toMm() < least;
  }

  private static double change(
      Strand strand, double low, double high, OffsetEdge edge, double least, boolean before) {
    double from = low;
    double to = high;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (from + to) / 2;
      if (isNear(strand, middle, edge, least) == before) {
        from = middle;
      } else {
        to = middle;
      }
    }
    return before ? to : from;
  }

  private void addPart(Strand strand, double from, double to, boolean near, OffsetEdge edge) {
    if (!(to > from)) {
      return;
    }
    Strand part = strand.between(from, to);
    if (!near) {
      strands.add(part);
      return;
    }
    strands.add(Strand.join(part.segment(), part.edge()));
    Origin origin = part.origin();
    if (origin != null) {
      Segment source = origin.segment();
      Length lost = source.lengthTo(origin.to()).minus(source.lengthTo(origin.from()));
      trimmings.add(new Trimming(edge.name(), part.start(), Trimming.Cause.OVERLAP, lost));
    }
  }
}
