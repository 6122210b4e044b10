package dev.drafting.core.offset;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Adds up what the kept loop leaves out of the chain, between one kept piece of it and the next.
 */
final class Loss {
  private static final double CORNER_SHARE = 4;

  private final List<Strand> chain;
  private final List<OffsetEdge> edges;
  private final Arrangement arrangement;
  private final List<Arrangement.Piece> loop;
  private final Map<Integer, List<Arrangement.Piece>> islands;
  private final boolean closed;
  private final List<Trimming> trimmings = new ArrayList<>();

  private Loss(
      List<Strand> chain,
      List<OffsetEdge> edges,
      Arrangement arrangement,
      List<Arrangement.Piece> loop,
      List<Arrangement.Piece> islands,
      boolean closed) {
    this.chain = chain;
    this.edges = edges;
    this.arrangement = arrangement;
    this.loop = inChainOrder(loop);
    this.islands = islands.stream().collect(Collectors.groupingBy(Arrangement.Piece::strand));
    this.closed = closed;
  }

  /** What a closed loop leaves out; pieces of islands are cut off, however short. */
  static Loss ofOutline(
      List<Strand> chain,
      List<OffsetEdge> edges,
      Arrangement arrangement,
      List<Arrangement.Piece> loop,
      List<Arrangement.Piece> islands) {
    return new Loss(chain, edges, arrangement, loop, islands, true);
  }

  /** What an open line leaves out. */
  static Loss ofOpen(
      List<Strand> chain,
      List<OffsetEdge> edges,
      Arrangement arrangement,
      List<Arrangement.Piece> way) {
    return new Loss(chain, edges, arrangement, way, List.of(), false);
  }

  /** Where strands of the chain cross more than once, the loop may go back along it. */
  private static List<Arrangement.Piece> inChainOrder(List<Arrangement.Piece> loop) {
    return loop.stream()
        .sorted(
            Comparator.comparingInt(Arrangement.Piece::strand)
                .thenComparingDouble(Arrangement.Piece::from))
        .toList();
  }

  /** What lies between two kept pieces. */
  private static final class Gap {
    private final Map<Integer, Double> lost = new TreeMap<>();
    private final Set<Integer> tight = new TreeSet<>();
    private boolean holdsIsland;
  }

  List<Trimming> trimmings(double tolerance) {
    Set<Integer> keptEdges = new TreeSet<>();
    for (Arrangement.Piece piece : loop) {
      Strand strand = chain.get(piece.strand());
      if (strand.tag() == OffsetTag.EDGE) {
        keptEdges.add(strand.edge());
      }
    }
    for (int i = 0; i < loop.size(); i++) {
      Arrangement.Piece here = loop.get(i);
      Arrangement.Piece next = loop.get((i + 1) % loop.size());
      report(here, next, keptEdges, tolerance, closed || i + 1 < loop.size());
    }
    return trimmings;
  }

  private void report(
      Arrangement.Piece here,
      Arrangement.Piece next,
      Set<Integer> kept,
      double tolerance,
      boolean meet) {
    Gap gap = between(here, next);
    long remaining = gap.lost.keySet().stream().filter(kept::contains).count();
    boolean ordinary =
        meet && gap.tight.isEmpty() && !gap.holdsIsland && remaining == 2 && isShort(gap.lost);
    Point at = arrangement.node(here.endNode());
    gap.lost.forEach(
        (edge, length) -> {
          if (length > tolerance && !(ordinary && kept.contains(edge))) {
            trimmings.add(trimming(edge, at, length, kept, gap));
          }
        });
  }

  private Gap between(Arrangement.Piece here, Arrangement.Piece next) {
    Gap gap = new Gap();
    int strand = here.strand();
    double from = here.to();
    while (strand != next.strand() || from > next.from()) {
      add(strand, from, 1, gap);
      strand = (strand + 1) % chain.size();
      from = 0;
      if (strand == here.strand()) {
        break;
      }
    }
    if (strand == next.strand() && next.from() > from) {
      add(strand, from, next.from(), gap);
    }
    return gap;
  }

  /** Two neighbours that meet at their corner give up no more than a few distances each. */
  private boolean isShort(Map<Integer, Double> lost) {
    double widest = 0;
    double longest = 0;
    for (Map.Entry<Integer, Double> edge : lost.entrySet()) {
      widest = Math.max(widest, Math.abs(edges.get(edge.getKey()).distance().toMm()));
      longest = Math.max(longest, edge.getValue());
    }
    return longest <= CORNER_SHARE * widest;
  }

  private void add(int number, double from, double to, Gap gap) {
    Strand strand = chain.get(number);
    gap.holdsIsland |=
        islands.getOrDefault(number, List.of()).stream()
            .anyMatch(piece -> piece.from() < to && piece.to() > from);
    Origin all = strand.origin();
    if (to <= from || all == null) {
      return;
    }
    Origin origin = strand.between(from, to).origin();
    Origin range = origin == null ? all : origin;
    Segment source = range.segment();
    double length = source.lengthTo(range.to()).minus(source.lengthTo(range.from())).toMm();
    gap.lost.merge(strand.edge(), length, Double::sum);
    if (strand.turnedBack()) {
      gap.tight.add(strand.edge());
    }
  }

  private Trimming trimming(int edge, Point at, double length, Set<Integer> kept, Gap gap) {
    boolean alone = gap.lost.size() == 1 && !gap.holdsIsland;
    Trimming.Cause cause =
        !kept.contains(edge)
            ? Trimming.Cause.SWALLOWED
            : gap.tight.contains(edge) || alone
                ? Trimming.Cause.TIGHT_CURVE
                : Trimming.Cause.OVERLAP;
    return new Trimming(edges.get(edge).name(), at, cause, Length.mm(length));
  }
}
