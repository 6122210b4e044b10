package dev.drafting.core.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
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

class SmoothedTest {
  private static final Angle MOST = Angle.degrees(25);
  private static final Angle EXACT = Angle.degrees(1e-6);

  private static Pattern apart(double across, double up) {
    Vector move = new Vector(across, up);
    return Reshaping.of(Vests.plain())
        .moved(EdgeRef.parse("front shoulder"), move)
        .moved(EdgeRef.parse("front armhole"), move.negated())
        .result()
        .withPiece(
            Vests.plain()
                .piece("back")
                .withTurnedEdge("neck", Angle.degrees(across), Angle.degrees(up)));
  }

  private static List<String> bends(Pattern pattern, Angle tolerance) {
    return Assembly.of(pattern.withCrossingTolerance(tolerance)).findings().stream()
        .map(finding -> finding.id())
        .filter(id -> id.equals("crossing.not-smooth") || id.equals("fold.not-square"))
        .toList();
  }

  @Property(tries = 100)
  void whatBendsAtASeamOrTheFoldRunsAcrossItAfterwards(
      @ForAll @DoubleRange(min = -6, max = 6) double across,
      @ForAll @DoubleRange(min = -6, max = 6) double up) {
    Pattern apart = apart(across, up);
    Pattern smoothed = Assembly.of(apart).smoothed(MOST);
    assertEquals(List.of(), bends(smoothed, apart.crossingTolerance()));
    for (Piece piece : apart.pieces()) {
      for (int i = 0; i < piece.edges().size(); i++) {
        assertEquals(
            piece.edges().get(i).curve().start(),
            smoothed.piece(piece.name()).edges().get(i).curve().start());
      }
    }
    for (Seam seam : apart.seams()) {
      for (EdgeRef edge : seam.first()) {
        assertEquals(apart.edge(edge), smoothed.edge(edge));
      }
    }
  }

  @Test
  void curvesRunAcrossToTheLastDegree() {
    Pattern apart = apart(4, -5);
    assertTrue(bends(apart, Angle.degrees(3)).size() >= 2, () -> bends(apart, EXACT).toString());
    Pattern smoothed = Assembly.of(apart).smoothed(MOST);
    assertNotEquals(apart, smoothed);
    assertEquals(List.of(), bends(smoothed, EXACT));
  }

  @Test
  void whatBendsMoreThanThePencilWandersIsKept() {
    Pattern apart = apart(4, -5);
    assertEquals(
        apart,
        Assembly.of(apart).smoothed(Angle.ZERO).withCrossingTolerance(apart.crossingTolerance()));
    Pattern pointed =
        apart.withPiece(apart.piece("back").withTurnedEdge("neck", Angle.degrees(40), Angle.ZERO));
    assertEquals(
        bends(pointed, Angle.degrees(30)),
        bends(Assembly.of(pointed).smoothed(MOST), Angle.degrees(30)));
    assertEquals(
        "vest: edges cannot be smoothed across seams by so much. Found: 91°. Accepted: 0 to 90"
            + " degrees.",
        refused(apart));
  }

  private static String refused(Pattern pattern) {
    return String.valueOf(
        assertThrows(
                DraftingException.class, () -> Assembly.of(pattern).smoothed(Angle.degrees(91)))
            .getMessage());
  }
}
