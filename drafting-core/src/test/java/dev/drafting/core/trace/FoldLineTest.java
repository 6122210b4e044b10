package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Where whole pieces fold, wherever they lie and whichever edge is named first. */
class FoldLineTest {
  private static final Transform LYING =
      Transform.rotation(new Point(40, 90), Angle.degrees(-23))
          .then(Transform.translation(new Vector(900, -300)));

  private static Stroke stroke(String name, Point... points) {
    return Stroke.of(TracedEdge.of(name, List.of(points)));
  }

  private static Stroke straight(String name, double x1, double y1, double x2, double y2) {
    Point from = new Point(x1, y1);
    Point to = new Point(x2, y2);
    return stroke(name, from, from.midpoint(to), to);
  }

  private static List<Stroke> vest(Transform lying) {
    Vest.Pencil pencil = new Vest.Pencil(1, 0, 20);
    return Vest.whole().stream()
        .map(edge -> edge.map(lying))
        .map(edge -> Stroke.of(TracedEdge.of(edge.name(), pencil.trace(edge.curve()))))
        .toList();
  }

  /** Points of the fold come to lie on x = 0, the upper one above the lower. */
  private static void isFold(Transform frame, Point lower, Point upper) {
    Point below = frame.apply(lower);
    Point above = frame.apply(upper);
    assertEquals(0, below.x(), 1e-9);
    assertEquals(0, above.x(), 1e-9);
    assertEquals(lower.distanceTo(upper).toMm(), above.y() - below.y(), 1e-9);
  }

  @Test
  void aWholeVestFoldsInItsMiddle() {
    FoldLine fold = FoldLine.fromCorners("front", vest(LYING));
    isFold(fold.frame, LYING.apply(new Point(0, 0)), LYING.apply(new Point(0, 500)));
    assertEquals(7, fold.opposite(1, 8));
    assertEquals(0, fold.opposite(0, 8));
    assertEquals(5, fold.opposite(3, 8));
  }

  /** The hem is where the outline begins, or wherever it stands in a list begun elsewhere. */
  @Test
  void itsLowerEndIsTheHem() {
    List<Stroke> loop = new ArrayList<>(vest(LYING));
    for (int hem = 0; hem < 8; hem++) {
      assertEquals(hem, FoldLine.fromCorners("front", loop).lowerEnd(loop) % 8);
      Collections.rotate(loop, 1);
    }
  }

  @Test
  void aPieceThatLiesUpsideDownHasItsNeckBelow() {
    Transform turned = Transform.rotation(new Point(10, 20), Angle.degrees(160));
    List<Stroke> loop = vest(turned);
    FoldLine fold = FoldLine.fromCorners("front", loop);
    isFold(fold.frame, turned.apply(new Point(0, 500)), turned.apply(new Point(0, 0)));
    assertEquals(4, fold.lowerEnd(loop));
  }

  /** Hem and neck are cut at the fold: it passes between the last edge and the first. */
  @Test
  void aFoldThatPassesThroughCornersEndsBetweenEdges() {
    List<Stroke> loop =
        List.of(
            straight("hem", 0, 0, 100, 0),
            straight("side", 100, 0, 90, 300),
            straight("neck", 90, 300, 0, 240),
            straight("neck", 0, 240, -90, 300),
            straight("side", -90, 300, -100, 0),
            straight("hem", -100, 0, 0, 0));
    FoldLine fold = FoldLine.fromCorners("front", loop);
    isFold(fold.frame, new Point(0, 0), new Point(0, 240));
    assertEquals(5.5, fold.lowerEnd(loop));
  }

  /** All four sides of a kite have one name; only about its length does it mirror itself. */
  @Test
  void ofAllMirrorImagesThatNamesAllowTheNearestIsTaken() {
    List<Stroke> kite = new ArrayList<>();
    kite.add(straight("side", 0, 0, 100, 150));
    kite.add(straight("side", 100, 150, 0, 220));
    kite.add(straight("side", 0, 220, -100, 150));
    kite.add(straight("side", -100, 150, 0, 0));
    for (int first = 0; first < 4; first++) {
      FoldLine fold = FoldLine.fromCorners("kite", kite);
      isFold(fold.frame, new Point(0, 0), new Point(0, 220));
      Collections.rotate(kite, 1);
    }
  }

  @Test
  void edgesThatDoNotAnswerToEachOtherAreRefused() {
    List<Stroke> loop =
        List.of(
            straight("hem", 0, 0, 100, 0),
            straight("side", 100, 0, 90, 300),
            straight("neck", 90, 300, -90, 300),
            straight("slope", -90, 300, 0, 0));
    assertEquals(
        "front: the edges of a whole piece do not answer to each other."
            + " Found: round the outline: hem, side, neck, slope."
            + " Accepted: left and right edges of the same names in the same order.",
        assertThrows(DraftingException.class, () -> FoldLine.fromCorners("front", loop))
            .getMessage());
    List<Stroke> one = List.of(straight("hem", 0, 0, 100, 0));
    assertThrows(DraftingException.class, () -> FoldLine.fromCorners("front", one));
  }

  private static Track track(double... xy) {
    boolean straight = xy.length == 4;
    double[] cx = new double[xy.length / 2];
    double[] cy = new double[xy.length / 2];
    for (int i = 0; i < cx.length; i++) {
      cx[i] = xy[2 * i];
      cy[i] = xy[2 * i + 1];
    }
    return new Track(straight ? Knots.straight() : Knots.single(), cx, cy);
  }

  private static final List<String> NAMES = List.of("hem", "side", "top", "side");

  /** A whole piece with curved sides, exactly its own mirror image. */
  private static List<Track> symmetrical() {
    return List.of(
        track(-200, 0, 200, 0),
        track(200, 0, 260, 150, 110, 300, 180, 450),
        track(180, 450, 60, 410, -60, 410, -180, 450),
        track(-180, 450, -110, 300, -260, 150, -200, 0));
  }

  /** Its corners traced some millimetres off, so that they alone do not tell the fold. */
  private static List<Stroke> roughly(List<Track> edges, long seed) {
    Random random = new Random(seed);
    List<Stroke> loop = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      Track edge = edges.get(i);
      Vector off = new Vector(12 * random.nextGaussian(), 12 * random.nextGaussian());
      Curve curve = Curve.of(edge.segments());
      Point middle = curve.pointAt(curve.length().times(0.5));
      loop.add(stroke(NAMES.get(i), edge.start().plus(off), middle, edge.end().plus(off)));
    }
    return loop;
  }

  @Test
  void edgesTellTheFoldWhereCornersAreOff() {
    for (long seed = 1; seed <= 10; seed++) {
      List<Track> edges = symmetrical().stream().map(edge -> edge.map(LYING::apply)).toList();
      FoldLine rough = FoldLine.fromCorners("bag", roughly(edges, seed));
      double before = Math.abs(rough.frame.apply(LYING.apply(new Point(0, 450))).x());
      FoldLine fold =
          rough.refined(edges.stream().map(edge -> edge.map(rough.frame::apply)).toList());
      isFold(fold.frame, LYING.apply(new Point(0, 0)), LYING.apply(new Point(0, 450)));
      assertEquals(rough.sum, fold.sum);
      assertTrue(before > 0.1, "seed " + seed + " shows nothing: " + before);
    }
  }

  /** Of an edge that bulges farther on the right, half of what it bulges more lies on the left. */
  @Test
  void whereSidesDifferTheFoldLiesBetween() {
    List<Track> edges =
        List.of(
            track(-200, 0, 206, 0),
            track(206, 0, 206, 450),
            track(206, 450, -200, 450),
            track(-200, 450, -200, 0));
    FoldLine rough = FoldLine.fromCorners("bag", roughly(edges, 3));
    FoldLine fold = rough.refined(edges.stream().map(e -> e.map(rough.frame::apply)).toList());
    isFold(fold.frame, new Point(3, 0), new Point(3, 450));
  }

  /** Edges square to the fold alone do not tell where it lies: it stays. */
  @Test
  void whatTellsNothingMovesNothing() {
    List<Track> edges = List.of(track(-200, 0, 200, 0), track(200, 450, -200, 450));
    List<Stroke> loop =
        List.of(straight("hem", -200, 0, 200, 0), straight("hem", 200, 450, -200, 450));
    FoldLine rough = FoldLine.fromCorners("bag", loop);
    FoldLine fold = rough.refined(edges.stream().map(e -> e.map(rough.frame::apply)).toList());
    Point there = fold.frame.apply(new Point(70, 30));
    assertEquals(0, there.distanceTo(rough.frame.apply(new Point(70, 30))).toMm(), 1e-9);
  }
}
