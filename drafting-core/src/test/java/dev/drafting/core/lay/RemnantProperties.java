package dev.drafting.core.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** What is left of a cloth, against a search of all rectangles of whole cells of 20 mm. */
class RemnantProperties {
  private static final int CELL = 20;

  static LayPlan plan(Cloth cloth, double length, List<LaidPiece> pieces) {
    Lay lay = Lay.on(cloth).withStrip("band", Length.mm(100), Length.mm(20));
    return LayPlan.of(lay, pieces, Length.mm(length), List.of());
  }

  static LaidPiece laid(String name, double x, double y, double along, double across) {
    Curve outline =
        Curve.polyline(
            new Point(x, y),
            new Point(x + along, y),
            new Point(x + along, y + across),
            new Point(x, y + across),
            new Point(x, y));
    return LaidPiece.of(name, outline, outline, 1);
  }

  @Property(tries = 200)
  void eachIsTheLargestOfWhatIsLeft(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 3) int least) {
    Random random = new Random(seed);
    List<Box> taken = new ArrayList<>();
    List<LaidPiece> pieces = new ArrayList<>();
    for (int i = random.nextInt(3); i >= 0; i--) {
      Box box = box(random);
      taken.add(box);
      pieces.add(laid("piece", box.minX(), box.minY(), box.width().toMm(), box.height().toMm()));
    }
    Box flaw = box(random);
    Cloth cloth =
        Cloth.of(Length.mm(200))
            .withLength(Length.mm(310))
            .withFlaw(
                new Cloth.Flaw(
                    Length.mm(flaw.minX()), Length.mm(flaw.minY()), flaw.width(), flaw.height()));
    taken.add(flaw);
    boolean[][] free = free(taken, 15, 10);
    for (Remnant remnant : plan(cloth, 300, pieces).remnants(Length.mm(CELL * least))) {
      assertEquals(largest(free, least), cells(remnant.along()) * cells(remnant.across()));
      for (int c = 0; c < cells(remnant.along()); c++) {
        for (int r = 0; r < cells(remnant.across()); r++) {
          int column = cells(remnant.fromEnd()) + c;
          int row = cells(remnant.fromSide()) + r;
          assertTrue(free[column][row], remnant.toString());
          free[column][row] = false;
        }
      }
    }
    assertEquals(0, largest(free, least), "something is left");
  }

  private static Box box(Random random) {
    double x = random.nextInt(280) + 0.5;
    double y = random.nextInt(180) + 0.5;
    return new Box(x, y, x + 1 + random.nextInt(150), y + 1 + random.nextInt(90));
  }

  private static int cells(Length length) {
    return (int) Math.rint(length.toMm() / CELL);
  }

  private static boolean[][] free(List<Box> taken, int columns, int rows) {
    boolean[][] free = new boolean[columns][rows];
    for (int c = 0; c < columns; c++) {
      for (int r = 0; r < rows; r++) {
        double x = c * CELL;
        double y = r * CELL;
        free[c][r] =
            taken.stream()
                .noneMatch(
                    box ->
                        box.minX() <= x + CELL
                            && box.maxX() >= x
                            && box.minY() <= y + CELL
                            && box.maxY() >= y);
      }
    }
    return free;
  }

  /** By trying every rectangle. */
  private static int largest(boolean[][] free, int least) {
    int largest = 0;
    for (int c = 0; c < free.length; c++) {
      for (int r = 0; r < free[c].length; r++) {
        int high = free[c].length - r;
        for (int columns = 1; c + columns <= free.length; columns++) {
          int run = 0;
          while (run < high && free[c + columns - 1][r + run]) {
            run++;
          }
          high = run;
          if (columns >= least && high >= least) {
            largest = Math.max(largest, columns * high);
          }
        }
      }
    }
    return largest;
  }

  /**
   * 290 x 90 mm in the corner of 620 x 200 mm take 15 columns and 5 rows of 20 mm. Beyond them lie
   * 320 mm of the whole width, larger than the 620 mm beside them.
   */
  @Test
  void whatIsLeftBesideAndBeyondAPiece() {
    List<LaidPiece> one = List.of(laid("yoke", 0, 0, 290, 90));
    Cloth cloth = Cloth.of(Length.mm(200)).withLength(Length.mm(620));
    assertEquals(
        "[32 cm long, 20 cm wide, 30 cm from the cut end, 0 cm from the side,"
            + " 30 cm long, 10 cm wide, 0 cm from the cut end, 10 cm from the side]",
        plan(cloth, 290, one).remnants(Length.mm(100)).toString());
    assertEquals(1, plan(cloth, 290, one).remnants(Length.mm(101)).size());
    Cloth crosswise = cloth.bothWays().foldedCrosswise();
    assertEquals(
        "[30 cm long, 10 cm wide, 0 cm from the cut end, 10 cm from the side]",
        plan(crosswise, 580, one).remnants(Length.mm(20)).toString(),
        "on the table lies half the length");
  }
}
