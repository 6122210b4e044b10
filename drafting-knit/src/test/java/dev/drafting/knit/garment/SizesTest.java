package dev.drafting.knit.garment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.template.Templates;
import dev.drafting.knit.Draft;
import dev.drafting.knit.Wearer;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.sewing.Caution;
import dev.drafting.knit.size.Body;
import dev.drafting.knit.size.BodySizes;
import dev.drafting.knit.size.FittedTemplate;
import dev.drafting.knit.size.MadeToMeasure;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The built-in garments in the sizes of the built-in tables. */
class SizesTest {
  private static final Fabric JERSEY =
      Fabric.of("jersey", Structure.JERSEY, 0.50).withRecovery(0.96);

  private static BodySizes table(String name) {
    return switch (name) {
      case "women" -> BodySizes.women();
      case "men" -> BodySizes.men();
      default -> BodySizes.children();
    };
  }

  private static MadeToMeasure order(String id) {
    return MadeToMeasure.of((FittedTemplate) Templates.installed().get(id), Body.of(), JERSEY);
  }

  @ParameterizedTest
  @CsvSource({
    "sleeveless-top,women,76,128",
    "t-shirt,women,76,128",
    "straight-skirt,women,76,128",
    "half-circle-skirt,women,76,128",
    "leggings,women,76,128",
    "beanie,women,76,128",
    "childs-t-shirt,children,86,146",
    "baby-top,children,56,98",
    "boxer-briefs,men,80,127",
    "boxer-briefs,children,122,158",
    "raglan-sweatshirt,women,76,128",
    "raglan-sweatshirt,men,80,127",
    "sleeveless-top,men,80,127",
    "t-shirt,men,80,127",
    "leggings,men,80,127",
    "beanie,children,56,158",
    "leggings,children,92,158",
    "straight-skirt,children,110,158",
    "half-circle-skirt,children,86,158"
  })
  void everySizeIsDrawnAndWiderThanTheOneBelow(String id, String table, String from, String to) {
    Map<String, Pattern> sizes = table(table).between(from, to).patterns(order(id));
    double below = 0;
    for (Map.Entry<String, Pattern> size : sizes.entrySet()) {
      assertEquals("size " + size.getKey(), size.getValue().version());
      double width = width(size.getValue());
      assertTrue(width >= below, size.getKey());
      below = width;
    }
    double least = width(Objects.requireNonNull(sizes.get(from)));
    boolean sameHead = id.equals("beanie") && table.equals("women"); // one girth for all of them
    assertEquals(!sameHead, below > least, "the largest is no wider than the smallest");
  }

  private static double width(Pattern pattern) {
    return pattern.pieces().stream()
        .mapToDouble(piece -> piece.outline().bounds().width().toMm())
        .sum();
  }

  /** 4 cm of bust at 15 % of a stretch of 50 % are 4 / 1.075 cm of the garment, exactly. */
  @Test
  void aSizeGrowsByTheStepOfTheBodyLessWhatTheClothGives() {
    BodySizes women = BodySizes.women().between("88", "96");
    var run = women.run(order("sleeveless-top"));
    double step =
        run.dimensions("92").length("chest").minus(run.dimensions("88").length("chest")).toCm();
    assertEquals(4 / 1.075, step, 1e-9);
  }

  @Test
  void aSizeThatCannotBeDrawnIsNamed() {
    BodySizes children = BodySizes.children().between("146", "158");
    DraftingException e =
        assertThrows(DraftingException.class, () -> children.patterns(order("childs-t-shirt")));
    assertEquals("size 152: childs-t-shirt: armhole depth", e.where());
  }

  @Test
  void everyChildsSizeComesWithTheCautionsForChildren() {
    BodySizes children = BodySizes.children();
    Pattern beanie = order("beanie").template().pattern();
    for (String size : children.names()) {
      List<String> topics =
          Draft.of(beanie)
              .withFabric("body", JERSEY)
              .withFabric("rib", JERSEY)
              .withWearer(Wearer.of(children.body(size)))
              .cautions()
              .stream()
              .map(Caution::topic)
              .toList();
      assertTrue(topics.contains("Cords") && topics.contains("Nightwear"), size + topics);
    }
  }
}
