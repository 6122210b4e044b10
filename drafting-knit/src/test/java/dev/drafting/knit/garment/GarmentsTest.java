package dev.drafting.knit.garment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.template.Choice;
import dev.drafting.core.template.Dimension;
import dev.drafting.core.template.Dimensions;
import dev.drafting.core.template.GarmentTemplate;
import dev.drafting.core.template.SizeRun;
import dev.drafting.core.template.TemplateContractTest;
import dev.drafting.core.template.Templates;
import dev.drafting.knit.Draft;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The garments that are built in; {@code -Dsets=200} tries fewer sets of dimensions of each. */
class GarmentsTest {
  private static final int SETS = Integer.getInteger("sets", 2000);

  private static final Fabric JERSEY =
      Fabric.of("jersey", Structure.JERSEY, 0.35).withWidth(Length.cm(170));

  private static double length(Pattern pattern, String edge) {
    return pattern.edge(EdgeRef.parse(edge)).length().toMm();
  }

  @TestFactory
  List<DynamicTest> everyOneKeepsTheContract() {
    Templates all = Templates.installed();
    return all.ids().stream()
        .map(all::get)
        .map(BuiltIn::new)
        .map(test -> DynamicTest.dynamicTest(test.template().id(), test::keepsTheContract))
        .toList();
  }

  private record BuiltIn(GarmentTemplate template) implements TemplateContractTest {
    @Override
    public long seed() {
      return 20261126;
    }

    @Override
    public int tries() {
      return SETS;
    }
  }

  @Test
  void areInstalled() {
    assertEquals(
        List.of(
            "sleeveless-top",
            "t-shirt",
            "straight-skirt",
            "half-circle-skirt",
            "leggings",
            "beanie",
            "raglan-sweatshirt",
            "boxer-briefs",
            "baby-top",
            "childs-t-shirt"),
        Templates.installed().ids());
  }

  /** In a list of garments to choose from, each one says what it is, in words and shortly. */
  @Test
  void eachSaysWhatItIs() {
    Templates all = Templates.installed();
    List<String> about = all.ids().stream().map(id -> all.get(id).about()).toList();
    assertEquals(about.size(), about.stream().distinct().count());
    for (String words : about) {
      assertTrue(words.split(" ").length > 3 && words.length() < 80, words);
    }
  }

  @TestFactory
  List<DynamicTest> everyOneIsDraftedWithoutProblems() {
    Templates all = Templates.installed();
    return all.ids().stream()
        .map(
            id ->
                DynamicTest.dynamicTest(
                    id,
                    () -> {
                      GarmentTemplate template = all.get(id);
                      Draft draft =
                          Draft.of(template.pattern())
                              .withFabric("body", JERSEY)
                              .withFabric("rib", Fabric.of("rib", Structure.RIB, 0.80));
                      assertTrue(!draft.cutPieces().isEmpty());
                      assertTrue(!draft.lay("body").plan(1, 0).pieces().isEmpty());
                      assertTrue(
                          draft.findings().stream()
                              .allMatch(finding -> finding.toString().startsWith("NOTE")),
                          draft.findings().toString());
                    }))
        .toList();
  }

  /** With every option of every choice, at the bounds of the length: nothing worse than a note. */
  @TestFactory
  List<DynamicTest> everyOptionIsDraftedWithoutProblems() {
    Templates all = Templates.installed();
    return all.ids().stream()
        .map(all::get)
        .filter(template -> !template.choices().isEmpty())
        .map(
            template ->
                DynamicTest.dynamicTest(template.id(), () -> everyOptionIsDrafted(template)))
        .toList();
  }

  private static void everyOptionIsDrafted(GarmentTemplate template) {
    for (Choice choice : template.choices()) {
      for (String option : choice.options()) {
        Dimensions chosen = Dimensions.of().withChoice(choice.name(), option);
        for (Dimension dimension : template.dimensions()) {
          for (Length bound : List.of(dimension.least(), dimension.most())) {
            if (dimension.name().equals("length")) {
              assertDrafted(template, chosen.with("length", bound));
            }
          }
        }
      }
    }
  }

  private static void assertDrafted(GarmentTemplate template, Dimensions given) {
    Draft draft =
        Draft.of(template.pattern(given))
            .withFabric("body", JERSEY)
            .withFabric("rib", Fabric.of("rib", Structure.RIB, 0.80));
    assertTrue(
        draft.findings().stream().allMatch(finding -> finding.toString().startsWith("NOTE")),
        given + ": " + draft.findings());
  }

  /**
   * The waist of a half-circle skirt has the radius C / pi, its hem is pi times its length longer:
   * geometry of the circle, as all handbooks of pattern cutting have it.
   */
  @Test
  void theHalfCircleHasTheRadiusOfItsWaist() {
    Pattern skirt =
        new HalfCircleSkirt()
            .pattern(Dimensions.of().with("waist", Length.cm(70)).with("length", Length.cm(50)));
    assertEquals(700 / Math.PI, skirt.piece("skirt").edge("waist").curve().start().x(), 1e-9);
    assertEquals(222.817, skirt.piece("skirt").edge("waist").curve().start().x(), 5e-4);
    assertEquals(700 + Math.PI * 500, 2 * length(skirt, "skirt hem"), 1e-9);
  }

  /** Worked by hand: 4 x 1.02 x (220 / 2 + sqrt(115 x 115 - 20 x 20)) mm are 910.8 mm. */
  @Test
  void shouldersThatReachBeyondTheUnderarmAreRefused() {
    Dimensions wide =
        Dimensions.of()
            .with("chest", Length.cm(90))
            .with("neck width", Length.mm(220))
            .with("shoulder", Length.mm(115));
    DraftingException e = assertThrows(DraftingException.class, () -> new TShirt().pattern(wide));
    assertEquals("t-shirt: chest", e.where());
    assertTrue(e.accepted().startsWith("91.1 cm or more"), e.accepted());
    assertEquals("T-shirt", new TShirt().pattern(wide.with("chest", Length.cm(91.1))).name());
  }

  /**
   * So are those of a vest, 4 x 1.02 x (220 / 2 + sqrt(75 x 75 - 20 x 20)) = 743.7 mm, and of a
   * child's T-shirt, 4 x 1.02 x (149 / 2 + sqrt(78 x 78 - 14 x 14)) = 617.0 mm.
   */
  @ParameterizedTest
  @CsvSource({"sleeveless-top,700,220,75,20,74.4 cm", "childs-t-shirt,600,149,78,14,61.7 cm"})
  void shouldersOfOtherTopsAreRefusedToo(
      String id, double chest, double neckWidth, double shoulder, double drop, String least) {
    Dimensions wide =
        Dimensions.of()
            .with("chest", Length.mm(chest))
            .with("neck width", Length.mm(neckWidth))
            .with("shoulder", Length.mm(shoulder))
            .with("shoulder drop", Length.mm(drop));
    GarmentTemplate template = Templates.installed().get(id);
    DraftingException e = assertThrows(DraftingException.class, () -> template.pattern(wide));
    assertEquals(id + ": chest", e.where());
    assertTrue(e.accepted().startsWith(least + " or more"), e.accepted());
  }

  /** The cap of a knit is eased in by little or nothing: common practice, no source. */
  @Test
  void theCapIsAsLongAsTheArmholesAndItsEase() {
    for (double ease : new double[] {0, 5, 20}) {
      Pattern tee = new TShirt().pattern(Dimensions.of().with("cap ease", Length.mm(ease)));
      double armholes = length(tee, "front armhole") + length(tee, "back armhole");
      assertEquals(armholes + ease, length(tee, "sleeve cap"), 0.01);
    }
  }

  /**
   * Before sides and underarms are sewn, the front of the garment goes on in that of the sleeve.
   */
  @Test
  void theFrontOfASleeveIsSewnToTheFront() {
    for (String id : List.of("t-shirt", "raglan-sweatshirt", "baby-top")) {
      Pattern closed = Templates.installed().get(id).pattern();
      Pattern open =
          Pattern.of(
              id,
              closed.pieces(),
              closed.seams().stream()
                  .filter(seam -> !List.of("side", "underarm").contains(seam.name()))
                  .toList());
      List<String> edges =
          Assembly.of(open).openings().get(0).parts().stream()
              .map(part -> part.edge().toString())
              .toList();
      int side = edges.indexOf("front / side");
      assertEquals("sleeve / front underarm", edges.get(side + 1), id);
    }
  }

  @Test
  void theChestIsAsWideAsGiven() {
    Pattern top = new SleevelessTop().pattern(Dimensions.of().with("chest", Length.cm(100)));
    Draft draft = Draft.of(top);
    assertEquals("chest, all round: 100 cm", draft.measures().get(0).toString());
  }

  /**
   * The crown is half an ellipse: where it is half a circle, its length is pi times the radius and
   * the two sides up to it.
   */
  @Test
  void theCrownOfABeanieIsHalfAnEllipse() {
    Pattern beanie =
        new Beanie()
            .pattern(
                Dimensions.of()
                    .with("round", Length.cm(52))
                    .with("height", Length.mm(120))
                    .with("crown", Length.mm(130)));
    assertEquals(2 * 120 + Math.PI * 130, length(beanie, "half / crown"), 0.05);
  }

  /**
   * A crown half as high as it is wide to each side is 2 a E(m) long, m = 3/4. E(3/4) = 1.211056:
   * Abramowitz and Stegun, Handbook of Mathematical Functions, table 17.1, from memory.
   */
  @Test
  void theCrownOfAFlatBeanieIsAsLongAsTheTableOfEllipticIntegralsHasIt() {
    Pattern beanie =
        new Beanie()
            .pattern(
                Dimensions.of()
                    .with("round", Length.cm(52))
                    .with("height", Length.mm(120))
                    .with("crown", Length.mm(65)));
    assertEquals(2 * 120 + 2 * 130 * 1.211056, length(beanie, "half / crown"), 0.05);
  }

  /** A disk, sewn: one opening, all round the brim, which turns by nothing. */
  @Test
  void aBeanieHasOneOpening() {
    Assembly sewn = Assembly.of(new Beanie().pattern());
    assertEquals(1, sewn.openings().size());
    assertEquals(520, sewn.openings().get(0).length().toMm(), 1e-9);
    assertEquals(1, sewn.eulerCharacteristic());
  }

  /**
   * Both sides of the inside leg are sewn without ease, and the fork is the difference to half:
   * common practice, no source.
   */
  @Test
  void theLegsAreBalanced() {
    Pattern leggings =
        new Leggings()
            .pattern(Dimensions.of().with("hip", Length.cm(90)).with("fork", Length.mm(110)));
    assertEquals(
        length(leggings, "leg / front inside leg"),
        length(leggings, "leg / back inside leg"),
        1e-6);
    Piece leg = leggings.piece("leg");
    double thigh =
        leg.edge("front inside leg").curve().end().x()
            - leg.edge("back inside leg").curve().start().x();
    assertEquals(900 / 2.0 + 110, thigh, 1e-9);
    Assembly sewn = Assembly.of(leggings);
    assertEquals(3, sewn.openings().size());
    assertEquals(-1, sewn.eulerCharacteristic());
  }

  /** In every size the seams stay equal and the garment grows as the steps say. */
  @Test
  void comesInSizes() {
    Map<String, Length> steps =
        Map.of("chest", Length.cm(4), "length", Length.cm(1), "armhole depth", Length.mm(5));
    Dimensions small =
        Dimensions.of()
            .with("chest", Length.cm(88))
            .with("length", Length.cm(60))
            .with("armhole depth", Length.mm(220));
    SizeRun run = SizeRun.of("S", small).then("M", steps).then("L", steps).then("XL", steps);
    Map<String, Pattern> patterns = run.patterns(new SleevelessTop());
    double before = 0;
    for (Pattern pattern : patterns.values()) {
      assertEquals(length(pattern, "front side"), length(pattern, "back side"), 1e-9);
      double armhole = length(pattern, "front armhole");
      assertTrue(armhole > before);
      before = armhole;
    }
    assertEquals(
        "chest, all round: 100 cm",
        Draft.of(Objects.requireNonNull(patterns.get("XL"))).measures().get(0).toString());
  }
}
