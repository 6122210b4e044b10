package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import org.junit.jupiter.api.Test;

/** Which stretch of the source is opposite a part of a strand. */
class OriginTest {
  /** y = x² / 20 from x = -30 to 30. */
  private static final Cubic PARABOLA = Outlines.cubic(-30, 45, -10, -15, 10, -15, 30, 45);

  private static Point beside(Cubic source, double t, double distance) {
    Vector way = source.directionAt(t);
    return source.pointAt(t).plus(Parallels.outward(way).times(distance));
  }

  @Test
  void aPartOfALineIsOppositeTheFeetOfItsEnds() {
    Line side = new Line(new Point(10, 20), new Point(70, 100));
    Origin whole = new Origin(side, 3, 0, 1);
    Vector out = new Vector(8, -6);
    Origin part = whole.between(0.1, side.pointAt(0.3).plus(out), 0.8, side.pointAt(0.6).plus(out));
    assertEquals(3, part.index());
    assertEquals(0.3, part.from(), 1e-12);
    assertEquals(0.6, part.to(), 1e-12);
  }

  @Test
  void itNeverReachesBeyondTheStretch() {
    Line side = new Line(new Point(10, 20), new Point(70, 100));
    Origin stretch = new Origin(side, 0, 0.25, 0.75);
    Origin part = stretch.between(0.1, side.pointAt(0.1), 0.9, side.pointAt(0.9));
    assertEquals(0.25, part.from());
    assertEquals(0.75, part.to());
    Origin turned = stretch.between(0.1, side.pointAt(0.6), 0.9, side.pointAt(0.4));
    assertEquals(0.6, turned.from(), 1e-12);
    assertEquals(turned.from(), turned.to());
  }

  @Test
  void fromTheEndsItselfItIsTheStretchUnchanged() {
    Origin stretch = new Origin(PARABOLA, 1, 0.125, 0.875);
    Point anywhere = new Point(0, 0);
    assertEquals(stretch, stretch.between(0, anywhere, 1, anywhere));
  }

  @Test
  void aPartOfAnArcIsOppositeTheSameShare() {
    Origin stretch = new Origin(Outlines.arc(0, 0, 50, 0, 90), 0, 0.2, 0.6);
    Origin part = stretch.between(0.25, new Point(1, 2), 0.75, new Point(3, 4));
    assertEquals(0.3, part.from(), 1e-15);
    assertEquals(0.5, part.to(), 1e-15);
  }

  /** On both sides, near the radius of 10 mm at the vertex and well within it. */
  @Test
  void aPartOfACurveIsOppositeTheFeetOfThePerpendiculars() {
    for (double distance : new double[] {-9.9, -5, 3, 40}) {
      Origin stretch = new Origin(PARABOLA, 0, 0, 1);
      for (double t : new double[] {0.05, 0.3, 0.45, 0.5}) {
        Point from = beside(PARABOLA, t, distance);
        Point to = beside(PARABOLA, 0.9, distance);
        Origin part = stretch.between(0.2, from, 0.8, to);
        assertEquals(t, part.from(), 1e-9);
        assertEquals(0.9, part.to(), 1e-9);
      }
    }
  }

  /** Beyond the radius there are other feet; the one in the stretch is meant. */
  @Test
  void theFootStaysWithinTheStretch() {
    Origin first = new Origin(PARABOLA, 0, 0, 0.3);
    Origin last = new Origin(PARABOLA, 0, 0.7, 1);
    for (double t : new double[] {0.02, 0.1, 0.2, 0.28}) {
      assertEquals(
          t, first.between(0.5, beside(PARABOLA, t, -14), 1, new Point(0, 0)).from(), 1e-9);
      Point other = beside(PARABOLA, 1 - t, -14);
      assertEquals(1 - t, last.between(0.5, other, 1, new Point(0, 0)).from(), 1e-9);
    }
  }

  @Test
  void aStraightContinuationIsOppositeAnEndOnly() {
    Origin stretch = new Origin(PARABOLA, 2, 0.25, 0.75);
    assertEquals(new Origin(PARABOLA, 2, 0.75, 0.75), stretch.endOnly(true));
    assertEquals(new Origin(PARABOLA, 2, 0.25, 0.25), stretch.endOnly(false));
    Origin end = stretch.endOnly(true);
    Origin part = end.between(0.3, new Point(100, 100), 0.6, new Point(200, 100));
    assertEquals(0.75, part.from());
    assertEquals(0.75, part.to());
  }

  @Test
  void aFittedPointIsBroughtBackToTheTrueParallel() {
    Origin stretch = new Origin(PARABOLA, 0, 0.1, 0.9);
    for (double t : new double[] {0.15, 0.4, 0.5, 0.62, 0.85}) {
      Point truly = beside(PARABOLA, t, 6);
      Point fitted = beside(PARABOLA, t, 6.01);
      assertEquals(0, stretch.parallel(fitted, 6).distanceTo(truly).toMm(), 1e-9);
    }
  }

  @Test
  void besideLinesArcsAndEndsAPointIsWhereItIs() {
    Point fitted = new Point(12.5, 7);
    Line side = new Line(new Point(10, 20), new Point(70, 100));
    assertSame(fitted, new Origin(side, 0, 0, 1).parallel(fitted, 6));
    Origin arc = new Origin(Outlines.arc(0, 0, 50, 0, 90), 0, 0, 1);
    assertSame(fitted, arc.parallel(fitted, 6));
    assertSame(fitted, new Origin(PARABOLA, 0, 1, 1).parallel(fitted, 6));
  }
}
