package dev.drafting.core.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The law of scale: what is tried, and what is told. */
class EvenGrowthTest {

  /** A margin that is the same in all sizes breaks the law of scale, unless that is said. */
  @Test
  void aTemplateGrowsEvenlyOrSaysThatItDoesNot() {
    List<String> uneven = TemplateContract.check(new Margined(false), 1, 3);
    assertTrue(
        uneven.get(0).startsWith("front / hem does not grow evenly with the dimensions, by "),
        uneven.toString());
    assertEquals(List.of(), TemplateContract.check(new Margined(true), 1, 50));
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

  /** All dimensions of a pair are larger by one factor: the most is one and a half. */
  @Test
  void pairsGrowByOneAndAHalfWhereTheBoundsLeaveRoom() {
    assertEquals(1.5, factor(new Remembering()), 1e-9);
  }

  @Test
  void pairsGrowByLessWhereTheBoundsLeaveLittleRoom() {
    assertEquals(Math.sqrt(1.21), factor(bounded(60, 72.6)), 1e-9);
    assertEquals(Math.sqrt(1.21), factor(bounded(-72.6, -60)), 1e-9);
    assertEquals(1.5, factor(bounded(-10, 10)), 1e-9);
    assertEquals(1.5, factor(bounded(0, 10)), 1e-9);
    assertEquals(1.5, factor(bounded(-10, 0)), 1e-9);
    assertEquals(1.5, factor(bounded(0, 0)), 1e-9, "nothing grows to nothing");
  }

  @Test
  void withoutRoomTheLawOfScaleIsNotAskedFor() {
    Remembering fixed = bounded(60, 60);
    assertEquals(List.of(), TemplateContract.check(fixed, 1, 2));
    assertTrue(fixed.drawn.stream().allMatch(d -> d.length("more").equals(Length.cm(60))));
  }

  /** The factor of the last pair, the same in all dimensions of all four pairs. */
  private static double factor(Remembering tube) {
    assertEquals(List.of(), TemplateContract.check(tube, 1, 4));
    int end = tube.drawn.size();
    double factor = tube.mm(end - 1, "girth") / tube.mm(end - 2, "girth");
    for (int pair = end - 8; pair < end; pair += 2) {
      for (String name : tube.drawn.get(pair).lengths().keySet()) {
        assertEquals(tube.mm(pair, name) * factor, tube.mm(pair + 1, name), 1e-9);
      }
    }
    return factor;
  }

  /** A tube that is longer by a dimension of these bounds, in centimetres. */
  private static Remembering bounded(double least, double most) {
    return new Remembering() {
      private static final long serialVersionUID = 1L;

      @Override
      public List<Dimension> dimensions() {
        List<Dimension> all = new ArrayList<>(super.dimensions());
        Length usual = Length.cm((least + most) / 2);
        all.add(Dimension.length("more", "below", Length.cm(least), usual, Length.cm(most)));
        return all;
      }

      @Override
      public Pattern draw(Dimensions given) {
        drawn.add(given);
        Length length = given.length("length").plus(given.length("more").abs());
        return new Tube(0, 1).draw(given.with("length", length));
      }
    };
  }

  /** A margin of m on the girth is missing from a quarter of half as much again: m / 8. */
  @Test
  void growthIsEvenToAHundredthOfAMillimetre() {
    assertEquals(List.of(), TemplateContract.check(new WiderBy(0.079), 1, 3));
    String told = TemplateContract.check(new WiderBy(0.081), 1, 3).get(0);
    assertTrue(told.startsWith("front / hem does not grow evenly"), told);
    String more = TemplateContract.check(new WiderBy(80), 1, 3).get(0);
    double by = Double.parseDouble(more.replaceAll(".*, by ([0-9.]+) mm.*", "$1"));
    assertEquals(10, by, 1e-6);
  }

  private static final class WiderBy extends Tube {
    private static final long serialVersionUID = 1L;
    private final double mm;

    WiderBy(double mm) {
      super(0, 1);
      this.mm = mm;
    }

    @Override
    public Pattern draw(Dimensions given) {
      return super.draw(given.with("girth", given.length("girth").plus(Length.mm(mm))));
    }
  }

  /** Where a piece is drawn does not matter. */
  @Test
  void aPieceMayBeDrawnAnywhere() {
    assertEquals(
        List.of(),
        TemplateContract.check(
            new Tube(0, 1) {
              private static final long serialVersionUID = 1L;

              @Override
              public Pattern draw(Dimensions given) {
                Transform away = Transform.translation(new Vector(300, -70));
                List<Piece> pieces = new ArrayList<>();
                for (Piece piece : super.draw(given).pieces()) {
                  pieces.add(
                      Piece.of(
                          piece.name(),
                          piece.edges().stream()
                              .map(edge -> Edge.of(edge.name(), edge.curve().map(away)))
                              .toList()));
                }
                return Pattern.of(
                    "tube", pieces, List.of(Seam.of("side", "front side", "back side")));
              }
            },
            1,
            3));
  }
}
