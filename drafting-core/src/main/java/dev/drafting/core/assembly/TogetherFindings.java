package dev.drafting.core.assembly;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Seam;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Says in the maker's words what truing pieces together moved, and what it left as it was. */
final class TogetherFindings {
  /** A maker sees a move of this much. */
  private static final Length NOTICEABLE = Length.mm(0.5);

  private TogetherFindings() {}

  static void addMoves(String piece, Map<EdgeRef, Length> moved, List<Finding> all) {
    String far =
        moved.entrySet().stream()
            .filter(e -> e.getKey().piece().equals(piece))
            .filter(e -> e.getValue().compareTo(NOTICEABLE) >= 0)
            .map(e -> e.getKey().edge() + " " + mm(e.getValue()))
            .collect(Collectors.joining(", "));
    if (!far.isEmpty()) {
      all.add(
          Finding.note(
              "truing.moved",
              Place.piece(piece),
              "edges were moved, so that seams match and edges run smoothly across them; where"
                  + " they moved farthest: "
                  + far));
    }
  }

  static Finding left(Demand demand, Length limit) {
    Seam seam = demand.seam();
    if (seam != null) {
      return seamLeft(demand, seam, limit);
    }
    boolean crossing = demand.terms().stream().anyMatch(term -> term.what() != Demand.LENGTH);
    return crossing ? crossingLeft(demand, limit) : lengthLeft(demand, limit);
  }

  private static Finding seamLeft(Demand demand, Seam seam, Length limit) {
    String edges =
        Stream.concat(seam.first().stream(), seam.second().stream())
            .map(EdgeRef::toString)
            .collect(Collectors.joining(", "));
    return Finding.warning(
            "truing.seam-left",
            demand.place(),
            "its sides were left as they are, off by "
                + mm(Length.mm(Math.abs(demand.offset())))
                + ": to make them match with all the rest, an edge would move by more than "
                + mm(limit))
        .withRemedy(
            Remedy.of("Measure " + edges + " on the garment and trace the one that is off again.")
                .with("trace.again", edges));
  }

  private static Finding lengthLeft(Demand demand, Length limit) {
    return Finding.warning(
            "truing.length-left",
            demand.place(),
            "its length was not kept: with all the rest, an edge would move by more than "
                + mm(limit))
        .withRemedy(
            Remedy.of("Even the seams less far, or trace the edges sewn to it again.")
                .with("trace.again", demand.place().toString()));
  }

  private static Finding crossingLeft(Demand demand, Length limit) {
    double bend = Math.toDegrees(Math.abs(demand.offset()) / Demand.MM_PER_RADIAN);
    return Finding.warning(
            "truing.crossing-left",
            demand.place(),
            "the edge was left with a bend of "
                + Math.round(bend)
                + "° where it crosses the seam or the fold: to draw it smoothly with all the rest,"
                + " an edge would move by more than "
                + mm(limit))
        .withRemedy(
            Remedy.of("Trace the last few centimetres before it again, with more points.")
                .with("trace.again", demand.place().toString()));
  }

  private static String mm(Length length) {
    return length.text(LengthUnit.MM);
  }
}
