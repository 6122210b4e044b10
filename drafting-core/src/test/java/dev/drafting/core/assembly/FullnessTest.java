package dev.drafting.core.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.cut.CutNotch;
import dev.drafting.core.cut.CutPlan;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Fullness;
import dev.drafting.core.pattern.Notch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import java.util.List;
import org.junit.jupiter.api.Test;

class FullnessTest {
  private static Piece panel(String name, double width) {
    Point a = new Point(0, 0);
    Point b = new Point(width, 0);
    Point c = new Point(width, 200);
    Point d = new Point(0, 200);
    return Piece.of(
            name,
            List.of(
                Edge.of("lower", Curve.line(a, b)),
                Edge.of("right", Curve.line(b, c)),
                Edge.of("upper", Curve.line(c, d)),
                Edge.of("left", Curve.line(d, a))))
        .withCutting(Cutting.single(1));
  }

  /** The upper edge of a skirt of 60 cm, from right to left, to a yoke of 42 cm. */
  private static Pattern skirt(Fullness fullness) {
    Seam seam =
        Seam.of("yoke", "skirt upper", "yoke lower")
            .endToStart()
            .withEase(Length.cm(18))
            .drawnIn(fullness);
    return Pattern.of("skirt", List.of(panel("skirt", 600), panel("yoke", 420)), List.of(seam));
  }

  private static List<Double> notches(Pattern pattern, String piece) {
    return Assembly.withSeamMarks(pattern).piece(piece).notches().stream()
        .map(notch -> notch.along().toMm())
        .toList();
  }

  private static List<String> labels(Pattern pattern, String piece) {
    return Assembly.withSeamMarks(pattern).piece(piece).notches().stream()
        .map(Notch::label)
        .toList();
  }

  /**
   * Worked by hand: 18 cm in three pleats are 6 cm each, twice their depth of 3 cm (common
   * practice, no source). On the yoke they lie at 7, 21 and 35 cm, in the order of sewing; on the
   * skirt they begin 6 cm farther each.
   */
  @Test
  void everyPleatHasBothItsEndsAndItsPlace() {
    Pattern pleated = skirt(Fullness.pleats(3));
    assertEquals(List.of(70.0, 130.0, 270.0, 330.0, 470.0, 530.0), notches(pleated, "skirt"));
    assertEquals(List.of(350.0, 210.0, 70.0), notches(pleated, "yoke"));
    assertEquals(Length.cm(3), Fullness.pleats(3).depth(Length.cm(-18)));
  }

  /**
   * The skirt's edge runs against the yoke's, so that its first pleat meets the yoke's last place.
   */
  @Test
  void aPleatMeetsThePlaceOfItsNumber() {
    Pattern pleated = skirt(Fullness.pleats(3));
    assertEquals("pleat 1", labels(pleated, "skirt").get(0));
    assertEquals(List.of("pleat 1", "pleat 2", "pleat 3"), labels(pleated, "yoke"));
    assertEquals(350.0, notches(pleated, "yoke").get(0));
  }

  @Test
  void gathersAreSharedOutByQuarters() {
    Pattern gathered = skirt(Fullness.gathered());
    assertEquals(List.of(150.0, 300.0, 450.0), notches(gathered, "skirt"));
    assertEquals(List.of(315.0, 210.0, 105.0), notches(gathered, "yoke"));
    assertEquals(List.of("quarter", "quarter", "quarter"), labels(gathered, "yoke"));
  }

  /**
   * A waistband of 50 cm to a front of 40 cm and a back of 30 cm, sewn at the side: 70 cm in two
   * pleats are 10 cm each. They lie at 12.5 and 37.5 cm of the band; on the skirt the first one
   * begins at 12.5, the second one at 47.5 cm, which is 7.5 cm behind the side seam.
   */
  private static Pattern banded(Fullness fullness) {
    return Pattern.of(
        "skirt",
        List.of(panel("front", 400), panel("back", 300), panel("band", 500)),
        List.of(
            Seam.of("side", "front left", "back right").endToStart(),
            Seam.of(
                    "waist",
                    List.of(EdgeRef.parse("front upper"), EdgeRef.parse("back upper")),
                    List.of(EdgeRef.parse("band lower")))
                .endToStart()
                .withEase(Length.cm(20))
                .drawnIn(fullness)));
  }

  @Test
  void pleatsAreCountedThroughAChain() {
    Pattern pleated = banded(Fullness.pleats(2));
    assertEquals(List.of(125.0, 225.0), notches(pleated, "front"));
    assertEquals(List.of("pleat 1", "pleat 1"), labels(pleated, "front"));
    assertEquals(List.of(75.0, 175.0), notches(pleated, "back"));
    assertEquals(List.of("pleat 2", "pleat 2"), labels(pleated, "back"));
    assertEquals(List.of(375.0, 125.0), notches(pleated, "band"));
    assertEquals(List.of("pleat 1", "pleat 2"), labels(pleated, "band"));
  }

  /** Quarters of 70 cm: 17.5 and 35 on the front, 52.5 on the back; each meets its number. */
  @Test
  void quartersAreCountedThroughAChain() {
    Pattern gathered = banded(Fullness.gathered());
    assertEquals(List.of(175.0, 350.0), notches(gathered, "front"));
    assertEquals(List.of("quarter 1", "quarter 2"), labels(gathered, "front"));
    assertEquals(List.of(125.0), notches(gathered, "back"));
    assertEquals(List.of("quarter 3"), labels(gathered, "back"));
    assertEquals(List.of(375.0, 250.0, 125.0), notches(gathered, "band"));
  }

  /** Half of 80 cm is the side seam, which is a mark itself. */
  @Test
  void noNotchLiesOnACorner() {
    Pattern even =
        Pattern.of(
            "skirt",
            List.of(panel("front", 400), panel("back", 400), panel("band", 500)),
            List.of(
                banded(Fullness.gathered()).seams().get(0),
                banded(Fullness.gathered()).seams().get(1).withEase(Length.cm(30))));
    assertEquals(List.of("quarter 1"), labels(even, "front"));
    assertEquals(List.of("quarter 3"), labels(even, "back"));
    assertEquals(3, labels(even, "band").size());
  }

  @Test
  void theNotchesAreCutAndTheSeamFits() {
    Pattern pleated = skirt(Fullness.pleats(2)).withSeamAllowance(Length.mm(7));
    List<CutNotch> cut = CutPlan.of(pleated).pieces().get(0).notches();
    assertEquals(4, cut.size());
    assertTrue(Assembly.of(pleated).seamChecks().get(0).matches(Length.mm(0.01)));
  }

  @Test
  void easedSeamsAndThoseThatAreShorterGetNoMarks() {
    assertEquals(List.of(), notches(skirt(Fullness.eased()), "skirt"));
    Seam wrong =
        Seam.of("yoke", "yoke lower", "skirt upper")
            .withEase(Length.cm(18))
            .drawnIn(Fullness.pleats(3));
    Pattern traced =
        Pattern.of("skirt", List.of(panel("skirt", 600), panel("yoke", 420)), List.of(wrong));
    assertEquals(List.of(), notches(traced, "skirt"));
  }

  @Test
  void readsBackWhatItSays() {
    for (Fullness fullness :
        List.of(Fullness.eased(), Fullness.gathered(), Fullness.pleats(1), Fullness.pleats(100))) {
      assertEquals(fullness, Fullness.parse(fullness.toString()));
      assertEquals(fullness.hashCode(), Fullness.parse(fullness.toString()).hashCode());
    }
    for (String text :
        List.of("", "pleats", "0 pleats", "101 pleats", "3", "-1 pleats", "ruched")) {
      assertThrows(DraftingException.class, () -> Fullness.parse(text), text);
    }
    Seam centre = Seam.mirrored("centre", EdgeRef.parse("back centre"));
    assertThrows(DraftingException.class, () -> centre.drawnIn(Fullness.gathered()));
    assertEquals(
        "yoke: skirt / upper to yoke / lower, end to start, ease 180 mm, gathered",
        skirt(Fullness.gathered()).seams().get(0).toString());
  }
}
