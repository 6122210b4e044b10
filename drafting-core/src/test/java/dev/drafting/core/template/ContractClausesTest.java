package dev.drafting.core.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ContractClausesTest {

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

  /** What is right everywhere but at the end of a bound is found there. */
  @Test
  void theBoundsThemselvesAreTried() {
    List<String> violations = TemplateContract.check(new BrokenAtItsBound(), 1, 1);
    assertEquals(
        List.of("tube: it cannot be as long as that (length 90 cm)"),
        violations.stream().map(v -> v.replace(". Found: 90 cm. Accepted: less.", "")).toList());
  }

  /** A tube that is no longer than this share of its girth; longer ones cannot be drawn. */
  private static final class ShortTube extends Tube {
    private static final long serialVersionUID = 1L;
    private final double share;
    private final String named;

    ShortTube(double share, String named) {
      super(0, 1);
      this.share = share;
      this.named = named;
    }

    @Override
    public void check(Dimensions given) {
      Length most = given.length("girth").times(share);
      if (given.length("length").compareTo(most) > 0) {
        throw DraftingException.of("the tube is too long for its girth")
            .at(named)
            .value(given.length("length").text(LengthUnit.CM, 1))
            .accepted(most.text(LengthUnit.CM, 1) + " or less");
      }
    }
  }

  /** Where dimensions do not go together, the nearest that do are tried. */
  @Test
  void dimensionsThatDoNotGoTogetherArePassedBy() {
    Tube tube = new ShortTube(1.3, "length");
    assertEquals(List.of(), TemplateContract.check(tube, 1, 200));
    Dimensions slim = Dimensions.of().with("girth", Length.cm(44)).with("length", Length.cm(82));
    DraftingException e = assertThrows(DraftingException.class, () -> tube.pattern(slim));
    assertEquals("tube: length", e.where());
    assertEquals("57.2 cm or less", e.accepted());
    Dimensions suited = slim.suitedTo(tube);
    assertTrue(suited.length("length").compareTo(suited.length("girth").times(1.3)) <= 0);
    assertTrue(suited.length("length").compareTo(Length.cm(50)) > 0);
    assertEquals(suited, suited.suitedTo(tube));
  }

  @Test
  void aRefusalThatNamesNoDimensionIsTold() {
    List<String> violations = TemplateContract.check(new ShortTube(1.3, "somewhere"), 1, 100);
    assertTrue(
        violations.get(0).startsWith("the refusal names no dimension: somewhere: the tube"),
        violations.toString());
  }

  /** Neither may the bounds be mostly out of reach, nor one of them with the rest as usual. */
  @Test
  void boundsThatCannotBeReachedAreTold() {
    List<String> violations = TemplateContract.check(new ShortTube(0.63, "length"), 1, 100);
    assertTrue(violations.get(0).startsWith("its bounds are too wide: "), violations.toString());
    assertTrue(violations.get(1).startsWith("tube: length: the tube is too long"));
  }

  /** What a test by JUnit says of a template that does not keep its contract. */
  @Test
  void aTestOfATemplateTellsWhatItDoesNotKeep() {
    TemplateContractTest kept = () -> new Tube(0, 1);
    kept.keepsTheContract();
    assertEquals(200, kept.tries());
    assertEquals(1, kept.seed());
    TemplateContractTest broken = () -> new Tube(1, 1);
    AssertionError e = assertThrows(AssertionError.class, broken::keepsTheContract);
    assertTrue(
        String.valueOf(e.getMessage())
            .startsWith("The template tube does not keep its contract:\nthe sides of seam side"),
        e.getMessage());
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

  private static class Uneven extends Remembering {
    private static final long serialVersionUID = 1L;

    @Override
    public boolean growsEvenly() {
      return false;
    }
  }

  /**
   * A Latin hypercube has one value in each of as many equal parts of the bounds as it has sets.
   */
  @Test
  void everyPartOfTheBoundsIsTriedOnce() {
    Uneven tube = new Uneven();
    assertEquals(List.of(), TemplateContract.check(tube, 7, 20));
    List<Dimensions> sample =
        tube.drawn.stream().filter(ContractClausesTest::isWithin).distinct().toList();
    assertEquals(20, sample.size());
    assertEquals(20, parts(sample, "girth", 400, 40));
    assertEquals(20, parts(sample, "length", 200, 35));
    assertEquals(10, sample.stream().filter(d -> d.choice("ends").equals("any")).count());
    Uneven other = new Uneven();
    assertEquals(List.of(), TemplateContract.check(other, 8, 20));
    assertTrue(sample.stream().noneMatch(other.drawn::contains));
    List<Double> girths = sample.stream().map(d -> d.length("girth").toMm()).toList();
    assertNotEquals(girths.stream().sorted().toList(), girths);
  }

  private static boolean isWithin(Dimensions given) {
    Length length = given.length("length");
    return List.of(Length.cm(20), Length.cm(50), Length.cm(90)).stream().noneMatch(length::equals);
  }

  private static long parts(List<Dimensions> sample, String name, double least, double part) {
    return sample.stream()
        .map(given -> Math.floor((given.length(name).toMm() - least) / part))
        .filter(at -> at >= 0 && at < sample.size())
        .distinct()
        .count();
  }

  /** A tube that is not asked whether it grows evenly. */
  private static class UnevenTube extends Tube {
    private static final long serialVersionUID = 1L;

    UnevenTube(double spoilt, double share) {
      super(spoilt, share);
    }

    @Override
    public boolean growsEvenly() {
      return false;
    }
  }

  @Test
  void seamsMatchToAHundredthOfAMillimetreLessTheirEase() {
    assertEquals(List.of(), TemplateContract.check(new UnevenTube(0.009, 1), 1, 2));
    assertTrue(firstOf(new Tube(0.011, 1)).startsWith("the sides of seam side differ by -0.01"));
    assertTrue(firstOf(new Tube(-1, 1)).startsWith("the sides of seam side differ by 1"));
    assertEquals(
        List.of(),
        TemplateContract.check(
            new UnevenTube(2, 1) {
              private static final long serialVersionUID = 1L;

              @Override
              public Pattern draw(Dimensions given) {
                Seam eased = Seam.of("side", "front side", "back side").withEase(Length.mm(-2));
                return Pattern.of("tube", super.draw(given).pieces(), List.of(eased));
              }
            },
            1,
            2));
  }

  private static String firstOf(GarmentTemplate template) {
    return TemplateContract.check(template, 1, 2).get(0);
  }

  @Test
  void noMoreThanTwentyViolationsAreTold() {
    assertEquals(20, TemplateContract.check(new Tube(1, 1), 1, 30).size());
  }

  @Test
  void aTemplateHasAnIdAndDimensions() {
    GarmentTemplate nameless =
        new Tube(0, 1) {
          private static final long serialVersionUID = 1L;

          @Override
          public String id() {
            return " ";
          }
        };
    assertEquals(List.of("it has no id or no dimensions"), TemplateContract.check(nameless, 1, 2));
    GarmentTemplate fixed =
        new Tube(0, 1) {
          private static final long serialVersionUID = 1L;

          @Override
          public List<Dimension> dimensions() {
            return List.of();
          }

          @Override
          public Pattern draw(Dimensions given) {
            return new Tube(0, 1).pattern();
          }
        };
    assertEquals(List.of("it has no id or no dimensions"), TemplateContract.check(fixed, 1, 2));
  }

  /** A girth that is all but its most is not tried with more than the most. */
  @Test
  void moreGirthIsAskedForWithinTheBounds() {
    assertEquals(List.of(), TemplateContract.check(girth(110, 110.5, 111), 1, 2));
    assertEquals(List.of(), TemplateContract.check(girth(110, 110, 110), 1, 2));
  }

  /**
   * What counts is the cloth of all pieces as often as they are cut: two halves that are 1 mm wider
   * do not make up for two linings that are 1.5 mm narrower each.
   */
  @Test
  void widthIsThatOfAllPiecesAsOftenAsTheyAreCut() {
    assertEquals(List.of(), TemplateContract.check(new Lined(0.9), 1, 2));
    String told = TemplateContract.check(new Lined(1.5), 1, 2).get(0);
    assertTrue(told.startsWith("more girth does not make the pieces wider"), told);
  }

  /** A tube with a pair of linings that are narrower by so much where its halves are 1 mm wider. */
  private static final class Lined extends Tube {
    private static final long serialVersionUID = 1L;
    private final double shrinking;

    Lined(double shrinking) {
      super(0, 1);
      this.shrinking = shrinking;
    }

    @Override
    public boolean growsEvenly() {
      return false;
    }

    @Override
    public Pattern draw(Dimensions given) {
      Pattern tube = super.draw(given);
      double width = 500 - shrinking * given.length("girth").toMm() / 4;
      Piece lining =
          Piece.of("lining", half("lining", width, given.length("length").toMm()).edges())
              .withCutting(Cutting.onFold(2));
      List<Piece> pieces = new ArrayList<>(tube.pieces());
      pieces.add(lining);
      return Pattern.of(tube.name(), pieces, tube.seams());
    }
  }

  private static GarmentTemplate girth(double least, double usual, double most) {
    return new Tube(0, 1) {
      private static final long serialVersionUID = 1L;

      @Override
      public List<Dimension> dimensions() {
        return List.of(
            Dimension.girth(
                "girth", "all round", Length.cm(least), Length.cm(usual), Length.cm(most)),
            super.dimensions().get(1));
      }
    };
  }

  /** A template that looks at nothing draws a millimetre beyond each bound. */
  @Test
  void whatIsBeyondTheBoundsIsRefusedByItsName() {
    GarmentTemplate careless =
        new Tube(0, 1) {
          private static final long serialVersionUID = 1L;

          @Override
          public Pattern pattern(Dimensions given) {
            Dimensions all = Dimensions.of().with("girth", Length.cm(80));
            for (String name : List.of("girth", "length")) {
              all = all.with(name, given.lengths().getOrDefault(name, Length.cm(50)));
            }
            return draw(all);
          }
        };
    assertEquals(
        List.of(
            "it draws tube beyond the bounds of girth (girth 39.9 cm)",
            "it draws tube beyond the bounds of girth (girth 120.1 cm)",
            "it draws tube beyond the bounds of length (length 19.9 cm)",
            "it draws tube beyond the bounds of length (length 90.1 cm)"),
        TemplateContract.check(careless, 1, 2));
    GarmentTemplate vague =
        new Tube(0, 1) {
          private static final long serialVersionUID = 1L;

          @Override
          public Pattern pattern(Dimensions given) {
            try {
              return super.pattern(given);
            } catch (DraftingException e) {
              throw DraftingException.of("no").accepted("another");
            }
          }
        };
    assertEquals(
        "the refusal does not name girth (girth 39.9 cm)",
        TemplateContract.check(vague, 1, 2).get(0));
    assertEquals(4, TemplateContract.check(vague, 1, 2).size());
  }

  @Test
  void theSamePatternIsDrawnEveryTime() {
    List<String> told =
        TemplateContract.check(
            new Uneven() {
              private static final long serialVersionUID = 1L;

              @Override
              public Pattern draw(Dimensions given) {
                Pattern tube = super.draw(given);
                return tube.withVersion("draft " + drawn.size());
              }
            },
            1,
            1);
    assertEquals(5, told.size());
    assertTrue(told.get(0).startsWith("it draws another pattern the second time (girth "));
    assertEquals("it draws another pattern the second time (girth 40 cm)", told.get(1));
  }

  @Test
  void outlinesDoNotCrossThemselves() {
    String told =
        firstOf(
            new Uneven() {
              private static final long serialVersionUID = 1L;

              @Override
              public Pattern draw(Dimensions given) {
                double width = given.length("girth").toMm();
                Piece bow =
                    Piece.of(
                        "bow",
                        List.of(
                            Edge.of("hem", Curve.line(new Point(0, 0), new Point(width, 0))),
                            Edge.of("one", Curve.line(new Point(width, 0), new Point(50, 500))),
                            Edge.of("top", Curve.line(new Point(50, 500), new Point(200, 500))),
                            Edge.of("other", Curve.line(new Point(200, 500), new Point(0, 0)))));
                return Pattern.of("bow", List.of(bow), List.of());
              }
            });
    assertTrue(told.startsWith("the outline of bow crosses itself (girth "), told);
  }

  @Test
  void theUsualDimensionsAreDrawn() {
    List<String> told =
        TemplateContract.check(
            new Uneven() {
              private static final long serialVersionUID = 1L;

              @Override
              public Pattern draw(Dimensions given) {
                if (given.length("girth").equals(Length.cm(80))) {
                  throw DraftingException.of("not as wide as that").accepted("another");
                }
                return super.draw(given);
              }
            },
            1,
            2);
    assertEquals(
        "tube: not as wide as that. Accepted: another. (as usual)", told.get(0), told.toString());
  }

  /** Hems that run down to the sides meet there at an angle, which is worse than a note. */
  @Test
  void whatIsFoundWhereThePiecesAreJoinedIsTold() {
    String told =
        firstOf(
            new Uneven() {
              private static final long serialVersionUID = 1L;

              @Override
              public Pattern draw(Dimensions given) {
                double width = given.length("girth").toMm() / 4;
                double length = given.length("length").toMm();
                return Pattern.of(
                    "tube",
                    List.of(pointed("front", width, length), pointed("back", width, length)),
                    List.of(Seam.of("side", "front side", "back side")));
              }
            });
    assertTrue(told.startsWith("WARNING "), told);
  }

  private static Piece pointed(String name, double width, double length) {
    Point corner = new Point(width, -width / 2);
    Point top = new Point(width, length);
    return Piece.of(
        name,
        List.of(
            Edge.of("hem", Curve.line(new Point(0, 0), corner)),
            Edge.of("side", Curve.line(corner, top)),
            Edge.of("top", Curve.line(top, new Point(0, length))),
            Edge.onFold(Curve.line(new Point(0, length), new Point(0, 0)))));
  }
}
