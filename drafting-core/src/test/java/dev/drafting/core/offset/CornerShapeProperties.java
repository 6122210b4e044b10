package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** Identities of the closed form for mitres between unequal distances. */
class CornerShapeProperties {
  private static CornerShape shape(double heading, double turn, double dA, double dB) {
    Vector a = Vector.at(Angle.degrees(heading));
    Vector b = Vector.at(Angle.degrees(heading + turn));
    return CornerShape.of(new Point(3, -2), a, b, dA, dB);
  }

  private static double off(Point point, Point corner, Vector way) {
    return point.minus(corner).dot(Parallels.outward(way));
  }

  @Property
  void theTipLiesAtBothDistances(
      @ForAll @DoubleRange(max = 360) double heading,
      @ForAll @DoubleRange(min = -170, max = 170) double turn,
      @ForAll @DoubleRange(min = -40, max = 40) double dA,
      @ForAll @DoubleRange(min = -40, max = 40) double dB) {
    Assume.that(Math.abs(turn) > 1);
    CornerShape shape = shape(heading, turn, dA, dB);
    Point tip = shape.tip();
    double scale = Math.max(1, shape.tipDistance());
    assertEquals(dA, off(tip, shape.corner(), shape.wayA()), 1e-12 * scale);
    assertEquals(dB, off(tip, shape.corner(), shape.wayB()), 1e-12 * scale);
  }

  @Property
  void theTipOfEqualDistancesLiesAtDistanceOverSineOfHalfTheAngle(
      @ForAll @DoubleRange(max = 360) double heading,
      @ForAll @DoubleRange(min = -179, max = 179) double turn,
      @ForAll @DoubleRange(min = -40, max = 40) double d) {
    double inside = Math.toRadians(180 - turn);
    double expected = Math.abs(d) / Math.sin(inside / 2);
    double found = shape(heading, turn, d, d).tipDistance();
    assertEquals(expected, found, 1e-11 * Math.max(1, expected));
  }

  @Property
  void theTipFollowsTheAlgebraOfUnitNormals(
      @ForAll @DoubleRange(min = 5, max = 170) double turn,
      @ForAll @DoubleRange(min = -40, max = 40) double dA,
      @ForAll @DoubleRange(min = -40, max = 40) double dB) {
    CornerShape shape = shape(20, turn, dA, dB);
    double c = shape.outwardA().dot(shape.outwardB());
    double square = (dA * dA + dB * dB - 2 * c * dA * dB) / (1 - c * c);
    assertEquals(Math.sqrt(square), shape.tipDistance(), 1e-9 * Math.max(1, square));
  }
}
