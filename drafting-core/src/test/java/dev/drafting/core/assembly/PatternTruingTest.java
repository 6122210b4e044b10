package dev.drafting.core.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Reshaping;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.pattern.Vests;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class PatternTruingTest {
  private static final Length MOST_OFF = Length.mm(12);
  private static final Angle MOST_BENT = Angle.degrees(25);

  /** A vest whose front and back were traced apart, its corners and directions off. */
  private static Pattern apart(double across, double up) {
    return Reshaping.of(Vests.plain())
        .moved(EdgeRef.parse("front shoulder"), new Vector(across, up))
        .moved(EdgeRef.parse("front armhole"), new Vector(-across, -up))
        .moved(EdgeRef.parse("back hem"), new Vector(up, across))
        .result()
        .withPiece(
            Vests.plain()
                .piece("back")
                .withTurnedEdge("neck", Angle.degrees(across), Angle.degrees(up)));
  }

  private static TruedPattern trued(Pattern pattern) {
    return PatternTruing.of(pattern).evened(MOST_OFF).smoothed(MOST_BENT).result();
  }

  private static void requireTrue(Pattern pattern, double tolerance) {
    for (SeamCheck seam : Assembly.of(pattern).seamChecks()) {
      assertEquals(0, seam.difference().toMm(), tolerance, seam.toString());
    }
    Angle exact = Angle.degrees(1e-7);
    Assembly sewn = Assembly.of(pattern.withCrossingTolerance(exact));
    assertEquals(List.of(), sewn.findings());
  }

  @Property(tries = 100)
  void seamsMatchAndEdgesRunSmoothlyAtOnce(
      @ForAll @DoubleRange(min = -3, max = 3) double across,
      @ForAll @DoubleRange(min = -3, max = 3) double up) {
    TruedPattern trued = trued(apart(across, up));
    requireTrue(trued.pattern(), 1e-6);
    assertTrue(
        trued.findings().stream().allMatch(f -> f.id().equals("truing.moved")),
        trued.findings().toString());
    trued.moved().values().forEach(far -> assertTrue(far.toMm() <= 5, far.toString()));
    Pattern again = trued(trued.pattern()).pattern();
    for (Piece piece : again.pieces()) {
      for (Edge edge : piece.edges()) {
        Curve before = trued.pattern().piece(piece.name()).edge(edge.name()).curve();
        assertEquals(0, edge.curve().end().distanceTo(before.end()).toMm(), 1e-6);
      }
    }
  }

  @Test
  void whatIsTrueStaysToTheLastBit() {
    Pattern vest = Vests.plain();
    TruedPattern trued = trued(vest);
    assertSame(vest, trued.pattern());
    assertEquals("vest: nothing moved, 0 findings", trued.toString());
  }

  /** Two pieces whose sides are so long, in mm, sewn with so much ease. */
  private static Pattern tube(double front, double back, Length ease) {
    Point a = new Point(0, 0);
    Point d = new Point(0, 300);
    return Pattern.of(
        "tube",
        List.of(piece("front", a, d, front), piece("back", a, d, back)),
        List.of(Seam.of("side", "front side", "back side").withEase(ease)));
  }

  /** Moving the corners one after the other cannot do with less than all at once. */
  @Test
  void nothingMovesMoreThanIsNeeded() {
    Pattern tube = tube(301, 299, Length.ZERO);
    TruedPattern trued = PatternTruing.of(tube).evened(Length.mm(3)).result();
    // One is made 1 mm shorter and the other 1 mm longer; half of that at either end.
    assertEquals(300, trued.pattern().edge(EdgeRef.parse("front side")).length().toMm(), 0.01);
    assertEquals(300, trued.pattern().edge(EdgeRef.parse("back side")).length().toMm(), 0.01);
    trued.moved().values().forEach(far -> assertTrue(far.toMm() < 0.51, far.toString()));
    // Of a hand that wandered three times as far, nine tenths of the difference are taken.
    TruedPattern steady =
        PatternTruing.of(tube)
            .evened(Length.mm(3))
            .withWandering("front", Length.mm(3))
            .withWandering("back", Length.mm(1))
            .result();
    assertEquals(299.2, steady.pattern().edge(EdgeRef.parse("front side")).length().toMm(), 0.01);
  }

  /** 5 mm are eased in: 6 mm are evened to 5, and 9 mm are too many to be a hand that wandered. */
  @Test
  void easeIsLeftIn() {
    assertEquals(5, difference(306), 1e-6);
    assertEquals(5, difference(304), 1e-6);
    assertEquals(9, difference(309), 1e-6);
  }

  private static double difference(double front) {
    Pattern tube = tube(front, 300, Length.mm(5));
    Pattern trued = PatternTruing.of(tube).evened(Length.mm(3)).result().pattern();
    return trued
        .edge(EdgeRef.parse("front side"))
        .length()
        .minus(trued.edge(EdgeRef.parse("back side")).length())
        .toMm();
  }

  /** What is kept is not moved: the other side takes all of it; and that is told. */
  @Test
  void anEdgeWhoseLengthIsKeptTakesNoPart() {
    Pattern tube = tube(301, 299, Length.ZERO);
    TruedPattern trued =
        PatternTruing.of(tube)
            .evened(Length.mm(3))
            .keepingLengthOf(EdgeRef.parse("front side"))
            .result();
    assertEquals(301, trued.pattern().edge(EdgeRef.parse("front side")).length().toMm(), 1e-6);
    assertEquals(301, trued.pattern().edge(EdgeRef.parse("back side")).length().toMm(), 1e-6);
    assertEquals(
        List.of(
            "NOTE back: edges were moved, so that seams match and edges run smoothly across them;"
                + " where they moved farthest: hem 1 mm, side 1 mm, top 1 mm"),
        trued.findings().stream().map(Finding::toString).toList());
  }

  private static Piece piece(String name, Point a, Point d, double side) {
    Point b = new Point(200, 0);
    Point c = new Point(200, side);
    return Piece.of(
        name,
        List.of(
            Edge.of("hem", Curve.line(a, b)),
            Edge.of("side", Curve.line(b, c)),
            Edge.of("top", Curve.line(c, d)),
            Edge.onFold(Curve.line(d, a))));
  }

  @Test
  void whatWouldBendAPieceOutOfShapeIsLeftAndSaid() {
    Pattern far = apart(6, 6);
    TruedPattern trued =
        PatternTruing.of(far)
            .evened(MOST_OFF)
            .smoothed(MOST_BENT)
            .withLimit(Length.mm(0.5))
            .result();
    assertTrue(trued.findings().stream().anyMatch(f -> f.id().endsWith("-left")));
    for (Finding finding : trued.findings()) {
      boolean left = finding.id().endsWith("-left");
      assertEquals(left, !finding.remedies().isEmpty(), finding.toString());
    }
    trued.moved().values().forEach(moved -> assertTrue(moved.toMm() <= 0.5, moved.toString()));
    assertEquals(
        "vest: nothing can be trued that may not move. Found: 0 mm. Accepted: more than 0 mm.",
        String.valueOf(
            assertThrows(
                    DraftingException.class, () -> PatternTruing.of(far).withLimit(Length.ZERO))
                .getMessage()));
  }

  @Test
  void seamsThatAreMeantToDifferKeepTheirDifference() {
    Pattern far = apart(3, 3);
    TruedPattern trued = PatternTruing.of(far).smoothed(MOST_BENT).result();
    List<SeamCheck> before = Assembly.of(far).seamChecks();
    List<SeamCheck> after = Assembly.of(trued.pattern()).seamChecks();
    for (int i = 0; i < before.size(); i++) {
      assertEquals(
          before.get(i).difference().toMm(), after.get(i).difference().toMm(), 1e-6, "" + i);
    }
  }

  /** How high a half lies on its fold changes nothing but that. */
  @Property(tries = 25)
  void itDoesNotMatterHowHighAPieceLies(
      @ForAll @DoubleRange(min = -900, max = 900) double up,
      @ForAll @DoubleRange(min = -3, max = 3) double off) {
    Transform laid = Transform.translation(new Vector(0, up));
    Pattern apart = apart(off, 1);
    Pattern expected = trued(apart).pattern();
    Pattern found = trued(apart.withPiece(laid(apart.piece("front"), laid))).pattern();
    for (Edge edge : expected.piece("front").edges()) {
      Curve curve = found.piece("front").edge(edge.name()).curve();
      assertEquals(0, curve.end().distanceTo(laid.apply(edge.curve().end())).toMm(), 1e-6);
      assertEquals(edge.length().toMm(), curve.length().toMm(), 1e-6);
    }
    for (Edge edge : expected.piece("back").edges()) {
      Curve curve = found.piece("back").edge(edge.name()).curve();
      assertEquals(0, curve.end().distanceTo(edge.curve().end()).toMm(), 1e-6);
    }
  }

  private static Piece laid(Piece piece, Transform laid) {
    return piece.withCurves(piece.edges().stream().map(edge -> edge.curve().map(laid)).toList());
  }

  @Property(tries = 25)
  void itDoesNotMatterWhichPieceComesFirst(
      @ForAll @DoubleRange(min = -3, max = 3) double across,
      @ForAll @DoubleRange(min = -3, max = 3) double up) {
    Pattern pattern = apart(across, up);
    Pattern turned =
        Pattern.of(
            pattern.name(),
            List.of(pattern.piece("back"), pattern.piece("front")),
            List.of(
                Seam.of("side", "back side", "front side"),
                Seam.of("shoulder", "back shoulder", "front shoulder")));
    Pattern one = trued(pattern).pattern();
    Pattern other = trued(turned).pattern();
    for (Piece piece : one.pieces()) {
      for (Edge edge : piece.edges()) {
        Curve there = other.piece(piece.name()).edge(edge.name()).curve();
        assertEquals(0, edge.curve().end().distanceTo(there.end()).toMm(), 1e-6);
        assertEquals(edge.length().toMm(), there.length().toMm(), 1e-6);
      }
    }
  }
}
