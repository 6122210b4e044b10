package dev.drafting.core.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.cut.CutNotch;
import dev.drafting.core.cut.CutPlan;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
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
    return pattern.withSeamMarks().piece(piece).notches().stream()
        .map(notch -> notch.along().toMm())
        .toList();
  }

  private static List<String> labels(Pattern pattern, String piece) {
    return pattern.withSeamMarks().piece(piece).notches().stream().map(Notch::label).toList();
  }

  /**
   * Worked by hand: 18 cm in three pleats are 6 cm each, twice their depth of 3 cm (common
   * practice, no source). On the yoke they lie at 7, 21 and 35 cm; on the skirt they begin 6 cm
   * farther each.
   */
  @Test
  void everyPleatHasBothItsEndsAndItsPlace() {
    Pattern pleated = skirt(Fullness.pleats(3));
    assertEquals(List.of(70.0, 130.0, 270.0, 330.0, 470.0, 530.0), notches(pleated, "skirt"));
    assertEquals(List.of(70.0, 210.0, 350.0), notches(pleated, "yoke"));
    assertEquals(Length.cm(3), Fullness.pleats(3).depth(Length.cm(-18)));
  }

  /**
   * The skirt's edge runs against the yoke's, so that its first pleat meets the yoke's last place.
   */
  @Test
  void aPleatMeetsThePlaceOfItsNumber() {
    Pattern pleated = skirt(Fullness.pleats(3));
    assertEquals("pleat 1", labels(pleated, "skirt").get(0));
    assertEquals(List.of("pleat 3", "pleat 2", "pleat 1"), labels(pleated, "yoke"));
  }

  @Test
  void gathersAreSharedOutByQuarters() {
    Pattern gathered = skirt(Fullness.gathered());
    assertEquals(List.of(150.0, 300.0, 450.0), notches(gathered, "skirt"));
    assertEquals(List.of(105.0, 210.0, 315.0), notches(gathered, "yoke"));
    assertEquals(List.of("quarter", "quarter", "quarter"), labels(gathered, "yoke"));
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
