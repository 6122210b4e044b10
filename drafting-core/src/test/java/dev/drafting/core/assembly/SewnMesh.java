package dev.drafting.core.assembly;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;

/**
 * A sewn surface of flat triangles, built without any help from the library's own assembly: every
 * piece is cut into triangles, and the points on both sides of its seams and folds are glued. What
 * an edge turns by is then counted: the angles of all triangles at its points, less 180 degrees
 * each.
 */
final class SewnMesh {
  private static final int STEPS = 24;

  private final Pattern pattern;
  private final List<Double> angles = new ArrayList<>();
  private final List<Integer> glued = new ArrayList<>();
  private final Map<String, List<Integer>> points = new LinkedHashMap<>();
  private int triangles;

  private SewnMesh(Pattern pattern) {
    this.pattern = pattern;
    for (Piece piece : pattern.pieces()) {
      addCopy(piece, false);
      if (piece.isOnFold()) {
        addCopy(piece, true);
        glueFold(piece);
      }
    }
    pattern.seams().forEach(this::glue);
  }

  static SewnMesh of(Pattern pattern) {
    return new SewnMesh(pattern);
  }

  private void addCopy(Piece piece, boolean mirrored) {
    List<Coordinate> ring = new ArrayList<>();
    List<Integer> own = new ArrayList<>();
    for (Edge edge : piece.edges()) {
      List<Integer> ofEdge = new ArrayList<>();
      Curve curve = edge.curve();
      for (int i = 0; i < STEPS; i++) {
        Point at = curve.pointAt(curve.length().times(i / (double) STEPS));
        ring.add(new Coordinate(mirrored ? -at.x() : at.x(), at.y()));
        int id = glued.size();
        glued.add(id);
        angles.add(0.0);
        own.add(id);
        ofEdge.add(id);
      }
      points.put(key(piece.name(), edge.name(), mirrored), ofEdge);
    }
    List<Edge> edges = piece.edges();
    for (int i = 0; i < edges.size(); i++) {
      Edge next = edges.get((i + 1) % edges.size());
      int shared = on(piece.name(), next.name(), mirrored).get(0);
      on(piece.name(), edges.get(i).name(), mirrored).add(shared);
    }
    countAngles(ring, own);
  }

  private void countAngles(List<Coordinate> ring, List<Integer> ids) {
    Map<Coordinate, Integer> byPlace = new TreeMap<>();
    for (int i = 0; i < ring.size(); i++) {
      byPlace.put(ring.get(i), ids.get(i));
    }
    List<Coordinate> closed = new ArrayList<>(ring);
    closed.add(ring.get(0));
    Geometry cut =
        new ConstrainedDelaunayTriangulator(
                new GeometryFactory().createPolygon(closed.toArray(Coordinate[]::new)))
            .getResult();
    for (int t = 0; t < cut.getNumGeometries(); t++) {
      Coordinate[] corners = cut.getGeometryN(t).getCoordinates();
      triangles++;
      for (int c = 0; c < 3; c++) {
        int id = byPlace.getOrDefault(corners[c], -1);
        angles.set(
            id, angles.get(id) + angle(corners[(c + 2) % 3], corners[c], corners[(c + 1) % 3]));
      }
    }
  }

  private static double angle(Coordinate a, Coordinate at, Coordinate b) {
    double ax = a.x - at.x;
    double ay = a.y - at.y;
    double bx = b.x - at.x;
    double by = b.y - at.y;
    return Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by));
  }

  private static String key(String piece, String edge, boolean mirrored) {
    return piece + "/" + edge + "/" + mirrored;
  }

  /** The points along an edge of a copy; none if there is no such copy. */
  private List<Integer> on(String piece, String edge, boolean mirrored) {
    return points.getOrDefault(key(piece, edge, mirrored), List.of());
  }

  private void glueFold(Piece piece) {
    for (Edge edge : piece.edges()) {
      if (edge.isOnFold()) {
        glue(on(piece.name(), edge.name(), false), on(piece.name(), edge.name(), true), true);
      }
    }
  }

  private void glue(Seam seam) {
    EdgeRef a = seam.first().get(0);
    EdgeRef b = seam.second().get(0);
    for (boolean mirrored : new boolean[] {false, true}) {
      List<Integer> first = on(a.piece(), a.edge(), mirrored);
      List<Integer> second = on(b.piece(), b.edge(), mirrored);
      glue(first, second, alongside(a, b));
    }
  }

  /** Half pieces are drawn alike, so their seams run alike; the ends of one sheet run against. */
  private static boolean alongside(EdgeRef a, EdgeRef b) {
    return !a.piece().equals(b.piece());
  }

  private void glue(List<Integer> first, List<Integer> second, boolean alongside) {
    for (int i = 0; i < first.size(); i++) {
      int partner = alongside ? i : second.size() - 1 - i;
      glued.set(root(second.get(partner)), root(first.get(i)));
    }
  }

  private int root(int id) {
    int at = id;
    while (glued.get(at) != at) {
      at = glued.get(at);
    }
    return at;
  }

  /** The turning of the opening whose free edges have this name, counted on all its copies. */
  double turningDegrees(String edge) {
    Map<Integer, Double> sum = new TreeMap<>();
    for (int id = 0; id < glued.size(); id++) {
      sum.merge(root(id), angles.get(id), Double::sum);
    }
    double turning = 0;
    for (int at : pointsOn(edge)) {
      turning += sum.getOrDefault(at, 0.0) - Math.PI;
    }
    return Math.toDegrees(turning);
  }

  private List<Integer> pointsOn(String edge) {
    return points.entrySet().stream()
        .filter(entry -> entry.getKey().split("/", -1)[1].equals(edge))
        .flatMap(entry -> entry.getValue().stream())
        .map(this::root)
        .distinct()
        .sorted()
        .toList();
  }

  /** Corners less edges plus faces, by counting. */
  int eulerCharacteristic() {
    long corners = glued.stream().mapToInt(this::root).distinct().count();
    long free =
        pattern.pieces().stream()
            .flatMap(piece -> piece.edges().stream().filter(e -> isFree(piece, e)))
            .count();
    long copies = pattern.pieces().stream().anyMatch(Piece::isOnFold) ? 2 : 1;
    long outer = free * copies * STEPS;
    long sides = (3L * triangles + outer) / 2;
    return (int) (corners - sides + triangles);
  }

  private boolean isFree(Piece piece, Edge edge) {
    EdgeRef ref = new EdgeRef(piece.name(), edge.name());
    return !edge.isOnFold()
        && pattern.seams().stream()
            .noneMatch(seam -> seam.first().contains(ref) || seam.second().contains(ref));
  }
}
