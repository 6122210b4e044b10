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
import java.util.stream.Collectors;

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
            cut(),
            "Grain",
            "its length " + strip.fit().grain().plainName() + ", the greatest stretch",
            isOpen() ? "Leave the ends open" : "Join the ends",
            tape.words(ends()),
            "Loop",
            tape.length(strip.loop())
                + " round, on a seam line of "
                + tape.length(strip.joinLine()),
            "Stretch asked",
            Wording.percent(strip.stretchAsked()),
            "How it will lie",
            tape.words(outcome())));
    if (!strip.isCutApart()) {
      marks(sheet);
    }
  }

  private String cut() {
    String lengths =
        strip.isCutApart()
            ? strip.pieces().stream()
                .map(piece -> piece.name() + ": " + tape.length(piece.length()))
                .collect(Collectors.joining("; "))
            : tape.length(strip.cutLength());
    return lengths + " long, " + tape.length(strip.cutWidth()) + " wide";
  }

  /** At a placket, and where edges are bound before they lap. */
  private boolean isOpen() {
    return strip.isCutApart() || strip.rule().lap().isPositive();
  }

  private String ends() {
    String allowance = "with " + Wording.amount(strip.joinAllowance()) + " at each end";
    Length lap = strip.rule().lap();
    return lap.isPositive()
        ? allowance + " to turn in; they lap by " + Wording.fine(lap) + " at the placket"
        : allowance;
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
            isOpen() ? "On the strip, from its end" : "On the strip, from its join",
            "On the cut pieces, along the seam line",
            "Stretch to the next mark"),
        rows);
  }
}
