package dev.drafting.examples;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.band.BandFinish;
import dev.drafting.knit.band.BandFit;
import dev.drafting.knit.band.FacedStrip;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.band.StripRule;
import dev.drafting.knit.band.TapedEdge;
import dev.drafting.knit.band.WrappedBinding;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import picocli.CommandLine.Option;

/** What a tape measure and a hand gauge tell: the options that describe an edge and its strip. */
final class TapeOptions {
  private static final String FINISHES = "band, binding, strip, cuff or rib";

  @Option(
      names = "--opening",
      paramLabel = "NAME",
      defaultValue = "neck",
      description = "What the edge is: neck, armhole, or any other name for a straight edge.")
  private String opening = "";

  @Option(
      names = "--seam",
      paramLabel = "LENGTH",
      description = "All the way round where the strip is sewn, such as 64cm.")
  private String seam = "";

  @Option(
      names = "--edge",
      paramLabel = "LENGTH",
      description = "Instead: all the way round where the finished garment ends.")
  private String edge = "";

  @Option(
      names = "--slope",
      paramLabel = "DEGREES",
      description = "How far the shoulder seam of a neck or armhole slopes, 0 to 45.")
  private String slope = "";

  @Option(
      names = "--turning",
      paramLabel = "DEGREES",
      description = "Instead: how far the edge turns on its way round; a round hole 360.")
  private String turning = "";

  @Option(
      names = "--corner",
      paramLabel = "DEGREES",
      description =
          "How far it turns at a mitred corner, such as the point of a V; may be repeated.")
  private List<String> corners = new ArrayList<>();

  @Option(
      names = "--finish",
      paramLabel = "WORD",
      defaultValue = "band",
      description = FINISHES + ".")
  private String finish = "";

  @Option(
      names = "--width",
      paramLabel = "LENGTH",
      required = true,
      description = "How wide the strip shows, 3 to 200 mm.")
  private String width = "";

  @Option(
      names = "--allowance",
      paramLabel = "LENGTH",
      defaultValue = "7 mm",
      description = "What is sewn in along it; 7 mm unless given.")
  private String allowance = "";

  @Option(
      names = "--fabric",
      paramLabel = "NAME",
      defaultValue = "rib",
      description = "What the strip is cut from.")
  private String fabric = "";

  @Option(
      names = "--stretch",
      paramLabel = "SHARE",
      required = true,
      description = "How far that gives on the gauge, such as 80%%.")
  private String stretch = "";

  @Option(
      names = "--ratio",
      paramLabel = "SHARE",
      description = "The maker's loop, as a share of its seam, such as 85%%.")
  private String ratio = "";

  @Option(
      names = "--shorter",
      paramLabel = "LENGTH",
      description = "Or: what the loop is shorter than its seam by.")
  private String shorter = "";

  @Option(names = "--loop", paramLabel = "LENGTH", description = "Or: how long the loop is.")
  private String loop = "";

  @Option(
      names = "--cut",
      paramLabel = "LENGTH",
      description = "Or: how long the strip is that is cut already.")
  private String cut = "";

  @Option(
      names = "--join",
      paramLabel = "LENGTH",
      defaultValue = "10 mm",
      description = "What is sewn in at each of its ends; 10 mm unless given.")
  private String join = "";

  BandFit fit() {
    return BandFit.of(taped(), finish(), fabric(), rule());
  }

  private TapedEdge taped() {
    if (seam.isEmpty() == edge.isEmpty()) {
      throw DraftingException.of("the edge is not measured, or twice")
          .accepted("either --seam or --edge");
    }
    Angle turns = turning();
    TapedEdge taped =
        seam.isEmpty()
            ? placed("--edge", edge, v -> TapedEdge.alongFinishedEdge(opening, length(v), turns))
            : placed("--seam", seam, v -> TapedEdge.alongSeam(opening, length(v), turns));
    Angle[] mitred =
        corners.stream()
            .map(corner -> placed("--corner", corner, v -> degrees(v, -170, 170)))
            .toArray(Angle[]::new);
    return taped.withCorners(mitred);
  }

  private Angle turning() {
    if (!turning.isEmpty()) {
      return placed("--turning", turning, v -> degrees(v, -720, 720));
    }
    boolean neck = opening.equals("neck");
    if (!neck && !opening.equals("armhole")) {
      return Angle.ZERO;
    }
    if (slope.isEmpty()) {
      throw DraftingException.of("how far the edge turns is not known")
          .at("opening " + opening)
          .accepted("--slope or --turning");
    }
    Angle shoulder = placed("--slope", slope, v -> degrees(v, 0, 45));
    return neck ? TapedEdge.turningOfNeck(shoulder) : TapedEdge.turningOfArmhole(shoulder);
  }

  private BandFinish finish() {
    Length showing = placed("--width", width, TapeOptions::length);
    Length sewn = placed("--allowance", allowance, TapeOptions::length);
    return placed(
        "--width",
        width,
        unused ->
            switch (finish.toLowerCase(Locale.ROOT)) {
              case "band" -> FoldedBand.of(showing, sewn);
              case "binding" -> WrappedBinding.of(showing);
              case "strip" -> FacedStrip.of(showing, sewn);
              case "cuff" -> FoldedBand.cuff(showing, sewn);
              case "rib" -> FoldedBand.waistRib(showing, sewn);
              default ->
                  throw DraftingException.of("the finish is unknown")
                      .value(finish)
                      .accepted(FINISHES);
            });
  }

  private Fabric fabric() {
    return placed("--stretch", stretch, v -> Fabric.of(fabric, Structure.OTHER, share(v)));
  }

  private StripRule rule() {
    List<StripRule> rules = new ArrayList<>();
    add(rules, "--ratio", ratio, v -> StripRule.ratio(share(v)));
    add(rules, "--shorter", shorter, v -> StripRule.shorterBy(length(v)));
    add(rules, "--loop", loop, v -> StripRule.loop(length(v)));
    add(rules, "--cut", cut, v -> StripRule.alreadyCut(length(v)));
    if (rules.size() > 1) {
      throw DraftingException.of("the strip has two lengths")
          .accepted("one of --ratio, --shorter, --loop and --cut");
    }
    StripRule rule = rules.isEmpty() ? StripRule.recommended() : rules.get(0);
    return placed("--join", join, v -> rule.withJoinAllowance(length(v)));
  }

  private static void add(
      List<StripRule> rules, String option, String value, Function<String, StripRule> reading) {
    if (!value.isEmpty()) {
      rules.add(placed(option, value, reading));
    }
  }

  private static <T> T placed(String option, String value, Function<String, T> reading) {
    try {
      return reading.apply(value);
    } catch (DraftingException e) {
      throw e.at("option " + option);
    }
  }

  private static Length length(String text) {
    return Length.parse(text);
  }

  private static double share(String text) {
    String number = text.strip();
    if (!number.endsWith("%")) {
      throw DraftingException.of("a share has a per cent sign").value(text).accepted("such as 80%");
    }
    return number(number.substring(0, number.length() - 1).strip(), text) / 100;
  }

  private static Angle degrees(String text, double least, double most) {
    double degrees = number(text.strip(), text);
    if (degrees < least || degrees > most) {
      throw DraftingException.of("the angle is out of range")
          .value(text)
          .accepted((int) least + " to " + (int) most + " degrees");
    }
    return Angle.degrees(degrees);
  }

  private static double number(String number, String text) {
    if (!number.matches("[+-]?\\d{1,9}(\\.\\d{1,9})?")) {
      throw DraftingException.of("this is no number").value(text).accepted("such as 20 or 22.5");
    }
    return Double.parseDouble(number);
  }
}
