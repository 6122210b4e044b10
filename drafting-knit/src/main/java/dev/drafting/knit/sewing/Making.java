package dev.drafting.knit.sewing;

import dev.drafting.core.assembly.Opening;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.RawEdge;
import dev.drafting.core.pattern.Seam;
import dev.drafting.knit.band.BandFinish;
import dev.drafting.knit.band.Strip;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The seams and finishes of a garment in the order in which they can be sewn. */
final class Making {
  private final Pattern pattern;
  private final List<Opening> openings;
  private final Map<String, Strip> strips;
  private final String headOpening;

  private Making(Pattern pattern, List<Opening> openings, List<Strip> strips, String headOpening) {
    this.pattern = pattern;
    this.openings = openings;
    this.strips =
        strips.stream()
            .collect(
                Collectors.toMap(
                    strip -> strip.opening().name(), s -> s, (a, b) -> a, LinkedHashMap::new));
    this.headOpening = headOpening;
  }

  static List<Step> steps(
      Pattern pattern, List<Opening> openings, List<Strip> strips, String headOpening) {
    return new Making(pattern, openings, strips, headOpening).steps();
  }

  private List<Step> steps() {
    List<Seam> first = pattern.seams().stream().filter(this::closesTheHeadOpening).toList();
    List<Seam> rest = pattern.seams().stream().filter(seam -> !first.contains(seam)).toList();
    List<Step> steps = new ArrayList<>();
    first.forEach(seam -> steps.add(sew(seam)));
    steps.add(tryOn(rest));
    steps.addAll(finishes(openings.stream().filter(this::isHeadOpening)));
    rest.forEach(seam -> steps.add(sew(seam)));
    steps.addAll(finishes(others(true)));
    steps.addAll(finishes(others(false)));
    return steps;
  }

  private boolean isHeadOpening(Opening opening) {
    return opening.name().equals(headOpening);
  }

  private Stream<Opening> others(boolean banded) {
    return openings.stream()
        .filter(opening -> !isHeadOpening(opening))
        .filter(opening -> opening.finish() instanceof BandFinish == banded);
  }

  /** A seam that ends at the opening for the head must be sewn before that can be finished. */
  private boolean closesTheHeadOpening(Seam seam) {
    return openings.stream()
        .filter(this::isHeadOpening)
        .flatMap(opening -> opening.parts().stream())
        .anyMatch(part -> edges(seam).anyMatch(edge -> areNeighbours(edge, part.edge())));
  }

  private static Stream<EdgeRef> edges(Seam seam) {
    return Stream.concat(seam.first().stream(), seam.second().stream());
  }

  private boolean areNeighbours(EdgeRef a, EdgeRef b) {
    return a.piece().equals(b.piece())
        && pattern.piece(a.piece()).corners().stream()
            .anyMatch(
                corner ->
                    (corner.before().equals(a.edge()) && corner.after().equals(b.edge()))
                        || (corner.before().equals(b.edge()) && corner.after().equals(a.edge())));
  }

  private Step sew(Seam seam) {
    String title = "Sew the " + seam.name() + (seam.isMirrored() ? " seam" : " seams");
    StringBuilder text = new StringBuilder("Right sides together: ");
    text.append(names(seam.first()));
    if (!seam.isMirrored()) {
      text.append(" to ").append(names(seam.second()));
    }
    Finish finish = pattern.edge(seam.first().get(0)).finish();
    text.append(". ").append(capital(finish.describe())).append(".");
    if (seam.ease().isPositive()) {
      text.append(" Ease the longer edge in evenly.");
    }
    if (seam.name().contains("shoulder")) {
      text.append(" Sew a tape or clear elastic of the pattern's length into it, so that it does")
          .append(" not stretch.");
    }
    return Step.of(title, text.toString());
  }

  private static String names(List<EdgeRef> edges) {
    return edges.stream().map(EdgeRef::toString).collect(Collectors.joining(" and "));
  }

  private static Step tryOn(List<Seam> open) {
    String baste =
        open.isEmpty()
            ? ""
            : "Baste the "
                + open.stream().map(Seam::name).collect(Collectors.joining(" and "))
                + (open.size() == 1 && open.get(0).isMirrored() ? " seam" : " seams")
                + " with long stitches. ";
    return Step.of(
        "Try it on",
        baste
            + "Try the garment on before any band or hem is sewn. If an edge has to change, change"
            + " the pattern and draft again: the strips change with it. Do not pull a band tighter"
            + " to hide a wide neck.");
  }

  /** One step for openings that are named alike, such as the two armholes. */
  private List<Step> finishes(Stream<Opening> finished) {
    Map<String, List<Opening>> alike =
        finished
            .filter(opening -> !(opening.finish() instanceof RawEdge))
            .collect(
                Collectors.groupingBy(
                    opening -> opening.name().replaceAll(" \\((left|right)\\)$", ""),
                    LinkedHashMap::new,
                    Collectors.toList()));
    List<Step> steps = new ArrayList<>();
    alike.forEach((name, group) -> steps.add(finish(name, group)));
    return steps;
  }

  private Step finish(String name, List<Opening> alike) {
    List<Strip> theirs =
        alike.stream()
            .filter(opening -> strips.containsKey(opening.name()))
            .map(opening -> strips.get(opening.name()))
            .toList();
    return theirs.isEmpty()
        ? FinishSteps.plain(name, alike.get(0).finish())
        : FinishSteps.strip(name, theirs);
  }

  static String capital(String sentence) {
    return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
  }
}
