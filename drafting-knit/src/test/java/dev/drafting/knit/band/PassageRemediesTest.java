package dev.drafting.knit.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.RawEdge;
import dev.drafting.core.pattern.Seam;
import dev.drafting.knit.Vest;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is offered where an opening does not go over what it must: it has to help. */
class PassageRemediesTest {
  private static final Fabric ROOMY = stretching(1.5);
  private static final Fabric RIB = stretching(0.5);
  private static final FoldedBand WIDE = FoldedBand.of(Length.mm(40), Length.mm(7));

  private static Fabric stretching(double share) {
    return Fabric.of("knit", Structure.OTHER, share);
  }

  private static Strip neck(BandFinish finish, StripRule rule) {
    Opening neck = Assembly.of(Vest.plain().neck(finish).pattern()).opening("neck");
    return Strip.of(neck, finish, RIB, rule);
  }

  /** A head for which a loop of rib has to be so long: it gives 80 % of 50 %, 10 mm are spared. */
  private static BodyPassage reaching(Strip strip, Length loop) {
    Length head = loop.times(1.4).minus(Length.cm(1));
    return BodyPassage.of(strip, ROOMY, BodyPart.HEAD, head);
  }

  private static Optional<String> data(BodyPassage check, String key) {
    return remedies(check).stream()
        .map(Remedy::data)
        .filter(data -> data.containsKey(key))
        .map(data -> data.get(key))
        .findFirst();
  }

  private static List<Remedy> remedies(BodyPassage check) {
    return check.findings().stream().map(Finding::remedies).flatMap(List::stream).toList();
  }

  private static Length middle(Strip strip, double showing) {
    return FlatWindow.of(strip.joinLine(), strip.opening().turning(), Length.mm(showing), 0.0075)
        .middle();
  }

  /**
   * At the same seam a band that shows less has a longer fold. The loop of the widest one that is
   * long enough lies in the middle of its window, and one a millimetre wider is too short.
   */
  @Property(tries = 30)
  void aNarrowerBandThatIsOfferedIsTheWidestThatHelps(
      @ForAll @IntRange(min = 7, max = 30) int wanted) {
    Strip strip = neck(WIDE, StripRule.recommended());
    Length loop = strip.joinLine().minus(Length.mm(0.75 * (wanted + 0.5) * radians(strip)));
    BodyPassage check = reaching(strip, loop);
    assertEquals(BodyPassage.Limit.STRIP, check.limit());
    assertEquals(Optional.of(wanted + " mm"), data(check, "band.showing"));
    double slack = 0.01 * strip.joinLine().toMm(); // what the rib stands is in the window, too
    assertTrue(middle(strip, wanted).toMm() > loop.toMm() - slack);
    assertTrue(middle(strip, wanted + 1.0).toMm() < loop.toMm() + slack);
    assertTrue(
        remedies(check).toString().contains("show " + wanted + " mm instead of 40 mm"),
        remedies(check).toString());
  }

  private static double radians(Strip strip) {
    return strip.opening().turning().toRadians();
  }

  /** Less than 6 mm cannot be sewn, and what is too short of its own is not to be narrower. */
  @Test
  void aNarrowerBandIsNotOfferedWhereItIsNoBandOrNoHelp() {
    Strip strip = neck(WIDE, StripRule.recommended());
    Length tooLong = strip.joinLine().minus(Length.mm(0.75 * 5.5 * radians(strip)));
    assertEquals(Optional.empty(), data(reaching(strip, tooLong), "band.showing"));
    Strip shortened = neck(WIDE, StripRule.ratio(0.6));
    BodyPassage check = reaching(shortened, shortened.window().shortest().plus(Length.mm(1)));
    assertFalse(check.passes());
    assertEquals(Optional.empty(), data(check, "band.showing"));
    assertTrue(data(check, "strip.loop").isPresent(), "it is only cut too short");
  }

  /** What hugs is as short as it is meant to be, and a facing lies inside. */
  @Test
  void onlyABandThatIsToLieFlatMayBeNarrower() {
    for (BandFinish other :
        List.of(WIDE.withIntent(Intent.HUGS), FacedStrip.of(Length.mm(40), Length.mm(6)))) {
      Strip strip = neck(other, StripRule.recommended());
      BodyPassage check = reaching(strip, strip.loop().plus(Length.mm(1)));
      assertFalse(check.passes(), other.toString());
      assertEquals(Optional.empty(), data(check, "band.showing"), other.toString());
    }
  }

  /** A straight edge is as long at its seam as at its fold, whatever its band shows. */
  @Test
  void aNarrowerBandDoesNotHelpAtAStraightHem() {
    FoldedBand rib = FoldedBand.waistRib(Length.mm(60), Length.mm(7)).withIntent(Intent.LIES_FLAT);
    Opening hem = Assembly.of(Vest.plain().hem(rib).pattern()).opening("hem");
    Strip strip = Strip.of(hem, rib, RIB, StripRule.recommended());
    BodyPassage check = BodyPassage.of(strip, ROOMY, BodyPart.SHOULDERS, Length.cm(135));
    assertFalse(check.passes());
    assertEquals(Optional.empty(), data(check, "band.showing"));
  }

  /** A loop that would gape is not offered. */
  @Test
  void aLongerLoopThatWouldGapeIsNotOffered() {
    Strip strip = neck(WIDE, StripRule.recommended());
    Length longest = strip.window().longest();
    assertTrue(data(reaching(strip, longest.minus(Length.mm(1))), "strip.loop").isPresent());
    assertTrue(data(reaching(strip, longest.plus(Length.mm(1))), "strip.loop").isEmpty());
  }

  /** Both sides of a placket count: half of what is missing, in whole millimetres. */
  @Property(tries = 30)
  void aPlacketIsMadeJustLongEnough(@ForAll @IntRange(min = 1, max = 60) int missing) {
    Strip strip = neck(WIDE, StripRule.recommended());
    Length placket = Length.mm(100);
    Length head = strip.loop().times(1.4).plus(Length.mm(90 + missing));
    BodyPassage check = BodyPassage.of(strip, ROOMY, BodyPart.HEAD, head).withPlacket(placket);
    assertEquals(-missing, check.margin().toMm(), 1e-6);
    Length by = Length.parse(data(check, "placket.longer-by").orElseThrow());
    assertTrue(check.withPlacket(placket.plus(by.times(2))).passes());
    Length less = placket.plus(by.minus(Length.mm(1)).times(2));
    assertFalse(check.withPlacket(less).passes());
  }

  @Test
  void withoutAPlacketNoneIsMadeLonger() {
    BodyPassage check = reaching(neck(WIDE, StripRule.recommended()), Length.cm(60));
    assertEquals(Optional.empty(), data(check, "placket.longer-by"));
  }

  /** One is, two are: the head and a foot need it, shoulders and hips need it, too. */
  @ParameterizedTest
  @CsvSource({
    "HEAD,the head needs,Leave one shoulder open",
    "SHOULDERS,the shoulders need,Leave a side seam open",
    "HIPS,the hips need,Leave a side seam open",
    "HAND,the hand needs,Leave the seam open",
    "FOOT,the foot needs,Leave the seam open"
  })
  void whatNeedsItIsNamed(BodyPart part, String needs, String last) {
    Opening hem = Assembly.of(Vest.plain().hem(RawEdge.of()).pattern()).opening("hem");
    BodyPassage check = BodyPassage.of(hem, stretching(0.1), part, Length.cm(120));
    String reason = check.findings().get(0).reason();
    assertTrue(reason.contains(" and " + needs + " 121 cm (120 cm and"), reason);
    assertTrue(check.toString().contains(needs.substring(4) + " 121 cm: does not"));
    List<Remedy> all = remedies(check);
    assertTrue(all.get(all.size() - 1).text().startsWith(last), all.toString());
  }

  /** No knit gives more than 150 %: then neither cloth is asked for. */
  @Test
  void aClothThatThereIsNotIsNotAskedFor() {
    Strip strip = neck(WIDE, StripRule.recommended());
    Length most = strip.loop().times(1 + 0.8 * 1.5);
    BodyPassage least = BodyPassage.of(strip, ROOMY, BodyPart.HEAD, most.minus(Length.mm(12)));
    assertEquals(Optional.of("1.5"), data(least, "strip.stretch"));
    assertTrue(
        remedies(least).toString().contains("the band from a rib that stretches 150 % or more"),
        remedies(least).toString());
    BodyPassage more = BodyPassage.of(strip, ROOMY, BodyPart.HEAD, most);
    assertEquals(Optional.empty(), data(more, "strip.stretch"));
  }

  private static Edge edge(String name, double x0, double y0, double x1, double y1) {
    return Edge.of(name, Curve.line(new Point(x0, y0), new Point(x1, y1)));
  }

  /** Half of a top with a neck 18 cm wide, straight from the shoulder to the fold. */
  private static Piece half(String name, double low) {
    return Piece.of(
            name,
            List.of(
                edge("hem", 0, 0, 200, 0),
                edge("side", 200, 0, 200, 640),
                edge("shoulder", 200, 640, 90, 660),
                edge("neck", 90, 660, 0, low),
                Edge.onFold(Curve.line(new Point(0, low), new Point(0, 0)))))
        .withCutting(Cutting.onFold(1));
  }

  private static Opening neck(String front, String back) {
    Pattern top =
        Pattern.of(
            "top",
            List.of(half(front, 530), half(back, 640)),
            List.of(
                Seam.of("shoulder", front + " shoulder", back + " shoulder"),
                Seam.of("side", front + " side", back + " side")));
    return Assembly.of(top).opening("neck");
  }

  /**
   * A V that is 13 cm deep: each half is sqrt(90 x 90 + 130 x 130) = 158.11 mm long. To be 15 mm
   * longer each it has to be sqrt(173.11 x 173.11 - 90 x 90) = 147.88 mm deep, 18 whole ones more;
   * 20 cm more make each 342.0 mm, so that 367.9 mm more are too much.
   */
  @Test
  void theFrontIsLoweredByWholeMillimetres() {
    Opening neck = neck("front", "back");
    assertEquals(Optional.of(Length.mm(18)), NeckLowering.by(neck, Length.mm(30)));
    assertEquals(Optional.of(Length.mm(200)), NeckLowering.by(neck, Length.mm(367.8)));
    assertEquals(Optional.empty(), NeckLowering.by(neck, Length.mm(367.9)));
    assertEquals(Optional.empty(), NeckLowering.by(neck("one", "two"), Length.mm(30)));
  }

  @Test
  void aStripIsCutToTheLoweredNeck() {
    Strip strip = neck(WIDE, StripRule.recommended());
    BodyPassage check = reaching(strip, strip.window().longest().plus(Length.mm(20)));
    assertTrue(
        remedies(check).get(0).text().endsWith(" and cut the band to it."),
        remedies(check).toString());
  }
}
