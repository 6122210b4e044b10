package dev.drafting.knit.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.pattern.SeamFinish;
import dev.drafting.knit.Vest;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StripMarksTest {
  private static final Fabric RIB = Fabric.of("rib", Structure.RIB, 1.0);
  private static final FoldedBand BAND = FoldedBand.of(Length.mm(20), Length.mm(7));

  private static Strip neck(StripRule rule) {
    Opening neck = Assembly.of(Vest.plain().neck(BAND).pattern()).opening("neck");
    return Strip.of(neck, BAND, RIB, rule);
  }

  /** A yoke with a V in front and a square neck behind, straight all along. */
  private static Opening corners() {
    Piece front = yoke("front", new Point(0, 400));
    Piece back = yoke("back", new Point(80, 520), new Point(0, 520));
    return Assembly.of(
            Pattern.of(
                "yoke",
                List.of(front, back),
                List.of(
                    Seam.of(
                        "shoulder",
                        EdgeRef.parse("front shoulder"),
                        EdgeRef.parse("back shoulder")))))
        .opening("neck");
  }

  private static Piece yoke(String name, Point... neck) {
    Point low = neck[neck.length - 1];
    Point shoulder = new Point(80, 600);
    Point[] all = new Point[neck.length + 1];
    all[0] = shoulder;
    System.arraycopy(neck, 0, all, 1, neck.length);
    Point tip = new Point(200, 600);
    Point foot = new Point(0, 100);
    return Piece.of(
            name,
            List.of(
                Edge.of("rim", Curve.polyline(foot, new Point(200, 100), tip)),
                Edge.of("shoulder", Curve.line(tip, shoulder))
                    .withFinish(SeamFinish.of(Length.mm(7))),
                Edge.of("neck", Curve.polyline(all)).withFinish(BAND),
                Edge.onFold(Curve.line(low, foot))))
        .withCutting(Cutting.onFold(1));
  }

  @Test
  void evenMarksAreAsFarApartAsTheirPlacesOnTheEdge() {
    Strip strip = neck(StripRule.recommended());
    for (StripMark mark : strip.marks()) {
      assertEquals(
          mark.onEdge().ratioTo(strip.joinLine()), mark.along().ratioTo(strip.loop()), 1e-6);
    }
    for (StripSection section : strip.sections()) {
      assertEquals(strip.stretchAsked(), section.stretch(), 1e-6);
    }
  }

  /** L - lambda w K for every section: the deeper front curve is stretched more than the back. */
  @Test
  void marksOfTheirOwnStretchTheStripMoreOnCurves() {
    Strip strip = neck(StripRule.recommended().withMarks(MarkSpacing.MORE_ON_CURVES));
    List<StripMark> even = strip.marks(MarkSpacing.EVEN);
    List<StripMark> own = strip.marks();
    assertEquals(
        even.stream().map(StripMark::label).toList(), own.stream().map(StripMark::label).toList());
    assertEquals(
        even.stream().map(StripMark::onEdge).toList(),
        own.stream().map(StripMark::onEdge).toList());
    double most = strip.sections().stream().mapToDouble(StripSection::stretch).max().orElse(0);
    double least = strip.sections().stream().mapToDouble(StripSection::stretch).min().orElse(0);
    assertTrue(most > strip.stretchAsked() && strip.stretchAsked() > least);
    assertSums(strip);
    assertTrue(strip.sections().get(0).toString().matches(".+ to .+: .+ on .+, stretched .+ %"));
  }

  private static void assertSums(Strip strip) {
    double edge = strip.sections().stream().mapToDouble(s -> s.onEdge().toMm()).sum();
    double loop = strip.sections().stream().mapToDouble(s -> s.onStrip().toMm()).sum();
    assertEquals(strip.joinLine().toMm(), edge, 1e-6);
    assertEquals(strip.loop().toMm(), loop, 1e-6);
  }

  /**
   * On straight parts nothing is taken away, at the corners all of it: with lambda = 1 a section
   * between two corners is as long as its finished edge.
   */
  @Test
  void straightPartsKeepTheirLengthAndCornersAreMitred() {
    Opening neck = corners();
    Length finished = neck.length();
    StripRule fold = StripRule.loop(finished).withMarks(MarkSpacing.MORE_ON_CURVES);
    Strip strip = Strip.of(neck, BAND, RIB, fold);
    List<String> labels = strip.marks().stream().map(StripMark::label).toList();
    assertTrue(labels.contains("half: centre front, mitred"), labels.toString());
    double side = Math.hypot(80, 200);
    StripMark shoulder =
        strip.marks().stream()
            .filter(m -> m.label().contains("shoulder"))
            .findFirst()
            .orElseThrow();
    StripMark point =
        strip.marks().stream().filter(m -> m.label().contains("front")).findFirst().orElseThrow();
    assertEquals(side, point.along().minus(shoulder.along()).toMm(), 0.05);
    assertSums(strip);
    assertEquals(List.of(), Strip.of(neck, BAND, RIB, StripRule.recommended()).findings());
  }

  @Test
  void theJoinLiesWhereTheMakerSays() {
    assertEquals("join: centre back", neck(StripRule.recommended()).marks().get(0).label());
    Strip strip = neck(StripRule.recommended().withJoinAt("shoulder"));
    assertEquals("join: shoulder", strip.marks().get(0).label());
    assertEquals("shoulder", strip.rule().joinAt().orElseThrow());
    assertEquals(
        "as recommended, 10 mm at each end for the join at the shoulder, stretched more on curves",
        strip.rule().withMarks(MarkSpacing.MORE_ON_CURVES).toString());
    StripRule nowhere = StripRule.recommended().withJoinAt("elbow");
    DraftingException refused = assertThrows(DraftingException.class, () -> neck(nowhere));
    StripRule atThePoint = StripRule.recommended().withJoinAt("centre front");
    assertEquals(
        "join: centre front, mitred",
        Strip.of(corners(), BAND, RIB, atThePoint).marks().get(0).label());
    assertTrue(refused.toString().contains("centre front"), refused.toString());
    assertThrows(DraftingException.class, () -> StripRule.recommended().withJoinAt(" "));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.70, 0.80, 0.95, 1.05})
  void marksOfTheirOwnComeInOrderWhateverTheLoop(double ratio) {
    Strip strip = neck(StripRule.ratio(ratio).withMarks(MarkSpacing.MORE_ON_CURVES));
    strip.sections().forEach(section -> assertTrue(section.onStrip().isPositive()));
    assertSums(strip);
  }

  @Test
  void aStripThatIsTurnedInIsMarkedOnItsFinishedEdge() {
    FacedStrip turnedIn = FacedStrip.of(Length.mm(12), Length.mm(7));
    Opening neck = Assembly.of(Vest.plain().neck(turnedIn).pattern()).opening("neck");
    Strip strip = Strip.of(neck, turnedIn, RIB, StripRule.recommended());
    assertEquals(neck.length().toMm(), strip.joinLine().toMm(), 1e-9);
    assertSums(strip);
    assertEquals("neck strip", strip.name());
  }
}
