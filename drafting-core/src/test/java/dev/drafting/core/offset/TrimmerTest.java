package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Closed chains of straight strands that cross themselves, and what is left of them. */
class TrimmerTest {
  private static final double TOLERANCE = 0.01;

  /** 128 mm by 48 mm, cut from the top, x = 64 to 96, right through and 16 mm beyond. */
  private static final double[] CUT_THROUGH = {
    0, 0, 128, 0, 128, 48, 96, 48, 96, -16, 64, -16, 64, 48, 0, 48
  };

  /** Strands from point to point and back to the first, each the parallel of an edge of its own. */
  private static List<Strand> chain(double... xy) {
    List<Strand> chain = new ArrayList<>();
    int n = xy.length / 2;
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      Line line =
          new Line(new Point(xy[2 * i], xy[2 * i + 1]), new Point(xy[2 * j], xy[2 * j + 1]));
      chain.add(Strand.parallel(line, i, new Origin(line, 0, 0, 1)));
    }
    return chain;
  }

  private static List<OffsetEdge> edges(List<Strand> chain, double distance) {
    List<OffsetEdge> edges = new ArrayList<>();
    for (Strand strand : chain) {
      edges.add(
          OffsetEdge.of("edge " + strand.edge(), Curve.of(strand.segment()), Length.mm(distance)));
    }
    return edges;
  }

  private static Trimmer trim(List<Strand> chain, double tolerance) {
    return Trimmer.trim(chain, edges(chain, 10), tolerance);
  }

  private static Curve outline(Trimmer trimmed) {
    return Curve.of(trimmed.strands().stream().map(Strand::segment).toList());
  }

  private static List<String> lost(Trimmer trimmed) {
    return trimmed.trimmings().stream()
        .map(t -> t.edge() + " " + t.lost() + " " + t.cause())
        .toList();
  }

  @Test
  void theLargerOfTwoPartsIsKeptFromItsFirstStrandOn() {
    Trimmer trimmed = trim(chain(CUT_THROUGH), TOLERANCE);
    assertEquals(64 * 48, outline(trimmed).areaSquareMm(), 1e-9);
    assertEquals(new Point(0, 0), outline(trimmed).start());
    assertEquals(List.of(0, 5, 6, 7), trimmed.strands().stream().map(Strand::edge).toList());
    assertEquals(
        List.of(
            "edge 0 64 mm OVERLAP",
            "edge 1 48 mm SWALLOWED",
            "edge 2 32 mm SWALLOWED",
            "edge 3 64 mm SWALLOWED",
            "edge 4 32 mm SWALLOWED",
            "edge 5 16 mm OVERLAP"),
        lost(trimmed));
    assertFalse(trimmed.chainWasSimple());
  }

  @Test
  void whatIsLostWithinTheToleranceIsNotReported() {
    assertFalse(lost(trim(chain(CUT_THROUGH), 16)).toString().contains("edge 5"));
    assertTrue(lost(trim(chain(CUT_THROUGH), 15.99)).toString().contains("edge 5"));
  }

  /** Cut through at x = 48 to 80. */
  @Test
  void ofTwoEqualPartsTheFirstFoundIsKept() {
    Trimmer trimmed =
        trim(chain(0, 0, 128, 0, 128, 48, 80, 48, 80, -16, 48, -16, 48, 48, 0, 48), TOLERANCE);
    assertEquals(48 * 48, outline(trimmed).areaSquareMm(), 1e-9);
    assertEquals(new Point(80, 0), outline(trimmed).start());
  }

  /** The strip x = 40 to 60 comes out 10 mm below the first strand, and 10 mm higher at the top. */
  @Test
  void whereTheFirstStrandIsCoveredTheOutlineStillBeginsWithIt() {
    Trimmer trimmed =
        trim(chain(0, 0, 100, 0, 100, 50, 40, 50, 40, -10, 60, -10, 60, 60, 0, 60), TOLERANCE);
    assertEquals(100 * 50 + 60 * 10 + 20 * 10, outline(trimmed).areaSquareMm(), 1e-9);
    assertEquals(new Point(0, 0), outline(trimmed).start());
    assertEquals(40, trimmed.strands().get(0).segment().length().toMm(), 1e-9);
  }

  /** Both sides of a corner overrun it by 16 mm and are led round the outside. */
  private static List<Strand> overrunCorner() {
    List<Strand> chain = chain(0, 0, 128, 0, 128, -16, 112, -16, 112, 64, 0, 64);
    chain.set(1, Strand.step(chain.get(1).segment(), 0));
    chain.set(2, Strand.step(chain.get(2).segment(), 0));
    return chain;
  }

  @Test
  void neighboursMayLoseFourDistancesAtTheirCorner() {
    List<Strand> chain = overrunCorner();
    List<OffsetEdge> near = edges(chain(0, 0, 1, 0, 2, 0, 3, 0, 4, 0, 5, 0), 4);
    assertEquals(List.of(), Trimmer.trim(chain, near, TOLERANCE).trimmings());
    List<OffsetEdge> nearer = edges(chain(0, 0, 1, 0, 2, 0, 3, 0, 4, 0, 5, 0), 3.9);
    assertEquals(
        List.of("edge 0 16 mm OVERLAP", "edge 3 16 mm OVERLAP"),
        lost(Trimmer.trim(chain, nearer, TOLERANCE)));
  }

  @Test
  void anEdgeThatOverrunsItselfIsTooTight() {
    List<Strand> chain = overrunCorner();
    chain.set(3, Strand.step(chain.get(3).segment(), 3));
    List<OffsetEdge> edges = edges(chain(0, 0, 1, 0, 2, 0, 3, 0, 4, 0, 5, 0), 4);
    assertEquals(List.of("edge 0 16 mm TIGHT_CURVE"), lost(Trimmer.trim(chain, edges, TOLERANCE)));
  }

  @Test
  void halfOfAnOutlineMayBeTurnedBackButNotMore() {
    List<Strand> square = chain(0, 0, 100, 0, 100, 100, 0, 100);
    Trimmer half = trim(Runs.turnedBack(square, 1, 2), TOLERANCE);
    assertEquals(10_000, outline(half).areaSquareMm(), 1e-9);
    assertEquals(
        List.of(OffsetTag.EDGE, OffsetTag.JOIN, OffsetTag.JOIN, OffsetTag.EDGE),
        half.strands().stream().map(Strand::tag).toList());
    List<Strand> most = Runs.turnedBack(square, 1, 2, 3);
    assertThrows(DraftingException.class, () -> trim(most, TOLERANCE));
  }

  @Test
  void aLineThereAndBackIsNoOutline() {
    assertThrows(DraftingException.class, () -> trim(chain(0, 0, 100, 0), TOLERANCE));
  }

  @Test
  void whereThereIsNoRoomTheEdgeThatAsksForMostIsNamed() {
    Offset offset = Offset.of(Outlines.rectangle(100, 20, -5, -5, -18, -5));
    DraftingException none = assertThrows(DraftingException.class, offset::result);
    assertTrue(String.valueOf(none.getMessage()).startsWith("top: nothing of the outline is left"));
  }

  /** A square of 100 mm is as wide as 2 * 10000 mm² / 400 mm = 50 mm. */
  @Test
  void anOutlineNoWiderThanTheToleranceIsNothing() {
    List<Strand> square = chain(0, 0, 100, 0, 100, 100, 0, 100);
    assertTrue(Trimmer.isNothing(square, 51));
    assertTrue(Trimmer.isNothing(square, 50));
    assertFalse(Trimmer.isNothing(square, 49));
    List<Strand> open = square.subList(0, 1);
    assertFalse(Trimmer.isNothing(open, 50));
    List<Strand> speck = chain(0, 0, 1e-6, 0).subList(0, 1);
    assertTrue(Trimmer.isNothing(speck, 1e-9));
  }

  @Test
  void piecesOfAStrandThatFollowEachOtherAreOneAgain() {
    List<Strand> square = chain(0, 0, 100, 0, 100, 100, 0, 100);
    List<Arrangement.Piece> loop =
        List.of(
            new Arrangement.Piece(0, 0, 0.25, 0, 1),
            new Arrangement.Piece(0, 0.25, 0.5, 1, 2),
            new Arrangement.Piece(0, 0.5, 1, 2, 3),
            new Arrangement.Piece(1, 0, 0.5, 3, 4),
            new Arrangement.Piece(1, 0.5, 1, 4, 5),
            new Arrangement.Piece(2, 0, 1, 5, 6),
            new Arrangement.Piece(3, 0, 1, 6, 0));
    assertEquals(square, Trimmer.strands(loop, square, true));
  }
}
