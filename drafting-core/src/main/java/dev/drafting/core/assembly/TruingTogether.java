package dev.drafting.core.assembly;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Meets as many demands as can be met with little movement: the one that takes most is dropped
 * until no edge moves farther than it may.
 */
final class TruingTogether {
  private static final double REACHED_MM = 1e-6;

  private final PatternTruing truing;
  private final Pattern pattern;
  private final Map<EdgeRef, Integer> number = new LinkedHashMap<>();
  private final List<GivingEdge> edges = new ArrayList<>();
  private final int[][] unknowns;
  private final double[] trust;
  private final List<Demand> demands;
  private final List<Finding> findings = new ArrayList<>();

  TruingTogether(PatternTruing truing) {
    this.truing = truing;
    this.pattern = truing.pattern();
    for (Piece piece : pattern.pieces()) {
      piece.edges().forEach(e -> number.put(new EdgeRef(piece.name(), e.name()), number.size()));
    }
    Demands asked = new Demands(pattern, number);
    asked.addSeams(truing.mostOff());
    truing.kept().forEach(asked::addLength);
    if (truing.mostBent() > 0) {
      asked.addCrossings(truing.mostBent());
    }
    this.demands = new ArrayList<>(asked.all());
    this.unknowns = new int[number.size()][];
    this.trust = new double[number.size()];
    Set<EdgeRef> sewn =
        pattern.seams().stream()
            .flatMap(seam -> List.of(seam.first(), seam.second()).stream())
            .flatMap(List::stream)
            .collect(Collectors.toSet());
    int free = 0;
    for (Piece piece : pattern.pieces()) {
      free = addPiece(piece, asked.bending(), sewn, free);
    }
  }

  /** Numbers what is free of a piece: its corners, and the directions at the ends of its curves. */
  private int addPiece(Piece piece, Set<EdgeRef> bending, Set<EdgeRef> sewn, int from) {
    int first = edges.size();
    int n = piece.edges().size();
    int free = from;
    for (Edge edge : piece.edges()) {
      EdgeRef ref = new EdgeRef(piece.name(), edge.name());
      GivingEdge giving = new GivingEdge(edge.curve(), bending.contains(ref));
      int[] own = new int[GivingEdge.FREEDOMS];
      Arrays.fill(own, -1);
      boolean held = truing.areCornersHeld() && sewn.contains(ref);
      for (int f = 4; f < own.length && !giving.isStraight() && !held; f++) {
        own[f] = free++;
      }
      unknowns[edges.size()] = own;
      trust[edges.size()] = truing.trust(piece.name());
      edges.add(giving);
    }
    for (int i = 0; i < n && !truing.areCornersHeld(); i++) {
      int next = (i + 1) % n;
      boolean onFold = piece.edges().get(i).isOnFold() || piece.edges().get(next).isOnFold();
      int x = onFold ? -1 : free++;
      int y = free++;
      unknowns[first + i][2] = x;
      unknowns[first + i][3] = y;
      unknowns[first + next][0] = x;
      unknowns[first + next][1] = y;
    }
    return free;
  }

  TruedPattern result() {
    while (true) {
      LeastMoves moves = new LeastMoves(edges, unknowns, trust, demands);
      @Nullable Demand hardest = hardest(moves);
      if (hardest == null) {
        return trued(moves);
      }
      demands.remove(hardest);
      findings.add(TogetherFindings.left(hardest, truing.limit()));
    }
  }

  /** What cannot be met, or takes most where an edge would move too far; null if all is well. */
  private @Nullable Demand hardest(LeastMoves moves) {
    boolean met = moves.isMet(REACHED_MM);
    if (demands.isEmpty() || (met && farthest(moves) <= truing.limit().toMm())) {
      return null;
    }
    double[] hard = met ? moves.work : moves.misses;
    int hardest = 0;
    for (int i = 1; i < hard.length; i++) {
      hardest = !(Math.abs(hard[i]) <= Math.abs(hard[hardest])) ? i : hardest;
    }
    return demands.get(hardest);
  }

  private double farthest(LeastMoves moves) {
    double farthest = 0;
    for (int e = 0; e < edges.size(); e++) {
      farthest = Math.max(farthest, edges.get(e).farthest(moves.give[e]));
    }
    return farthest;
  }

  private TruedPattern trued(LeastMoves moves) {
    Pattern trued = pattern;
    Map<EdgeRef, Length> moved = new LinkedHashMap<>();
    for (Piece piece : pattern.pieces()) {
      List<Curve> curves = new ArrayList<>();
      for (Edge edge : piece.edges()) {
        EdgeRef ref = new EdgeRef(piece.name(), edge.name());
        int e = number.getOrDefault(ref, 0);
        curves.add(edges.get(e).curve(moves.give[e]));
        double far = edges.get(e).farthest(moves.give[e]);
        if (far > 0) {
          moved.put(ref, Length.mm(far));
        }
      }
      if (!curves.equals(piece.edges().stream().map(Edge::curve).toList())) {
        trued = trued.withPiece(piece.withCurves(curves));
      }
    }
    List<Finding> all = new ArrayList<>(findings);
    pattern.pieces().forEach(piece -> TogetherFindings.addMoves(piece.name(), moved, all));
    return new TruedPattern(trued, moved, all);
  }
}
