package dev.drafting.core.assembly;

import dev.drafting.core.assembly.LoopStep.PieceCorner;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.geometry.Crossing;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** Says what of a pattern will sew badly, and what to do about it. */
final class AssemblyFindings {
  private final Pattern pattern;
  private final List<SeamCheck> seamChecks;
  private final List<Finding> findings = new ArrayList<>();
  private final Set<Set<PieceCorner>> crossed = new HashSet<>();

  AssemblyFindings(Pattern pattern, List<SeamCheck> seamChecks) {
    this.pattern = pattern;
    this.seamChecks = seamChecks;
  }

  List<Finding> of(Surface surface, OpeningReader reader) {
    pattern.pieces().forEach(this::checkCrossing);
    surface.twisted().forEach(this::addTwist);
    seamChecks.stream().filter(c -> !c.matches(pattern.seamTolerance())).forEach(this::addLengths);
    List<List<LoopStep>> loops = reader.loops();
    for (int i = 0; i < loops.size(); i++) {
      for (LoopStep step : loops.get(i)) {
        checkSmooth(step, reader.name(i));
      }
    }
    return List.copyOf(findings);
  }

  private void checkCrossing(Piece piece) {
    List<Crossing> crossings = piece.outline().selfCrossings();
    if (crossings.isEmpty()) {
      return;
    }
    Crossing first = crossings.get(0);
    String one = edgeAt(piece, first.along());
    String other = edgeAt(piece, first.alongOther());
    String where = one.equals(other) ? one + " crosses itself" : one + " crosses " + other;
    findings.add(
        Finding.problem(
                "outline.crosses-itself",
                Place.piece(piece.name()),
                where
                    + String.format(
                        Locale.ROOT,
                        " at x %.1f cm, y %.1f cm",
                        first.point().x() / 10,
                        first.point().y() / 10)
                    + (crossings.size() == 1 ? "" : ", and there are more such places")
                    + ": no cloth can be cut like this")
            .withRemedy(
                Remedy.of("Redraw " + both(one, other) + " so that the outline does not cross.")
                    .with("edges", both(one, other))));
  }

  private static String both(String one, String other) {
    return one.equals(other) ? one : one + " and " + other;
  }

  private static String edgeAt(Piece piece, Length along) {
    Length end = Length.ZERO;
    for (Edge edge : piece.edges()) {
      end = end.plus(edge.length());
      if (along.compareTo(end) < 0) {
        return edge.name();
      }
    }
    return piece.edges().get(piece.edges().size() - 1).name();
  }

  private void addTwist(String seam) {
    findings.add(
        Finding.problem(
                "seam.twists",
                Place.seam(seam),
                "sewn like this the right side of one edge meets the wrong side of the other, and the"
                    + " garment has a twist in it")
            .withRemedy(
                Remedy.of("Turn one side of the seam round, so that it is sewn from its other end.")
                    .with("seam", seam)));
  }

  private void addLengths(SeamCheck check) {
    boolean firstLonger = check.difference().isPositive();
    String longer = edges(firstLonger ? check.seam().first() : check.seam().second());
    String shorter = edges(firstLonger ? check.seam().second() : check.seam().first());
    String amount = text(check.difference().abs());
    Length ease = check.first().minus(check.second());
    findings.add(
        Finding.warning(
                "seam.lengths-differ",
                Place.seam(check.seam().name()),
                longer
                    + " is "
                    + amount
                    + " longer than "
                    + shorter
                    + " ("
                    + text(check.first())
                    + " to "
                    + text(check.second())
                    + (check.seam().ease().isZero()
                        ? ""
                        : ", with " + text(check.seam().ease()) + " of ease meant")
                    + "); up to "
                    + text(pattern.seamTolerance())
                    + " would do")
            .withRemedy(
                Remedy.of(
                        "Draw "
                            + longer
                            + " "
                            + amount
                            + " shorter or "
                            + shorter
                            + " "
                            + amount
                            + " longer.")
                    .with("longer", longer)
                    .with("shorter", shorter)
                    .with("by", amount))
            .withRemedy(
                Remedy.of(
                        "If it is meant to be eased in, say so with an ease of " + text(ease) + ".")
                    .with("seam.ease", text(ease))));
  }

  private static String edges(List<EdgeRef> edges) {
    return edges.stream().map(EdgeRef::toString).collect(Collectors.joining(" + "));
  }

  private static String text(Length length) {
    return length.text(LengthUnit.MM);
  }

  private void checkSmooth(LoopStep step, String opening) {
    boolean pointed = step.corners.stream().anyMatch(c -> c.corner().isPointed());
    double off = step.angle - Math.PI;
    boolean smooth = Math.abs(off) <= pattern.crossingTolerance().toRadians();
    if (!step.crosses() || pointed || smooth || !crossed.add(new HashSet<>(step.corners))) {
      return;
    }
    if (step.seams.isEmpty()) {
      addFold(step);
    } else {
      addCrossing(step, opening);
    }
  }

  private void addFold(LoopStep step) {
    PieceCorner at = step.corners.get(0);
    Angle corner = at.corner().interiorAngle();
    String edge =
        pattern.piece(at.piece()).edge(at.corner().after()).isOnFold()
            ? at.corner().before()
            : at.corner().after();
    findings.add(
        Finding.warning(
                "fold.not-square",
                Place.corner(at.piece(), at.corner().before(), at.corner().after()),
                edge
                    + " meets the fold at "
                    + degrees(corner)
                    + " instead of 90°: unfolded it makes "
                    + (step.angle > Math.PI ? "a dent" : "a point")
                    + " at "
                    + OpeningReader.label(step))
            .withRemedy(
                Remedy.of("Draw the last 1 to 2 cm of " + edge + " square to the fold.")
                    .with("edge", at.piece() + " / " + edge)
                    .with("angle", "90°"))
            .withRemedy(
                Remedy.of("If it is meant to be a point, declare the corner pointed.")
                    .with("corner.pointed", at.corner().before() + " to " + at.corner().after())));
  }

  private void addCrossing(LoopStep step, String opening) {
    Angle off = Angle.radians(Math.abs(step.angle - Math.PI));
    String parts =
        step.corners.stream()
            .map(c -> c.piece() + " " + degrees(c.corner().interiorAngle()))
            .collect(Collectors.joining(", "));
    findings.add(
        Finding.warning(
                "crossing.not-smooth",
                Place.opening(opening),
                "at the "
                    + OpeningReader.label(step)
                    + " seam the edge makes "
                    + (step.angle > Math.PI ? "a dent" : "a point")
                    + ": the corners ("
                    + parts
                    + ") add up to "
                    + degrees(Angle.radians(step.angle))
                    + " instead of 180°")
            .withRemedy(
                Remedy.of(
                        "Lay the pieces together along the "
                            + OpeningReader.label(step)
                            + " seam and draw the edge smoothly across it; together the corners "
                            + (step.angle > Math.PI ? "lose " : "gain ")
                            + degrees(off)
                            + ".")
                    .with("angle", "180°"))
            .withRemedy(
                Remedy.of("If it is meant to be a point, declare the corner pointed.")
                    .with(
                        "corner.pointed",
                        step.corners.get(0).corner().before()
                            + " to "
                            + step.corners.get(0).corner().after())));
  }

  private static String degrees(Angle angle) {
    return Math.round(angle.toDegrees()) + "°";
  }
}
