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
 */
record Trimmer(List<Strand> strands, List<Trimming> trimmings) {

  static Trimmer trim(List<Strand> chain, List<OffsetEdge> edges, double tolerance) {
    List<StrandCrossing> crossings = StrandCrossings.of(chain);
    boolean turnedBack = chain.stream().anyMatch(Strand::turnedBack);
    if (crossings.isEmpty() && !turnedBack) {
      if (area(chain) <= 0) {
        throw noRoom(edges);
      }
      return new Trimmer(chain, List.of());
    }
    Arrangement arrangement = new Arrangement(chain, crossings);
    List<List<Arrangement.Piece>> loops =
        arrangement.loops().stream()
            .sorted(Comparator.comparingDouble(loop -> -area(strands(loop, chain))))
            .toList();
    if (loops.isEmpty() || area(strands(loops.get(0), chain)) <= 0) {
      throw noRoom(edges);
    }
    List<Arrangement.Piece> loop = inChainOrder(loops.get(0));
    return new Trimmer(
        strands(loop, chain), new Loss(chain, edges, arrangement, loop).trimmings(tolerance));
  }

  private static double area(List<Strand> strands) {
    return Curve.of(strands.stream().map(Strand::segment).toList()).areaSquareMm();
  }

  private static DraftingException noRoom(List<OffsetEdge> edges) {
    OffsetEdge widest =
        edges.stream()
            .min(Comparator.comparingDouble(edge -> edge.distance().toMm()))
            .orElseThrow();
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
      strands.add(chain.get(piece.strand()).between(piece.from(), to));
      i++;
    }
    return RawOutline.snapped(strands);
  }
}
