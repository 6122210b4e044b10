package dev.drafting.core.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.cut.CutPlan;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Vests;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Every constraint of random lays, looked at on the plan that is given out, by distances of JTS,
 * apart from the code that places and from its own last check. {@code -Dlays=10000} takes more.
 */
class LayProperties {
  private static final GeometryFactory JTS = new GeometryFactory();
  private static final int LAYS = Integer.getInteger("lays", 60);

  @Property(tries = 1)
  void everyConstraintHolds(@ForAll long seed) {
    int planned = 0;
    for (int i = 0; i < LAYS; i++) {
      Random random = new Random(seed + i);
      Cloth cloth = cloth(random);
      Vests.Half front = new Vests.Half(20, between(random, 0, 6), between(random, 60, 140), 0);
      Lay lay =
          Lay.on(cloth)
              .with(CutPlan.of(Vests.of(front, Vests.BACK)).pieces())
              .withStrip("band", Length.mm(between(random, 200, 900)), Length.cm(4))
              .withGrainWithin(Angle.degrees(random.nextInt(4)));
      LayPlan plan;
      try {
        plan = lay.plan(seed, random.nextInt(4));
      } catch (DraftingException tooNarrow) {
        assertTrue(!tooNarrow.where().isEmpty(), tooNarrow.getMessage());
        continue;
      }
      planned++;
      check(plan);
    }
    assertTrue(planned > LAYS / 2, planned + " planned");
  }

  private static double between(Random random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private static Cloth cloth(Random random) {
    Cloth cloth =
        Cloth.of(Length.mm(between(random, 1100, 1700))).withEdge(Length.mm(random.nextInt(20)));
    if (random.nextBoolean()) {
      cloth = cloth.bothWays();
    }
    if (random.nextInt(3) == 0) {
      cloth = cloth.withSpacing(Length.mm(between(random, 0, 20)));
    }
    if (random.nextInt(3) == 0) {
      cloth = cloth.withRepeat(Length.mm(between(random, 10, 80)), Length.ZERO);
    }
    if (random.nextInt(3) == 0) {
      Length place = Length.mm(between(random, 0, 400));
      cloth = cloth.withFlaw(new Cloth.Flaw(place, place, Length.cm(6), Length.cm(3)));
    }
    return switch (random.nextInt(6)) {
      case 0 -> cloth.foldedLengthwise();
      case 1 -> cloth.foldedToTheMiddle();
      case 2 -> cloth.foldedOver(Length.mm(between(random, 250, 400)));
      case 3 -> cloth.tubular();
      case 4 -> cloth.isOneWay() ? cloth : cloth.foldedCrosswise();
      default -> cloth;
    };
  }

  private static void check(LayPlan plan) {
    Cloth cloth = plan.cloth();
    List<Geometry> shapes = new ArrayList<>();
    double end = 0;
    for (LaidPiece piece : plan.pieces()) {
      Geometry shape = shape(piece);
      Envelope box = shape.getEnvelopeInternal();
      assertTrue(box.getMinX() > -1e-6 && box.getMinY() > -1e-6, piece + " on " + cloth);
      assertTrue(box.getMaxY() < cloth.tableWidth().toMm() + 1e-6, piece + " on " + cloth);
      assertTrue(!piece.isTurned() || !cloth.isOneWay(), piece + " on " + cloth);
      for (int j = 0; j < shapes.size(); j++) {
        double apart = shape.distance(shapes.get(j));
        assertTrue(
            apart >= cloth.spacing().toMm() - 0.01 && !shape.relate(shapes.get(j), "T********"),
            piece + " and " + plan.pieces().get(j) + " on " + cloth + ": " + apart);
      }
      for (Cloth.Flaw flaw : cloth.flaws()) {
        assertTrue(!shape.relate(shape(flaw), "T********"), piece + " on " + cloth);
      }
      checkFold(piece, cloth);
      checkRepeat(piece, cloth);
      shapes.add(shape);
      end = Math.max(end, box.getMaxX());
    }
    double layers = cloth.fold() == Cloth.Fold.CROSSWISE ? 2 : 1;
    assertEquals(end * layers, plan.length().toMm(), 0.05);
  }

  private static void checkFold(LaidPiece piece, Cloth cloth) {
    Box box = piece.cutLine().bounds();
    double width = cloth.tableWidth().toMm();
    boolean two = cloth.fold() == Cloth.Fold.TUBULAR || cloth.fold() == Cloth.Fold.TO_THE_MIDDLE;
    if (piece.isOnFold()) {
      boolean below = Math.abs(box.minY()) < 1e-6;
      boolean above = two && Math.abs(box.maxY() - width) < 1e-6;
      assertTrue(below || above, piece + " on " + cloth);
    }
    if (cloth.fold() == Cloth.Fold.PARTLY) {
      double over = cloth.turnedOver().toMm();
      assertTrue(
          piece.layers() == 2 ? box.maxY() < over + 1e-6 : box.minY() > over - 1e-6,
          piece + " on " + cloth);
    }
  }

  /** The hem, the end away from the cut end, lies on the repeat. */
  private static void checkRepeat(LaidPiece piece, Cloth cloth) {
    double repeat = cloth.repeatAlong().toMm();
    if (repeat > 0 && !piece.name().equals("band")) {
      assertTrue(!piece.isTurned() && piece.offGrain().equals(Angle.ZERO), piece + " on " + cloth);
      double hem = piece.fromEnd().plus(piece.along()).toMm();
      double off = Math.abs(hem / repeat - Math.rint(hem / repeat)) * repeat;
      assertEquals(0, off, 1e-6, piece + " on " + cloth);
    }
  }

  private static Geometry shape(LaidPiece piece) {
    Polyline flat = piece.cutLine().flatten(Length.mm(0.02));
    Coordinate[] ring = new Coordinate[flat.size()];
    for (int i = 0; i < ring.length; i++) {
      ring[i] = new Coordinate(flat.x(i), flat.y(i));
    }
    ring[ring.length - 1] = ring[0].copy();
    return JTS.createPolygon(ring).buffer(0);
  }

  private static Geometry shape(Cloth.Flaw flaw) {
    double x = flaw.fromEnd().toMm();
    double y = flaw.fromSide().toMm();
    return JTS.toGeometry(new Envelope(x, x + flaw.along().toMm(), y, y + flaw.across().toMm()));
  }
}
