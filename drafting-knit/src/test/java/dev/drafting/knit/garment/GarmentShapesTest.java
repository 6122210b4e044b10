package dev.drafting.knit.garment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.template.Choice;
import dev.drafting.core.template.Dimension;
import dev.drafting.core.template.Dimensions;
import dev.drafting.core.template.GarmentTemplate;
import dev.drafting.core.template.Templates;
import java.util.List;
import java.util.function.Function;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What the lines of the garments that are built in look like. */
class GarmentShapesTest {
  /** Round less than a stitch's length one sews a corner, not a curve (common practice). */
  private static final double STITCH_MM = 3;

  private static final int STEPS = 100;

  private static double angle(Piece piece, String before, String after) {
    return piece.corner(before, after).interiorAngle().toDegrees();
  }

  private static Piece sleeve(GarmentTemplate template, Dimensions given) {
    return template.pattern(given).piece("sleeve");
  }

  @TestFactory
  List<DynamicTest> noEdgeBendsAsSharplyAsACorner() {
    Templates all = Templates.installed();
    return all.ids().stream()
        .map(id -> DynamicTest.dynamicTest(id, () -> assertSmooth(all.get(id))))
        .toList();
  }

  private static void assertSmooth(GarmentTemplate template) {
    List<Function<Dimension, Length>> sizes =
        List.of(Dimension::least, Dimension::usual, Dimension::most);
    for (Function<Dimension, Length> size : sizes) {
      Dimensions given = Dimensions.of();
      for (Dimension dimension : template.dimensions()) {
        given = given.with(dimension.name(), size.apply(dimension));
      }
      for (Choice choice : template.choices()) {
        given = given.withChoice(choice.name(), choice.options().get(1));
      }
      for (Piece piece : template.pattern(given).pieces()) {
        piece.edges().forEach(edge -> assertSmooth(piece.name() + " / " + edge.name(), edge));
      }
    }
  }

  private static void assertSmooth(String name, Edge edge) {
    for (Segment segment : edge.curve().segments()) {
      for (int i = 0; i <= STEPS; i++) {
        double radius = 1 / Math.abs(segment.curvatureAt((double) i / STEPS));
        assertTrue(radius >= STITCH_MM, name + " has a radius of " + radius);
      }
    }
  }

  private static void assertRises(Curve curve, Vector way) {
    double before = -1;
    for (int i = 0; i <= STEPS; i++) {
      Point at = curve.pointAt(curve.length().times((double) i / STEPS));
      double risen = at.minus(curve.start()).dot(way);
      assertTrue(risen > before, curve + " turns back at " + at);
      before = risen;
    }
  }

  /**
   * Level to the brow, round the crown, and down: never above the brow. Half of the usual neck, 24
   * cm, would be deeper than the least depth.
   */
  @Property(tries = 50)
  void aHoodIsAsHighAsItsFaceAndAsDeepAsGiven(
      @ForAll @IntRange(min = 300, max = 400) int height,
      @ForAll @IntRange(min = 240, max = 290) int depth) {
    Piece hood =
        new RaglanSweatshirt()
            .pattern(
                Dimensions.of()
                    .withChoice("neck", "hood")
                    .with("hood height", Length.mm(height))
                    .with("hood depth", Length.mm(depth)))
            .piece("hood");
    assertEquals(height, hood.outline().bounds().height().toMm(), 1e-6);
    assertEquals(depth, hood.outline().bounds().width().toMm(), 1e-6);
    assertEquals(90, angle(hood, "face", "neck"), 1e-9);
    Curve centre = hood.edge("centre").curve();
    Length brow = centre.length().minus(Length.mm(depth / 3.0));
    assertEquals(height, centre.pointAt(brow).y(), 1e-6, "level over the brow");
  }

  /** A hand goes in at the slant of the mouth, from the side to the upper edge. */
  @Test
  void aPocketForBothHandsIsStitchedDownLowAtItsSides() {
    Dimensions usual = Dimensions.of().withChoice("pocket", "front");
    Piece pocket = new RaglanSweatshirt().pattern(usual).piece("pocket");
    assertEquals(0.62 * 1120 / 4, pocket.edge("bottom").length().toMm(), 1e-9);
    assertEquals(0.32 * 660 * 0.3, pocket.edge("side").length().toMm(), 1e-9);
    assertEquals(0.62 * 1120 / 4 * 0.6, pocket.edge("top").length().toMm(), 1e-9);
  }

  /** A placket of a fifth of the length of 64 cm, and only where it was chosen. */
  @Test
  void aTShirtOpensWhereAPlacketIsChosen() {
    assertEquals(List.of(), new TShirt().pattern().plackets());
    Pattern opened = new TShirt().pattern(Dimensions.of().withChoice("neck", "placket"));
    assertEquals(1, opened.plackets().size());
    assertEquals(128, opened.plackets().get(0).length().toMm(), 1e-9);
    assertEquals("front / neck", opened.plackets().get(0).edge().toString());
  }

  /** The hem is straight across and square to both underarms, so that it turns up evenly. */
  @Property(tries = 30)
  void theHemOfASleeveIsSquareAndNarrowerByItsTaper(
      @ForAll @IntRange(min = 0, max = 10) int taper,
      @ForAll @IntRange(min = 60, max = 480) int length) {
    Piece sleeve =
        sleeve(
            new TShirt(),
            Dimensions.of()
                .with("sleeve taper", Length.mm(taper))
                .with("sleeve length", Length.mm(length)));
    Curve hem = sleeve.edge("hem").curve();
    Curve cap = sleeve.edge("cap").curve();
    double wide = cap.start().x() - cap.end().x();
    assertEquals(wide - 2 * taper, hem.start().distanceTo(hem.end()).toMm(), 1e-9);
    assertEquals(90, angle(sleeve, "front underarm", "hem"), 1e-6);
    assertEquals(90, angle(sleeve, "hem", "back underarm"), 1e-6);
    assertRises(hem, new Vector(1, 0));
  }

  /** Before the cap is told front from back, one half is the other one mirrored. */
  @Test
  void theTopOfACapIsInItsMiddle() {
    for (String id : List.of("t-shirt", "baby-top", "childs-t-shirt")) {
      Curve cap = sleeve(Templates.installed().get(id), Dimensions.of()).edge("cap").curve();
      for (int i = 0; i <= STEPS; i++) {
        Point here = cap.pointAt(cap.length().times((double) i / STEPS));
        Point there = cap.pointAt(cap.length().times(1 - (double) i / STEPS));
        assertEquals(0, here.distanceTo(there.mirrored()).toMm(), 1e-6, id + " at " + i);
      }
      assertTrue(cap.pointAt(cap.length().times(0.5)).y() > cap.pointAt(Length.mm(20)).y());
    }
  }

  /** Square at the hem, which is turned up, then straight on to the body. */
  @Test
  void theUnderarmOfABabysSleeveIsSquareToItsHemAndStraightAbove() {
    Piece sleeve = sleeve(new BabyTop(), Dimensions.of());
    assertEquals(90, angle(sleeve, "hem", "back underarm"), 1e-9);
    assertEquals(90, angle(sleeve, "front underarm", "hem"), 1e-9);
    Curve underarm = sleeve.edge("back underarm").curve();
    Length half = underarm.length().times(0.5);
    Vector chord = underarm.end().minus(underarm.pointAt(half));
    Vector off = underarm.pointAt(half.times(1.5)).minus(underarm.pointAt(half));
    assertEquals(0, chord.unit().cross(off), 3, "straight from half way up");
  }

  /** Sitting down takes a longer seat: the back is cut higher (common practice, no source). */
  @Test
  void leggingsAreHigherAtTheBack() {
    Dimensions given = Dimensions.of().with("back rise", Length.mm(40));
    Piece leg = new Leggings().pattern(given).piece("leg");
    double front = leg.corner("front centre", "waist").at().y();
    assertEquals(front + 40, leg.corner("waist", "back centre").at().y(), 1e-9);
    assertRises(leg.edge("front centre").curve(), new Vector(0, 1));
    assertRises(leg.edge("back centre").curve(), new Vector(0, -1));
  }
}
