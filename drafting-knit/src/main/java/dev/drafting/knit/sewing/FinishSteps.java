package dev.drafting.knit.sewing;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Finish;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.band.WrappedBinding;
import dev.drafting.knit.hem.TurnedHem;
import dev.drafting.knit.wording.Wording;
import java.util.List;
import java.util.stream.Collectors;

/** How each finish is sewn, in words. */
final class FinishSteps {
  private FinishSteps() {}

  /** Strips for openings that are named alike. */
  static Step strip(String opening, List<Strip> strips) {
    Strip strip = strips.get(0);
    String noun = strip.finish().noun();
    String title = "Sew on the " + opening + " " + (strips.size() > 1 ? noun + "s" : noun);
    String text =
        sizes(strips)
            + " Join its ends with "
            + Wording.fine(strip.joinAllowance())
            + " to a loop, open the join and mark it. Pin mark to mark with the join at "
            + where(strip)
            + ". "
            + stretching(strips)
            + " "
            + (strip.finish() instanceof WrappedBinding ? wrapped(strip) : folded(strip));
    return Step.of(title, text);
  }

  private static String sizes(List<Strip> strips) {
    return strips.stream()
            .map(strip -> strip.name() + ": loop " + Wording.amount(strip.loop()))
            .collect(Collectors.joining("; "))
        + ".";
  }

  private static String where(Strip strip) {
    String first = strip.marks().get(0).label();
    return first.startsWith("join: ") ? first.substring("join: ".length()) : "the first mark";
  }

  private static String stretching(List<Strip> strips) {
    double most = strips.stream().mapToDouble(Strip::stretchAsked).max().orElse(0);
    return most > 0
        ? "Stretch the strip alone, about "
            + Wording.percent(Math.round(most * 100) / 100.0)
            + ", and never the garment."
        : "Do not stretch anything.";
  }

  private static String folded(Strip strip) {
    Length allowance = strip.cutWidth().dividedBy(2).minus(strip.finish().showing());
    String sewn =
        "Fold the strip in half along its length, right side out, and sew both its raw edges to the"
            + " right side of the edge, "
            + Wording.fine(allowance)
            + " from the cut edge. Turn the band up and press the seam towards the garment";
    return strip.finish().profile().topstitch().isEmpty()
        ? sewn + "."
        : sewn + ", and topstitch it there.";
  }

  private static String wrapped(Strip strip) {
    Length beyond = strip.finish().profile().cut().orElse(Length.ZERO).negated();
    return "Right sides together, let the strip's edge stand "
        + Wording.fine(beyond)
        + " beyond the cut edge of the garment and sew "
        + Wording.fine(strip.finish().showing())
        + " from the strip's edge. Wrap the strip over the edge, tuck its other edge under, and"
        + " stitch it down from the right side, close to the inner edge.";
  }

  /** Finishes without a strip. */
  static Step plain(String opening, Finish finish) {
    if (finish instanceof TurnedHem) {
      return Step.of("Turn up the " + opening, hem((TurnedHem) finish));
    }
    return Step.of("Finish the " + opening, Making.capital(finish.describe()) + ".");
  }

  private static String hem(TurnedHem hem) {
    String turning =
        hem.isTurnedTwice()
            ? "Turn up "
                + Wording.fine(hem.turnIn())
                + ", then "
                + Wording.fine(hem.depth())
                + ", and press."
            : "Turn up " + Wording.fine(hem.depth()) + " and press.";
    Length row = hem.profile().topstitch().get(0).abs();
    return turning
        + " Stitch from the right side, "
        + Wording.fine(row)
        + " from the fold, with a seam that stretches, so that the cut edge is covered.";
  }
}
