package dev.drafting.core.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Where a piece may lie on its strip, against a search of all lines of a repeat. */
class RoomProperties {
  /** A rectangle whose origin lies inside it, 2 from its left and 3 from its lower side. */
  private static TurnedShape rectangle(double along, double across) {
    return TurnedShape.of(
        new double[] {-2, -3, along - 2, -3, along - 2, across - 3, -2, across - 3});
  }

  private static OptionalDouble nearest(
      double place, double least, double most, double repeat, double phase) {
    return IntStream.rangeClosed(-400, 400)
        .mapToDouble(line -> line * repeat + phase)
        .filter(line -> line >= least && line <= most)
        .boxed()
        .min((a, b) -> Double.compare(Math.abs(a - place), Math.abs(b - place)))
        .map(OptionalDouble::of)
        .orElse(OptionalDouble.empty());
  }

  @Property(tries = 300)
  void aPieceLiesOnTheNearestLineOfTheRepeatThatLeavesItOnTheCloth(
      @ForAll @DoubleRange(min = -50, max = 200) double place,
      @ForAll @DoubleRange(min = 5, max = 100) double across,
      @ForAll @DoubleRange(min = 1, max = 40) double repeat,
      @ForAll @DoubleRange(min = -7, max = 7) double phase) {
    TurnedShape shape = rectangle(10, across);
    Room room = new Room(0, 10, 110, false, 0, 0, repeat, phase);
    OptionalDouble nearest = nearest(place, 10 + 3, 110 + 3 - across, repeat, phase);
    assertEquals(nearest.isPresent(), room.fits(shape, 50));
    nearest.ifPresent(
        line -> assertEquals(Math.abs(line - place), Math.abs(room.y(shape, place) - place), 1e-9));
  }

  @Property(tries = 300)
  void alongTheClothToo(
      @ForAll @DoubleRange(min = -50, max = 200) double place,
      @ForAll @DoubleRange(min = 5, max = 60) double along,
      @ForAll @DoubleRange(min = 1, max = 30) double repeat,
      @ForAll @DoubleRange(min = -7, max = 7) double phase) {
    TurnedShape shape = rectangle(along, 10);
    Room room = new Room(0, 0, 100, false, repeat, phase, 0, 0);
    double line = nearest(place, 2, 120 + 2 - along, repeat, phase).orElseThrow();
    assertEquals(Math.abs(line - place), Math.abs(room.x(shape, place, 120) - place), 1e-9);
  }

  /** Without a repeat a piece stays where it is, or is moved onto the cloth. */
  @Test
  void aPieceOffTheClothIsMovedOntoIt() {
    TurnedShape shape = rectangle(10, 20);
    Room room = Room.anywhere(0, 100);
    assertEquals(50, room.y(shape, 50));
    assertEquals(3, room.y(shape, -9));
    assertEquals(83, room.y(shape, 99));
    assertEquals(2, room.x(shape, 0, 200));
    assertEquals(192, room.x(shape, 300, 200));
    assertTrue(room.fits(rectangle(200, 100), 200));
    assertFalse(room.fits(rectangle(200, 100.1), 200));
    assertFalse(room.fits(rectangle(200.1, 100), 200));
  }

  /** What is drawn upwards from its fold lies on the lower fold, the rest on the upper one. */
  @Test
  void aPieceOnTheFoldLiesOnIt() {
    Room room = new Room(0, 5, 95, true, 0, 0, 0, 0);
    TurnedShape upwards = TurnedShape.of(new double[] {0, 0, 10, 0, 10, 20, 0, 20});
    assertEquals(5, room.y(upwards, 50));
    assertEquals(95, room.y(upwards.turned(180), 50));
  }

  /** No layout is shorter than its longest piece, nor than all pieces on one fold together. */
  @Property(tries = 50)
  void piecesOnOneFoldLieOneBehindTheOther(
      @ForAll @IntRange(min = 1, max = 5) int onFold,
      @ForAll @DoubleRange(min = 10, max = 90) double along) {
    TurnedShape half = TurnedShape.of(new double[] {0, 0, 30, 0, 30, 20, 0, 20});
    TurnedShape free = TurnedShape.of(new double[] {0, 0, along, 0, along, 5, 0, 5});
    List<Room> rooms =
        IntStream.rangeClosed(0, onFold)
            .mapToObj(i -> i == 0 ? Room.anywhere(0, 40) : new Room(1, 0, 40, true, 0, 0, 0, 0))
            .toList();
    StripProblem oneFold =
        new StripProblem(
            List.of(new TurnedShape[] {free}, new TurnedShape[] {half}), rooms, List.of(), 40);
    assertEquals(Math.max(along, 30 * onFold), oneFold.longest(), 1e-9);
    assertEquals(along * 5 + onFold * 600, oneFold.area(), 1e-9);
    StripProblem twoFolds =
        new StripProblem(
            List.of(new TurnedShape[] {free}, new TurnedShape[] {half, half.turned(180)}),
            rooms,
            List.of(),
            40);
    assertEquals(Math.max(along, 30), twoFolds.longest(), 1e-9);
  }

  @Test
  void aSearchEndsWhenItIsToldTo() {
    TimeBudget hour = new TimeBudget(Duration.ofHours(1));
    hour.tell(news -> true, "shorter");
    assertTrue(hour.spent() < 1);
    hour.tell(news -> false, "shorter");
    hour.tell(news -> true, "shorter");
    assertEquals(1, hour.spent());
    TimeBudget other = new TimeBudget(Duration.ofHours(1));
    Thread.currentThread().interrupt();
    assertEquals(1, other.spent());
    assertTrue(Thread.interrupted(), "it is left to whoever interrupted");
    assertTrue(other.spent() < 1);
  }
}
