package dev.drafting.knit.garment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.template.Dimensions;
import dev.drafting.knit.Draft;
import dev.drafting.knit.Wearer;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.sewing.Caution;
import dev.drafting.knit.sewing.Construction;
import dev.drafting.knit.sewing.SewingChoices;
import dev.drafting.knit.sewing.Step;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class BabyTopTest {
  private final Pattern top = new BabyTop().pattern();
  private final Draft draft =
      Draft.of(top)
          .withFabric("body", Fabric.of("interlock", Structure.INTERLOCK, 0.4))
          .withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));

  private double length(String edge) {
    return top.edge(EdgeRef.parse(edge)).length().toMm();
  }

  /** Front and back are bound apart: a strip for each, with 10 mm at both its ends. */
  @Test
  void eachNecklineHasAStripOfItsOwn() {
    Strip strip = draft.strips().get(0);
    assertEquals(2, strip.pieces().size());
    double shared =
        strip.loop().ratioTo(Length.mm(2 * (length("front neck") + length("back neck"))));
    assertEquals(
        2 * length("front neck") * shared + 20, strip.pieces().get(0).length().toMm(), 1e-6);
    assertEquals(
        2 * length("back neck") * shared + 20, strip.pieces().get(1).length().toMm(), 1e-6);
    assertEquals(strip.loop().toMm() + 40, strip.cutLength().toMm(), 1e-6);
    List<String> cut =
        draft.cutList().stream()
            .map(item -> item.name())
            .filter(name -> name.contains("binding"))
            .toList();
    assertEquals(List.of("neck binding, front / neck", "neck binding, back / neck"), cut);
    assertEquals(2, draft.lay("rib").plan(1, 0).pieces().size());
  }

  @Property(tries = 50)
  void theShouldersLapAsFarAsGiven(@ForAll @IntRange(min = 30, max = 60) int lap) {
    Pattern drawn = new BabyTop().pattern(Dimensions.of().with("lap", Length.mm(lap)));
    for (String piece : List.of("front", "back")) {
      assertEquals(lap, drawn.piece(piece).edge("lap").length().toMm(), 1e-9);
    }
    assertEquals(List.of(), Assembly.of(drawn).findings());
  }

  /** The neck edge crosses the shoulder line at the neck point, halfway up the lap at its end. */
  @Test
  void theNeckRunsAcrossTheShoulderToTheArmhole() {
    for (String name : List.of("front", "back")) {
      Piece piece = top.piece(name);
      Point neckPoint = piece.edge("neck").curve().segments().get(0).end();
      assertEquals(new Point(60, 310), neckPoint);
      Point start = piece.edge("lap").curve().start();
      Point end = piece.edge("lap").curve().end();
      assertEquals(45, neckPoint.distanceTo(start.midpoint(end)).toMm(), 1e-9);
      assertEquals(90, piece.corner("lap", "neck").interiorAngle().toDegrees(), 1e-6);
      assertEquals(180, piece.corner("armhole", "lap").interiorAngle().toDegrees(), 1e-6);
    }
  }

  /** At the fold the neck lies as deep as given, at its tip the shoulder as low as given. */
  @Test
  void neckAndShoulderLieWhereTheyAreGiven() {
    Map<String, Double> depths = Map.of("front", 55.0, "back", 25.0);
    Dimensions given =
        Dimensions.of()
            .with("shoulder drop", Length.mm(12))
            .with("front neck depth", Length.mm(55))
            .with("back neck depth", Length.mm(25));
    Pattern drawn = new BabyTop().pattern(given);
    for (String name : List.of("front", "back")) {
      Piece piece = drawn.piece(name);
      double depth = depths.getOrDefault(name, 0.0);
      assertEquals(310 - depth, piece.corner("neck", "fold").at().y(), 1e-9);
      Curve lap = piece.edge("lap").curve();
      assertEquals(310 - 12, lap.start().midpoint(lap.end()).y(), 1e-9);
    }
  }

  /** The armhole leaves the side at a right angle and bends one way only, less than straight up. */
  @Property(tries = 50)
  void theArmholeIsOneHollowCurve(@ForAll @IntRange(min = 30, max = 60) int lap) {
    Pattern drawn = new BabyTop().pattern(Dimensions.of().with("lap", Length.mm(lap)));
    for (String name : List.of("front", "back")) {
      Piece piece = drawn.piece(name);
      assertEquals(90, piece.corner("side", "armhole").interiorAngle().toDegrees(), 1e-6);
      Segment armhole = piece.edge("armhole").curve().segments().get(0);
      for (int i = 0; i <= 40; i++) {
        double radius = -1 / armhole.curvatureAt(i / 40.0);
        assertTrue(radius > 10, name + ": a radius of " + radius + " at " + i);
      }
    }
  }

  /** The cap meets both lower armholes and the lap once; its notches are at the ends of the lap. */
  @Test
  void theCapIsSewnOverTheLap() {
    double around = length("front armhole") + length("front lap") + length("back armhole");
    assertEquals(around, length("sleeve cap"), 1e-6);
    Piece sleeve = top.piece("sleeve");
    assertEquals(length("back armhole"), sleeve.notches().get(0).along().toMm(), 1e-9);
    assertEquals(
        length("front armhole"),
        length("sleeve cap") - sleeve.notches().get(1).along().toMm(),
        1e-6);
  }

  @Test
  void theNeckIsBothEdges() {
    Assembly sewn = Assembly.of(top);
    assertEquals(
        2 * (length("front neck") + length("back neck")),
        sewn.opening("neck").length().toMm(),
        1e-9);
    assertEquals(4, sewn.openings().size());
  }

  /** Each edge is bound by itself, then lapped, then the sleeves are sewn in flat. */
  @Test
  void isBoundThenLappedThenSewn() {
    for (Construction construction : Construction.values()) {
      List<Step> steps =
          draft.withSewing(SewingChoices.of().withConstruction(construction)).orderOfWork();
      List<String> titles = steps.stream().map(Step::title).toList();
      int bound = titles.indexOf("Sew on the neck binding");
      int lapped = titles.indexOf("Baste the shoulder lap");
      assertTrue(bound >= 0 && bound < lapped, titles.toString());
      assertTrue(lapped < titles.indexOf("Sew the cap seams"), titles.toString());
      assertTrue(
          steps.get(bound).text().contains("before the edges are lapped"), steps.get(bound).text());
      assertTrue(
          steps.get(lapped).text().startsWith("Both right side up, lay front / lap over back"),
          steps.get(lapped).text());
    }
  }

  /** 16 CFR 1501 for small parts under three years; EN 14682 and ASTM F1816 for cords. */
  @Test
  void comesWithTheCautionsForAChild() {
    List<String> topics =
        draft.withWearer(Wearer.of().withAge(0)).cautions().stream().map(Caution::topic).toList();
    assertTrue(topics.containsAll(List.of("Cords", "Small parts", "Nightwear")), topics.toString());
    assertEquals(List.of(), draft.withWearer(Wearer.of().withAge(0)).findings());
  }
}
