package dev.drafting.core.geometry;

import static dev.drafting.core.geometry.Shapes.p;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** Which boxes come together, against every box compared with every other. */
class SegmentTreeTest {
  /** One to nine lines on a grid, so that boxes often touch exactly. */
  @Provide
  Arbitrary<List<Segment>> lines() {
    Arbitrary<Integer> at = Arbitraries.integers().between(-20, 20);
    Arbitrary<Integer> way = Arbitraries.integers().between(-4, 4);
    return Combinators.combine(at, at, way, way)
        .as((x, y, dx, dy) -> (Segment) new Line(p(x, y), p(x + dx, y + dy)))
        .list()
        .ofMinSize(1)
        .ofMaxSize(9);
  }

  private static boolean comeTogether(Box one, Box other, double margin) {
    return one.minX() - margin <= other.maxX()
        && other.minX() - margin <= one.maxX()
        && one.minY() - margin <= other.maxY()
        && other.minY() - margin <= one.maxY();
  }

  @Property(tries = 500)
  void pairsAreAllWhoseBoxesComeTogether(
      @ForAll("lines") List<Segment> here, @ForAll("lines") List<Segment> there) {
    TreeSet<String> known = new TreeSet<>();
    for (int i = 0; i < here.size(); i++) {
      for (int j = 0; j < there.size(); j++) {
        if (comeTogether(here.get(i).bounds(), there.get(j).bounds(), 1)) {
          known.add(i + " " + j);
        }
      }
    }
    List<String> found = new ArrayList<>();
    SegmentTree.of(here).pairs(SegmentTree.of(there), 1, (i, j) -> found.add(i + " " + j));
    assertEquals(known.size(), found.size());
    assertEquals(known, new TreeSet<>(found));
  }

  @Property(tries = 500)
  void pairsWithinAreTheSameAmongOnesOwn(@ForAll("lines") List<Segment> lines) {
    TreeSet<String> known = new TreeSet<>();
    for (int i = 0; i < lines.size(); i++) {
      for (int j = i + 1; j < lines.size(); j++) {
        if (comeTogether(lines.get(i).bounds(), lines.get(j).bounds(), 0)) {
          known.add(i + " " + j);
        }
      }
    }
    List<String> found = new ArrayList<>();
    SegmentTree.of(lines).pairsWithin(0, (i, j) -> found.add(i + " " + j));
    assertEquals(known.size(), found.size());
    assertEquals(known, new TreeSet<>(found));
  }

  /** A box is as far off as its nearest point, and the top is the box round all. */
  @Property(tries = 300)
  void theDistanceOfABoxIsThatOfItsNearestPoint(
      @ForAll("lines") List<Segment> lines,
      @ForAll @DoubleRange(min = -40, max = 40) double x,
      @ForAll @DoubleRange(min = -40, max = 40) double y) {
    SegmentTree tree = SegmentTree.of(lines);
    Box all = lines.get(0).bounds();
    for (Segment line : lines) {
      all = all.union(line.bounds());
    }
    Point nearest =
        p(
            Math.max(all.minX(), Math.min(all.maxX(), x)),
            Math.max(all.minY(), Math.min(all.maxY(), y)));
    double gap = nearest.gap(p(x, y));
    assertEquals(gap * gap, tree.squaredDistance(1, x, y), 1e-12 * (1 + gap * gap));
  }

  @Example
  void aBoxIsAtNoDistanceFromWhatItHolds() {
    SegmentTree tree = SegmentTree.of(List.of(new Line(p(-3, -4), p(30, 40))));
    assertEquals(0, tree.squaredDistance(1, 5, 30), 0);
    assertEquals(25, tree.squaredDistance(1, -6, -8), 0);
    assertEquals(25, tree.squaredDistance(1, 33, 44), 0);
    assertEquals(25, tree.squaredDistance(1, -6, 44), 0);
  }

  @Example
  void placesBeyondTheLastSegmentAreEmpty() {
    Segment line = new Line(p(0, 0), p(1, 0));
    for (int count = 1; count <= 9; count++) {
      SegmentTree tree = SegmentTree.of(Collections.nCopies(count, line));
      int leaves = 1;
      while (tree.segment(leaves) < 0) {
        leaves *= 2;
      }
      assertTrue(leaves >= count && leaves < 2 * count, count + " in " + leaves);
      for (int i = 0; i < leaves; i++) {
        assertEquals(i, tree.segment(leaves + i));
        assertEquals(i >= count, tree.isEmpty(leaves + i));
      }
    }
  }
}
