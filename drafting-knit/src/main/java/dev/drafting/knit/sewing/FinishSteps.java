package dev.drafting.knit.sewing;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Finish;
import dev.drafting.knit.band.BandFinish;
import dev.drafting.knit.band.Casing;
import dev.drafting.knit.band.FacedStrip;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.band.MarkSpacing;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.band.StripPiece;
import dev.drafting.knit.band.StripSection;
import dev.drafting.knit.band.WrappedBinding;
import dev.drafting.knit.hem.TurnedHem;
import dev.drafting.knit.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** How each finish is sewn, in words. */
final class FinishSteps {
  private FinishSteps() {}

  static Step of(FinishTask task, SewingPlan plan) {
    List<Strip> strips =
        plan.strips().stream().filter(strip -> task.openings().contains(strip.opening())).toList();
    List<String> makes = new ArrayList<>();
    task.openings().forEach(opening -> makes.add(opening.name()));
    strips.forEach(strip -> makes.add(strip.name()));
    Step step =
        strips.isEmpty()
            ? plain(task, plan.line(task.openings().get(0).name()).stitch())
            : strip(task, strips, plan.line(strips.get(0).name()).stitch());
    return step.making(makes).showing(task.edges());
  }

  /** Strips for openings that are named alike. */
  private static Step strip(FinishTask task, List<Strip> strips, Stitch stitch) {
    Strip strip = strips.get(0);
    List<StripSection> sections = strip.sections();
    String noun = strip.finish().noun();
    String title = "Sew on the " + task.name() + " " + (strips.size() > 1 ? noun + "s" : noun);
    String text =
        sizes(strips)
            + (task.isLapped()
                ? lapped(strip)
                : strip.rule().lap().isPositive()
                    ? atPlacket(strip)
                    : task.isFlat() ? flat(task.openSeam()) : round(strip, sections))
            + stretching(strips)
            + mitres(sections)
            + " "
            + sewing(strip)
            + " Sew it on in "
            + stitch.type().plainName()
            + ".";
    return Step.of(title, text);
  }

  private static String round(Strip strip, List<StripSection> sections) {
    String bulk =
        strip.finish() instanceof FoldedBand
            ? " Clip the join's allowances at mid-width and turn them to opposite sides, so that"
                + " the folded band is not thick there."
            : "";
    return " Join its ends with "
        + Wording.fine(strip.joinAllowance())
        + " to a loop, open the join and mark it."
        + bulk
        + " Pin mark to mark with the join at "
        + where(sections)
        + ". ";
  }

  private static String atPlacket(Strip strip) {
    return " Do not join its ends: turn in "
        + Wording.fine(strip.joinAllowance())
        + " at each, even with the folds of the placket, lay it to the edge with the placket open,"
        + " pin mark to mark, and close the ends by hand. ";
  }

  private static String flat(String openSeam) {
    return " Do not join its ends: mark it, lay it to the open edge from one side of the "
        + openSeam
        + " seam to the other, and pin mark to mark. The seam will run through it. ";
  }

  /** Each edge has a piece of its own, and the seam of the lap takes up its ends. */
  private static String lapped(Strip strip) {
    String pieces =
        strip.pieces().stream().map(StripPiece::toString).collect(Collectors.joining("; "));
    return " It is cut apart ("
        + pieces
        + "), with "
        + Wording.fine(strip.joinAllowance())
        + " at both ends of each. Lay each flat along its edge from end to end, before the edges"
        + " are lapped. ";
  }

  private static String sizes(List<Strip> strips) {
    return strips.stream()
            .map(strip -> strip.name() + ": loop " + Wording.amount(strip.loop()))
            .collect(Collectors.joining("; "))
        + ".";
  }

  private static String where(List<StripSection> sections) {
    String first = sections.get(0).from();
    return first.startsWith("join: ") ? first.substring("join: ".length()) : "the first mark";
  }

  private static String stretching(List<Strip> strips) {
    double most = strips.stream().mapToDouble(Strip::stretchAsked).max().orElse(0);
    if (strips.get(0).rule().marks() == MarkSpacing.MORE_ON_CURVES) {
      return "Stretch the strip alone, from mark to mark until it meets the edge, which is more on"
          + " curves, and never the garment.";
    }
    return most > 0
        ? "Stretch the strip alone, about "
            + Wording.percent(Math.round(most * 100) / 100.0)
            + ", and never the garment."
        : "Do not stretch anything.";
  }

  private static String mitres(List<StripSection> sections) {
    boolean mitred = sections.stream().anyMatch(section -> section.from().contains("mitred"));
    return mitred
        ? " At a mitred corner fold the strip there, sew across it along the line that halves the"
            + " corner, and trim what is left."
        : "";
  }

  private static String sewing(Strip strip) {
    BandFinish finish = strip.finish();
    if (finish instanceof FoldedBand band) {
      return folded(band);
    }
    return finish instanceof WrappedBinding binding
        ? wrapped(binding)
        : turnedIn((FacedStrip) finish);
  }

  private static String folded(FoldedBand band) {
    String sewn =
        (band.isReadyEdged()
                ? "Sew its cut edge"
                : "Fold the strip in half along its length, right side out, and sew both its raw"
                    + " edges")
            + " to the right side of the edge, "
            + Wording.fine(band.allowance())
            + " from the cut edge. Turn the "
            + band.noun()
            + (band.noun().equals("band") ? " up" : " out")
            + " and press the seam towards the garment";
    return band.profile().topstitch().isEmpty() ? sewn + "." : sewn + ", and topstitch it there.";
  }

  private static String wrapped(WrappedBinding binding) {
    Length beyond = binding.profile().cut().orElse(Length.ZERO).negated();
    String first =
        binding.isDoubled()
            ? "Fold the strip in half along its length, right side out. Right sides together, let"
                + " its raw edges stand "
            : binding.isOverlockedInside()
                ? "Overlock one long edge of the strip. Right sides together, let the other stand "
                : "Right sides together, let the strip's edge stand ";
    String last =
        binding.isDoubled()
            ? "Wrap the strip over the edge, its fold to the inside,"
            : binding.isOverlockedInside()
                ? "Wrap the strip over the edge, its overlocked edge flat on the inside,"
                : "Wrap the strip over the edge, tuck its other edge under,";
    return first
        + Wording.fine(beyond)
        + " beyond the cut edge of the garment and sew "
        + Wording.fine(binding.showing())
        + " from the strip's edge. "
        + last
        + " and stitch it down from the right side, close to the inner edge.";
  }

  private static String turnedIn(FacedStrip strip) {
    String inner =
        strip.tuck().isZero()
            ? "Overlock one long edge of the strip. "
            : "Press "
                + Wording.fine(strip.tuck())
                + " of one long edge of the strip to its wrong side. ";
    return inner
        + "Right sides together, sew the other to the edge, "
        + Wording.fine(strip.allowance())
        + " from the cut edges. Turn the strip to the inside, so that the seam just rolls in, and"
        + " stitch it down from the right side, "
        + Wording.fine(strip.profile().topstitch().get(0).abs())
        + " from the edge.";
  }

  /** Finishes without a strip. */
  private static Step plain(FinishTask task, Stitch stitch) {
    Finish finish = task.openings().get(0).finish();
    if (finish instanceof TurnedHem hem) {
      return Step.of("Turn up the " + task.name(), hem(hem, stitch));
    }
    if (finish instanceof Casing casing) {
      return Step.of("Make the casing of the " + task.name(), casing(casing));
    }
    return Step.of("Finish the " + task.name(), SeamSteps.capital(finish.describe()) + ".");
  }

  static String hem(TurnedHem hem, Stitch stitch) {
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
        + " from the fold, in "
        + stitch.type().plainName()
        + (stitch.hasRows()
            ? ", its second row " + Wording.fine(stitch.width()) + " nearer the fold"
            : "")
        + ", so that the cut edge is covered.";
  }

  private static String casing(Casing casing) {
    String turning =
        casing.turnIn().isZero()
            ? "Overlock the edge, turn in "
            : "Turn in " + Wording.fine(casing.turnIn()) + ", then ";
    String length =
        casing
            .elasticCutLength()
            .map(cut -> "Cut the elastic " + Wording.amount(cut) + " long")
            .orElse("Cut the elastic to what is comfortable on the body and its overlap");
    return turning
        + Wording.fine(casing.depth())
        + ", and press. Stitch "
        + Wording.fine(casing.depth())
        + " from the fold with a seam that stretches, and leave 4 cm open. "
        + length
        + ", draw it through, lap its ends by "
        + Wording.fine(casing.overlap())
        + " without a twist and sew across them. Close the gap and spread the cloth evenly."
        + " It must leave no marks.";
  }
}
