package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Winding numbers beside strands of outlines whose insides are plain to see. */
class WindingTest {
  private static List<Strand> chain(Segment... segments) {
    List<Strand> chain = new ArrayList<>();
    for (Segment segment : segments) {
      chain.add(Strand.join(segment, 0));
    }
    return chain;
  }

  private static List<Strand> polygon(double... xy) {
    List<Strand> chain = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      Point from = new Point(xy[i], xy[i + 1]);
      Point to = new Point(xy[(i + 2) % xy.length], xy[(i + 3) % xy.length]);
      chain.add(Strand.join(new Line(from, to), 0));
    }
    return chain;
  }

  private static List<Strand> reversed(List<Strand> chain) {
    List<Strand> turned = new ArrayList<>();
    for (Strand strand : chain) {
      turned.add(ParallelRun.reversed(strand));
    }
    Collections.reverse(turned);
    return turned;
  }

  /** The same on the left and on the right of all strands, at many places and at both ends. */
  private static void assertBeside(int left, int right, List<Strand> chain) {
    Winding winding = Winding.of(chain);
    for (Strand strand : chain) {
      Segment segment = strand.segment();
      for (double at : new double[] {0.01, 0.3, 0.5, 0.77, 0.99}) {
        int[] found = winding.beside(segment, at, segment.length().toMm());
        assertArrayEquals(new int[] {left, right}, found, () -> segment + " at " + at);
      }
    }
  }

  @Test
  void counterClockwiseTheInsideIsOnceOnTheLeft() {
    for (double up : new double[] {0, 500, -500, -60}) {
      List<Strand> pocket = polygon(0, up, 120, up, 120, up + 140, 60, up + 160, 0, up + 140);
      assertBeside(1, 0, pocket);
      assertBeside(0, -1, reversed(pocket));
    }
  }

  @Test
  void soItIsForACircleOfArcs() {
    List<Strand> cuff =
        chain(Outlines.arc(0, -200, 70, 0, 200), Outlines.arc(0, -200, 70, 200, 160));
    assertBeside(1, 0, cuff);
    assertBeside(0, -1, reversed(cuff));
  }

  @Test
  void twiceRoundCountsTwice() {
    List<Strand> twice = new ArrayList<>(polygon(0, 0, 100, 0, 100, 100, 0, 100));
    twice.addAll(polygon(-50, -50, 150, -50, 150, 150, -50, 150));
    Winding winding = Winding.of(twice);
    Segment inner = twice.get(1).segment();
    Segment outer = twice.get(5).segment();
    assertArrayEquals(new int[] {2, 1}, winding.beside(inner, 0.5, 100));
    assertArrayEquals(new int[] {1, 0}, winding.beside(outer, 0.5, 200));
    assertArrayEquals(new int[] {2, 1}, winding.beside(twice.get(3).segment(), 0.25, 100));
  }

  @Test
  void aHoleTheOtherWayRoundTakesTheInsideAway() {
    List<Strand> facing = new ArrayList<>(polygon(-50, -50, 150, -50, 150, 150, -50, 150));
    facing.addAll(reversed(polygon(0, 0, 100, 0, 100, 100, 0, 100)));
    assertBeside(1, 0, facing);
  }

  /** The ray from just beside its foot is as high as the foot itself. */
  @Test
  void atTheFootOfAnUprightStrandTheRayMeetsIt() {
    List<Strand> band = polygon(0, -20, 30, -20, 30, 80, 0, 80);
    Winding winding = Winding.of(band);
    assertArrayEquals(new int[] {1, 0}, winding.beside(band.get(1).segment(), 0, 100));
    assertArrayEquals(new int[] {1, 0}, winding.beside(band.get(3).segment(), 1, 100));
  }

  /** Across a sliver narrower than a ten-millionth of a millimetre one must not look too far. */
  @Test
  void besideAShortStrandOneLooksNearer() {
    double hair = 4e-8;
    List<Strand> sliver = polygon(0, 0, 10, 0, 10, hair, 0, hair);
    Winding winding = Winding.of(sliver);
    assertArrayEquals(new int[] {1, 0}, winding.beside(sliver.get(1).segment(), 0.5, hair));
    List<Strand> narrow = polygon(0, 0, 5e-9, 0, 5e-9, 20e-9, 0, 20e-9);
    Winding beside = Winding.of(narrow);
    assertArrayEquals(new int[] {1, 0}, beside.beside(narrow.get(1).segment(), 0.5, 20e-9));
  }

  /** Strands on each other, there and back, divide nothing. */
  @Test
  void thereAndBackAgainIsNoBorder() {
    List<Strand> there = polygon(0, 0, 100, 0, 100, 50, 140, 50, 100, 50, 100, 100, 0, 100);
    int[] found = Winding.of(there).beside(there.get(2).segment(), 0.5, 40);
    assertEquals(found[0], found[1]);
  }

  @Test
  void aStarOfManyPointsHasItsInsideOnTheLeftThroughout() {
    double[] xy = new double[2 * 400];
    for (int i = 0; i < 400; i++) {
      double radius = i % 2 == 0 ? 300 : 220 + 50 * Math.sin(i);
      xy[2 * i] = 17 + radius * Math.cos(2 * Math.PI * i / 400);
      xy[2 * i + 1] = -431 + radius * Math.sin(2 * Math.PI * i / 400);
    }
    assertBeside(1, 0, polygon(xy));
  }
}
