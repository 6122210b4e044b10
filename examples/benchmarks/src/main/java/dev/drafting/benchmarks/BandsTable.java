package dev.drafting.benchmarks;

import dev.drafting.benchmarks.RatioRule.Place;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.band.BandFit;
import dev.drafting.knit.band.FlatWindow;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.band.Outcome;
import dev.drafting.knit.band.StripRule;
import dev.drafting.knit.band.TapedEdge;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The ratio rules of practice beside the loops of this library. Where they differ, the two rows
 * below say why: at another width or another opening the rule would lie flat.
 */
final class BandsTable implements Table {
  private static final String PRACTICE = "common practice, no source";
  private static final Fabric RIB = Fabric.of("rib", Structure.RIB, 0.8);
  private static final FoldedBand RECORDED = FoldedBand.of(Length.mm(13), Length.mm(7));

  private static final List<RatioRule> RULES =
      List.of(
          new RatioRule(
              "a home-sewing trade association", "ribbing", 0.9, Place.SMALL_NECK, 0.667, 0.75),
          new RatioRule("a trade page", "25 % jersey", 0.25, Place.LONG_NECK, 0.90, 0.95),
          new RatioRule(
              "a trade page, 2 in less", "50 % knit", 0.5, Place.LONG_ARMHOLE, 0.925, 0.925),
          new RatioRule(
              "a trade page, 1 in less", "25 % knit", 0.25, Place.LONG_ARMHOLE, 0.962, 0.962),
          practice("stable double knit", 0.15, Place.ROUND_NECK, 0.92, 0.98),
          practice("stable double knit", 0.15, Place.ARMHOLE, 0.95, 0.95),
          practice("stable double knit", 0.18, Place.CUFF, 0.90, 0.95),
          practice("cotton jersey", 0.30, Place.ROUND_NECK, 0.88, 0.92),
          practice("cotton jersey", 0.30, Place.WIDE_NECK, 0.86, 0.90),
          practice("cotton jersey", 0.30, Place.ARMHOLE, 0.90, 0.94),
          practice("cotton jersey", 0.30, Place.CUFF, 0.85, 0.90),
          practice("jersey with elastane", 0.60, Place.ROUND_NECK, 0.83, 0.88),
          practice("jersey with elastane", 0.60, Place.WIDE_NECK, 0.80, 0.86),
          practice("jersey with elastane", 0.60, Place.ARMHOLE, 0.86, 0.92),
          practice("jersey with elastane", 0.60, Place.CUFF, 0.80, 0.85),
          practice("interlock", 0.40, Place.ROUND_NECK, 0.86, 0.90),
          practice("interlock", 0.40, Place.WIDE_NECK, 0.84, 0.88),
          practice("interlock", 0.40, Place.ARMHOLE, 0.88, 0.92),
          practice("interlock", 0.40, Place.CUFF, 0.80, 0.88),
          practice("1x1 rib", 0.90, Place.ROUND_NECK, 0.75, 0.82),
          practice("1x1 rib", 0.90, Place.WIDE_NECK, 0.72, 0.80),
          practice("1x1 rib", 0.90, Place.ARMHOLE, 0.80, 0.88),
          practice("1x1 rib", 0.90, Place.CUFF, 0.67, 0.78),
          practice("2x2 rib", 1.20, Place.ROUND_NECK, 0.67, 0.76),
          practice("2x2 rib", 1.20, Place.ARMHOLE, 0.75, 0.85),
          practice("2x2 rib", 1.20, Place.CUFF, 0.60, 0.72));

  private static RatioRule practice(
      String cloth, double stretch, Place place, double least, double most) {
    return new RatioRule(PRACTICE, cloth, stretch, place, least, most);
  }

  @Override
  public String name() {
    return "bands";
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    RULES.forEach(rule -> rows.addAll(rule.rows(name())));
    for (double seam : new double[] {40, 50, 60, 70}) {
      for (double showing : new double[] {10, 20, 30}) {
        rows.addAll(window(seam, showing));
      }
    }
    for (double slope : new double[] {20, 25}) {
      rows.add(recorded("neck", 64, TapedEdge.turningOfNeck(Angle.degrees(slope)), slope, 5));
      rows.add(recorded("neck", 64, TapedEdge.turningOfNeck(Angle.degrees(slope)), slope, 7));
      rows.add(recorded("armhole", 42, TapedEdge.turningOfArmhole(Angle.degrees(slope)), slope, 5));
      rows.add(recorded("armhole", 42, TapedEdge.turningOfArmhole(Angle.degrees(slope)), slope, 7));
    }
    return rows;
  }

  /** The window beside the two thirds to nine tenths that the rules range over. */
  private List<Row> window(double seam, double showing) {
    FlatWindow window =
        FlatWindow.of(
            Length.cm(seam),
            TapedEdge.turningOfNeck(Angle.degrees(20)),
            Length.mm(showing),
            RIB.tension());
    String neck =
        String.format(
            Locale.ROOT, "neck of %.0f cm, shoulders of 20 degrees, band %.0f mm", seam, showing);
    return List.of(
        share(neck + ", shortest that lies flat", window.shortest().toCm() / seam),
        share(neck + ", longest that lies flat", window.longest().toCm() / seam));
  }

  private Row share(String subject, double share) {
    String rules = share < 2.0 / 3 ? "under" : share > 0.9 ? "over" : "within";
    return new Row(
        name(),
        subject,
        String.format(Locale.ROOT, "%.3f", share),
        "of the seam",
        rules + " two thirds to nine tenths",
        "-");
  }

  /** One recorded garment that the library is calibrated by: common practice, no source. */
  private Row recorded(String edge, double seam, Angle turning, double slope, double shorter) {
    BandFit fit =
        BandFit.of(
            TapedEdge.alongSeam(edge, Length.cm(seam), turning),
            RECORDED,
            RIB,
            StripRule.shorterBy(Length.cm(shorter)));
    Outcome expected = shorter < 6 ? Outcome.LIES_FLAT : Outcome.PUCKERS;
    String subject =
        String.format(
            Locale.ROOT,
            "calibration, %s of %.0f cm, slope %.0f, band 13 mm, loop %.0f cm shorter: margin",
            edge,
            seam,
            slope,
            shorter);
    return new Row(
        name(),
        subject,
        String.format(Locale.ROOT, "%.1f", fit.margin().toMm()),
        "mm",
        expected.plainName(),
        fit.outcome() == expected ? "yes" : "no");
  }
}
