package dev.drafting.benchmarks;

import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.band.BandFit;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.band.Intent;
import dev.drafting.knit.band.LoopRange;
import dev.drafting.knit.band.Outcome;
import dev.drafting.knit.band.StripRule;
import dev.drafting.knit.band.TapedEdge;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A rule of practice: loops from one share of their seam to another, for some cloth at some edge.
 *
 * @param source who says so
 * @param cloth what the strip is cut from
 * @param stretch how far that gives
 * @param place the edge
 * @param least the shortest loop, as a share of its seam
 * @param most the longest
 */
record RatioRule(
    String source, String cloth, double stretch, Place place, double least, double most) {
  private static final String SHARE = "of the seam";

  /** An edge of common size: its seam, how far it turns, how wide its band shows. */
  enum Place {
    ROUND_NECK("round neck", 55, 280, 20),
    SMALL_NECK("neck of 16 in", 40.64, 280, 25),
    LONG_NECK("neck of 66 cm", 66, 280, 20),
    WIDE_NECK("wide neck", 70, 280, 20),
    ARMHOLE("armhole", 42, 220, 13),
    LONG_ARMHOLE("armhole of 26.5 in", 67.31, 220, 10),
    CUFF("cuff", 24, 0, 60);

    private final String plainName;
    private final double seam;
    private final double turning;
    private final double showing;

    Place(String plainName, double seamCm, double turning, double showingMm) {
      this.plainName = plainName;
      this.seam = seamCm;
      this.turning = turning;
      this.showing = showingMm;
    }

    boolean isStraight() {
      return turning == 0;
    }

    String sized() {
      return String.format(Locale.ROOT, "%s, seam %.1f cm, band %.0f mm", plainName, seam, showing);
    }
  }

  private BandFit fit(Intent intent, StripRule rule) {
    TapedEdge edge =
        TapedEdge.alongSeam(place.plainName, Length.cm(place.seam), Angle.degrees(place.turning));
    FoldedBand band = FoldedBand.of(Length.mm(place.showing), Length.mm(7)).withIntent(intent);
    return BandFit.of(edge, band, Fabric.of(cloth, Structure.OTHER, stretch), rule);
  }

  private double middle() {
    return (least + most) / 2;
  }

  /** The middle of the rule against the library's loops; where it is not among them, why. */
  List<Row> rows(String table) {
    Intent intent = place.isStraight() ? Intent.DRAWS_IN : Intent.LIES_FLAT;
    BandFit fit = fit(intent, StripRule.recommended());
    LoopRange wanted = fit.wanted();
    double shortest = wanted.shortest().ratioTo(fit.joinLine());
    double longest = wanted.longest().ratioTo(fit.joinLine());
    boolean within = middle() >= shortest && middle() <= longest;
    String subject =
        String.format(
            Locale.ROOT, "%s, %s: %.3g to %.3g (%s)", place.sized(), cloth, least, most, source);
    String bound =
        String.format(
            Locale.ROOT,
            "%s %.3f to %.3f; the rule %s",
            intent.plainName(),
            shortest,
            longest,
            within ? "agrees" : differs(longest));
    List<Row> rows = new ArrayList<>();
    rows.add(new Row(table, subject, share(middle()), SHARE, bound, "-"));
    if (!within && !place.isStraight()) {
      rows.addAll(why(table));
    }
    return rows;
  }

  /** Where the library would call the rule's middle too long or too short, and what it does. */
  private String differs(double longest) {
    Outcome does = fit(Intent.HUGS, StripRule.ratio(middle())).outcome();
    return (middle() > longest ? "is longer: it " : "is shorter: it ") + does.plainName();
  }

  private static String share(double ratio) {
    return String.format(Locale.ROOT, "%.3f", ratio);
  }

  /** With what band, or at what opening, the rule's middle would be the window's middle. */
  private List<Row> why(String table) {
    double bend = 0.75 * Math.toRadians(place.turning);
    String rule = "  " + cloth + ", " + place.plainName + ": " + share(middle()) + " lies flat ";
    return List.of(
        Row.plain(
            table,
            rule + "on this opening with a band of",
            (1 - middle()) * place.seam * 10 / bend,
            "mm"),
        Row.plain(
            table,
            rule + "with this band on an opening of",
            place.showing * bend / (1 - middle()) / 10,
            "cm"));
  }
}
