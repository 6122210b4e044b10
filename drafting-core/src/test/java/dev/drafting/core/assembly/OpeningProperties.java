package dev.drafting.core.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Vests;
import dev.drafting.core.pattern.Vests.Half;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * The turning of openings. In cloth that is sewn flat, by the theorem of Gauss and Bonnet (do
 * Carmo, Differential Geometry of Curves and Surfaces, section 4-5; quoted from memory), the
 * turnings of all openings add up to -2 pi times the Euler characteristic, and those of a vest
 * follow from its shoulder slopes and side flares alone.
 */
class OpeningProperties {

  /** A random vest: its halves may have any curves at neck, armhole and hem. */
  record Vest(Half front, Half back, Assembly assembly) {}

  @Provide
  Arbitrary<Vest> vests() {
    Arbitrary<Double> slope = Arbitraries.doubles().between(0, 35);
    Arbitrary<Double> flare = Arbitraries.doubles().between(-12, 25);
    Arbitrary<Double> depth = Arbitraries.doubles().between(20, 160);
    Arbitrary<Half> half =
        Combinators.combine(slope, flare, depth).as((s, f, d) -> new Half(s, f, d, 30));
    Arbitrary<Double> mm = Arbitraries.doubles().between(-15, 15);
    Arbitrary<Vector[]> bends =
        Combinators.combine(mm, mm).as(Vector::new).array(Vector[].class).ofSize(6);
    return Combinators.combine(half, bends, half, bends)
        .as(
            (front, a, back, b) -> {
              Piece one = Vests.piece("front", front, a);
              Piece other = Vests.piece("back", back, b);
              return new Vest(front, back, Assembly.of(Vests.joined(one, other)));
            });
  }

  private static double turning(Vest vest, String opening) {
    return vest.assembly().opening(opening).turning().toDegrees();
  }

  @Property(tries = 200)
  void openingsTurnBySlopesAndFlaresAlone(@ForAll("vests") Vest vest) {
    double slopes = vest.front().slope() + vest.back().slope();
    double flares = vest.front().flare() + vest.back().flare();
    assertEquals(360 - 2 * slopes, turning(vest, "neck"), 1e-7);
    assertEquals(180 + slopes + flares, turning(vest, "armhole (right)"), 1e-7);
    assertEquals(180 + slopes + flares, turning(vest, "armhole (left)"), 1e-7);
    assertEquals(-2 * flares, turning(vest, "hem"), 1e-7);
    double sum =
        vest.assembly().openings().stream().mapToDouble(o -> o.turning().toDegrees()).sum();
    assertEquals(-2, vest.assembly().eulerCharacteristic());
    assertEquals(720, sum, 1e-7);
  }

  @Property(tries = 100)
  void smoothOpeningsChangeByDistanceTimesTurning(
      @ForAll("smoothVests") Vest vest, @ForAll("bandWidths") double width) {
    for (String name : new String[] {"neck", "armhole (left)", "hem"}) {
      Opening opening = vest.assembly().opening(name);
      double expected = opening.length().toMm() + width * opening.turning().toRadians();
      assertEquals(expected, opening.lengthAt(Length.mm(-width)).toMm(), 0.02, name);
    }
  }

  @Provide
  Arbitrary<Double> bandWidths() {
    return Arbitraries.doubles().between(-12, 14);
  }

  @Provide
  Arbitrary<Vest> smoothVests() {
    Arbitrary<Half> half =
        Combinators.combine(
                Arbitraries.doubles().between(5, 30),
                Arbitraries.doubles().between(0, 10),
                Arbitraries.doubles().between(90, 130))
            .as((s, f, d) -> new Half(s, f, d, 0));
    return Combinators.combine(half, half)
        .as((front, back) -> new Vest(front, back, Assembly.of(Vests.of(front, back))));
  }
}
