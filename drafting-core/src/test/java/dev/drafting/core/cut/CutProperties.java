package dev.drafting.core.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.SeamFinish;
import dev.drafting.core.pattern.Vests;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What must not depend on how a piece lies on the paper. */
class CutProperties {

  @Provide
  Arbitrary<Piece> halves() {
    return Combinators.combine(
            Arbitraries.doubles().between(5, 32),
            Arbitraries.doubles().between(0, 12),
            Arbitraries.doubles().between(60, 150),
            Arbitraries.doubles().between(4, 15))
        .as(
            (slope, flare, depth, allowance) ->
                Vests.piece("front", new Vests.Half(slope, flare, depth, 20))
                    .withFinish("side", SeamFinish.of(Length.mm(allowance)))
                    .withFinish("shoulder", SeamFinish.of(Length.mm(allowance / 2)))
                    .withFinish("armhole", Finishes.wrappedBinding(9))
                    .withFinish("neck", Finishes.foldedBand(13, 6))
                    .withFinish("hem", Finishes.hemOnce(20)));
  }

  private static CutPiece cut(Piece piece) {
    return CutPlan.of(Pattern.of("vest", List.of(piece), List.of())).pieces().get(0);
  }

  private static Map<String, Double> lengths(CutPiece cut) {
    Map<String, Double> lengths = new TreeMap<>();
    cut.lines().forEach(l -> lengths.merge(l.label(), l.length().toMm(), Double::sum));
    lengths.put("cut line", cut.cutLine().length().toMm());
    return lengths;
  }

  private static void assertSame(CutPiece one, CutPiece other) {
    Map<String, Double> expected = lengths(one);
    Map<String, Double> found = lengths(other);
    assertEquals(expected.keySet(), found.keySet());
    expected.forEach((label, mm) -> assertEquals(mm, found.getOrDefault(label, 0.0), 0.02, label));
    assertEquals(one.cutLine().areaSquareMm(), other.cutLine().areaSquareMm(), 10);
  }

  @Property(tries = 40)
  void theFirstEdgeDoesNotMatter(
      @ForAll("halves") Piece piece, @ForAll @IntRange(max = 5) int first) {
    List<Edge> edges = new ArrayList<>(piece.edges());
    Collections.rotate(edges, first);
    assertSame(cut(piece), cut(Piece.of("front", edges)));
  }

  @Property(tries = 40)
  void theMirrorImageIsCutTheSame(@ForAll("halves") Piece piece) {
    Piece whole = piece.unfolded();
    assertSame(cut(whole), cut(whole.mirrored()));
  }

  @Property(tries = 40)
  void aWholePieceMayLieAnywhere(
      @ForAll("halves") Piece piece, @ForAll @DoubleRange(min = -180, max = 180) double turned) {
    Piece whole = piece.unfolded();
    Transform turn = Transform.rotation(new Point(12, 200), Angle.degrees(turned));
    List<Edge> edges =
        whole.edges().stream()
            .map(e -> Edge.of(e.name(), e.curve().map(turn)).withFinish(e.finish()))
            .toList();
    assertSame(cut(whole), cut(Piece.of("front", edges)));
  }

  @Property(tries = 40)
  void aHalfOnTheFoldIsHalfOfTheWhole(@ForAll("halves") Piece piece) {
    assertEquals(
        2 * cut(piece).cutLine().areaSquareMm(),
        cut(piece.unfolded()).cutLine().areaSquareMm(),
        20);
  }
}
