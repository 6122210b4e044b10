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

  private static final double LONGEST_TURNED_BACK = 0.25;

  static Trimmer trim(List<Strand> chain, List<OffsetEdge> edges, double tolerance) {
    List<StrandCrossing> crossings = StrandCrossings.of(chain);
    boolean turnedBack = chain.stream().anyMatch(Strand::turnedBack);
    if (crossings.isEmpty() && !turnedBack) {
      if (area(chain) <= 0) {
        throw noRoom(edges, chain);
      }
      return new Trimmer(chain, List.of(), true);
    }
    Arrangement arrangement = new Arrangement(chain, crossings);
    List<Arrangement.Piece> loop = largest(arrangement.loops(false), chain);
    if (loop.isEmpty()) {
      loop = largest(arrangement.loops(true), chain);
    }
    if (loop.isEmpty() || !keepsForward(loop, chain, edges)) {
      throw noRoom(edges, chain);
    }
    List<Arrangement.Piece> ordered = inChainOrder(loop);
    return new Trimmer(
        strands(ordered, chain),
        new Loss(chain, edges, arrangement, ordered).trimmings(tolerance),
        false);
  }

  /** The loop round the largest area, or none if all run clockwise. */
  private static List<Arrangement.Piece> largest(
      List<List<Arrangement.Piece>> loops, List<Strand> chain) {
    List<Arrangement.Piece> best = List.of();
    double most = 0;
    for (List<Arrangement.Piece> loop : loops) {
      double area = area(strands(loop, chain));
      if (area > most) {
        most = area;
        best = loop;
      }
    }
    return best;
  }

  /**
   * Beside a corner a swallowtail may have lost one of the branches that would cut it off. What is
   * turned back there is short and becomes a join; a loop turned back on a grand scale is no
   * outline.
   */
  private static boolean keepsForward(
      List<Arrangement.Piece> loop, List<Strand> chain, List<OffsetEdge> edges) {
    double run = 0;
    for (Arrangement.Piece piece : loop) {
      Strand strand = chain.get(piece.strand());
      run = strand.turnedBack() ? run + strand.segment().length().toMm() : 0;
      if (run > LONGEST_TURNED_BACK * Math.abs(edges.get(strand.edge()).distance().toMm())) {
        return false;
      }
    }
    return true;
  }

  private static double area(List<Strand> strands) {
    return Curve.of(strands.stream().map(Strand::segment).toList()).areaSquareMm();
  }

  private static DraftingException noRoom(List<OffsetEdge> edges, List<Strand> chain) {
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

  private static List<Strand> strands(List<Arrangement.Piece> loop, List<Strand> chain) {
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
    return RawOutline.snapped(strands);
  }
}
