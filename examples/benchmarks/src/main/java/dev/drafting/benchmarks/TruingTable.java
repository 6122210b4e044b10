package dev.drafting.benchmarks;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.trace.TracedEdge;
import dev.drafting.core.trace.Tracing;
import dev.drafting.core.trace.TruedPiece;
import dev.drafting.core.trace.Truing;
import java.util.ArrayList;
import java.util.List;

/** How near truing comes to outlines that are known, and how long it takes. */
final class TruingTable implements Table {
  private static final int SEEDS = 200;
  private static final double[] WANDERS = {0.5, 1, 2};

  @Override
  public String name() {
    return "truing";
  }

  @Override
  public List<Row> rows() throws Exception {
    List<Row> rows = new ArrayList<>();
    for (TrueGarment garment : TrueGarment.ALL) {
      for (double wander : WANDERS) {
        rows.addAll(labelled(garment, wander));
      }
    }
    return rows;
  }

  private List<Row> labelled(TrueGarment garment, double wander) {
    TruingScore ours = new TruingScore(garment);
    int crossings = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      List<List<Point>> strokes = new Pencil(seed, wander, Pencil.SPACING_MM).strokes(garment);
      TruedPiece trued = Truing.of(tracing(garment, strokes)).result();
      crossings += trued.piece().outline().selfCrossings().size();
      ours.tracing();
      for (int e = 0; e < garment.edges.size(); e++) {
        TrueEdge truth = garment.edges.get(e);
        ours.add(e, truth, trued.piece().edge(truth.name()).curve());
      }
    }
    String subject = subject(garment, wander);
    return List.of(
        Row.atMost(name(), subject + ", RMS against noise", ours.rms() / wander, "1", 0.5),
        length(subject + ", edge length, mean of edges", wander, 100 * ours.lengthError()),
        length(subject + ", edge length, worst edge", wander, 100 * ours.worstLengthError()),
        Row.atMost(name(), subject + ", self-crossings", crossings, "1", 0));
  }

  private Row length(String subject, double wander, double percent) {
    return wander == 1
        ? Row.atMost(name(), subject, percent, "%", 0.3)
        : Row.plain(name(), subject, percent, "%");
  }

  private static Tracing tracing(TrueGarment garment, List<List<Point>> strokes) {
    List<TracedEdge> edges = new ArrayList<>();
    for (int e = 0; e < strokes.size(); e++) {
      edges.add(TracedEdge.of(garment.edges.get(e).name(), strokes.get(e)));
    }
    return Tracing.of("piece", garment.extent, edges);
  }

  private static String subject(TrueGarment garment, double wander) {
    return garment.name + ", noise " + wander + " mm";
  }
}
