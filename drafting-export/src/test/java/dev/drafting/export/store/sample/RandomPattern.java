package dev.drafting.export.store.sample;

import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.CornerSide;
import dev.drafting.core.offset.CornerTreatment;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.FacedEdge;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.Fullness;
import dev.drafting.core.pattern.MarkingLine;
import dev.drafting.core.pattern.Notch;
import dev.drafting.core.pattern.Patch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Placket;
import dev.drafting.core.pattern.RawEdge;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.pattern.SeamFinish;
import dev.drafting.core.pattern.SharedPaper;
import dev.drafting.knit.band.Casing;
import dev.drafting.knit.band.FacedStrip;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.band.Intent;
import dev.drafting.knit.band.WrappedBinding;
import dev.drafting.knit.hem.TurnedHem;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A tube of a front and a back, half on the fold or whole, with every kind of edge and finish. */
final class RandomPattern {
  private final Random random;

  RandomPattern(Random random) {
    this.random = random;
  }

  private Fullness fullness() {
    return switch (random.nextInt(3)) {
      case 0 -> Fullness.eased();
      case 1 -> Fullness.gathered();
      default -> Fullness.pleats(1 + random.nextInt(100));
    };
  }

  Pattern pattern() {
    double width = 150 + 200 * random.nextDouble();
    double height = 200 + 500 * random.nextDouble();
    Segment hem = bulged(new Point(0, 0), new Point(width, 0));
    Segment side = bulged(new Point(width, 0), new Point(width + random.nextInt(20), height));
    Piece front = half("front", hem, side, 0);
    Piece back = half("back", hem, side, 20 * random.nextDouble());
    Seam seam = Seam.of("side", "front side", "back side");
    seam = random.nextBoolean() ? seam.withEase(between(-3, 3)).drawnIn(fullness()) : seam;
    List<Piece> pieces = new ArrayList<>(List.of(front, back));
    List<Seam> seams = new ArrayList<>(List.of(seam));
    if (random.nextInt(3) == 0) {
      pieces.add(patch());
    }
    if (random.nextInt(4) == 0) {
      pieces.add(pair(hem, side));
      seams.add(Seam.mirrored("centre", EdgeRef.parse("panel left")));
    }
    Pattern pattern =
        Pattern.of("Tube " + random.nextInt(100), pieces, seams)
            .withSeamTolerance(between(0, 5))
            .withCrossingTolerance(Angle.degrees(random.nextInt(90)));
    if (pieces.stream().anyMatch(piece -> piece.name().equals("patch"))) {
      pattern = random.nextBoolean() ? pattern.withPatch(laid()) : pattern;
    }
    pattern = random.nextInt(4) == 0 ? pattern.withPlacket(placket()) : pattern;
    pattern = random.nextBoolean() ? pattern.withVersion("v" + random.nextInt(9)) : pattern;
    return random.nextInt(4) == 0
        ? pattern.withSharedPaper(SharedPaper.of("both", "back", "front"))
        : pattern;
  }

  private Placket placket() {
    Length width = between(8, 30);
    return Placket.of("front hem", width.plus(between(0, 100)), width)
        .withFasteners(random.nextInt(6));
  }

  private Length between(double least, double most) {
    return Length.mm(least + random.nextDouble() * (most - least));
  }

  /** A line, a shallow cubic or a shallow arc. */
  private Segment bulged(Point start, Point end) {
    Vector way = end.minus(start);
    Vector out = way.left().times(-0.12 * random.nextDouble());
    return switch (random.nextInt(3)) {
      case 0 -> new Line(start, end);
      case 1 ->
          new Cubic(
              start,
              start.plus(way.times(0.3)).plus(out),
              end.plus(way.times(-0.3)).plus(out),
              end);
      default ->
          Arc.through(
              start,
              start.plus(way.times(0.5)).plus(way.left().times(-0.01 - random.nextDouble() / 20)),
              end);
    };
  }

  private Piece half(String name, Segment hem, Segment side, double higher) {
    Point upper = side.end();
    Point centre = new Point(0, upper.y() + higher);
    List<Edge> edges = new ArrayList<>();
    edges.add(Edge.of("hem", Curve.of(hem)).withFinish(finish()));
    edges.add(Edge.of("side", Curve.of(side)).withFinish(SeamFinish.of(between(0, 20))));
    edges.add(Edge.of("top", Curve.of(bulged(upper, centre))).withFinish(finish()));
    edges.add(Edge.onFold(Curve.line(centre, new Point(0, 0))));
    Piece piece = Piece.of(name, edges).withCutting(Cutting.onFold(1 + random.nextInt(3)));
    return withDetails(piece);
  }

  private Piece withDetails(Piece plain) {
    Piece piece = plain;
    piece = random.nextInt(4) == 0 ? piece.withGrain(Angle.degrees(90 * random.nextInt(4))) : piece;
    piece = random.nextInt(3) == 0 ? piece.withPointedCorner("hem", "side") : piece;
    piece = random.nextBoolean() ? piece.withCorner("hem", "side", treatment()) : piece;
    piece = random.nextBoolean() ? piece.withCorner("side", "top", treatment()) : piece;
    for (int i = random.nextInt(3); i > 0; i--) {
      Length along = piece.edge("side").length().times(random.nextDouble());
      piece = piece.withNotch(Notch.of("side", along, "n" + i));
    }
    return random.nextInt(3) == 0
        ? piece.withMarking(
            MarkingLine.of("waist \"line\"", Curve.of(bulged(new Point(5, 90), new Point(99, 95)))))
        : piece;
  }

  private Piece patch() {
    Point a = new Point(0, 0);
    Point b = new Point(90.1, 0);
    Point c = new Point(90.1, 110 * random.nextDouble() + 50);
    return Piece.of(
            "patch",
            List.of(
                Edge.of("below", Curve.line(a, b)).withFinish(finish()),
                Edge.of("right", Curve.line(b, c)),
                Edge.of("slant", Curve.line(c, a))))
        .withCutting(random.nextBoolean() ? Cutting.single(2) : Cutting.pairs(1))
        .withGrain(Angle.degrees(random.nextInt(360)))
        .withCloth("trim");
  }

  private Patch laid() {
    Point at = new Point(50 * random.nextDouble(), 30 * random.nextDouble());
    Patch patch = Patch.of("patch", "front", at);
    return random.nextBoolean() ? patch.openAt("slant") : patch;
  }

  /** A mirrored pair that is sewn to itself. */
  private static Piece pair(Segment hem, Segment side) {
    Point upper = side.end();
    Point left = new Point(0, upper.y());
    return Piece.of(
            "panel",
            List.of(
                Edge.of("hem", Curve.of(hem)),
                Edge.of("side", Curve.of(side)),
                Edge.of("top", Curve.line(upper, left)),
                Edge.of("left", Curve.line(left, new Point(0, 0)))))
        .withCutting(Cutting.pairs(1));
  }

  private CornerTreatment treatment() {
    CornerSide side = random.nextBoolean() ? CornerSide.BEFORE : CornerSide.AFTER;
    return switch (random.nextInt(7)) {
      case 0 -> CornerTreatment.mitre();
      case 1 -> CornerTreatment.mitre(1 + 5 * random.nextDouble());
      case 2 -> CornerTreatment.squareTo(side);
      case 3 -> CornerTreatment.bevel();
      case 4 -> CornerTreatment.round();
      case 5 -> CornerTreatment.step();
      default -> CornerTreatment.foldedBack(side, List.of(Length.ZERO, between(5, 20)));
    };
  }

  /** Any finish of an edge that is not sewn to another. */
  Finish finish() {
    Intent intent = List.of(Intent.values()).get(random.nextInt(Intent.values().length));
    return switch (random.nextInt(10)) {
      case 0 -> RawEdge.of();
      case 1 -> FacedEdge.of(between(0, 20));
      case 2 -> FacedEdge.of(between(0, 20)).withTopstitch(between(0, 20));
      case 3 -> TurnedHem.once(between(10, 40)).withTwinNeedle(between(1.5, 6));
      case 4 -> TurnedHem.twice(between(5, 10), between(12, 30)).withTopstitchMargin(between(1, 9));
      case 5 -> FoldedBand.of(between(8, 40), between(0, 10)).withTopstitch(between(1, 5));
      case 6 -> FoldedBand.cuff(between(8, 40), between(0, 10)).withIntent(intent).readyEdged();
      case 7 -> {
        WrappedBinding binding = WrappedBinding.of(between(5, 15)).withTurnOfCloth(between(0, 4));
        yield random.nextBoolean() ? binding.doubled() : binding.overlockedInside();
      }
      case 8 -> FacedStrip.of(between(10, 40), between(0, 8)).withTuck(between(0, 8));
      default ->
          Casing.of(between(10, 50), between(3, 9))
              .withGirth(between(400, 1200))
              .withShortening(random.nextDouble() * 0.3)
              .withOverlap(between(0, 30));
    };
  }
}
