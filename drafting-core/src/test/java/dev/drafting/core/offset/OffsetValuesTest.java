package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is put into an offset and comes out of it, as values. */
class OffsetValuesTest {
  private static final Trimming LOST =
      new Trimming("neck", new Point(1, 2), Trimming.Cause.OVERLAP, Length.mm(3));

  private static CornerTreatment folded(CornerSide hem, double... folds) {
    return CornerTreatment.foldedBack(
        hem, java.util.Arrays.stream(folds).mapToObj(Length::mm).toList());
  }

  @Test
  void trimmingsAreEqualIfEverythingAboutThemIs() {
    Trimming same = new Trimming("neck", new Point(1, 2), Trimming.Cause.OVERLAP, Length.mm(3));
    assertEquals(LOST, same);
    assertEquals(LOST.hashCode(), same.hashCode());
    List<Trimming> others =
        List.of(
            new Trimming("hem", new Point(1, 2), Trimming.Cause.OVERLAP, Length.mm(3)),
            new Trimming("neck", new Point(1, 3), Trimming.Cause.OVERLAP, Length.mm(3)),
            new Trimming("neck", new Point(1, 2), Trimming.Cause.SWALLOWED, Length.mm(3)),
            new Trimming("neck", new Point(1, 2), Trimming.Cause.OVERLAP, Length.mm(4)));
    for (Trimming other : others) {
      assertNotEquals(LOST, other);
      assertNotEquals(LOST.hashCode(), other.hashCode());
    }
    assertNotEquals(LOST, "neck");
  }

  @Test
  void treatmentsOfCornersDifferInTheirHashToo() {
    assertNotEquals(CornerTreatment.mitre(2).hashCode(), CornerTreatment.mitre(3).hashCode());
    assertEquals(CornerTreatment.mitre(2).hashCode(), CornerTreatment.mitre(2).hashCode());
  }

  @Test
  void aTreatmentNamesItsEdgeAndItsFolds() {
    assertEquals(
        "folded back at 0 mm and 20 mm on the edge before",
        folded(CornerSide.BEFORE, 0, 20).toString());
    assertEquals("folded back at 5 mm on the edge after", folded(CornerSide.AFTER, 5).toString());
    assertEquals(
        "square to the edge before", CornerTreatment.squareTo(CornerSide.BEFORE).toString());
  }

  @Test
  void aMitreMayReachFromOnceToAMillionTimesTheDistance() {
    assertEquals(1, CornerTreatment.mitre(1).limit());
    assertEquals(1e6, CornerTreatment.mitre(1e6).limit());
    assertThrows(DraftingException.class, () -> CornerTreatment.mitre(Math.nextUp(1e6)));
    assertThrows(DraftingException.class, () -> CornerTreatment.mitre(Math.nextDown(1)));
  }

  @Test
  void aHemIsNotFoldedTwiceInTheSamePlace() {
    assertThrows(DraftingException.class, () -> folded(CornerSide.BEFORE, 0, 20, 20));
    assertEquals(3, folded(CornerSide.BEFORE, 0, 20, 21).folds().size());
  }

  @Test
  void theRefusalOfACornerSaysWhichThereAre() {
    Offset outline = Offset.of(Outlines.rectangle(100, 50, 10, 10, 10, 10));
    assertTrue(refusal(outline, 4).contains("a number from 0 to 3"));
    Offset two = Offset.ofOpen(Outlines.rectangle(100, 50, 10, 10, 10, 10).subList(0, 2));
    assertTrue(refusal(two, 1).contains("a number from 0 to 0"));
    Offset one = Offset.ofOpen(List.of(Outlines.line("hem", 10, 0, 0, 100, 0)));
    assertTrue(refusal(one, 0).contains("a single open edge has no corner"));
  }

  private static String refusal(Offset offset, int corner) {
    return String.valueOf(
        assertThrows(
                DraftingException.class, () -> offset.withCorner(corner, CornerTreatment.bevel()))
            .getMessage());
  }

  @Test
  void theFinestToleranceIsAMillionthOfAMillimetre() {
    Offset offset = Offset.of(Outlines.rectangle(100, 50, 10, 10, 10, 10));
    assertEquals(offset.withTolerance(Length.mm(1e-6)), offset.withTolerance(Length.mm(1e-6)));
    assertThrows(DraftingException.class, () -> offset.withTolerance(Length.mm(0.9e-6)));
  }

  @Test
  void offsetsAndTheirResultsDifferInTheirHashToo() {
    Offset narrow = Offset.of(Outlines.rectangle(100, 50, 10, 10, 10, 10));
    Offset wide = Offset.of(Outlines.rectangle(100, 50, 20, 20, 20, 20));
    assertNotEquals(narrow.hashCode(), wide.hashCode());
    assertEquals(
        narrow.hashCode(), Offset.of(Outlines.rectangle(100, 50, 10, 10, 10, 10)).hashCode());
    assertNotEquals(narrow.result().hashCode(), wide.result().hashCode());
    assertNotEquals(narrow.result(), wide.result());
  }

  @Test
  void resultsDifferThatLostSomethingElse() {
    OffsetResult result = Offset.of(Outlines.rectangle(100, 50, 10, 10, 10, 10)).result();
    OffsetResult trimmed =
        new OffsetResult(result.outline(), List.of("bottom"), result.parts(), List.of(LOST, LOST));
    OffsetResult same =
        new OffsetResult(result.outline(), List.of("bottom"), result.parts(), List.of(LOST));
    assertNotEquals(trimmed, same);
    assertTrue(trimmed.toString().endsWith("; trimmed in 2 places"), trimmed::toString);
    assertTrue(result.toString().startsWith("Offset outline, 380 mm round: "));
    assertTrue(!result.toString().contains("trimmed"));
  }

  @Test
  void parallelsTouchThatLackNoMoreThanAMillionthOfAMillimetre() {
    assertTrue(shape(1e-6, -1e-6).touches());
    assertTrue(!shape(1.1e-6, 0).touches());
    assertTrue(!shape(0, -1.1e-6).touches());
  }

  private static CornerShape shape(double reachA, double reachB) {
    Vector on = new Vector(1, 0);
    return new CornerShape(new Point(0, 0), on, on, 10, 10, 1, 0, reachA, reachB);
  }
}
