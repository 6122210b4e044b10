package dev.drafting.core.offset;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Makes a simple outline of the raw chain and says what it had to leave out.
 *
 * @param strands the simple outline
 * @param trimmings what was left out
 * @param chainWasSimple whether the chain was left as it was
 */
record Trimmer(List<Strand> strands, List<Trimming> trimmings, boolean chainWasSimple) {

  private static final double MOST_TURNED_BACK = 0.5;
  private static final int MOST_ROUNDS = 4;

  static Trimmer trim(List<Strand> chain, List<OffsetEdge> edges, double tolerance) {
    if (chain.isEmpty()) {
      throw noRoom(edges, chain);
    }
    List<StrandCrossing> crossings = StrandCrossings.of(chain, true);
    boolean turnedBack = chain.stream().anyMatch(Strand::turnedBack);
    if (crossings.isEmpty() && !turnedBack) {
      if (area(chain) <= 0) {
        throw noRoom(edges, chain);
      }
      return new Trimmer(chain, List.of(), true);
    }
    Arrangement arrangement = new Arrangement(chain, crossings, true);
    List<List<Arrangement.Piece>> loops = arrangement.loops();
    List<Arrangement.Piece> loop = largest(loops, chain);
    if (loop.isEmpty()) {
      throw noRoom(edges, chain);
    }
    List<Arrangement.Piece> ordered = inChainOrder(loop);
    List<Trimming> trimmings =
        Loss.ofOutline(chain, edges, arrangement, ordered, islands(loops, loop, chain, tolerance))
            .trimmings(tolerance);
    List<Strand> outline = untied(strands(ordered, chain, true), edges);
    if (isNothing(outline, tolerance)) {
      throw noRoom(edges, chain);
    }
    return new Trimmer(outline, trimmings, false);
  }

  /**
   * Whether an outline has no length or, if it is closed, is no wider than its points are known.
   */
  static boolean isNothing(List<Strand> outline, double tolerance) {
    double length = length(outline);
    return length <= CornerPlanner.TOUCHING
        || (curve(outline).isClosed() && 2 * Math.abs(area(outline)) <= tolerance * length);
  }

  /**
   * Crossings closer together than points can be told apart are one to the arrangement; what is
   * left of such knots shows when the result is looked at again.
   */
  private static List<Strand> untied(List<Strand> outline, List<OffsetEdge> edges) {
    List<Strand> chain = outline;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      List<StrandCrossing> crossings = StrandCrossings.of(chain, true);
      if (crossings.isEmpty()) {
        return chain;
      }
      List<Arrangement.Piece> loop =
          largest(new Arrangement(chain, crossings, true).loops(), chain);
      if (loop.isEmpty()) {
        break;
      }
      chain = strands(inChainOrder(loop), chain, true);
    }
    throw noRoom(edges, chain);
  }

  /** The loop round the largest area, or none if all run clockwise or are turned inside out. */
  private static List<Arrangement.Piece> largest(
      List<List<Arrangement.Piece>> loops, List<Strand> chain) {
    List<Arrangement.Piece> best = List.of();
    double most = 0;
    for (List<Arrangement.Piece> loop : loops) {
      List<Strand> strands = strands(loop, chain, true);
      double area = strands.isEmpty() ? 0 : area(strands);
      if (area > most && runsForward(loop, chain)) {
        most = area;
        best = loop;
      }
    }
    return best;
  }

  /** The pieces of all other loops that hold something. */
  private static List<Arrangement.Piece> islands(
      List<List<Arrangement.Piece>> loops,
      List<Arrangement.Piece> kept,
      List<Strand> chain,
      double tolerance) {
    return loops.stream()
        .filter(loop -> loop != kept && runsForward(loop, chain))
        .filter(
            loop -> {
              List<Strand> strands = strands(loop, chain, true);
              return area(strands) > 0 && !isNothing(strands, tolerance);
            })
        .flatMap(List::stream)
        .toList();
  }

  /**
   * Where no point of the outline is farther away than the distance, the parallel winds round
   * inside out. Short stretches that are turned back are what a swallowtail at a corner leaves;
   * they become joins.
   */
  private static boolean runsForward(List<Arrangement.Piece> loop, List<Strand> chain) {
    double all = 0;
    double back = 0;
    for (Arrangement.Piece piece : loop) {
      Strand strand = chain.get(piece.strand());
      double length = strand.between(piece.from(), piece.to()).segment().length().toMm();
      all += length;
      back += strand.turnedBack() ? length : 0;
    }
    return back <= MOST_TURNED_BACK * all;
  }

  private static double area(List<Strand> strands) {
    return length(strands) <= CornerPlanner.TOUCHING ? 0 : curve(strands).areaSquareMm();
  }

  private static double length(List<Strand> strands) {
    return strands.stream().mapToDouble(strand -> strand.segment().length().toMm()).sum();
  }

  private static Curve curve(List<Strand> strands) {
    return Curve.of(strands.stream().map(Strand::segment).toList());
  }

  static DraftingException noRoom(List<OffsetEdge> edges, List<Strand> chain) {
    OffsetEdge widest =
        chain.stream()
            .filter(Strand::turnedBack)
            .map(strand -> edges.get(strand.edge()))
            .findFirst()
            .orElseGet(
                () ->
                    edges.stream()
                        .min(Comparator.comparingDouble(edge -> edge.distance().toMm()))
                        .orElseThrow());
    return DraftingException.of("nothing of the outline is left at this distance")
        .at(widest.name())
        .value(widest.distance())
        .accepted("a distance for which there is room inside the outline");
  }

  /** The loop from its first piece in the order of the chain. */
  private static List<Arrangement.Piece> inChainOrder(List<Arrangement.Piece> loop) {
    int first = 0;
    for (int i = 1; i < loop.size(); i++) {
      Arrangement.Piece one = loop.get(i);
      Arrangement.Piece least = loop.get(first);
      if (one.strand() < least.strand()
          || (one.strand() == least.strand() && one.from() < least.from())) {
        first = i;
      }
    }
    List<Arrangement.Piece> ordered = new ArrayList<>(loop.subList(first, loop.size()));
    ordered.addAll(loop.subList(0, first));
    return ordered;
  }

  static List<Strand> strands(List<Arrangement.Piece> loop, List<Strand> chain, boolean closed) {
    List<Strand> strands = new ArrayList<>();
    int i = 0;
    while (i < loop.size()) {
      Arrangement.Piece piece = loop.get(i);
      double to = piece.to();
      while (i + 1 < loop.size()
          && loop.get(i + 1).strand() == piece.strand()
          && loop.get(i + 1).from() == to) {
        to = loop.get(++i).to();
      }
      Strand strand = chain.get(piece.strand()).between(piece.from(), to);
      strands.add(strand.turnedBack() ? Strand.join(strand.segment(), strand.edge()) : strand);
      i++;
    }
    return ChainJoints.snapped(
        Spikes.removed(ChainJoints.snapped(strands, closed), closed), closed);
  }
}
