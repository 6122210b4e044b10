package dev.drafting.core.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class CutValuesTest {
  private static final CutPlan VEST = CutPlan.of(Finishes.vest());

  @Test
  void aStripHasASizeAndACount() {
    CutItem strip =
        CutItem.ofStrip("band", "rib", Length.mm(400), Length.mm(40), "across the grain");
    assertEquals("band: 1 from rib cloth, 400 x 40 mm, across the grain", strip.toString());
    assertEquals("rib", strip.cloth());
    assertEquals("across the grain", strip.how());
    assertEquals(1, strip.withCount(1).count());
    assertEquals("1 or more", accepted(() -> strip.withCount(0)));
    assertEquals(
        "length and width above zero",
        accepted(() -> CutItem.ofStrip("band", "rib", Length.ZERO, Length.mm(40), "")));
    assertEquals(
        "length and width above zero",
        accepted(() -> CutItem.ofStrip("band", "rib", Length.mm(400), Length.ZERO, "")));
  }

  private static String accepted(Executable refused) {
    return assertThrows(DraftingException.class, refused).accepted();
  }

  @Test
  void whatDiffersIsNotEqual() {
    CutItem strip = CutItem.ofStrip("band", "rib", Length.mm(400), Length.mm(40), "across");
    differ(strip, strip.withCount(2));
    differ(strip, CutItem.ofStrip("hem", "rib", Length.mm(400), Length.mm(40), "across"));
    differ(strip, CutItem.ofStrip("band", "body", Length.mm(400), Length.mm(40), "across"));
    differ(strip, CutItem.ofStrip("band", "rib", Length.mm(401), Length.mm(40), "across"));
    differ(strip, CutItem.ofStrip("band", "rib", Length.mm(400), Length.mm(41), "across"));
    differ(strip, CutItem.ofStrip("band", "rib", Length.mm(400), Length.mm(40), "along"));
    CutPiece front = VEST.pieces().get(0);
    differ(front, VEST.pieces().get(1));
    differ(front.lines().get(0), front.lines().get(1));
    differ(VEST, CutPlan.of(Finishes.vest().withVersion("2")));
    differ(ChalkTable.of(front), ChalkTable.of(VEST.pieces().get(1)));
    Pattern longer = Finishes.vest();
    longer = longer.withPiece(longer.piece("front").withFinish("hem", Finishes.hemTwice(8, 22)));
    differ(ChalkTable.of(front), ChalkTable.of(CutPlan.of(longer).pieces().get(0)));
    Pattern unmarked = Finishes.vest();
    unmarked =
        unmarked.withPiece(
            Rectangles.toldFrom(unmarked.piece("front"), 0)); // without the notch at the waist
    differ(ChalkTable.of(front), ChalkTable.of(CutPlan.of(unmarked).pieces().get(0)));
  }

  private static void differ(Object one, Object other) {
    assertNotEquals(one, other);
    assertNotEquals(one.hashCode(), other.hashCode());
    assertNotEquals(one, "something else");
    assertEquals(one, SerialCopy.of(one));
  }

  @Test
  void readsWell() {
    CutPiece front = VEST.pieces().get(0);
    CutNotch notch = front.notches().get(0);
    assertEquals("notch " + notch.label() + " at " + notch.at() + ", 3 mm deep", notch.toString());
    ChalkTable pocket =
        ChalkTable.of(
            CutPlan.of(Pattern.of("apron", List.of(Rectangles.piece("pocket", 50, 60)), List.of()))
                .pieces()
                .get(0));
    assertEquals("pocket", pocket.piece());
    assertEquals(
        "pocket in chalk, bottom: 0 mm up, 0 mm across; right: 0 mm up, 50 mm across;"
            + " top: 60 mm up, 50 mm across; left: 60 mm up, 0 mm across",
        pocket.toString());
    ChalkTable chalk = ChalkTable.of(front);
    int told = chalk.points().size() + chalk.notches().size() - 8;
    assertEquals(" and " + told + " more", chalk.toString().replaceAll(".*across", ""));
  }
}
