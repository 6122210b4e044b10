package dev.drafting.export.store.sample;

import dev.drafting.core.alter.Alteration;
import dev.drafting.core.alter.EdgePlace;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.lay.Cloth;
import dev.drafting.core.lay.Lay;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.trace.Extent;
import dev.drafting.core.trace.TracedEdge;
import dev.drafting.core.trace.Tracing;
import dev.drafting.export.store.StoredDraft;
import dev.drafting.knit.Draft;
import dev.drafting.knit.Wearer;
import dev.drafting.knit.band.BodyPart;
import dev.drafting.knit.band.MarkSpacing;
import dev.drafting.knit.band.Outcome;
import dev.drafting.knit.band.SewnResult;
import dev.drafting.knit.band.StripRule;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Original;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.sewing.Construction;
import dev.drafting.knit.sewing.Detail;
import dev.drafting.knit.sewing.Machines;
import dev.drafting.knit.sewing.SewingChoices;
import dev.drafting.knit.sewing.Stitch;
import dev.drafting.knit.sewing.StitchType;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;

/** A draft drawn from a seed, with everything that a draft can be given. */
public final class RandomDraft {
  private final Random random;
  private final RandomPattern patterns;

  private RandomDraft(long seed) {
    this.random = new Random(seed);
    this.patterns = new RandomPattern(random);
  }

  /**
   * The draft of a seed.
   *
   * @param seed any number; the same gives the same draft
   * @return the draft, as it would be stored
   */
  public static StoredDraft of(long seed) {
    return new RandomDraft(seed).stored();
  }

  private StoredDraft stored() {
    Pattern pattern = patterns.pattern();
    Draft draft = Draft.of(pattern).withWearer(wearer());
    draft = random.nextInt(3) == 0 ? draft.withName("Make " + random.nextInt(1000)) : draft;
    draft =
        draft.withFabric("body", fabric()).withFabric("rib", fabric()).withFabric("trim", fabric());
    draft = random.nextBoolean() ? draft.withOriginal(original(draft)) : draft;
    draft = random.nextBoolean() ? draft.withSewing(sewing()) : draft;
    draft = withRules(withAlterations(draft));
    StoredDraft stored = StoredDraft.of(draft);
    for (int i = random.nextInt(3); i > 0; i--) {
      stored = stored.withTracings(List.of(tracing()));
    }
    return random.nextInt(20) == 0 ? withLay(stored) : stored;
  }

  /** What can be done to this draft; what cannot leaves it as it is. */
  private static Draft tried(Draft draft, UnaryOperator<Draft> change) {
    try {
      return change.apply(draft);
    } catch (DraftingException impossible) {
      return draft;
    }
  }

  private Length between(double least, double most) {
    return Length.mm(least + random.nextDouble() * (most - least));
  }

  private <T> T any(T[] all) {
    return all[random.nextInt(all.length)];
  }

  private Wearer wearer() {
    Wearer wearer = Wearer.of();
    wearer = random.nextBoolean() ? wearer.withChest(between(700, 1200)) : wearer;
    wearer = random.nextBoolean() ? wearer.withGirth(BodyPart.HEAD, between(500, 620)) : wearer;
    wearer = random.nextBoolean() ? wearer.withGirth(BodyPart.FOOT, between(250, 400)) : wearer;
    wearer = random.nextBoolean() ? wearer.withHeight(between(800, 2000)) : wearer;
    return random.nextInt(3) == 0 ? wearer.withAge(random.nextInt(100)) : wearer;
  }

  private Fabric fabric() {
    Fabric fabric =
        Fabric.of("cloth " + random.nextInt(99), any(Structure.values()), random.nextDouble())
            .withTension(random.nextDouble() * 0.02);
    fabric = random.nextBoolean() ? fabric.withStretchAlong(random.nextDouble()) : fabric;
    fabric = random.nextBoolean() ? fabric.withRecovery(random.nextDouble()) : fabric;
    fabric = random.nextBoolean() ? fabric.withUncertainty(random.nextDouble() * 0.1) : fabric;
    fabric = random.nextBoolean() ? fabric.withShrinkage(random.nextDouble() * 0.1, 0.05) : fabric;
    fabric = random.nextBoolean() ? fabric.withWidth(between(1200, 1900)) : fabric;
    fabric = random.nextBoolean() ? fabric.withMass(100 + random.nextInt(300)) : fabric;
    fabric = random.nextBoolean() ? fabric.withCurl(random.nextBoolean()) : fabric;
    fabric = random.nextBoolean() ? fabric.bothWays() : fabric;
    return random.nextBoolean() ? fabric.prewashed() : fabric;
  }

  private Original original(Draft draft) {
    Original original = Original.of(fabric());
    original = random.nextBoolean() ? original.withGirth(between(700, 1300)) : original;
    original =
        random.nextBoolean() ? original.withSeams(draft.pattern().seams().get(0).name()) : original;
    return random.nextInt(4) == 0 ? original.withShoulders() : original;
  }

  private SewingChoices sewing() {
    Machines machines =
        switch (random.nextInt(4)) {
          case 0 -> Machines.zigzag();
          case 1 -> Machines.overlocker(3);
          case 2 -> Machines.overlocker(4).withTwinNeedle(Length.mm(4));
          default -> Machines.of(stitch(), stitch(), between(3, 15));
        };
    machines = random.nextBoolean() ? machines.withStitch("side", stitch()) : machines;
    machines = random.nextBoolean() ? machines.withAllowance("side", between(3, 15)) : machines;
    SewingChoices choices =
        SewingChoices.of().withMachines(machines).withConstruction(any(Construction.values()));
    choices = random.nextBoolean() ? choices.withTape("side") : choices;
    return random.nextBoolean() ? choices.withDetail(any(Detail.values())) : choices;
  }

  private Stitch stitch() {
    return Stitch.of(any(StitchType.values())).withLength(between(0.5, 5)).withWidth(between(0, 9));
  }

  private Draft withAlterations(Draft given) {
    Draft draft = given;
    for (int i = random.nextInt(4); i > 0; i--) {
      Alteration alteration = alteration();
      String note = random.nextBoolean() ? "" : "\"too\" wide — über\n" + random.nextInt();
      draft = tried(draft, d -> d.withAlteration(alteration, note));
    }
    return draft;
  }

  private Alteration alteration() {
    Length amount = between(-4, 4);
    EdgePlace from = EdgePlace.from("side", between(0, 20));
    return switch (random.nextInt(11)) {
      case 0 -> Alteration.takeIn("side", amount);
      case 1 -> Alteration.takeIn("side", amount, between(-4, 4));
      case 2 -> Alteration.lengthen("side", between(30, 60), amount);
      case 3 -> Alteration.lowerNeck("front top", amount);
      case 4 -> Alteration.widenNeck("side", amount);
      case 5 -> Alteration.widenStrap("side", amount);
      case 6 -> Alteration.deepenArmhole("side", amount);
      case 7 -> Alteration.flare("side", amount);
      case 8 ->
          Alteration.reshape(
              "front top",
              from,
              EdgePlace.from("fold", between(20, 40)),
              EdgePlace.at("fold"),
              amount);
      case 9 -> Alteration.snip("front top", between(1, 4), EdgePlace.at("fold"), from);
      default -> Alteration.finish("front top", patterns.finish());
    };
  }

  private Draft withRules(Draft given) {
    Draft draft = given;
    for (var opening : given.openings()) {
      if (random.nextBoolean()) {
        draft = tried(draft, d -> d.withStripRule(opening.name(), rule()));
      }
    }
    for (int i = random.nextInt(3); i > 0; i--) {
      Outcome seen = any(new Outcome[] {Outcome.GAPES, Outcome.LIES_FLAT, Outcome.PUCKERS});
      draft =
          draft.withSewnResult(
              SewnResult.of("cloth 1", between(300, 900), between(250, 850), seen));
    }
    return draft;
  }

  private StripRule rule() {
    StripRule rule =
        switch (random.nextInt(5)) {
          case 0 -> StripRule.ratio(0.5 + random.nextDouble() / 2);
          case 1 -> StripRule.shorterBy(between(-20, 60));
          case 2 -> StripRule.loop(between(100, 900));
          case 3 -> StripRule.alreadyCut(between(100, 900));
          default -> StripRule.recommended();
        };
    rule = random.nextBoolean() ? rule.withJoinAllowance(between(0, 20)) : rule;
    rule = random.nextBoolean() ? rule.withJoinAt("side") : rule;
    rule = random.nextInt(4) == 0 ? rule.withLap(between(0, 100)) : rule;
    return rule.withMarks(any(MarkSpacing.values()));
  }

  private Tracing tracing() {
    List<TracedEdge> strokes = new ArrayList<>();
    for (String edge : List.of("hem", "side", "top")) {
      double[] xy = new double[2 * (2 + random.nextInt(20))];
      for (int i = 0; i < xy.length; i++) {
        xy[i] = random.nextInt(5) == 0 ? random.nextInt(500) : 500 * random.nextGaussian();
      }
      strokes.add(TracedEdge.of(edge, xy));
    }
    return Tracing.of("front", any(Extent.values()), strokes);
  }

  private StoredDraft withLay(StoredDraft stored) {
    Cloth cloth = Cloth.of(between(1500, 2500)).withEdge(between(0, 20)).bothWays();
    cloth =
        switch (random.nextInt(5)) {
          case 0 -> cloth.foldedLengthwise();
          case 1 -> cloth.foldedCrosswise();
          case 2 -> cloth.foldedOver(between(300, 700));
          case 3 -> cloth.tubular();
          default -> cloth;
        };
    cloth = random.nextBoolean() ? cloth.withSpacing(between(0, 5)) : cloth;
    cloth = random.nextBoolean() ? cloth.withRepeat(between(0, 60), between(0, 60)) : cloth;
    cloth = random.nextInt(4) == 0 ? cloth.withLength(between(300, 2000)) : cloth;
    Cloth goods = cloth;
    Angle within = Angle.degrees(random.nextInt(4));
    try {
      Lay lay = stored.draft().lay("body", goods).withGrainWithin(within);
      return stored.withLay("body", lay.plan(1, 0));
    } catch (DraftingException tooNarrow) {
      return stored;
    }
  }
}
