package dev.drafting.core.offset;

import dev.drafting.core.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The raw chain cut at all its crossings. Pieces between crossings are kept where the chain winds
 * at least once round what lies to their left and not at all, or backwards, round what lies to
 * their right; these pieces, tags and all, are linked up to loops again. Of two pieces that lie on
 * each other one is left over. The winding number counts, at every point, the garment once, plus
 * the outward strips that cover it, less the inward ones; so what is kept is the boundary of the
 * garment with its outward strips added and its inward strips taken away.
 */
final class Arrangement {
  /** A stretch of one strand between two cuts. */
  record Piece(int strand, double from, double to, int startNode, int endNode) {}

  /** Pieces in a row, from crossing to crossing. */
  record Route(List<Piece> pieces) {
    int startNode() {
      return pieces.get(0).startNode();
    }

    int endNode() {
      return pieces.get(pieces.size() - 1).endNode();
    }
  }

  private final List<Strand> chain;
  private final boolean closed;
  private final Nodes nodes = new Nodes();
  private final List<Route> routes = new ArrayList<>();

  /**
   * Cuts a chain.
   *
   * @param chain strands end to end
   * @param crossings where it crosses itself
   * @param closed whether the last strand meets the first
   */
  Arrangement(List<Strand> chain, List<StrandCrossing> crossings, boolean closed) {
    this.chain = chain;
    this.closed = closed;
    cut(crossings);
  }

  /** All closed loops that can be linked up from kept routes; each a list of pieces in order. */
  List<List<Piece>> loops() {
    Winding winding = Winding.of(chain);
    List<Route> kept =
        withoutDeadEnds(routes.stream().filter(route -> isBoundary(route, winding)).toList());
    Map<Integer, List<Route>> leaving = new HashMap<>();
    for (Route route : kept) {
      leaving.computeIfAbsent(route.startNode(), node -> new ArrayList<>()).add(route);
    }
    List<List<Piece>> loops = new ArrayList<>();
    for (Route first : kept) {
      List<Route> loop = follow(first, leaving);
      if (!loop.isEmpty()) {
        loops.add(loop.stream().flatMap(route -> route.pieces().stream()).toList());
      }
    }
    return loops;
  }

  /**
   * What leads nowhere or comes from nowhere is no part of a loop. Such routes are kept by mistake
   * where several strands lie on each other to within rounding.
   */
  private static List<Route> withoutDeadEnds(List<Route> kept) {
    Set<Integer> starts = kept.stream().map(Route::startNode).collect(Collectors.toSet());
    Set<Integer> ends = kept.stream().map(Route::endNode).collect(Collectors.toSet());
    if (starts.equals(ends)) {
      return kept;
    }
    return withoutDeadEnds(
        kept.stream()
            .filter(route -> starts.contains(route.endNode()) && ends.contains(route.startNode()))
            .toList());
  }

  /**
   * The longest way along an open chain, ever onwards, over routes that bound their own strip and
   * are covered by no other.
   *
   * @param strips the chain, and back along its source
   * @param distances of the edges, millimetres
   */
  List<Piece> way(Winding strips, double[] distances) {
    int n = routes.size();
    double[] best = new double[n];
    int[] next = new int[n];
    Map<Integer, Integer> leaving = new HashMap<>();
    int start = -1;
    for (int i = n - 1; i >= 0; i--) {
      Route route = routes.get(i);
      next[i] = -1;
      if (!boundsItsStrip(route, strips, distances)) {
        continue;
      }
      best[i] = route.pieces().stream().mapToDouble(this::reach).sum();
      int on = leaving.getOrDefault(route.endNode(), -1);
      if (on >= 0) {
        next[i] = on;
        best[i] += best[on];
      }
      int other = leaving.getOrDefault(route.startNode(), -1);
      if (other < 0 || best[i] > best[other]) {
        leaving.put(route.startNode(), i);
      }
      start = start < 0 || best[i] > best[start] ? i : start;
    }
    List<Piece> way = new ArrayList<>();
    for (int i = start; i >= 0; i = next[i]) {
      way.addAll(routes.get(i).pieces());
    }
    return way;
  }

  private boolean boundsItsStrip(Route route, Winding strips, double[] distances) {
    Piece piece =
        route.pieces().stream().max(Comparator.comparingDouble(this::reach)).orElseThrow();
    Strand strand = chain.get(piece.strand());
    double middle = (piece.from() + piece.to()) / 2;
    int[] beside = strips.beside(strand.segment(), middle, reach(piece));
    boolean outward = beside[0] == 1 && beside[1] == 0;
    boolean inward = beside[0] == 0 && beside[1] == -1;
    if (strand.turnedBack() || strand.tag() != OffsetTag.EDGE) {
      return !strand.turnedBack() && (outward || inward);
    }
    double distance = distances[strand.edge()];
    return distance > 0 ? outward : distance < 0 ? inward : beside[0] == 0 && beside[1] == 0;
  }

  Point node(int number) {
    return nodes.point(number);
  }

  private void cut(List<StrandCrossing> crossings) {
    List<List<double[]>> cuts = new ArrayList<>();
    for (int i = 0; i < chain.size(); i++) {
      cuts.add(new ArrayList<>());
    }
    boolean[] crossed = new boolean[chain.size() + crossings.size() + 1];
    int[] joints = new int[chain.size() + 1];
    for (int i = 0; i < chain.size(); i++) {
      joints[i] = nodes.number(chain.get(i).start());
    }
    joints[chain.size()] = closed ? joints[0] : nodes.number(chain.get(chain.size() - 1).end());
    for (StrandCrossing crossing : crossings) {
      int node = nodes.number(crossing.point());
      crossed[node] = true;
      cuts.get(crossing.strand()).add(new double[] {crossing.at(), node});
      cuts.get(crossing.other()).add(new double[] {crossing.atOther(), node});
    }
    gather(pieces(cuts, joints), crossed);
  }

  private List<Piece> pieces(List<List<double[]>> cuts, int[] joints) {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < chain.size(); i++) {
      List<double[]> here = cuts.get(i);
      here.sort(Comparator.comparingDouble(cut -> cut[0]));
      double from = 0;
      int node = joints[i];
      for (double[] cut : here) {
        int next = (int) cut[1];
        if (next != node && cut[0] > from) {
          pieces.add(new Piece(i, from, cut[0], node, next));
          from = cut[0];
          node = next;
        }
      }
      int end = joints[i + 1];
      if (end != node) {
        pieces.add(new Piece(i, from, 1, node, end));
      }
    }
    return pieces;
  }

  private void gather(List<Piece> pieces, boolean[] crossed) {
    int first = 0;
    while (closed && first < pieces.size() && !crossed[pieces.get(first).startNode()]) {
      first++;
    }
    List<Piece> route = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get((first + i) % pieces.size());
      route.add(piece);
      if (crossed[piece.endNode()]) {
        routes.add(new Route(List.copyOf(route)));
        route.clear();
      }
    }
    if (!route.isEmpty()) {
      routes.add(new Route(List.copyOf(route)));
    }
  }

  /** Judged at the first of a few stations that does not lie too close to another strand. */
  private boolean isBoundary(Route route, Winding winding) {
    List<Piece> longest =
        route.pieces().stream().sorted(Comparator.comparingDouble(this::reach).reversed()).toList();
    for (int i = 0; i < Math.min(3, longest.size()); i++) {
      Piece piece = longest.get(i);
      for (double share : new double[] {0.5, 0.3, 0.7}) {
        double u = piece.from() + (piece.to() - piece.from()) * share;
        int[] beside = winding.beside(chain.get(piece.strand()).segment(), u, reach(piece));
        if (beside[0] > beside[1]) {
          return beside[0] >= 1 && beside[1] <= 0;
        }
      }
    }
    return false;
  }

  private double reach(Piece piece) {
    Point start = nodes.point(piece.startNode());
    Point end = nodes.point(piece.endNode());
    return Math.hypot(end.x() - start.x(), end.y() - start.y());
  }

  private List<Route> follow(Route first, Map<Integer, List<Route>> leaving) {
    List<Route> loop = new ArrayList<>();
    List<Route> starts = leaving.getOrDefault(first.startNode(), List.of());
    if (!starts.contains(first)) {
      return loop;
    }
    Route route = first;
    do {
      leaving.getOrDefault(route.startNode(), List.of()).remove(route);
      loop.add(route);
      if (route.endNode() == first.startNode()) {
        return loop;
      }
      List<Route> next = leaving.getOrDefault(route.endNode(), List.of());
      if (next.isEmpty()) {
        return List.of();
      }
      route = sharpestLeft(route, next);
    } while (true);
  }

  /** Keeps two loops that touch at a point apart. */
  private Route sharpestLeft(Route arriving, List<Route> candidates) {
    Piece last = arriving.pieces().get(arriving.pieces().size() - 1);
    var way = chain.get(last.strand()).segment().directionAt(last.to());
    return candidates.stream()
        .max(
            Comparator.comparingDouble(
                route -> {
                  Piece piece = route.pieces().get(0);
                  var on = chain.get(piece.strand()).segment().directionAt(piece.from());
                  return Math.atan2(way.cross(on), way.dot(on));
                }))
        .orElseThrow();
  }
}
