package dev.drafting.knit.sewing;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Seam;
import dev.drafting.knit.wording.Wording;
import java.util.List;
import java.util.stream.Collectors;

/** How seams are sewn, in words. */
final class SeamSteps {
  private SeamSteps() {}

  static Step sew(SeamTask task, SewingPlan plan) {
    if (task.isLapped()) {
      return lap(task);
    }
    boolean one = task.isOneSide() || (task.isCentre() && task.seams().size() == 1);
    String noun = one ? "seam" : "seams";
    String title = "Sew the " + task.title() + " " + noun;
    String text =
        task.seams().stream().map(seam -> sew(seam, plan)).collect(Collectors.joining(" "));
    if (task.isOneSide()) {
      title += ", " + task.side();
    }
    if (task.seams().size() > 1) {
      text += " Sew both in one pass.";
    }
    return Step.of(title, text).making(task.names()).showing(task.edges());
  }

  private static Step lap(SeamTask task) {
    Seam seam = task.seams().get(0);
    String text =
        "Both right side up, lay "
            + names(seam.first())
            + " over "
            + names(seam.second())
            + ", the ends of each at the ends of the other, and baste them together within the"
            + " allowance. The seam that follows catches all layers.";
    return Step.of("Baste the " + task.title(), text).making(task.names()).showing(task.edges());
  }

  private static String sew(Seam seam, SewingPlan plan) {
    StringBuilder text = new StringBuilder("Right sides together: ");
    text.append(names(seam.first()));
    text.append(seam.isMirrored() ? " right to left" : " to " + names(seam.second()));
    SewnLine line = plan.line(seam.name());
    Finish finish = plan.sewn().pattern().edge(seam.first().get(0)).finish();
    text.append(". ").append(capital(finish.describe()));
    text.append(", sewn in ").append(line.stitch().type().plainName()).append(".");
    if (!seam.ease().isZero()) {
      text.append(drawnIn(seam, plan.sewn().pattern()));
    }
    if (line.isStabilised()) {
      text.append(" Sew a tape or clear elastic of ")
          .append(Wording.amount(line.length()))
          .append(", the pattern's length, into it, so that it does not stretch.");
    }
    return text.append(pressing(seam)).toString();
  }

  private static String drawnIn(Seam seam, Pattern pattern) {
    boolean first = seam.ease().isPositive();
    List<EdgeRef> longer = first ? seam.first() : seam.second();
    List<EdgeRef> shorter = first ? seam.second() : seam.first();
    if (seam.fullness().pleatCount() > 0) {
      return pleats(seam, longer);
    }
    return seam.fullness().isGathered()
        ? gathers(longer, length(longer, pattern), length(shorter, pattern))
        : " Ease in "
            + Wording.fine(seam.ease().abs())
            + " evenly on the side of "
            + names(longer)
            + ".";
  }

  private static String pleats(Seam seam, List<EdgeRef> longer) {
    return " Before, lay "
        + seam.fullness()
        + " in "
        + names(longer)
        + ", "
        + Wording.fine(seam.fullness().depth(seam.ease()))
        + " deep: bring the two notches of each together, match them with the notch of the other"
        + " side and baste.";
  }

  private static String gathers(List<EdgeRef> longer, Length from, Length to) {
    return " Before, gather "
        + names(longer)
        + " from "
        + Wording.amount(from)
        + " to "
        + Wording.amount(to)
        + ", "
        + Wording.percent(to.ratioTo(from))
        + " of its length: sew two rows of long stitches within the allowance, draw them up, match"
        + " the quarters and share the gathers out evenly.";
  }

  private static Length length(List<EdgeRef> edges, Pattern pattern) {
    return edges.stream()
        .map(edge -> pattern.edge(edge).length())
        .reduce(Length.ZERO, Length::plus);
  }

  /** Towards the piece that the maker names second, which is the back or the sleeve. */
  private static String pressing(Seam seam) {
    String from = seam.first().get(0).piece();
    String to = seam.second().get(0).piece();
    return from.equals(to)
        ? " Press the allowances to one side."
        : " Press the allowances towards the " + to + ".";
  }

  private static String names(List<EdgeRef> edges) {
    return edges.stream().map(EdgeRef::toString).collect(Collectors.joining(" and "));
  }

  /** Shows the seams that are basted for it, or all if none is open any more. */
  static Step tryOn(List<SeamTask> open, List<SeamTask> all) {
    String baste =
        open.isEmpty()
            ? ""
            : "Baste the "
                + open.stream().map(SeamTask::title).distinct().collect(Collectors.joining(" and "))
                + (open.size() == 1 && open.get(0).isCentre() ? " seam" : " seams")
                + " with long stitches. ";
    List<EdgeRef> shown =
        (open.isEmpty() ? all : open)
            .stream().flatMap(task -> task.edges().stream()).distinct().toList();
    return Step.of(
            "Try it on",
            baste
                + "Try the garment on before any band or hem is sewn. If an edge has to change,"
                + " change the pattern and draft again: the strips change with it. Do not pull a"
                + " band tighter to hide a wide neck.")
        .showing(shown);
  }

  static String capital(String sentence) {
    return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
  }
}
