package dev.drafting.core.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReshapingTest {
  private static final EdgeRef HEM = EdgeRef.parse("front hem");
  private static final EdgeRef SIDE = EdgeRef.parse("front side");

  private static Pattern alone(Piece piece) {
    return Pattern.of("alone", List.of(piece), List.of());
  }

  @Test
  void nothingChangesWhatIsNotReshaped() {
    Pattern vest = Vests.plain();
    assertEquals(vest, Reshaping.of(vest).result());
  }

  @Test
  void finishesCornersAndCuttingAreKept() {
    Piece front =
        Vests.piece("front", Vests.FRONT)
            .withFinish("hem", SeamFinish.of(Length.mm(9)))
            .withPointedCorner("hem", "side")
            .withMarking(
                MarkingLine.of("pocket", Curve.line(new Point(40, 300), new Point(90, 300))))
            .withCloth("lining");
    Piece moved = Reshaping.of(alone(front)).moved(HEM, new Vector(7, 0)).result().piece("front");
    assertEquals(front.edge("hem").finish(), moved.edge("hem").finish());
    assertTrue(moved.corner("hem", "side").isPointed());
    assertEquals("lining", moved.cloth());
    assertEquals(front.markings(), moved.markings());
    Piece wide = Reshaping.of(alone(front)).scaled("front", 2, 1).result().piece("front");
    assertEquals(new Point(180, 300), wide.markings().get(0).curve().end());
  }

  @Test
  void aCornerOnTheFoldMovesAlongItOnly() {
    Piece front = Vests.piece("front", Vests.FRONT);
    Piece moved =
        Reshaping.of(alone(front))
            .moved(EdgeRef.parse("front fold"), new Vector(5, -20))
            .result()
            .piece("front");
    assertEquals(0, moved.edge("hem").curve().start().x());
    assertEquals(front.edge("hem").curve().start().y() - 20, moved.edge("hem").curve().start().y());
  }

  @Test
  void anEdgeIsMadeAsLongAsWantedByMovesOfItsOwnCornersAlone() {
    Pattern front = alone(Vests.piece("front", Vests.FRONT));
    Length wanted = front.edge(HEM).length().times(0.95);
    Reshaping shorter = Reshaping.of(front).withLength(HEM, wanted);
    assertEquals(wanted.toMm(), shorter.result().edge(HEM).length().toMm(), 1e-7);
    for (String still : List.of("front shoulder", "front neck", "front armhole")) {
      EdgeRef edge = EdgeRef.parse(still);
      assertEquals(front.edge(edge), shorter.result().edge(edge));
    }
    assertEquals(shorter, Reshaping.of(front).withLength(HEM, wanted));
    assertEquals(
        "alone reshaped: 0 pieces scaled, 0 corners moved, 1 given a length", shorter.toString());
  }

  @Test
  void theEdgeSewnToOneThatIsGivenALengthKeepsItsOwn() {
    Pattern vest = Vests.plain();
    Length shorter = vest.edge(SIDE).length().times(0.97);
    Pattern result = Reshaping.of(vest).withLength(SIDE, shorter).result();
    assertEquals(shorter.toMm(), result.edge(SIDE).length().toMm(), 1e-6);
    EdgeRef back = EdgeRef.parse("back side");
    assertEquals(vest.edge(back).length().toMm(), result.edge(back).length().toMm(), 1e-6);
  }

  @Test
  void lengthsThatCannotBeAreRefused() {
    Pattern front = alone(Vests.piece("front", Vests.FRONT));
    assertEquals(
        "front / hem: an edge must have some length. Found: 0 mm. Accepted: more than 0 mm.",
        Refusals.refusal(() -> Reshaping.of(front).withLength(HEM, Length.ZERO)));
    Reshaping all =
        Reshaping.of(front)
            .withLength(EdgeRef.parse("front fold"), Length.mm(1))
            .withLength(HEM, Length.mm(1))
            .withLength(SIDE, Length.mm(9_000));
    String refusal = Refusals.refusal(all::result);
    assertTrue(refusal.contains("no moves of its corners make the edge as long"), refusal);
  }

  @Test
  void movesAddUp() {
    Pattern front = alone(Vests.piece("front", Vests.FRONT));
    assertEquals(
        Reshaping.of(front).moved(SIDE, new Vector(6, 2)).result(),
        Reshaping.of(front).moved(SIDE, new Vector(4, 2)).moved(SIDE, new Vector(2, 0)).result());
  }

  @Test
  void straightEdgesStayStraightAndArcsStayWithinAMicrometre() {
    Point a = new Point(0, 0);
    Point b = new Point(200, 0);
    Arc round = Arc.of(new Point(100, 0), Length.mm(100), Angle.ZERO, Angle.degrees(180));
    Piece half =
        Piece.of(
            "half", List.of(Edge.of("base", Curve.line(a, b)), Edge.of("round", Curve.of(round))));
    Pattern grown = Reshaping.of(alone(half)).scaled("half", 1.1, 1.1).result();
    assertTrue(grown.piece("half").edge("base").curve().segments().get(0) instanceof Line);
    assertEquals(110 * Math.PI, grown.piece("half").edge("round").length().toMm(), 0.002);
    Pattern moved =
        Reshaping.of(alone(half)).moved(EdgeRef.parse("half base"), new Vector(20, 0)).result();
    assertEquals(new Point(220, 0), moved.piece("half").edge("round").curve().start());
  }

  @Test
  void theGrainSaysWhichWayIsAcross() {
    Piece strip =
        Piece.of(
                "strip",
                List.of(
                    Edge.of("a", Curve.line(new Point(0, 0), new Point(100, 0))),
                    Edge.of("b", Curve.line(new Point(100, 0), new Point(100, 40))),
                    Edge.of("c", Curve.line(new Point(100, 40), new Point(0, 40))),
                    Edge.of("d", Curve.line(new Point(0, 40), new Point(0, 0)))))
            .withGrain(Angle.ZERO);
    Piece scaled = Reshaping.of(alone(strip)).scaled("strip", 2, 1.5).result().piece("strip");
    assertEquals(150, scaled.edge("a").length().toMm(), 1e-9);
    assertEquals(80, scaled.edge("b").length().toMm(), 1e-9);
  }

  @Test
  void whatCannotBeDrawnIsRefused() {
    Piece front = Vests.piece("front", Vests.FRONT);
    Reshaping plain = Reshaping.of(alone(front));
    assertThrows(
        DraftingException.class, () -> plain.moved(EdgeRef.parse("front x"), new Vector(1, 0)));
    assertThrows(DraftingException.class, () -> plain.scaled("front", 0.1, 1));
    assertThrows(DraftingException.class, () -> plain.scaled("front", 1, Double.NaN));
    Reshaping bias = Reshaping.of(alone(front.withGrain(Angle.degrees(45))));
    DraftingException aslant =
        assertThrows(DraftingException.class, () -> bias.scaled("front", 1.03, 1.05));
    assertTrue(String.valueOf(aslant.getMessage()).contains("lose its fold"));
    assertEquals(
        1.03 * front.edge("side").length().toMm(),
        bias.scaled("front", 1.03, 1.03).result().piece("front").edge("side").length().toMm(),
        1e-9);
    DraftingException crossed =
        assertThrows(
            DraftingException.class, () -> plain.moved(SIDE, new Vector(-400, 0)).result());
    assertTrue(String.valueOf(crossed.getMessage()).contains("across its fold"));
  }

  @Test
  void isAValue() {
    Pattern vest = Vests.plain();
    Reshaping moved = Reshaping.of(vest).moved(HEM, new Vector(1, 0));
    assertEquals(moved, Reshaping.of(vest).moved(HEM, new Vector(1, 0)));
    assertEquals(moved.hashCode(), Reshaping.of(vest).moved(HEM, new Vector(1, 0)).hashCode());
    assertEquals("vest reshaped: 0 pieces scaled, 1 corner moved", moved.toString());
    assertSame(vest.piece("back"), moved.result().piece("back"));
  }

  private static double off(Pattern pattern, Seam seam) {
    double first = 0;
    for (EdgeRef edge : seam.first()) {
      first += pattern.edge(edge).length().toMm();
    }
    for (EdgeRef edge : seam.second()) {
      first -= pattern.edge(edge).length().toMm();
    }
    return first - seam.ease().toMm();
  }

  /** A back that was traced apart: a little longer at the side, far longer at the shoulder. */
  private static Pattern tracedApart() {
    Pattern vest = Vests.plain();
    return Reshaping.of(vest)
        .moved(EdgeRef.parse("back hem"), new Vector(0.5, -2))
        .moved(EdgeRef.parse("back shoulder"), new Vector(-9, 1))
        .result();
  }

  @Test
  void seamsThatNearlyMatchAreEvened() {
    Pattern apart = tracedApart();
    Pattern evened = Reshaping.of(apart).evened(Length.mm(4)).result();
    for (Seam seam : apart.seams()) {
      double before = off(apart, seam);
      double wanted = Math.abs(before) <= 4 ? 0 : before;
      assertEquals(wanted, off(evened, seam), 1e-6, seam.name());
    }
    assertTrue(apart.seams().stream().anyMatch(seam -> Math.abs(off(apart, seam)) > 1));
    assertTrue(apart.seams().stream().anyMatch(seam -> Math.abs(off(apart, seam)) > 4));
    for (Piece piece : apart.pieces()) {
      for (Edge edge : piece.edges()) {
        double moved =
            edge.curve()
                .start()
                .distanceTo(evened.piece(piece.name()).edge(edge.name()).curve().start())
                .toMm();
        assertTrue(moved < 2, piece.name() + " " + edge.name() + " moved " + moved);
      }
    }
    assertEquals(evened, Reshaping.of(evened).evened(Length.mm(4)).result());
    assertEquals(
        "seams cannot be off by less than nothing. Found: -1 mm. Accepted: 0 mm or more.",
        refusedEvening());
  }

  private static String refusedEvening() {
    return String.valueOf(
        assertThrows(
                DraftingException.class, () -> Reshaping.of(Vests.plain()).evened(Length.mm(-1)))
            .getMessage());
  }
}
