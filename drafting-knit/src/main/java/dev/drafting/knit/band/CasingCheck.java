package dev.drafting.knit.band;

import dev.drafting.core.Stable;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What will go wrong with elastic in a casing. A door for the draft; makers read its findings
 * there.
 *
 * <pre>{@code
 * Pattern skirt = Templates.installed().get("straight-skirt").pattern();
 * CasingCheck.findings(Assembly.of(skirt).openings().get(0), Casing.of(Length.mm(30), Length.mm(10)).withGirth(Length.cm(72)));  // => []
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class CasingCheck {
  /** From here on it is medical compression: pressure garments are drafted a fifth smaller. */
  private static final double COMPRESSION = 0.20;

  private CasingCheck() {}

  /**
   * The findings for one opening.
   *
   * @param opening the edge that is turned in
   * @param casing how
   * @return findings with the opening as their place, empty when nothing is wrong
   */
  public static List<Finding> findings(Opening opening, Casing casing) {
    Place place = Place.opening(opening.name());
    List<Finding> findings = new ArrayList<>();
    if (opening.name().toLowerCase(Locale.ROOT).contains("neck")) {
      findings.add(
          Finding.warning(
              "casing.neck",
              place,
              "Elastic round a neck can harm: never for infants and small children. It must never"
                  + " press or mark."));
    }
    if (casing.shortening() >= COMPRESSION) {
      findings.add(tight(place, casing));
    }
    casing
        .elasticLoop()
        .ifPresentOrElse(
            loop -> addLengths(findings, place, opening.length(), loop),
            () -> findings.add(unknown(place)));
    return List.copyOf(findings);
  }

  private static Finding unknown(Place place) {
    return Finding.note(
            "casing.no-girth", place, "How long the elastic is cut is not known without the girth.")
        .withRemedy(
            Remedy.of(
                "Measure the body where the elastic will sit and give it with the casing, or hold"
                    + " the elastic round the body and cut it to what is comfortable."));
  }

  private static Finding tight(Place place, Casing casing) {
    return Finding.warning(
            "casing.compression",
            place,
            "The elastic is "
                + Wording.percent(casing.shortening())
                + " shorter than the body. From 20 % on that is medical compression, a matter for"
                + " licensed practice; it may leave marks, numb or restrict breathing.")
        .withRemedy(Remedy.of("Shorten it by 15 % at most.").with("casing.shortening", "0.15"));
  }

  private static void addLengths(List<Finding> findings, Place place, Length edge, Length loop) {
    if (loop.compareTo(edge) >= 0) {
      findings.add(
          Finding.warning(
                  "casing.loose",
                  place,
                  "The elastic is "
                      + Wording.amount(loop)
                      + " round and its edge "
                      + Wording.amount(edge)
                      + ": it cannot draw it in.")
              .withRemedy(Remedy.of("Make the edge wider than the body, or the elastic shorter.")));
    } else if (edge.ratioTo(loop) > 2) {
      findings.add(
          Finding.warning(
                  "casing.wide",
                  place,
                  "To let the edge open fully the elastic must more than double, from "
                      + Wording.amount(loop)
                      + " to "
                      + Wording.amount(edge)
                      + ". Few do (common practice).")
              .withRemedy(Remedy.of("Try the elastic first, or make the edge narrower.")));
    }
  }
}
