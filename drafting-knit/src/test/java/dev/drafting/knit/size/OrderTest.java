package dev.drafting.knit.size;

import static dev.drafting.knit.Values.differ;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.template.Dimensions;
import dev.drafting.core.template.SizeRun;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A template of three dimensions made to measure, reckoned by hand. */
class OrderTest {
  private static final Fabric JERSEY =
      Fabric.of("jersey", Structure.JERSEY, 0.5).withRecovery(0.96);
  private static final Body HEAD = Body.of().with(BodyMeasure.HEAD_GIRTH, Length.cm(50));
  private static final Body MEASURED = HEAD.with(BodyMeasure.CERVICAL_TO_WAIST, Length.cm(40));

  private static MadeToMeasure snood(Body body) {
    return MadeToMeasure.of(new Snood(), body, JERSEY);
  }

  /** 50 less a tenth; half of 40 and 4 more; a twentieth of 40. */
  @Test
  void dimensionsFollowTheBody() {
    MadeToMeasure order = snood(MEASURED);
    assertEquals("height 24 cm, round 45 cm, turn 2 cm", order.dimensions().toString());
    assertEquals(List.of(), order.findings());
    Pattern pattern = order.pattern();
    assertEquals(225, pattern.piece("tube").edge("hem").length().toMm(), 1e-9);
    assertEquals(260, pattern.piece("tube").edge("back").length().toMm(), 1e-9);
    assertEquals(MEASURED, order.body());
    assertEquals("snood", order.template().id());
  }

  /** Without the head the neck is asked, the second best. */
  @Test
  void theFirstKnownMeasureCounts() {
    Body neck = Body.of().with(BodyMeasure.NECK_BASE_GIRTH, Length.cm(40));
    assertEquals(36, snood(neck).dimensions().length("round").toCm(), 1e-9);
    Body both = neck.with(BodyMeasure.HEAD_GIRTH, Length.cm(50));
    assertEquals(45, snood(both).dimensions().length("round").toCm(), 1e-9);
    DraftingException e =
        assertThrows(DraftingException.class, () -> snood(Body.of()).dimensions());
    assertEquals("snood: round", e.where());
    assertEquals(
        "head girth (the largest girth, horizontally above the ears), or neck-base girth (through"
            + " the back neck point, both side neck points and the front neck point)",
        e.accepted());
  }

  @Test
  void whatNobodyMeasuredIsAsUsualAndSaidOnce() {
    MadeToMeasure order = snood(HEAD);
    assertEquals("round 45 cm", order.dimensions().toString());
    assertEquals(270, order.pattern().piece("tube").edge("back").length().toMm(), 1e-9);
    Finding note = order.findings().get(0);
    assertEquals(1, order.findings().size());
    assertEquals(
        "Nobody has measured what these follow, and they are taken as usual: height, turn.",
        note.reason());
    assertEquals(
        List.of("Measure the body, or the garment: cervical to waist."),
        note.remedies().stream().map(Remedy::text).toList());
    String nobody = snood(Body.of()).findings().get(0).reason();
    assertEquals(note.reason(), nobody, "a girth is asked for, and never taken as usual");
    MadeToMeasure given = order.with(Dimensions.of().with("height", Length.cm(30)));
    assertEquals("height 30 cm, round 45 cm", given.dimensions().toString());
  }

  /** 50 cm of head in 30 cm of cloth that gives half as much again: 67 % where 50 are given. */
  @Test
  void whatIsTooTightIsFoundWhereItLies() {
    MadeToMeasure tight = snood(MEASURED).with("round", Fit.ease(Length.cm(-20)));
    Finding finding = tight.findings().get(0);
    assertEquals("ease.too-tight", finding.id());
    assertTrue(finding.reason().contains("head"), finding.reason());
    DraftingException e =
        assertThrows(DraftingException.class, () -> tight.with("height", Fit.ease(0.1)));
    assertEquals("round", e.accepted());
    assertEquals(List.of(), snood(MEASURED).on(MEASURED).findings(), "all is measured");
  }

  /** 50 / (1 + 0.2 x 0.5) and 50 / (1 + 0.2 x 0.25). */
  @Test
  void otherClothAndOtherBodiesKeepTheFit() {
    MadeToMeasure order = snood(MEASURED).with("round", Fit.stretchUsed(0.2));
    assertEquals(50 / 1.1, order.dimensions().length("round").toCm(), 1e-9);
    MadeToMeasure stiff = order.in(Fabric.of("stiff", Structure.JERSEY, 0.25));
    assertEquals(50 / 1.05, stiff.dimensions().length("round").toCm(), 1e-9);
    Body larger = MEASURED.with(BodyMeasure.HEAD_GIRTH, Length.cm(55));
    assertEquals(55 / 1.1, order.on(larger).dimensions().length("round").toCm(), 1e-9);
  }

  @Test
  void anOrderIsAValue() {
    MadeToMeasure order = snood(HEAD);
    assertEquals("snood in jersey for head girth 50 cm", order.toString());
    List<MadeToMeasure> others =
        List.of(
            order.with("round", Fit.ease(0.0)),
            order.with(Dimensions.of().with("height", Length.cm(30))),
            order.on(MEASURED),
            order.in(Fabric.of("stiff", Structure.JERSEY, 0.25)));
    differ(order, snood(HEAD), others.toArray());
    assertEquals(
        "snood in jersey for head girth 50 cm; {round=ease 0 %}", others.get(0).toString());
    assertEquals("snood in jersey for head girth 50 cm; height 30 cm", others.get(1).toString());
  }

  /** Heads of 46, 50 and 54 cm, a tenth less each. */
  @Test
  void aTableOfBodiesIsARunOfSizes() {
    Map<String, Body> heads = new LinkedHashMap<>();
    heads.put("S", HEAD.with(BodyMeasure.HEAD_GIRTH, Length.cm(46)));
    heads.put("M", HEAD);
    heads.put("L", HEAD.with(BodyMeasure.HEAD_GIRTH, Length.cm(54)));
    BodySizes sizes = BodySizes.of(BodyMeasure.HEAD_GIRTH, heads);
    assertEquals(BodyMeasure.HEAD_GIRTH, sizes.main());
    SizeRun run = sizes.run(snood(HEAD));
    assertEquals("S: round 41.4 cm; M: round 45 cm; L: round 48.6 cm", run.toString());
    Map<String, Pattern> patterns = sizes.patterns(snood(HEAD));
    assertEquals(List.of("S", "M", "L"), List.copyOf(patterns.keySet()));
    heads.put("XL", Body.of().with(BodyMeasure.HEAD_GIRTH, Length.cm(58)));
    BodySizes more = BodySizes.of(BodyMeasure.HEAD_GIRTH, heads);
    assertEquals(more, BodySizes.of(BodyMeasure.HEAD_GIRTH, heads));
    assertNotEquals(more, more.between("S", "L"));
    assertNotEquals(sizes, more);
    assertNotEquals(sizes.hashCode(), more.hashCode());
    MadeToMeasure tall = snood(HEAD).with("round", Fit.ease(1.0));
    DraftingException e = assertThrows(DraftingException.class, () -> more.patterns(tall));
    assertEquals("size L: snood: round", e.where(), "twice 54 cm is over 100 cm");
  }

  /** A table of one size holds that girth and no other. */
  @Test
  void oneSizeHoldsItsOwnGirth() {
    BodySizes one = BodySizes.of(BodyMeasure.HEAD_GIRTH, Map.of("one", HEAD));
    assertEquals("one", one.sizeOf(MEASURED).orElseThrow());
    Body larger = HEAD.with(BodyMeasure.HEAD_GIRTH, Length.cm(50.1));
    assertTrue(one.sizeOf(larger).isEmpty());
    assertEquals(List.of("one"), one.between("one", "one").names());
  }
}
