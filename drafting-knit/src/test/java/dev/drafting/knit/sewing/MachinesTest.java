package dev.drafting.knit.sewing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.knit.Vest;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.hem.TurnedHem;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MachinesTest {
  private static Length allowance(Pattern pattern, String edge) {
    return pattern.edge(EdgeRef.parse(edge)).finish().profile().allowance();
  }

  /**
   * CV-22, common practice: three threads 5 to 6 mm, four threads 6 to 7 mm; "Sewing for Fashion
   * Designers" p. 259: about 7 mm on four threads.
   */
  @Test
  void setTheAllowanceOfEverySeamAtOnce() {
    Pattern vest = Vest.plain().pattern();
    for (String edge : new String[] {"front side", "back side", "front shoulder"}) {
      assertEquals(Length.mm(7), allowance(Machines.overlocker(4).applyTo(vest), edge));
      assertEquals(Length.mm(6), allowance(Machines.overlocker(3).applyTo(vest), edge));
      assertEquals(Length.mm(10), allowance(Machines.zigzag().applyTo(vest), edge));
    }
    assertEquals(
        vest.edge(EdgeRef.parse("front hem")),
        Machines.zigzag().applyTo(vest).edge(EdgeRef.parse("front hem")));
  }

  @Test
  void oneSeamMayBeSewnOtherwise() {
    Machines mine =
        Machines.overlocker(4)
            .withAllowance("side", Length.mm(15))
            .withStitch("side", Stitch.of(StitchType.OVERLOCK_AND_CHAIN))
            .withStitch("armhole", Stitch.of(StitchType.COVER_TWO));
    Pattern vest = mine.applyTo(Vest.plain().pattern());
    assertEquals(Length.mm(15), allowance(vest, "back side"));
    assertEquals(Length.mm(7), allowance(vest, "back shoulder"));
    assertEquals(StitchType.OVERLOCK_AND_CHAIN, mine.stitchOfSeam("side").type());
    assertEquals(StitchType.OVERLOCK_FOUR, mine.stitchOfSeam("shoulder").type());
    assertEquals(StitchType.COVER_TWO, mine.stitchOfHem("armhole (left)").type());
  }

  @Test
  void theNeedlesOfTheHemAreThoseAtHand() {
    assertEquals(StitchType.ZIGZAG, Machines.overlocker(3).stitchOfHem("hem").type());
    assertEquals(
        Length.mm(4), Machines.zigzag().withTwinNeedle(Length.mm(4)).stitchOfHem("hem").width());
    assertEquals(
        StitchType.COVER_TWO,
        Machines.zigzag().withCoverstitch(Length.mm(5)).stitchOfHem("hem").type());
  }

  /** The drawing shows both rows; a hem that is too narrow keeps its one row. */
  @Test
  void twoNeedlesDrawTwoRowsOnTheHem() {
    Machines twin = Machines.zigzag().withTwinNeedle(Length.mm(4));
    EdgeRef hem = EdgeRef.parse("front hem");
    Pattern vest = Vest.plain().hem(TurnedHem.once(Length.mm(15))).pattern();
    List<Length> rows = twin.applyTo(vest).edge(hem).finish().profile().topstitch();
    assertEquals(2, rows.size());
    assertEquals(Length.mm(4), rows.get(0).minus(rows.get(1)).abs());
    Pattern narrow = Vest.plain().hem(TurnedHem.once(Length.mm(5))).pattern();
    assertEquals(narrow.edge(hem), twin.applyTo(narrow).edge(hem));
  }

  @Test
  void whatIsNotThereIsRefused() {
    assertThrows(DraftingException.class, () -> Machines.overlocker(5));
    Machines wrong = Machines.zigzag().withAllowance("elbow", Length.mm(7));
    DraftingException refusal =
        assertThrows(DraftingException.class, () -> wrong.applyTo(Vest.plain().pattern()));
    assertEquals("elbow", refusal.value());
    assertTrue(refusal.accepted().contains("shoulder, side"), refusal.accepted());
    assertThrows(
        DraftingException.class, () -> Machines.zigzag().withAllowance("side", Length.mm(-1)));
  }

  @Test
  void theyAreValues() {
    assertEquals(Machines.zigzag(), Machines.zigzag());
    assertEquals(
        Machines.overlocker(4).withTwinNeedle(Length.mm(4)).hashCode(),
        Machines.overlocker(4).withTwinNeedle(Length.mm(4)).hashCode());
    assertEquals(
        "seams three-thread overlock (504), hems zigzag (304), seam allowance 6 mm, others at side",
        Machines.overlocker(3).withAllowance("side", Length.mm(15)).toString());
  }

  /** Handbook-type lists: light 60-70, T-shirt 70-80, sweatshirt 80-90; SES light, SUK medium. */
  @ParameterizedTest
  @CsvSource({"120, 60, 70, SES", "170, 70, 80, SES", "220, 70, 80, SES", "300, 80, 90, SUK"})
  void theNeedleGoesByTheMassOfTheCloth(double grams, int finest, int thickest, String point) {
    Needle needle = Needle.of(Fabric.of("knit", Structure.JERSEY, 0.3).withMass(grams));
    assertEquals(finest, needle.finest());
    assertEquals(thickest, needle.thickest());
    assertTrue(needle.point().contains(point), needle.point());
  }

  @Test
  void clothOfUnknownMassIsTakenForShirting() {
    Fabric unknown = Fabric.of("knit", Structure.JERSEY, 0.3);
    assertEquals(Needle.of(unknown.withMass(170)), Needle.of(unknown));
    assertEquals("70 to 80 (10 to 12), light ball point (SES)", Needle.of(unknown).toString());
  }
}
