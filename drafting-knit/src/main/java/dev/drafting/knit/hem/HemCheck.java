package dev.drafting.knit.hem;

import dev.drafting.core.Stable;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.assembly.OpeningPart;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether the edge of an opening can be turned up as deep as its hem says.
 *
 * <pre>{@code
 * Pattern top = Templates.installed().get("sleeveless-top").pattern();
 * HemCheck.findings(Assembly.of(top).opening("hem"), TurnedHem.once(Length.mm(20)));  // => []
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class HemCheck {
  /** The excess of a short bend spreads over a hand's breadth as it is eased in. */
  private static final double HAND_MM = 100;

  private static final double STEP_MM = 5;

  private HemCheck() {}

  /**
   * The flare limit of the sharpest outward bend of an opening's edge, taken over a hand's breadth
   * (10 cm), across seams and centre folds.
   *
   * @param opening the opening
   * @return the limit, or empty if the edge nowhere curves outward
   */
  public static Optional<FlareLimit> limit(Opening opening) {
    List<Bend> bends = bends(opening);
    double perMillimetre = sharpest(bends);
    // a radius over 100 m is a straight line
    return perMillimetre < 1e-5
        ? Optional.empty()
        : Optional.of(FlareLimit.ofRadius(Length.mm(1 / perMillimetre)));
  }

  /**
   * What has to be eased in along all outward bends of an opening's edge when it is turned up.
   *
   * @param opening the opening
   * @param depth how deep, from 0
   * @return how much longer the cut edge is than the lines it is turned onto
   */
  public static Length excess(Opening opening, Length depth) {
    double outward = bends(opening).stream().mapToDouble(bend -> Math.max(0, bend.turning())).sum();
    return FlareLimit.excess(depth, Angle.radians(outward));
  }

  /**
   * What will go wrong with a hem.
   *
   * @param opening the opening that is turned up
   * @param hem how
   * @return a finding when the cut edge has more excess than a knit eases in
   */
  public static List<Finding> findings(Opening opening, TurnedHem hem) {
    return limit(opening)
        .filter(limit -> !limit.allows(hem.depth()))
        .map(limit -> List.of(flares(opening, hem, limit)))
        .orElse(List.of());
  }

  private static Finding flares(Opening opening, TurnedHem hem, FlareLimit limit) {
    String depth = Wording.amount(hem.depth());
    double excess = limit.excess(hem.depth());
    String reason =
        "Where the edge curves most, a hem "
            + depth
            + " deep has "
            + (excess < 1 ? Wording.percent(excess) + " more cloth" : "far more cloth")
            + " at its cut edge than room to lie in, and a knit eases in 5 %: it will pleat and"
            + " twist. All round, "
            + Wording.amount(excess(opening, hem.depth()))
            + " are too much.";
    Finding finding = Finding.warning("hem.flares", Place.opening(opening.name()), reason);
    Length deepest = Length.mm(Math.floor(limit.greatestDepth().toMm()));
    if (deepest.compareTo(Length.mm(3)) >= 0) {
      finding =
          finding.withRemedy(
              Remedy.of(
                      "Turn it up "
                          + Wording.amount(deepest)
                          + " at most; "
                          + Wording.amount(excess(opening, deepest))
                          + " remain to be eased in on the curves.")
                  .with("hem.depth", deepest.toString()));
    }
    return finding.withRemedy(
        Remedy.of("Face the edge with a strip cut to its shape, or bind it."));
  }

  /** A little way along the edge and how far it turns outward there, in radians. */
  private record Bend(double length, double turning) {}

  private static List<Bend> bends(Opening opening) {
    List<Bend> bends = new ArrayList<>();
    for (OpeningPart part : opening.parts()) {
      Curve curve = part.curve();
      double length = curve.length().toMm();
      int steps = Math.max(1, (int) Math.ceil(length / STEP_MM));
      Vector before = curve.directionAt(Length.ZERO);
      for (int i = 1; i <= steps; i++) {
        Vector after = curve.directionAt(Length.mm(length * i / steps));
        bends.add(new Bend(length / steps, Math.atan2(before.cross(after), before.dot(after))));
        before = after;
      }
    }
    return bends;
  }

  /** The greatest turning per millimetre over a hand's breadth of the closed loop. */
  private static double sharpest(List<Bend> bends) {
    double whole = bends.stream().mapToDouble(Bend::length).sum();
    double hand = Math.min(HAND_MM, whole);
    double most = 0;
    int end = 0;
    double length = 0;
    double turning = 0;
    for (int start = 0; start < bends.size(); start++) {
      while (length < hand && end < start + bends.size()) {
        Bend next = bends.get(end % bends.size());
        length += next.length();
        turning += next.turning();
        end++;
      }
      most = Math.max(most, turning / length);
      length -= bends.get(start).length();
      turning -= bends.get(start).turning();
    }
    return most;
  }
}
