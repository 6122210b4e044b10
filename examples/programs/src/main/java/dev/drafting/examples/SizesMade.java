package dev.drafting.examples;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.grade.GradeRule;
import dev.drafting.core.grade.Grading;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.template.Dimension;
import dev.drafting.core.template.Dimensions;
import dev.drafting.core.template.GarmentTemplate;
import dev.drafting.core.template.SizeRun;
import dev.drafting.export.source.Garment;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.size.Body;
import dev.drafting.knit.size.BodyMeasure;
import dev.drafting.knit.size.BodyRule;
import dev.drafting.knit.size.BodySizes;
import dev.drafting.knit.size.FittedTemplate;
import dev.drafting.knit.size.MadeToMeasure;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A garment in several sizes.
 *
 * @param name what its file is called
 * @param about what garment it is
 * @param patterns the patterns by size
 * @param bodies the bodies by size; empty where nobody was measured
 * @param findings what is amiss with a size, by size
 */
record SizesMade(
    String name,
    String about,
    Map<String, Pattern> patterns,
    Map<String, Body> bodies,
    Map<String, List<Finding>> findings) {
  private static final Length STEP = Length.cm(4);
  private static final List<String> NAMES = List.of("S", "M", "L", "XL");

  /** A template in four sizes: as usual, and all girths 4 cm wider for each size more. */
  static SizesMade asUsual(GarmentTemplate template) {
    return new SizesMade(
        template.id(), template.about(), run(template).patterns(template), Map.of(), Map.of());
  }

  private static SizeRun run(GarmentTemplate template) {
    Dimensions smallest = Dimensions.of();
    for (Dimension dimension : template.dimensions()) {
      if (dimension.girth()) {
        smallest = smallest.with(dimension.name(), dimension.usual());
      }
    }
    SizeRun run = SizeRun.of(NAMES.get(0), smallest);
    for (String name : NAMES.subList(1, NAMES.size())) {
      Dimensions next = run.dimensions(run.names().get(run.names().size() - 1));
      for (String girth : smallest.lengths().keySet()) {
        next = next.with(girth, next.length(girth).plus(STEP));
      }
      run = run.with(name, next);
    }
    return run;
  }

  /** A template for the bodies of a table, in a cloth that gives this much. */
  static SizesMade toMeasure(FittedTemplate template, BodySizes sizes, double stretch) {
    Fabric cloth = Fabric.of("cloth", Structure.OTHER, stretch);
    MadeToMeasure order = MadeToMeasure.of(template, Body.of(), cloth);
    Map<String, Body> bodies = new LinkedHashMap<>();
    Map<String, List<Finding>> findings = new LinkedHashMap<>();
    for (String size : sizes.names()) {
      bodies.put(size, measured(sizes.body(size), template));
      findings.put(size, order.on(sizes.body(size)).findings());
    }
    return new SizesMade(template.id(), template.about(), sizes.patterns(order), bodies, findings);
  }

  /** What the template needs of a body. */
  private static Body measured(Body body, FittedTemplate template) {
    Set<BodyMeasure> needed = new TreeSet<>();
    for (BodyRule rule : template.bodyRules()) {
      rule.measures().stream()
          .filter(measure -> body.measure(measure).isPresent())
          .findFirst()
          .ifPresent(needed::add);
    }
    Body shown = Body.of();
    for (BodyMeasure measure : needed) {
      shown = shown.with(measure, body.measure(measure).orElseThrow());
    }
    return shown;
  }

  /** A copied garment, its base size and those at these steps from it. */
  static SizesMade graded(Garment garment, List<GradeRule> rules, Map<String, Double> steps) {
    Grading grading = Grading.of(garment.pattern(), "M", rules);
    for (Map.Entry<String, Double> step : steps.entrySet()) {
      grading = grading.with(step.getKey(), step.getValue());
    }
    return new SizesMade(
        "graded",
        garment.name() + ", graded",
        grading.patterns(),
        Map.of(),
        Map.of("all sizes", grading.findings()));
  }
}
