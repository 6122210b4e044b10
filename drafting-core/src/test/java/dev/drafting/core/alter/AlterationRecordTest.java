package dev.drafting.core.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Vests;
import java.util.List;
import org.junit.jupiter.api.Test;

class AlterationRecordTest {
  private final Pattern vest = Vests.plain();
  private final AlterationRecord record =
      AlterationRecord.of(vest)
          .with(Alteration.lowerNeck("front neck", Length.mm(8)), "tight under the chin")
          .with(Alteration.flare("side", Length.mm(10)));

  @Test
  void undoingLeavesNoTrace() {
    assertEquals(vest, record.undone().undone().result());
    assertEquals(Alteration.flare("side", Length.mm(10)).applyTo(vest), record.without(1).result());
  }

  @Test
  void replaysOnAnotherPattern() {
    Pattern other = Vests.of(new Vests.Half(18, 2, 100, 0), new Vests.Half(20, 6, 40, 30));
    AlterationRecord there = record.on(other);
    assertEquals(other, there.base());
    assertEquals(
        Alteration.flare("side", Length.mm(10))
            .applyTo(Alteration.lowerNeck("front neck", Length.mm(8)).applyTo(other)),
        there.result());
  }

  @Test
  void saysWhatAllOfThemChange() {
    assertEquals(
        List.of(
            "front / fold",
            "front / hem",
            "front / side",
            "front / armhole",
            "front / neck",
            "back / hem",
            "back / side",
            "back / armhole"),
        record.changes().stream().map(change -> change.edge().toString()).toList());
  }

  @Test
  void namesTheAlterationThatCannotBeMade() {
    DraftingException refusal =
        assertThrows(
            DraftingException.class,
            () -> record.with(Alteration.takeIn("crotch", Length.mm(5))).result());
    assertEquals(
        "alteration 3, take in 5 mm at the crotch seam",
        refusal.where().substring(0, "alteration 3, take in 5 mm at the crotch seam".length()));
    assertThrows(DraftingException.class, () -> record.without(3));
    assertThrows(DraftingException.class, () -> AlterationRecord.of(vest).undone());
  }

  @Test
  void isAValue() {
    assertEquals(record, SerialCopy.of(record));
    assertEquals(
        "vest: lower front / neck by 8 mm (tight under the chin); add 10 mm of flare at the side"
            + " seam",
        record.toString());
    assertEquals("vest: nothing altered", AlterationRecord.of(vest).toString());
  }

  @Test
  void measuresPropose() {
    List<Alteration> proposals =
        WantedMeasure.proposals(
            vest,
            List.of(
                WantedMeasure.girth("side", Length.cm(90), Length.cm(86)),
                WantedMeasure.length("side", Length.mm(350), Length.mm(380)),
                WantedMeasure.strap("shoulder", Length.mm(90), Length.mm(70)),
                WantedMeasure.armholeDepth("side", Length.mm(200), Length.mm(215)),
                WantedMeasure.neckDepth("front neck", Length.mm(110), Length.mm(100)),
                WantedMeasure.neckDepth("back neck", Length.mm(30), Length.mm(30))));
    assertEquals(
        List.of(
            "take in 10 mm at the side seam",
            "lengthen by 30 mm, 175 mm up the side seam",
            "shorten the shoulder seam at its outer end by 20 mm",
            "shorten the side seam at its upper end by 15 mm",
            "raise front / neck by 10 mm"),
        proposals.stream().map(Alteration::describe).toList());
  }
}
