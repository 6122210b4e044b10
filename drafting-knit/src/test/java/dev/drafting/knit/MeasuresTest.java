package dev.drafting.knit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.knit.garment.RaglanSweatshirt;
import dev.drafting.knit.hem.TurnedHem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** The chest of a garment is its width where armholes and sides meet. */
class MeasuresTest {
  private static Edge edge(String name, double x0, double y0, double x1, double y1) {
    return Edge.of(name, Curve.line(new Point(x0, y0), new Point(x1, y1)));
  }

  private static Optional<Length> chest(Piece... pieces) {
    return Measures.chestGirth(Pattern.of("garment", List.of(pieces), List.of()));
  }

  private static double mm(Optional<Length> length) {
    return length.orElseThrow().toMm();
  }

  /** Where its list of edges begins does not matter. */
  @Property(tries = 10)
  void theChestOfAVestIsAsDrawn(@ForAll @IntRange(min = 0, max = 5) int first) {
    Pattern vest = Vest.plain().rotation(first).pattern();
    assertEquals(920, mm(Measures.chestGirth(vest)), 1e-9);
  }

  /** On the right the side comes before the armhole, on the left after it. */
  @Property
  void aWholeFrontIsAsWideAsTwoHalves(@ForAll boolean namedOnTheLeft) {
    Piece half = Vest.plain().pattern().piece("front");
    assertEquals(460, mm(chest(half)), 1e-9);
    assertEquals(460, mm(chest(Piece.of("front", unfolded(half, namedOnTheLeft)))), 1e-9);
  }

  /** The edges of the whole front; those of one side are called other. */
  private static List<Edge> unfolded(Piece half, boolean namedOnTheLeft) {
    List<Edge> right = new ArrayList<>();
    List<Edge> left = new ArrayList<>();
    for (Edge edge : half.edges()) {
      if (!edge.isOnFold()) {
        String numbered = (half.edges().indexOf(edge) + 1) + "";
        right.add(Edge.of(namedOnTheLeft ? numbered : edge.name(), edge.curve()));
        Curve across = edge.curve().mirrored().reversed();
        left.add(0, Edge.of(namedOnTheLeft ? edge.name() : numbered, across));
      }
    }
    right.addAll(left);
    return right;
  }

  /**
   * Worked by hand: at the underarm, 300 mm up, the left edge from (0, 0) to (-100, 400) is at -75,
   * the right one at 230: 305 mm.
   */
  @Test
  void aPieceWithOneArmholeIsMeasuredAcrossAtItsUnderarm() {
    List<Edge> oneShoulder =
        List.of(
            edge("hem", 0, 0, 200, 0),
            edge("side", 200, 0, 230, 300),
            edge("armhole", 230, 300, 180, 400),
            edge("top", 180, 400, -100, 400),
            edge("edge", -100, 400, 0, 0));
    Piece one = Piece.of("front", oneShoulder).withCutting(Cutting.single(1));
    assertEquals(305, mm(chest(one)), 1e-9);
    assertEquals(610, mm(chest(one.withCutting(Cutting.pairs(1)))), 1e-9);
    assertEquals(610, mm(chest(one, Piece.of("back", oneShoulder))), 1e-9);
  }

  /** Where the armhole meets the shoulder is no underarm, and where a side meets a hem neither. */
  @Test
  void withoutAnUnderarmThereIsNoChest() {
    Piece yoke =
        Piece.of(
            "yoke",
            List.of(
                edge("hem", 0, 0, 200, 0),
                edge("armhole", 200, 0, 190, 80),
                edge("shoulder", 190, 80, 60, 100),
                edge("neck", 60, 100, 0, 0)));
    assertEquals(Optional.empty(), chest(yoke));
    Pattern skirt = Garments.skirt(TurnedHem.once(Length.mm(20)), TurnedHem.once(Length.mm(20)));
    assertEquals(Optional.empty(), Measures.chestGirth(skirt));
  }

  @Test
  void aRaglanLineEndsAtTheUnderarmToo() {
    assertEquals(1120, mm(Measures.chestGirth(new RaglanSweatshirt().pattern())), 1e-6);
  }
}
