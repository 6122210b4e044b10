package dev.drafting.benchmarks;

import dev.drafting.core.assembly.PatternTruing;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.trace.Extent;
import dev.drafting.core.trace.TracedEdge;
import dev.drafting.core.trace.Tracing;
import dev.drafting.core.trace.TruedPiece;
import dev.drafting.core.trace.Truing;
import dev.drafting.core.trace.UnnamedTracing;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.LineString;

/** How near truing comes to outlines that are known, and how long it takes. */
final class TruingTable implements Table {
  private static final int SEEDS = 200;
  private static final double FARTHEST_MM = 15;
  private static final Length MOST_OFF = Length.mm(8);
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
        rows.addAll(unnamed(garment, wander));
      }
    }
    rows.addAll(together(TrueGarment.ALL.get(0), 1));
    rows.add(whole(TrueGarment.ALL.get(0), 1));
    return rows;
  }

  /** A vest that was not folded: its left half is traced by the same hand as its right one. */
  private Row whole(TrueGarment vest, double wander) {
    TruingScore score = new TruingScore(vest);
    for (long seed = 0; seed < SEEDS; seed++) {
      Pencil right = new Pencil(seed, wander, Pencil.SPACING_MM);
      Pencil left = new Pencil(seed + 1_000, wander, Pencil.SPACING_MM);
      Tracing whole = whole(vest, right.strokes(vest), left.strokes(vest));
      Piece trued = Truing.of(whole).result().piece();
      score.tracing();
      for (int e = 0; e < vest.edges.size(); e++) {
        TrueEdge truth = vest.edges.get(e);
        score.add(e, truth, trued.edge(truth.name()).curve());
      }
    }
    String subject = subject(vest, wander) + ", traced whole, edge length, mean of edges";
    return length(subject, wander, 100 * score.lengthError());
  }

  /** The first edge and the last one cross the fold; the others are traced on either side. */
  private static Tracing whole(
      TrueGarment garment, List<List<Point>> right, List<List<Point>> left) {
    List<TracedEdge> edges = new ArrayList<>();
    int last = garment.edges.size() - 1;
    for (int e = 0; e <= last; e++) {
      String name = garment.edges.get(e).name();
      List<Point> mirrored = new ArrayList<>(left.get(e).stream().map(Point::mirrored).toList());
      Collections.reverse(mirrored);
      if (e > 0 && e < last) {
        edges.add(TracedEdge.of(name, right.get(e)));
        edges.add(TracedEdge.of(name, mirrored));
      } else {
        List<Point> across = new ArrayList<>(e == 0 ? mirrored : right.get(e));
        across.addAll(e == 0 ? right.get(e) : mirrored);
        edges.add(TracedEdge.of(name, across));
      }
    }
    return Tracing.of("piece", Extent.WHOLE, edges);
  }

  /** A vest whose back is like its front: traced apart, and trued so that its seams match. */
  private List<Row> together(TrueGarment vest, double wander) {
    TruingScore score = new TruingScore(vest);
    for (long seed = 0; seed < SEEDS; seed++) {
      Piece front = half("front", vest, new Pencil(seed, wander, Pencil.SPACING_MM));
      Piece back = half("back", vest, new Pencil(seed + 1_000, wander, Pencil.SPACING_MM));
      Seam shoulder = Seam.of("shoulder", "front shoulder", "back shoulder");
      Seam side = Seam.of("side", "front side", "back side");
      Pattern apart = Pattern.of("vest", List.of(front, back), List.of(shoulder, side));
      Pattern trued = PatternTruing.of(apart).evened(MOST_OFF).result().pattern();
      score.tracing();
      for (int e = 0; e < vest.edges.size(); e++) {
        TrueEdge truth = vest.edges.get(e);
        score.add(e, truth, trued.piece("front").edge(truth.name()).curve());
      }
    }
    String subject = subject(vest, wander) + ", trued with a back, ";
    return List.of(
        Row.plain(name(), subject + "RMS against noise", score.rms() / wander, "1"),
        Row.plain(name(), subject + "edge length, mean of edges", 100 * score.lengthError(), "%"));
  }

  private static Piece half(String name, TrueGarment garment, Pencil pencil) {
    return Truing.of(tracing(name, garment, pencil.strokes(garment))).result().piece();
  }

  private List<Row> labelled(TrueGarment garment, double wander) {
    TruingScore ours = new TruingScore(garment);
    Map<PlainTruing, TruingScore> theirs = new EnumMap<>(PlainTruing.class);
    for (PlainTruing plain : PlainTruing.values()) {
      theirs.put(plain, new TruingScore(garment));
    }
    int crossings = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      List<List<Point>> strokes = new Pencil(seed, wander, Pencil.SPACING_MM).strokes(garment);
      TruedPiece trued = Truing.of(tracing("piece", garment, strokes)).result();
      crossings += trued.piece().outline().selfCrossings().size();
      ours.tracing();
      for (int e = 0; e < garment.edges.size(); e++) {
        TrueEdge truth = garment.edges.get(e);
        List<Point> stroke = strokes.get(e);
        int edge = e;
        ours.add(edge, truth, trued.piece().edge(truth.name()).curve());
        theirs.forEach(
            (plain, score) -> {
              LineString line = plain.line(stroke, wander);
              score.add(edge, truth, PlainTruing.stations(line), line.getLength());
            });
      }
    }
    String subject = subject(garment, wander);
    List<Row> rows = new ArrayList<>();
    rows.add(Row.atMost(name(), subject + ", RMS against noise", ours.rms() / wander, "1", 0.5));
    theirs.forEach(
        (plain, score) -> {
          double ratio = score.rms() / ours.rms();
          rows.add(Row.plain(name(), subject + ", RMS of " + plain.plainName, ratio, "times ours"));
        });
    rows.add(length(subject + ", edge length, mean of edges", wander, 100 * ours.lengthError()));
    rows.add(length(subject + ", edge length, worst edge", wander, 100 * ours.worstLengthError()));
    rows.add(Row.atMost(name(), subject + ", self-crossings", crossings, "1", 0));
    return rows;
  }

  /** Traced past the corners in one go, from anywhere. */
  private List<Row> unnamed(TrueGarment garment, double wander) {
    CornerScore corners = new CornerScore(garment);
    for (long seed = 0; seed < SEEDS; seed++) {
      List<Point> round = new ArrayList<>();
      new Pencil(seed, wander, Pencil.SPACING_MM).strokes(garment).forEach(round::addAll);
      if (garment.isClosed()) {
        Collections.rotate(round, -start(round, (int) (37 * seed % round.size())));
      }
      corners.add(UnnamedTracing.of("piece", garment.extent, Polyline.of(round)).corners());
    }
    String subject = subject(garment, wander) + ", corners ";
    return List.of(
        share(subject + "found", wander, corners.recall()),
        share(subject + "that are true", wander, corners.precision()));
  }

  /** The first point from here on that is not behind a gap: the pencil comes back to its start. */
  private static int start(List<Point> round, int from) {
    int start = from;
    while (round.get(start).distanceTo(round.get(Math.floorMod(start - 1, round.size()))).toMm()
        > FARTHEST_MM) {
      start = (start + 1) % round.size();
    }
    return start;
  }

  private Row share(String subject, double wander, double share) {
    return wander == 1
        ? Row.atLeast(name(), subject, share, "1", 0.98)
        : Row.plain(name(), subject, share, "1");
  }

  private Row length(String subject, double wander, double percent) {
    return wander == 1
        ? Row.atMost(name(), subject, percent, "%", 0.3)
        : Row.plain(name(), subject, percent, "%");
  }

  private static Tracing tracing(String piece, TrueGarment garment, List<List<Point>> strokes) {
    List<TracedEdge> edges = new ArrayList<>();
    for (int e = 0; e < strokes.size(); e++) {
      edges.add(TracedEdge.of(garment.edges.get(e).name(), strokes.get(e)));
    }
    return Tracing.of(piece, garment.extent, edges);
  }

  private static String subject(TrueGarment garment, double wander) {
    return garment.name + ", noise " + wander + " mm";
  }
}
