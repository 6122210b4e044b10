package dev.drafting.core.trace;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.util.ArrayList;
import java.util.List;

/** Says in the maker's words what truing had to decide. */
final class TruingFindings {
  /** Traced edges that differ by less than this are the same edge. */
  private static final Length NOTICEABLE = Length.mm(3);

  /** In degrees: more than a wandering pencil and a shallow curve make. */
  private static final double CLEARLY_OFF_SQUARE = 25;

  private final Outline outline;
  private final Length roughness;

  TruingFindings(Outline outline, Length roughness) {
    this.outline = outline;
    this.roughness = roughness;
  }

  List<Finding> all() {
    List<Finding> findings = new ArrayList<>();
    for (FittedEdge edge : outline.edges()) {
      for (TracedSide side : edge.sides()) {
        order(edge, side, findings);
        slips(edge, side, findings);
        roughness(edge, side, findings);
      }
    }
    for (FittedEdge edge : outline.edges()) {
      squareness(edge, findings);
      lopsidedness(edge, findings);
    }
    return findings;
  }

  private Place place(FittedEdge edge) {
    return Place.edge(outline.piece(), edge.name());
  }

  private static String mm(Length length) {
    return length.text(LengthUnit.MM);
  }

  private void order(FittedEdge edge, TracedSide side, List<Finding> findings) {
    if (side.stroke().reordered) {
      findings.add(
          Finding.note(
              "trace.order",
              place(edge),
              "the points of the "
                  + side.side()
                  + edge.name()
                  + " are not in order, or the edge was drawn more than once; they were taken from"
                  + " one to the nearest"));
    }
  }

  /** One finding for each run of refused points. */
  private void slips(FittedEdge edge, TracedSide side, List<Finding> findings) {
    boolean[] kept = side.fit().kept;
    int i = 0;
    while (i < kept.length) {
      int from = i;
      while (i < kept.length && !kept[i]) {
        i++;
      }
      if (i > from) {
        findings.add(slip(edge, side, from, i));
      }
      i++;
    }
  }

  private Finding slip(FittedEdge edge, TracedSide side, int from, int to) {
    double farthest = 0;
    int worst = from;
    for (int i = from; i < to; i++) {
      double off = Math.abs(side.fit().fitted.distance(i));
      if (off > farthest) {
        farthest = off;
        worst = i;
      }
    }
    Point at = side.stroke().point(worst);
    String name = side.side() + edge.name();
    String where =
        "x " + mm(Length.mm(at.x())) + ", y " + mm(Length.mm(at.y())) + " of the tracing";
    String off = mm(Length.mm(farthest));
    String reason =
        to - from == 1
            ? "1 point of the " + name + " stands " + off + " off, at " + where
            : (to - from)
                + " points of the "
                + name
                + " stand up to "
                + off
                + " off, near "
                + where;
    return Finding.warning(
            "trace.slip", place(edge), reason + "; taken for a slip of the pencil and left out")
        .withRemedy(
            Remedy.of(
                    "Look at the garment there. If the edge really bends, trace the "
                        + name
                        + " again with more points.")
                .with("trace.again", name)
                .with("trace.points", String.valueOf(to - from)));
  }

  private void roughness(FittedEdge edge, TracedSide side, List<Finding> findings) {
    EdgeFit fit = side.fit();
    Length rms = Length.mm(fit.rms());
    if (rms.compareTo(roughness) > 0) {
      String name = side.side() + edge.name();
      findings.add(
          Finding.warning(
                  "trace.rough",
                  place(edge),
                  "the pencil wandered "
                      + mm(rms)
                      + " along the "
                      + name
                      + ", more than "
                      + mm(roughness))
              .withRemedy(Remedy.of("Trace the " + name + " again.").with("trace.again", name)));
    }
  }

  private void squareness(FittedEdge edge, List<Finding> findings) {
    if (edge.atFold() > CLEARLY_OFF_SQUARE) {
      String off = Math.round(edge.atFold()) + "°";
      findings.add(
          Finding.note(
                  "trace.not-square",
                  place(edge),
                  "the points of the "
                      + edge.name()
                      + " come to the fold "
                      + off
                      + " off square; it is drawn square, so that it does not peak when unfolded")
              .withRemedy(
                  Remedy.of("If the " + edge.name() + " is meant to come to a point, say so.")
                      .with("trace.pointed", edge.name())));
    }
  }

  private void lopsidedness(FittedEdge edge, List<Finding> findings) {
    Lopsidedness sides = edge.lopsidedness();
    if (sides == null) {
      return;
    }
    Length noticeable = NOTICEABLE.max(Length.mm(3 * edge.fit().noise.mm));
    if (sides.largest().compareTo(noticeable) > 0) {
      String differ = mm(sides.largest());
      findings.add(
          Finding.warning(
                  "trace.lopsided",
                  place(edge),
                  "the two sides differ by up to "
                      + differ
                      + " at the "
                      + edge.name()
                      + ": the average is used")
              .withRemedy(
                  Remedy.of(
                          "Smooth the garment flat and trace the "
                              + edge.name()
                              + " again on both sides, or trace only the better half on the fold.")
                      .with("trace.again", edge.name())
                      .with("trace.differ", differ)));
    }
  }
}
