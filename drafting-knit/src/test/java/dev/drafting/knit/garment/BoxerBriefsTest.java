package dev.drafting.knit.garment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.template.Dimensions;
import dev.drafting.knit.Draft;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.sewing.Step;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class BoxerBriefsTest {
  private final Pattern briefs = new BoxerBriefs().pattern();

  private static double length(Pattern pattern, String edge) {
    return pattern.edge(EdgeRef.parse(edge)).length().toMm();
  }

  private static double angle(Piece piece, String before, String after) {
    return piece.corner(before, after).interiorAngle().toDegrees();
  }

  /** One seam goes from hem to hem: one edge joined to two. */
  @Test
  void theBackIsSewnToTheFrontAndThePouch() {
    assertEquals(
        length(briefs, "leg / back inside leg"),
        length(briefs, "leg / front inside leg") + length(briefs, "pouch bottom"),
        1e-6);
    Assembly sewn = Assembly.of(briefs);
    assertEquals(3, sewn.openings().size());
    assertEquals(-1, sewn.eulerCharacteristic());
  }

  /** The hem is as wide as both halves at the hip, the fork without the pouch, less the taper. */
  @Test
  void theHemIsAsWideAsTheLegLessItsTaper() {
    double bottom = length(briefs, "pouch bottom");
    double hem = Assembly.of(briefs).opening("hem (right)").length().toMm();
    assertEquals(900 / 2.0 + 130 - bottom - 65, hem, 1e-9);
  }

  /** A quarter of the hip at each side of front and back, half the pouch missing at the front. */
  @Test
  void theUpperEdgeIsAsWideAsTheHipAndHigherAtTheBack() {
    Piece leg = briefs.piece("leg");
    Point front = leg.corner("front", "waist").at();
    Point back = leg.corner("waist", "back centre").at();
    assertEquals(900 / 2.0 - 130 / 2.0, front.x() - back.x(), 1e-9);
    assertEquals(90 + 210, front.y(), 1e-9);
    assertEquals(90 + 210 + 30, back.y(), 1e-9);
  }

  /** Where all seams meet between the legs the cloth lies flat: four right angles. */
  @Test
  void theForkIsFlat() {
    Piece leg = briefs.piece("leg");
    Piece pouch = briefs.piece("pouch");
    assertEquals(90, angle(leg, "back centre", "back inside leg"), 1e-6);
    assertEquals(90, angle(pouch, "bottom", "centre"), 1e-6);
    double alongTheSeam = angle(leg, "front inside leg", "front") + angle(pouch, "side", "bottom");
    assertEquals(180, alongTheSeam, 1e-6);
  }

  /** The pouch is closed before it is sewn in, and the long seam between the legs comes last. */
  @Test
  void theLongSeamComesLast() {
    List<String> seams =
        Draft.of(briefs)
            .withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.5))
            .orderOfWork()
            .stream()
            .map(Step::title)
            .filter(title -> title.contains("seam"))
            .toList();
    assertEquals(
        List.of(
            "Sew the pouch centre seam",
            "Sew the pouch seams",
            "Sew the back centre seam",
            "Sew the inside leg seams"),
        seams);
  }

  /** A fuller pouch is longer at its centre, and no longer at its sides. */
  @Property(tries = 50)
  void theCentreOfThePouchBulgesAsFarAsGiven(@ForAll @IntRange(min = 10, max = 39) int fullness) {
    Pattern drawn = with(fullness);
    Piece pouch = drawn.piece("pouch");
    Point from = pouch.edge("centre").curve().start();
    Point to = pouch.edge("centre").curve().end();
    Point half = pouch.edge("centre").curve().segments().get(0).pointAt(0.5);
    Vector chord = to.minus(from).unit();
    assertEquals(fullness, -chord.cross(half.minus(from)), 1e-6);
    assertEquals(length(briefs, "leg / front"), length(drawn, "pouch side"), 1e-6);
    assertTrue(length(with(fullness + 1), "pouch centre") > length(drawn, "pouch centre"));
  }

  private static Pattern with(int fullness) {
    return new BoxerBriefs().pattern(Dimensions.of().with("fullness", Length.mm(fullness)));
  }
}
