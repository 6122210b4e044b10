package dev.drafting.core.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class TemplatesTest {

  /** A tube; by how much the back is longer and whether it heeds its width can be spoilt. */
  private static class Tube implements GarmentTemplate {
    private static final long serialVersionUID = 1L;
    private final double spoilt;
    private final double share;

    Tube(double spoilt, double share) {
      this.spoilt = spoilt;
      this.share = share;
    }

    @Override
    public String id() {
      return "tube";
    }

    @Override
    public String about() {
      return "a tube";
    }

    @Override
    public List<Dimension> dimensions() {
      return List.of(
          Dimension.girth("girth", "all round", Length.cm(40), Length.cm(80), Length.cm(120)),
          Dimension.length("length", "along", Length.cm(20), Length.cm(50), Length.cm(90)));
    }

    @Override
    public List<Choice> choices() {
      return List.of(new Choice("ends", List.of("straight", "any")));
    }

    @Override
    public Pattern draw(Dimensions given) {
      double width = given.length("girth").toMm() / 4 * share + (1 - share) * 100;
      double length = given.length("length").toMm();
      return Pattern.of(
          "tube",
          List.of(half("front", width, length), half("back", width, length + spoilt)),
          List.of(Seam.of("side", "front side", "back side")));
    }

    private static Piece half(String name, double width, double length) {
      Point a = new Point(0, 0);
      Point b = new Point(width, 0);
      Point c = new Point(width, length);
      Point d = new Point(0, length);
      return Piece.of(
          name,
          List.of(
              Edge.of("hem", Curve.line(a, b)),
              Edge.of("side", Curve.line(b, c)),
              Edge.of("top", Curve.line(c, d)),
              Edge.onFold(Curve.line(d, a))));
    }
  }

  private static final class OtherTube extends Tube {
    private static final long serialVersionUID = 1L;

    OtherTube() {
      super(0, 1);
    }
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
  }

  private static void refused(String where, Dimensions given) {
    DraftingException refusal =
        assertThrows(DraftingException.class, () -> new Tube(0, 1).pattern(given));
    assertEquals(where, refusal.where());
    assertTrue(!refusal.accepted().isEmpty());
  }

  @Test
  void aTemplateKeepsItsContractOrIsToldWhy() {
    assertEquals(List.of(), TemplateContract.check(new Tube(0, 1), 1, 50));
    List<String> unequal = TemplateContract.check(new Tube(1, 1), 1, 3);
    assertTrue(
        unequal.get(0).startsWith("the sides of seam side differ by -1"), unequal.toString());
    List<String> fixed = TemplateContract.check(new Tube(0, 0), 1, 3);
    assertTrue(
        fixed.get(0).startsWith("more girth does not make the pieces wider"), fixed.toString());
  }

  /** A margin that is the same in all sizes breaks the law of scale, unless that is said. */
  @Test
  void aTemplateGrowsEvenlyOrSaysThatItDoesNot() {
    List<String> uneven = TemplateContract.check(new Margined(false), 1, 3);
    assertTrue(
        uneven.get(0).startsWith("front / hem does not grow evenly with the dimensions, by "),
        uneven.toString());
    assertEquals(List.of(), TemplateContract.check(new Margined(true), 1, 50));
  }

  /** What is right everywhere but at the end of a bound is found there. */
  @Test
  void theBoundsThemselvesAreTried() {
    List<String> violations = TemplateContract.check(new BrokenAtItsBound(), 1, 1);
    assertEquals(
        List.of("tube: it cannot be as long as that (length 90 cm)"),
        violations.stream().map(v -> v.replace(". Found: 90 cm. Accepted: less.", "")).toList());
  }

  private static final class Margined extends Tube {
    private static final long serialVersionUID = 1L;
    private final boolean said;

    Margined(boolean said) {
      super(0, 1);
      this.said = said;
    }

    @Override
    public boolean growsEvenly() {
      return !said;
    }

    @Override
    public Pattern draw(Dimensions given) {
      return super.draw(given.with("girth", given.length("girth").plus(Length.mm(40))));
    }
  }

  private static final class BrokenAtItsBound extends Tube {
    private static final long serialVersionUID = 1L;

    BrokenAtItsBound() {
      super(0, 1);
    }

    @Override
    public Pattern draw(Dimensions given) {
      if (given.length("length").equals(Length.cm(90))) {
        throw DraftingException.of("it cannot be as long as that")
            .value(given.length("length").text(LengthUnit.CM))
            .accepted("less");
      }
      return super.draw(given);
    }
  }

  @Test
  void twoTemplatesOfOneIdAreRefusedByName() {
    Templates one = Templates.of(new Tube(0, 1));
    DraftingException refusal =
        assertThrows(DraftingException.class, () -> one.with(new OtherTube()));
    assertTrue(refusal.what().contains("$Tube and "), refusal.what());
    assertTrue(refusal.what().endsWith("$OtherTube"), refusal.what());
    assertEquals(List.of("tube"), one.ids());
    assertEquals("tube", one.toString());
    assertEquals(one, SerialCopy.of(one));
    assertNotEquals(one, Templates.of(new OtherTube()));
    assertEquals("tube", assertThrows(DraftingException.class, () -> one.get("cone")).accepted());
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
    DraftingException refusal =
        assertThrows(
            DraftingException.class,
            () -> run.then("XXL", Map.of("girth", Length.cm(90))).patterns(new Tube(0, 1)));
    assertTrue(refusal.where().startsWith("size XXL"), refusal.where());
    assertThrows(DraftingException.class, () -> run.then("S", steps));
    assertThrows(DraftingException.class, () -> run.dimensions("XL"));
    assertThrows(DraftingException.class, () -> run.then("XL", Map.of("waist", Length.cm(1))));
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
    assertThrows(
        DraftingException.class,
        () -> Dimension.length("x", "x", Length.cm(2), Length.cm(1), Length.cm(3)));
    assertThrows(DraftingException.class, () -> new Choice("ends", List.of()));
    assertThrows(DraftingException.class, () -> Dimensions.of().length("girth"));
    assertThrows(DraftingException.class, () -> Dimensions.of().choice("ends"));
  }
}
