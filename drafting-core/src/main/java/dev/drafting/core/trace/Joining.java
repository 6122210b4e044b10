package dev.drafting.core.trace;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * Brings strokes into the order and direction of the outline, counter-clockwise, whatever the order
 * and direction in which they were drawn. The nearest ends are joined first.
 */
final class Joining {
  /** Ends farther apart than this do not belong together. */
  static final double FARTHEST_MM = 15;

  private static final int NONE = -1;

  private final String piece;
  private final List<Stroke> strokes;

  /** For each end (2 i for the start of stroke i, 2 i + 1 for its end) the end that it meets. */
  private final int[] met;

  private final int[] chain;

  private Joining(String piece, List<Stroke> strokes) {
    this.piece = piece;
    this.strokes = strokes;
    this.met = new int[2 * strokes.size()];
    this.chain = new int[strokes.size()];
    for (int i = 0; i < strokes.size(); i++) {
      met[2 * i] = NONE;
      met[2 * i + 1] = NONE;
      chain[i] = i;
    }
  }

  /** An open outline from the lower end of the fold on x = 0 round to its upper end. */
  static List<Stroke> half(String piece, List<Stroke> strokes) {
    Joining joining = new Joining(piece, strokes);
    joining.joinNearest();
    List<Stroke> outline = joining.outline();
    checkFold(piece, outline.get(0).first().x(), outline.get(0));
    Stroke last = outline.get(outline.size() - 1);
    checkFold(piece, last.last().x(), last);
    for (Stroke stroke : outline) {
      for (double x : stroke.samples.x) {
        if (x < -FARTHEST_MM) {
          throw DraftingException.of("a half piece lies on both sides of its fold")
              .at(stroke.name)
              .at(piece)
              .value("x = " + mm(x))
              .accepted("x above 0, the fold on x = 0; or trace it as a whole piece");
        }
      }
    }
    return outline;
  }

  /** A closed outline, starting anywhere. */
  static List<Stroke> whole(String piece, List<Stroke> strokes) {
    Joining joining = new Joining(piece, strokes);
    joining.joinNearest();
    List<Stroke> outline = joining.outline();
    Stroke last = outline.get(outline.size() - 1);
    double gap = last.last().distanceTo(outline.get(0).first()).toMm();
    checkGap(piece, last, outline.get(0), gap);
    return outline;
  }

  private static void checkFold(String piece, double x, Stroke stroke) {
    if (Math.abs(x) > FARTHEST_MM) {
      throw DraftingException.of("an edge of a half piece ends neither on the fold nor at an edge")
          .at(stroke.name)
          .at(piece)
          .value("an end " + mm(x) + " from the fold")
          .accepted("within 15 mm of x = 0, or of the end of another edge");
    }
  }

  private static void checkGap(String piece, Stroke one, Stroke other, double gap) {
    if (gap > FARTHEST_MM) {
      throw DraftingException.of("the outline is open: two edges do not meet")
          .at(one.name.equals(other.name) ? one.name : one.name + " and " + other.name)
          .at(piece)
          .value("a gap of " + mm(gap))
          .accepted("ends within 15 mm of each other");
    }
  }

  private static String mm(double length) {
    return Length.mm(length).text(LengthUnit.MM);
  }

  private record Pair(int one, int other, double gap) {}

  private void joinNearest() {
    List<Pair> pairs = new ArrayList<>();
    for (int one = 0; one < met.length; one++) {
      for (int other = one + 1; other < met.length; other++) {
        if (one / 2 != other / 2) {
          pairs.add(new Pair(one, other, gap(one, other)));
        }
      }
    }
    pairs.sort(Comparator.comparingDouble(Pair::gap));
    for (Pair pair : pairs) {
      boolean free = met[pair.one] == NONE && met[pair.other] == NONE;
      if (free && chain[pair.one / 2] != chain[pair.other / 2]) {
        checkGap(piece, strokes.get(pair.one / 2), strokes.get(pair.other / 2), pair.gap);
        met[pair.one] = pair.other;
        met[pair.other] = pair.one;
        unite(chain[pair.one / 2], chain[pair.other / 2]);
      }
    }
  }

  private void unite(int one, int other) {
    for (int i = 0; i < chain.length; i++) {
      chain[i] = chain[i] == other ? one : chain[i];
    }
  }

  private double gap(int one, int other) {
    return end(one).distanceTo(end(other)).toMm();
  }

  private Point end(int end) {
    Stroke stroke = strokes.get(end / 2);
    return end % 2 == 0 ? stroke.first() : stroke.last();
  }

  private List<Stroke> outline() {
    int loose = 0;
    while (met[loose] != NONE) {
      loose++;
    }
    List<Stroke> outline = new ArrayList<>();
    int end = loose;
    while (end != NONE) {
      Stroke stroke = strokes.get(end / 2);
      outline.add(end % 2 == 0 ? stroke : stroke.reversed());
      end = met[end ^ 1];
    }
    double area = area(outline);
    if (area == 0) {
      throw DraftingException.of("the edges enclose nothing")
          .at(piece)
          .accepted("edges round a piece of cloth");
    }
    if (area > 0) {
      return outline;
    }
    List<Stroke> turned = new ArrayList<>();
    outline.forEach(stroke -> turned.add(stroke.reversed()));
    Collections.reverse(turned);
    return turned;
  }

  private static double area(List<Stroke> outline) {
    double originX = outline.get(0).samples.x[0];
    double originY = outline.get(0).samples.y[0];
    double area = 0;
    double x = 0;
    double y = 0;
    for (Stroke stroke : outline) {
      for (int i = 0; i < stroke.samples.size(); i++) {
        double nextX = stroke.samples.x[i] - originX;
        double nextY = stroke.samples.y[i] - originY;
        area += x * nextY - nextX * y;
        x = nextX;
        y = nextY;
      }
    }
    return area / 2;
  }
}
