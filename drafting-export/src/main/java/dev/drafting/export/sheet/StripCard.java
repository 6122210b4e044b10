package dev.drafting.export.sheet;

import dev.drafting.core.measure.Length;
import dev.drafting.knit.band.FlatWindow;
import dev.drafting.knit.band.Outcome;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.band.StripMark;
import dev.drafting.knit.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamException;

/** What the sheet says of one strip: how to cut and join it, where to mark it, how it will lie. */
final class StripCard {
  private final Strip strip;
  private final Html html;

  StripCard(Strip strip, Html html) {
    this.strip = strip;
    this.html = html;
  }

  void write() throws XMLStreamException {
    html.text("h3", strip.name());
    html.terms(
        List.of(
            "Finish", strip.finish().describe(),
            "Fabric", strip.fabric().name(),
            "Cut", Tape.both(strip.cutLength()) + " long, " + Tape.both(strip.cutWidth()) + " wide",
            "Join the ends", "with " + Wording.amount(strip.joinAllowance()) + " at each end",
            "Loop",
                Tape.both(strip.loop())
                    + " round, on a seam line of "
                    + Tape.both(strip.joinLine()),
            "Stretch asked", Wording.percent(strip.stretchAsked()),
            "How it will lie", outcome()));
    marks();
  }

  private String outcome() {
    FlatWindow window = strip.window();
    String flat =
        "A loop of " + Wording.range(window.shortest(), window.longest()) + " lies flat; ";
    Length margin = strip.margin().abs();
    return strip.outcome() == Outcome.LIES_FLAT
        ? flat + "this one lies flat, with " + Wording.amount(margin) + " to spare."
        : flat + "this one " + strip.outcome().plainName() + ", by " + Wording.amount(margin) + ".";
  }

  private void marks() throws XMLStreamException {
    List<List<String>> rows = new ArrayList<>();
    for (StripMark mark : strip.marks()) {
      rows.add(List.of(mark.label(), Tape.both(mark.along())));
    }
    html.table("Marks on " + strip.name(), List.of("Mark", "From the join seam"), rows);
  }
}
