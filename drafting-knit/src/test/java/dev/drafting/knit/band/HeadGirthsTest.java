package dev.drafting.knit.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.Vest;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeadGirthsTest {
  /** The 3rd and 97th percentiles lie so many standard deviations from the median. */
  private static final double Z = 1.88079;

  /** The method of the CDC's note on its data: M (1 + L S Z)^(1/L), or M exp(S Z) for L = 0. */
  private static double percentile(double l, double m, double s, double z) {
    return l == 0 ? m * Math.exp(s * z) : m * Math.pow(1 + l * s * z, 1 / l);
  }

  /**
   * CV-19 gives the parameters and CV-17 the percentiles, both from the official tables of the WHO
   * Child Growth Standards; they must agree. Check values only: the tables are not shipped.
   */
  @ParameterizedTest
  @CsvSource({
    "46.0637, 0.02789, 43.6, 48.5", // boys, day 365
    "47.1799, 0.02958, 44.6, 49.8", // girls, day 730
    "50.7372, 0.02945, 47.9, 53.5" // boys, day 1826
  })
  void theParametersGiveThePercentiles(double m, double s, double third, double ninetySeventh) {
    assertEquals(third, percentile(1, m, s, -Z), 0.05);
    assertEquals(ninetySeventh, percentile(1, m, s, Z), 0.05);
    assertEquals(m, percentile(1, m, s, 0), 1e-12);
    assertEquals(m * Math.exp(s), percentile(0, m, s, 1), 1e-12);
  }

  /** CDC 2000, public domain: boys 48.66 at 24 months (interpolated), 49.68 at 36; girls less. */
  @Test
  void onlyThePublicDomainTableIsShipped() {
    assertEquals(48.66, HeadGirths.atMonths(24).orElseThrow().toCm(), 1e-9);
    assertEquals(49.17, HeadGirths.atMonths(30).orElseThrow().toCm(), 1e-9);
    assertEquals(49.68, HeadGirths.forYears(2).orElseThrow().toCm(), 1e-9);
    assertEquals(HeadGirths.atMonths(24), HeadGirths.forYears(1));
    assertEquals(Optional.empty(), HeadGirths.forYears(0));
    assertEquals(Optional.empty(), HeadGirths.forYears(3));
    assertEquals(Optional.empty(), HeadGirths.atMonths(37));
  }

  /**
   * CV-17: the WHO medians at the same ages lie within the half of a centimetre or so by which the
   * two references differ (boys 48.2 at 24, 49.5 at 36 months).
   */
  @ParameterizedTest
  @CsvSource({"24, 48.2", "36, 49.5"})
  void isNotSmallerThanTheWorldsMedian(int months, double who) {
    double here = HeadGirths.atMonths(months).orElseThrow().toCm();
    assertTrue(here >= who && here - who < 0.6);
  }

  /**
   * A neck whose loop goes to 54.0 cm, against medians by age: WHO Child Growth Standards (CV-17)
   * and the UK 1990 reference reanalysed in 2009 (CV-18), boys; 1 cm of clearance is common
   * practice.
   */
  @ParameterizedTest
  @CsvSource({
    "43.3, true", // 6 months
    "46.1, true", // 12 months
    "50.7, true", // 60 months
    "52.2, true", // 4 years, UK
    "53.2, false", // 6 years, UK
    "55.1, false", // 12 years, UK
    "57.3, false" // 18 years, UK
  })
  void aNeckGoesOverTheHeadsThatAreSmallEnough(double head, boolean passes) {
    Fabric rib = Fabric.of("rib", Structure.RIB, 0.50);
    FoldedBand band = FoldedBand.of(Length.mm(13), Length.mm(7));
    Strip strip =
        Strip.of(
            Assembly.of(Vest.plain().neck(band).pattern()).opening("neck"),
            band,
            rib,
            StripRule.loop(Length.cm(54.0 / 1.4)));
    BodyPassage neck =
        BodyPassage.of(
            strip, Fabric.of("roomy", Structure.OTHER, 1), BodyPart.HEAD, Length.cm(head));
    assertEquals(54.0, neck.stretchedOpening().toCm(), 1e-9);
    assertEquals(passes, neck.passes());
    assertFalse(neck.toString().isBlank());
  }
}
