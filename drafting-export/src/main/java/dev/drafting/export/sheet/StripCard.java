package dev.drafting.export.sheet;

import dev.drafting.core.measure.Length;
import dev.drafting.knit.band.BandFit;
import dev.drafting.knit.band.LoopRange;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.band.StripMark;
import dev.drafting.knit.band.StripSection;
import dev.drafting.knit.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/** What the sheet says of one strip: how to cut and join it, where to mark it, how it will lie. */
final class StripCard {
  private final Strip strip;
  private final Tape tape;

  StripCard(Strip strip, Tape tape) {
    this.strip = strip;
    this.tape = tape;
  }

  <X extends Exception> void write(SheetWriter<X> sheet) throws X {
    sheet.heading(strip.name());
    sheet.terms(
        List.of(
            "Finish",
            tape.words(strip.finish().describe()),
            "Fabric",
            strip.fabric().name(),
            "Cut",
            tape.length(strip.cutLength()) + " long, " + tape.length(strip.cutWidth()) + " wide",
            "Grain",
            "its length " + strip.fit().grain().plainName() + ", the greatest stretch",
            "Join the ends",
            tape.words("with " + Wording.amount(strip.joinAllowance()) + " at each end"),
            "Loop",
            tape.length(strip.loop())
                + " round, on a seam line of "
                + tape.length(strip.joinLine()),
            "Stretch asked",
            Wording.percent(strip.stretchAsked()),
            "How it will lie",
            tape.words(outcome())));
    marks(sheet);
  }

  private String outcome() {
    BandFit fit = strip.fit();
    LoopRange wanted = fit.wanted();
    String meant =
        "A loop of "
            + Wording.range(wanted.shortest(), wanted.longest())
            + " "
            + strip.finish().intent().plainName()
            + "; this one "
            + strip.outcome().plainName();
    Length margin = strip.margin().abs();
    return fit.isAsMeant()
        ? meant + ", with " + Wording.amount(margin) + " to spare."
        : meant + ", by " + Wording.amount(margin) + ".";
  }

  private <X extends Exception> void marks(SheetWriter<X> sheet) throws X {
    List<List<String>> rows = new ArrayList<>();
    List<StripMark> marks = strip.marks();
    List<StripSection> sections = strip.sections();
    for (int i = 0; i < marks.size(); i++) {
      StripMark mark = marks.get(i);
      rows.add(
          List.of(
              mark.label(),
              tape.length(mark.along()),
              tape.length(mark.onEdge()),
              Wording.percent(sections.get(i).stretch())));
    }
    sheet.table(
        "Marks on " + strip.name() + ", " + strip.rule().marks().plainName(),
        List.of(
            "Mark",
            "On the strip, from its join",
            "On the cut pieces, along the seam line",
            "Stretch to the next mark"),
        rows);
  }
}
