package dev.drafting.core.offset;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Nearest;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Makes a line without crossings of the raw chain beside an open source. What lies to the left of
 * the source is not known to be garment here, so that the strips alone are counted: the winding
 * number of the chain and, back along the source, its return. A stretch is kept where it bounds the
 * strip of its own edge and no other strip covers it.
 */
final class OpenTrimmer {
  private static final int MOST_LOOPS = 1000;
  private static final double NOTHING = 1e-9;
  private static final Length TOUCHING = Length.mm(CornerPlanner.TOUCHING);

  private OpenTrimmer() {}

  static Trimmer trim(List<Strand> chain, List<OffsetEdge> edges, double tolerance) {
    if (chain.isEmpty()) {
      throw Trimmer.noRoom(edges, chain);
    }
    List<StrandCrossing> crossings = StrandCrossings.of(chain, false);
    if (crossings.isEmpty() && chain.stream().noneMatch(Strand::turnedBack)) {
      return new Trimmer(chain, List.of(), true);
    }
    Arrangement arrangement = new Arrangement(chain, crossings, false);
    double[] distances = edges.stream().mapToDouble(edge -> edge.distance().toMm()).toArray();
    List<Arrangement.Piece> way = arrangement.way(Winding.of(withReturn(chain, edges)), distances);
    if (way.isEmpty()) {
      throw Trimmer.noRoom(edges, chain);
    }
    List<Trimming> trimmings =
        new ArrayList<>(Loss.ofOpen(chain, edges, arrangement, way).trimmings(tolerance));
    List<Strand> line = Trimmer.strands(way, chain, false);
    StrandCrossing loop = smallestLoop(line);
    for (int i = 0; loop != null && i < MOST_LOOPS; i++) {
      line = without(loop, line, edges, trimmings);
      loop = smallestLoop(line);
    }
    if (line.isEmpty() || loop != null || Trimmer.isNothing(line, tolerance)) {
      throw Trimmer.noRoom(edges, chain);
    }
    return new Trimmer(line, trimmings, false);
  }

  /**
   * Where inward and outward strips cover each other the way may still cross itself. Where it ends
   * at its own start it is left closed.
   */
  private static @Nullable StrandCrossing smallestLoop(List<Strand> line) {
    StrandCrossing smallest = null;
    double least =
        line.stream().mapToDouble(strand -> strand.segment().length().toMm()).sum() - NOTHING;
    List<StrandCrossing> crossings = new ArrayList<>(StrandCrossings.of(line, false));
    crossings.addAll(touches(line));
    for (StrandCrossing crossing : crossings) {
      double length =
          inside(crossing, line).stream().mapToDouble(s -> s.segment().length().toMm()).sum();
      if (length < least) {
        least = length;
        smallest = crossing;
      }
    }
    return smallest;
  }

  /** Where an end of the line lies on the line itself, which is no crossing. */
  private static List<StrandCrossing> touches(List<Strand> line) {
    List<StrandCrossing> touches = new ArrayList<>();
    int last = line.size() - 1;
    for (int i = 0; i < last; i++) {
      double atEnd = touched(line.get(i), line.get(last).end());
      if (atEnd >= 0) {
        touches.add(new StrandCrossing(line.get(last).end(), i, atEnd, last, 1));
      }
      double atStart = touched(line.get(i + 1), line.get(0).start());
      if (atStart >= 0) {
        touches.add(new StrandCrossing(line.get(0).start(), 0, 0, i + 1, atStart));
      }
    }
    return touches;
  }

  /** The place on a strand where a point lies, or -1. */
  private static double touched(Strand strand, Point point) {
    if (!strand.segment().bounds().widened(TOUCHING).contains(point)) {
      return -1;
    }
    Nearest nearest = Curve.of(strand.segment()).nearest(point);
    return nearest.distance().compareTo(TOUCHING) > 0
        ? -1
        : strand.segment().parameterAt(nearest.along().min(strand.segment().length()));
  }

  private static List<Strand> inside(StrandCrossing loop, List<Strand> line) {
    List<Strand> inside = new ArrayList<>();
    for (int i = loop.strand(); i <= loop.other(); i++) {
      double from = i == loop.strand() ? loop.at() : 0;
      double to = i == loop.other() ? loop.atOther() : 1;
      if (to > from) {
        inside.add(line.get(i).between(from, to));
      }
    }
    return inside;
  }

  private static List<Strand> without(
      StrandCrossing loop, List<Strand> line, List<OffsetEdge> edges, List<Trimming> trimmings) {
    for (Strand lost : inside(loop, line)) {
      Origin origin = lost.origin();
      if (origin != null && origin.to() > origin.from()) {
        Segment source = origin.segment();
        Length length = source.lengthTo(origin.to()).minus(source.lengthTo(origin.from()));
        String edge = edges.get(lost.edge()).name();
        trimmings.add(new Trimming(edge, loop.point(), Trimming.Cause.OVERLAP, length));
      }
    }
    List<Strand> left = new ArrayList<>(line.subList(0, loop.strand()));
    if (loop.at() > 0) {
      left.add(line.get(loop.strand()).between(0, loop.at()));
    }
    if (loop.atOther() < 1) {
      left.add(line.get(loop.other()).between(loop.atOther(), 1));
    }
    left.addAll(line.subList(loop.other() + 1, line.size()));
    left.removeIf(strand -> strand.segment().length().toMm() < NOTHING);
    return left.isEmpty()
        ? left
        : ChainJoints.snapped(Spikes.removed(ChainJoints.snapped(left, false), false), false);
  }

  private static List<Strand> withReturn(List<Strand> chain, List<OffsetEdge> edges) {
    List<Strand> all = new ArrayList<>(chain);
    List<Segment> source = new ArrayList<>();
    for (OffsetEdge edge : edges) {
      source.addAll(edge.curve().segments());
    }
    addLine(all, chain.get(chain.size() - 1).end(), source.get(source.size() - 1).end());
    for (int i = source.size() - 1; i >= 0; i--) {
      all.add(Strand.join(source.get(i).reversed(), 0));
    }
    addLine(all, source.get(0).start(), chain.get(0).start());
    return all;
  }

  private static void addLine(List<Strand> strands, Point from, Point to) {
    if (!from.equals(to)) {
      strands.add(Strand.join(new Line(from, to), 0));
    }
  }
}
