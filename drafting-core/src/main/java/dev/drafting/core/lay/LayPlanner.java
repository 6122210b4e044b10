package dev.drafting.core.lay;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.JtsBridge;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.simplify.PolygonHullSimplifier;

/** Makes shapes of the parts of a lay, searches, and makes a plan of what was found. */
final class LayPlanner {
  private static final GeometryFactory JTS = new GeometryFactory();

  /**
   * Curves become chords within half of this, and shapes are grown by this, so none is cut into.
   */
  private static final double FLAT = 0.4;

  private static final BufferParameters MITRED =
      new BufferParameters(1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 1.5);
  private static final double FAR = 1e6;

  /**
   * By what share of its area a shape may be filled up where it is hollow, to have fewer corners.
   */
  private static final double FILLED = 0.002;

  private final Lay lay;
  private final Cloth cloth;
  private final LayParts parts;
  private final List<TurnedShape[]> shapes = new ArrayList<>();
  private final List<List<LayPart.Way>> ways = new ArrayList<>();
  private final List<Room> rooms = new ArrayList<>();
  private final double grown;

  private LayPlanner(Lay lay) {
    this.lay = lay;
    this.cloth = lay.cloth();
    this.parts = lay.parts();
    this.grown = cloth.spacing().toMm() / 2 + FLAT;
    if (parts.parts().isEmpty()) {
      throw DraftingException.of("there is nothing to lay").accepted("one piece or more");
    }
    Map<LayPart, Integer> types = new LinkedHashMap<>();
    for (LayPart part : parts.parts()) {
      Integer type = types.get(part);
      if (type == null) {
        type = shapes.size();
        types.put(part, type);
        addShape(part);
      }
      rooms.add(room(part, type));
    }
  }

  static LayPlanner of(Lay lay) {
    return new LayPlanner(lay);
  }

  LayPlan plan(long seed, StripSearch.Budget budget, Consumer<Length> listener) {
    StripProblem problem = new StripProblem(shapes, rooms, flaws(), height());
    StripSearch search = new StripSearch(problem, seed);
    search.run(budget, length -> listener.accept(clothLength(length - grown)));
    Layout best = search.best();
    List<LaidPiece> laid = new ArrayList<>();
    for (int i = 0; i < problem.count(); i++) {
      LayPart part = parts.parts().get(i);
      LayPart.Way way = ways.get(rooms.get(i).type()).get(best.turn[i]);
      Transform there = way.there().then(Transform.translation(new Vector(best.x[i], best.y[i])));
      laid.add(
          new LaidPiece(
              part.name(),
              part.cutLine().map(there),
              part.toCut().map(there),
              part.layers(),
              part.hasFold(),
              way.turned(),
              way.offGrain()));
    }
    double end = 0;
    for (LaidPiece piece : laid) {
      end = Math.max(end, piece.fromEnd().plus(piece.along()).toMm());
    }
    LayPlan plan = LayPlan.of(lay, laid, clothLength(end), parts.notes()).withShortage();
    LayCheck.of(plan).requireNone();
    return plan;
  }

  private Length clothLength(double onTable) {
    return Length.mm(cloth.fold() == Cloth.Fold.CROSSWISE ? 2 * onTable : onTable);
  }

  private double height() {
    return cloth.tableWidth().toMm() + 2 * grown;
  }

  private void addShape(LayPart part) {
    List<LayPart.Way> all = part.ways(cloth, lay.grainWithin());
    TurnedShape[] turned = new TurnedShape[all.size()];
    for (int i = 0; i < turned.length; i++) {
      Curve outline = part.cutLine().map(all.get(i).there());
      turned[i] = TurnedShape.of(grown(part, outline), reach(part, outline));
    }
    shapes.add(turned);
    ways.add(all);
  }

  /** The outline with half of the spacing round it, but not beyond its fold. */
  private Polygon grown(LayPart part, Curve outline) {
    Curve turning = outline.areaSquareMm() < 0 ? outline.reversed() : outline;
    Polygon flat = JtsBridge.toPolygon(turning, Length.mm(FLAT / 2));
    Geometry buffered = BufferOp.bufferOp(flat, grown, MITRED);
    if (part.hasFold()) {
      boolean below = isFoldBelow(outline.bounds());
      Envelope side = new Envelope(-FAR, FAR, below ? 0 : -FAR, below ? FAR : 0);
      buffered = OverlayNGRobust.overlay(buffered, JTS.toGeometry(side), OverlayNG.INTERSECTION);
    }
    return (Polygon) PolygonHullSimplifier.hullByAreaDelta(buffered, true, FILLED);
  }

  /** Flattened, a curve may reach less far than it does. */
  private Envelope reach(LayPart part, Curve outline) {
    Box box = outline.bounds();
    boolean below = part.hasFold() && isFoldBelow(box);
    boolean above = part.hasFold() && !isFoldBelow(box);
    return new Envelope(
        box.minX() - grown,
        box.maxX() + grown,
        below ? 0 : box.minY() - grown,
        above ? 0 : box.maxY() + grown);
  }

  private static boolean isFoldBelow(Box box) {
    return box.maxY() > -box.minY();
  }

  /** On the search's strip y = 0 is the edge of the cloth less what shapes are grown by. */
  private Room room(LayPart part, int type) {
    double width = cloth.tableWidth().toMm();
    boolean twoFolds = cloth.fold().isAbove();
    double low = part.hasFold() ? 0 : -grown;
    double high = part.hasFold() && twoFolds ? width : width + grown;
    if (cloth.fold() == Cloth.Fold.PARTLY) {
      double over = cloth.turnedOver().toMm();
      boolean inside = part.layers() == 2;
      low = inside ? low : over - grown;
      high = inside ? over + grown : high;
    }
    TurnedShape shape = shapes.get(type)[0];
    if (part.hasFold() && cloth.fold() == Cloth.Fold.TO_THE_MIDDLE) {
      requireFlap(part, shape, width / 2);
    }
    if (shape.maxY - shape.minY > high - low + 1e-9) {
      throw DraftingException.of("a piece is wider than the cloth where it has to lie")
          .at(part.name())
          .value(Length.mm(shape.maxY - shape.minY - 2 * grown).text(LengthUnit.CM))
          .accepted(
              "up to "
                  + Length.mm(high - low - 2 * grown).text(LengthUnit.CM)
                  + "; another fold or a wider cloth gives more");
    }
    Box box = part.cutLine().bounds();
    Point hem = new Point(box.maxX(), (box.minY() + box.maxY()) / 2);
    Point onRepeat = part.onRepeat() == null ? hem : part.onRepeat();
    double along = part.isStrip() ? 0 : cloth.repeatAlong().toMm();
    double across = part.isStrip() || part.hasFold() ? 0 : cloth.repeatAcross().toMm();
    Room room =
        new Room(
            type,
            low,
            high,
            part.hasFold(),
            along,
            along == 0 ? 0 : phase(-onRepeat.x(), along),
            across,
            across == 0 ? 0 : phase(-onRepeat.y(), across));
    requireRepeat(part, room);
    return room;
  }

  private void requireRepeat(LayPart part, Room room) {
    boolean meets =
        Arrays.stream(shapes.get(room.type()))
            .anyMatch(shape -> room.fits(shape, Double.POSITIVE_INFINITY));
    if (!meets) {
      throw DraftingException.of("a piece cannot meet the repeat across the cloth where it lies")
          .at(part.name())
          .value(cloth.repeatAcross().text(LengthUnit.MM))
          .accepted("another fold, a wider cloth, or no match across");
    }
  }

  /** The selvages meet in the middle, and what lies on a fold stays within its flap. */
  private void requireFlap(LayPart part, TurnedShape shape, double flap) {
    double wide = shape.maxY - shape.minY - grown;
    if (wide > flap) {
      throw DraftingException.of("a piece on the fold is wider than what is folded over")
          .at(part.name())
          .value(Length.mm(wide).text(LengthUnit.CM))
          .accepted(
              "up to "
                  + Length.mm(flap).text(LengthUnit.CM)
                  + "; cloth folded lengthwise has more");
    }
  }

  private static double phase(double place, double repeat) {
    return place - Math.floor(place / repeat) * repeat;
  }

  private List<StripProblem.Flaw> flaws() {
    List<StripProblem.Flaw> flaws = new ArrayList<>();
    for (Cloth.Flaw flaw : cloth.flaws()) {
      double w = flaw.along().toMm();
      double h = flaw.across().toMm();
      TurnedShape shape = TurnedShape.of(new double[] {0, 0, w, 0, w, h, 0, h});
      flaws.add(new StripProblem.Flaw(shape, flaw.fromEnd().toMm(), flaw.fromSide().toMm()));
    }
    return flaws;
  }
}
