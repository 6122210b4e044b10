package dev.drafting.core.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What must not depend on how a piece lies on the paper. */
class PieceProperties {

  private static Piece whole(double slope, double flare, double depth) {
    return Vests.piece("front", new Vests.Half(slope, flare, depth, 40))
        .withNotch(Notch.of("side", Length.mm(100), "waist"))
        .unfolded();
  }

  @Property(tries = 50)
  void theFirstEdgeDoesNotMatter(
      @ForAll @DoubleRange(min = 0, max = 35) double slope, @ForAll @IntRange(max = 5) int first) {
    Piece piece = Vests.piece("front", new Vests.Half(slope, 4, 100, 0));
    List<Edge> rotated = new ArrayList<>(piece.edges());
    Collections.rotate(rotated, first);
    Piece other = Piece.of("front", rotated);
    assertEquals(piece.outline().areaSquareMm(), other.outline().areaSquareMm(), 1e-6);
    for (Corner corner : piece.corners()) {
      assertEquals(corner, other.corner(corner.before(), corner.after()));
    }
    assertEquals(piece.unfolded().edges().size(), other.unfolded().edges().size());
    assertEquals(piece.unfolded().edge("neck"), other.unfolded().edge("neck"));
  }

  @Property(tries = 50)
  void theMirrorImageHasTheSameLengthsAndAngles(
      @ForAll @DoubleRange(min = 0, max = 35) double slope,
      @ForAll @DoubleRange(min = -10, max = 20) double flare) {
    Piece piece = whole(slope, flare, 100);
    Piece image = piece.mirrored();
    for (Edge edge : piece.edges()) {
      assertEquals(edge.length().toMm(), image.edge(edge.name()).length().toMm(), 1e-9);
    }
    for (Corner corner : piece.corners()) {
      assertEquals(
          corner.interiorAngle().toDegrees(),
          image.corner(corner.after(), corner.before()).interiorAngle().toDegrees(),
          1e-9);
    }
    assertEquals(piece.outline().areaSquareMm(), image.outline().areaSquareMm(), 1e-6);
    assertEquals(piece, image.mirrored());
  }

  @Property(tries = 50)
  void aWholePieceMayLieAnywhere(
      @ForAll @DoubleRange(min = -180, max = 180) double turned,
      @ForAll @DoubleRange(min = 20, max = 200) double depth) {
    Piece piece = whole(20, 5, depth);
    Transform turn = Transform.rotation(new Point(31, -7), Angle.degrees(turned));
    Piece moved =
        Piece.of(
            piece.name(),
            piece.edges().stream().map(e -> Edge.of(e.name(), e.curve().map(turn))).toList());
    for (int i = 0; i < piece.edges().size(); i++) {
      assertEquals(
          piece.edges().get(i).length().toMm(), moved.edges().get(i).length().toMm(), 1e-8);
      assertEquals(
          piece.corners().get(i).interiorAngle().toDegrees(),
          moved.corners().get(i).interiorAngle().toDegrees(),
          1e-8);
    }
  }
}
