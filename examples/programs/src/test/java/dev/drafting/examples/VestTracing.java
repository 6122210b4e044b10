package dev.drafting.examples;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.UnaryOperator;

/**
 * Makes the traced points of the boathouse vest, which is invented: the outline from formulas, and
 * a hand that traces it with a pencil. The same seed gives the same file, to the last byte.
 */
final class VestTracing {
  private static final long SEED = 1829;
  private static final double WANDER_MM = 0.9;
  private static final double MOST_WANDER_MM = 2;
  private static final double SLIP_MM = 12;
  private static final int SLIP_AT = 17;
  private static final double CLOSE_MM = 5;
  private static final double WIDE_MM = 10;

  private final Random hand = new Random(SEED);
  private final StringBuilder csv = new StringBuilder("piece,edge,x,y\n");
  private final Vest vest = new Vest();

  private VestTracing() {}

  /** The content of the file with the traced points. */
  static String csv() {
    VestTracing tracing = new VestTracing();
    tracing.front();
    tracing.back();
    return tracing.csv.toString();
  }

  /** The front lies folded along its centre, which is the line x = 0. */
  private void front() {
    UnaryOperator<Point> asItIs = point -> point;
    write("front", "hem", stroke(vest.frontHem, asItIs, WIDE_MM));
    write("front", "side", stroke(vest.side, asItIs, WIDE_MM));
    List<Point> armhole = stroke(vest.frontArmhole, asItIs, CLOSE_MM);
    Vector out = vest.frontArmhole.directionAt(Length.mm(CLOSE_MM * SLIP_AT)).left().negated();
    armhole.set(SLIP_AT, armhole.get(SLIP_AT).plus(out.times(SLIP_MM)));
    write("front", "armhole", armhole);
    write("front", "shoulder", stroke(vest.shoulder, asItIs, WIDE_MM));
    write("front", "neck", stroke(vest.frontNeck, asItIs, CLOSE_MM));
  }

  /** The back lies open, a little askew on the paper; its left half has hung out of shape. */
  private void back() {
    Transform lying =
        Transform.rotation(new Point(0, 0), Angle.degrees(1.2))
            .then(Transform.translation(new Vector(312, 74)));
    UnaryOperator<Point> right = lying::apply;
    UnaryOperator<Point> left = point -> lying.apply(slack(point).mirrored());
    write(
        "back",
        "hem",
        both(stroke(vest.backHem.reversed(), left, WIDE_MM), stroke(vest.backHem, right, WIDE_MM)));
    write("back", "side", stroke(vest.side, right, WIDE_MM));
    write("back", "armhole", stroke(vest.backArmhole, right, CLOSE_MM));
    write("back", "shoulder", stroke(vest.shoulder, right, WIDE_MM));
    write(
        "back",
        "neck",
        both(
            stroke(vest.backNeck, right, CLOSE_MM),
            stroke(vest.backNeck.reversed(), left, CLOSE_MM)));
    write("back", "shoulder", stroke(vest.shoulder.reversed(), left, WIDE_MM));
    write("back", "armhole", stroke(vest.backArmhole.reversed(), left, CLOSE_MM));
    write("back", "side", stroke(vest.side.reversed(), left, WIDE_MM));
  }

  /** Nothing at the centre; 3 mm wider and 2 mm lower at the side. */
  private static Point slack(Point point) {
    return new Point(point.x() * (1 + 3 / 230.0), point.y() - 2 * point.x() / 230.0);
  }

  /** Both halves of an edge that crosses the centre, whose point is not traced twice. */
  private static List<Point> both(List<Point> first, List<Point> second) {
    List<Point> both = new ArrayList<>(first);
    both.addAll(second.subList(1, second.size()));
    return both;
  }

  /** Points along a curve, as a hand sets them that wanders slowly from side to side. */
  private List<Point> stroke(Curve curve, UnaryOperator<Point> lying, double spacingMm) {
    List<Point> points = new ArrayList<>();
    double length = curve.length().toMm();
    int steps = (int) Math.max(2, Math.round(length / spacingMm));
    double wander = hand.nextGaussian() * WANDER_MM;
    for (int i = 0; i <= steps; i++) {
      Length along = Length.mm(length * i / steps);
      double off = Math.max(-MOST_WANDER_MM, Math.min(MOST_WANDER_MM, wander));
      Point at = curve.pointAt(along).plus(curve.directionAt(along).left().times(off));
      points.add(lying.apply(at));
      wander = 0.6 * wander + 0.8 * hand.nextGaussian() * WANDER_MM;
    }
    return points;
  }

  private void write(String piece, String edge, List<Point> points) {
    for (Point point : points) {
      csv.append(
          String.format(
              Locale.ROOT, "%s,%s,%.2f,%.2f\n", piece, edge, point.x() / 10, point.y() / 10));
    }
  }

  /** The true outline in millimetres: right halves, centre on x = 0. */
  private static final class Vest {
    private static final double SLOPE = Math.toRadians(22);
    private static final double HIGH_POINT = 630;
    private final Point neck = new Point(83, HIGH_POINT);
    private final Vector downShoulder = new Vector(Math.cos(SLOPE), -Math.sin(SLOPE));
    private final Vector intoCloth = downShoulder.left().negated();
    private final Point tip = neck.plus(downShoulder.times(64));
    private final Point underarm = new Point(230, HIGH_POINT - 230);
    private final Point sideHem = new Point(220, -24);
    private final Vector upSide = underarm.minus(sideHem).unit();
    private final Vector inward = upSide.left();

    final Curve side = Curve.line(sideHem, underarm);
    final Curve shoulder = Curve.line(tip, neck);
    final Curve frontHem = hem(0, -12);
    final Curve backHem = hem(-50, 12);
    final Curve frontArmhole = armhole(90, 80);
    final Curve backArmhole = armhole(75, 95);
    final Curve frontNeck = neckline(93, 56, 44);
    final Curve backNeck = neckline(34, 28, 42);

    /** Leaves the centre square and crosses the side seam at an angle, so that the tail drops. */
    private Curve hem(double centre, double degrees) {
      double turn = Math.toRadians(degrees);
      Vector outward = inward.negated();
      Vector arrives = outward.times(Math.cos(turn)).plus(upSide.times(Math.sin(turn)));
      return curve(
          new Point(0, centre), new Point(80, centre), sideHem.plus(arrives.times(-75)), sideHem);
    }

    /** Leaves the side seam and meets the shoulder square. */
    private Curve armhole(double fromUnderarm, double fromTip) {
      return curve(
          underarm,
          underarm.plus(inward.times(fromUnderarm)),
          tip.plus(intoCloth.times(fromTip)),
          tip);
    }

    /** Leaves the shoulder and meets the centre square. */
    private Curve neckline(double drop, double fromShoulder, double fromCentre) {
      double lowest = HIGH_POINT - drop;
      return curve(
          neck,
          neck.plus(intoCloth.times(fromShoulder)),
          new Point(fromCentre, lowest),
          new Point(0, lowest));
    }

    private static Curve curve(Point a, Point b, Point c, Point d) {
      return Curve.of(new Cubic(a, b, c, d));
    }
  }
}
