package dev.drafting.core.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class TemplatesTest {

  private static final class OtherTube extends Tube {
    private static final long serialVersionUID = 1L;

    OtherTube() {
      super(0, 1);
    }
  }

  /** 80 cm and 15 % of ease are 92 cm but for the last bit. */
  @Test
  void aDimensionThatIsRoundedBelowItsBoundIsTaken() {
    Dimension chest =
        Dimension.girth("chest", "all round", Length.cm(92), Length.cm(100), Length.cm(160));
    Length rounded = Length.cm(80).times(1.15);
    assertTrue(rounded.compareTo(Length.cm(92)) < 0);
    chest.check(rounded);
    assertThrows(DraftingException.class, () -> chest.check(Length.mm(919.99999)));
  }

  @Test
  void takesWhatIsMissingAsUsual() {
    Pattern tube = new Tube(0, 1).pattern(Dimensions.of().with("girth", Length.cm(60)));
    assertEquals(Length.mm(150), tube.piece("front").edge("hem").length());
    assertEquals(Length.mm(500), tube.piece("front").edge("side").length());
    assertEquals(Length.mm(200), new Tube(0, 1).pattern().piece("back").edge("hem").length());
  }

  @Test
  void whatMissesABoundByAHairDoesNotLookAsIfItMetIt() {
    Dimensions nearly = Dimensions.of().with("girth", Length.mm(399.9999));
    DraftingException refusal =
        assertThrows(DraftingException.class, () -> new Tube(0, 1).pattern(nearly));
    String message = String.valueOf(refusal.getMessage());
    assertTrue(message.contains("Found: 39.99999 cm. Accepted: 40 cm"), message);
  }

  @Test
  void refusesWhatIsOutOfBoundsOrUnknown() {
    refused("tube: girth", Dimensions.of().with("girth", Length.cm(39.9)));
    refused("tube", Dimensions.of().with("waist", Length.cm(70)));
    refused("tube: ends", Dimensions.of().withChoice("ends", "round"));
    refused("tube", Dimensions.of().withChoice("shape", "any"));
    DraftingException none =
        assertThrows(
            DraftingException.class,
            () ->
                new Tube(0, 1) {
                  private static final long serialVersionUID = 1L;

                  @Override
                  public List<Choice> choices() {
                    return List.of();
                  }
                }.pattern(Dimensions.of().withChoice("ends", "any")));
    assertEquals("none", none.accepted());
  }

  private static void refused(String where, Dimensions given) {
    DraftingException refusal =
        assertThrows(DraftingException.class, () -> new Tube(0, 1).pattern(given));
    assertEquals(where, refusal.where());
    assertTrue(!refusal.accepted().isEmpty());
  }

  @Test
  void twoTemplatesOfOneIdAreRefusedByName() {
    Templates one = Templates.of(new Tube(0, 1));
    DraftingException refusal =
        assertThrows(DraftingException.class, () -> one.with(new OtherTube()));
    assertTrue(refusal.what().contains("Tube and "), refusal.what());
    assertTrue(refusal.what().endsWith("$OtherTube"), refusal.what());
    assertEquals(List.of("tube"), one.ids());
    assertEquals("tube", one.toString());
    assertEquals(one, SerialCopy.of(one));
    assertNotEquals(one, Templates.of(new OtherTube()));
    assertNotEquals(one.hashCode(), Templates.of().hashCode());
    assertEquals("tube", assertThrows(DraftingException.class, () -> one.get("cone")).accepted());
    assertEquals("no templates", Templates.of().toString());
    assertEquals(
        "none is installed",
        assertThrows(DraftingException.class, () -> Templates.of().get("tube")).accepted());
  }

  @Test
  void aRunOfSizesIsGradedStepByStep() {
    Dimensions small = Dimensions.of().with("girth", Length.cm(60)).with("length", Length.cm(40));
    Map<String, Length> steps = Map.of("girth", Length.cm(4), "length", Length.cm(1));
    SizeRun run = SizeRun.of("S", small).then("M", steps).then("L", steps);
    assertEquals(List.of("S", "M", "L"), run.names());
    Map<String, Pattern> patterns = run.patterns(new Tube(0, 1));
    assertEquals(Length.mm(170), size(patterns, "L").piece("front").edge("hem").length());
    assertEquals(Length.mm(420), size(patterns, "L").piece("front").edge("side").length());
    assertEquals("size M", size(patterns, "M").version());
    assertEquals(run, SerialCopy.of(run));
    assertNotEquals(run, SizeRun.of("S", small));
    assertNotEquals(run.hashCode(), SizeRun.of("S", small).hashCode());
    DraftingException refusal =
        assertThrows(
            DraftingException.class,
            () -> run.then("XXL", Map.of("girth", Length.cm(90))).patterns(new Tube(0, 1)));
    assertTrue(refusal.where().startsWith("size XXL"), refusal.where());
    assertThrows(DraftingException.class, () -> run.then("S", steps));
    assertThrows(DraftingException.class, () -> run.dimensions("XL"));
    assertThrows(DraftingException.class, () -> run.then("XL", Map.of("waist", Length.cm(1))));
  }

  @Test
  void theOrderOfSizesIsPartOfARun() {
    Dimensions small = Dimensions.of().with("girth", Length.cm(60));
    Dimensions large = Dimensions.of().with("girth", Length.cm(70));
    SizeRun up = SizeRun.of("S", small).with("L", large);
    assertEquals("S: girth 60 cm; L: girth 70 cm", up.toString());
    assertNotEquals(up, SizeRun.of("L", large).with("S", small));
    assertThrows(DraftingException.class, () -> up.with(" ", large));
  }

  private static Pattern size(Map<String, Pattern> patterns, String size) {
    return Objects.requireNonNull(patterns.get(size));
  }

  @Test
  void dimensionsReadWell() {
    assertEquals(
        "girth: all round, 40 cm to 120 cm, else 80 cm",
        new Tube(0, 1).dimensions().get(0).toString());
    assertEquals("as usual", Dimensions.of().toString());
    assertEquals(
        "girth 60 cm, ends any",
        Dimensions.of().with("girth", Length.cm(60)).withChoice("ends", "any").toString());
    assertThrows(DraftingException.class, () -> new Choice("ends", List.of()));
    assertThrows(DraftingException.class, () -> new Choice(" ", List.of("any")));
    assertThrows(DraftingException.class, () -> Dimensions.of().length("girth"));
    assertThrows(DraftingException.class, () -> Dimensions.of().choice("ends"));
  }

  @Test
  void theBoundsOfADimensionAreInOrderAndMayBeOne() {
    assertEquals("a: b, 1 cm to 1 cm, else 1 cm", length("a", 1, 1, 1).toString());
    assertThrows(DraftingException.class, () -> length("a", 2, 1, 3));
    assertThrows(DraftingException.class, () -> length("a", 1, 3, 2));
    assertThrows(DraftingException.class, () -> length(" ", 1, 2, 3));
  }

  private static Dimension length(String name, double least, double usual, double most) {
    return Dimension.length(name, "b", Length.cm(least), Length.cm(usual), Length.cm(most));
  }

  @Test
  void dimensionsAreWhatWasSaid() {
    Dimensions said = Dimensions.of().with("girth", Length.cm(60)).withChoice("ends", "any");
    assertEquals("any", said.choice("ends"));
    assertEquals(Map.of("girth", Length.cm(60)), said.lengths());
    assertEquals(said, SerialCopy.of(said));
    assertEquals(said.hashCode(), SerialCopy.of(said).hashCode());
    Dimensions otherwise = said.withChoice("ends", "straight");
    assertNotEquals(said, otherwise);
    assertNotEquals(said, said.with("girth", Length.cm(61)));
    assertNotEquals(said.hashCode(), otherwise.hashCode());
    assertNotEquals(said, new Object());
  }
}
