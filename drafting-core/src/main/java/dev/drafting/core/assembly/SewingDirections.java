package dev.drafting.core.assembly;

import dev.drafting.core.assembly.SewnSeam.Run;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Finds the direction in which each edge of a chain is sewn. The edges of a chain follow one
 * another on the garment, at a corner of a piece or across a seam; so a chain may have to wait for
 * the seams it crosses.
 */
final class SewingDirections {
  private final Groups corners;
  private final Map<EdgeRef, int[]> ends = new HashMap<>();
  private final List<SewnSeam> seams;

  private SewingDirections(Pattern pattern) {
    int next = 0;
    for (Piece piece : pattern.pieces()) {
      List<Edge> edges = piece.edges();
      for (int i = 0; i < edges.size(); i++) {
        int end = next + (i + 1) % edges.size();
        ends.put(new EdgeRef(piece.name(), edges.get(i).name()), new int[] {next + i, end});
      }
      next += edges.size();
    }
    corners = new Groups(next);
    seams = resolve(pattern.seams());
  }

  static SewingDirections of(Pattern pattern) {
    return new SewingDirections(pattern);
  }

  /** The seams of the pattern in its order. */
  List<SewnSeam> seams() {
    return seams;
  }

  private List<SewnSeam> resolve(List<Seam> unsewn) {
    Map<Seam, SewnSeam> done = new HashMap<>();
    List<Seam> waiting = new ArrayList<>(unsewn);
    while (!waiting.isEmpty()) {
      int before = waiting.size();
      waiting.removeIf(seam -> resolve(seam, done));
      if (waiting.size() == before) {
        throw unconnected(waiting.get(0));
      }
    }
    List<SewnSeam> inOrder = new ArrayList<>();
    for (Seam seam : unsewn) {
      SewnSeam sewn = done.get(seam);
      if (sewn != null) {
        inOrder.add(sewn);
      }
    }
    return List.copyOf(inOrder);
  }

  private boolean resolve(Seam seam, Map<Seam, SewnSeam> done) {
    List<Run> first = chain(seam.first());
    List<Run> second = chain(seam.second());
    if (first == null || second == null) {
      return false;
    }
    if (seam.isEndToStart()) {
      second = reversed(second);
    }
    corners.join(start(first.get(0)), start(second.get(0)));
    corners.join(end(first.get(first.size() - 1)), end(second.get(second.size() - 1)));
    done.put(seam, new SewnSeam(seam, first, second));
    return true;
  }

  private static List<Run> reversed(List<Run> chain) {
    List<Run> back = new ArrayList<>(chain.stream().map(Run::reversed).toList());
    Collections.reverse(back);
    return List.copyOf(back);
  }

  private @Nullable List<Run> chain(List<EdgeRef> edges) {
    List<Run> asDrawn = follow(new Run(edges.get(0), true), edges);
    return asDrawn != null ? asDrawn : follow(new Run(edges.get(0), false), edges);
  }

  private @Nullable List<Run> follow(Run first, List<EdgeRef> edges) {
    List<Run> chain = new ArrayList<>(List.of(first));
    for (EdgeRef edge : edges.subList(1, edges.size())) {
      int here = end(chain.get(chain.size() - 1));
      Run drawn = new Run(edge, true);
      if (corners.together(start(drawn), here)) {
        chain.add(drawn);
      } else if (corners.together(end(drawn), here)) {
        chain.add(drawn.reversed());
      } else {
        return null;
      }
    }
    return List.copyOf(chain);
  }

  /** The number of the place where a run starts: one for all corners that are sewn together. */
  int start(Run run) {
    return corners.group(cornersOf(run.edge())[run.asDrawn() ? 0 : 1]);
  }

  int end(Run run) {
    return corners.group(cornersOf(run.edge())[run.asDrawn() ? 1 : 0]);
  }

  private int[] cornersOf(EdgeRef edge) {
    int[] both = ends.get(edge);
    if (both == null) {
      throw new IllegalStateException("a pattern's seams name its own edges: " + edge);
    }
    return both;
  }

  private static DraftingException unconnected(Seam seam) {
    return DraftingException.of("the edges of one side do not follow one another")
        .at("seam " + seam.name())
        .value(seam)
        .accepted("edges that meet at a corner or across another seam, in the order of sewing");
  }
}
