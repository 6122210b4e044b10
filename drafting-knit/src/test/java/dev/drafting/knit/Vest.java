package dev.drafting.knit;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.pattern.SeamFinish;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.band.WrappedBinding;
import dev.drafting.knit.hem.TurnedHem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A sleeveless vest for tests, drawn by rule: 92 cm round the chest, side seams upright, neck and
 * armholes square to the shoulder seam, front and back alike but for the depth of the neck. Values
 * in cm. A value that is changed by withers.
 */
public final class Vest {
  private double slopeDegrees = 22;
  private double neckWidth = 9;
  private double frontDepth = 13;
  private double scale = 1;
  private int rotation = 0;
  private Finish neck = FoldedBand.of(Length.mm(13), Length.mm(7));
  private Finish armhole = WrappedBinding.of(Length.mm(10)).withCloth("body");
  private Finish hem = TurnedHem.once(Length.mm(15));

  public static Vest plain() {
    return new Vest();
  }

  private Vest copy() {
    Vest copy = new Vest();
    copy.slopeDegrees = slopeDegrees;
    copy.neckWidth = neckWidth;
    copy.frontDepth = frontDepth;
    copy.scale = scale;
    copy.rotation = rotation;
    copy.neck = neck;
    copy.armhole = armhole;
    copy.hem = hem;
    return copy;
  }

  public Vest slope(double degrees) {
    Vest vest = copy();
    vest.slopeDegrees = degrees;
    return vest;
  }

  public Vest frontDepth(double cm) {
    Vest vest = copy();
    vest.frontDepth = cm;
    return vest;
  }

  public Vest scale(double factor) {
    Vest vest = copy();
    vest.scale = factor;
    return vest;
  }

  /** Starts the list of edges of each piece so many edges later. */
  public Vest rotation(int edges) {
    Vest vest = copy();
    vest.rotation = edges;
    return vest;
  }

  public Vest neck(Finish finish) {
    Vest vest = copy();
    vest.neck = finish;
    return vest;
  }

  public Vest armhole(Finish finish) {
    Vest vest = copy();
    vest.armhole = finish;
    return vest;
  }

  public Vest hem(Finish finish) {
    Vest vest = copy();
    vest.hem = finish;
    return vest;
  }

  public Pattern pattern() {
    return Pattern.of(
        "test vest",
        List.of(piece("front", frontDepth), piece("back", 4)),
        List.of(seam("shoulder"), seam("side")));
  }

  private static Seam seam(String name) {
    return Seam.of(name, new EdgeRef("front", name), new EdgeRef("back", name));
  }

  private Piece piece(String name, double neckDepth) {
    double slope = Math.toRadians(slopeDegrees);
    double sin = Math.sin(slope);
    double cos = Math.cos(slope);
    double strap = 7;
    double neckX = neckWidth;
    double neckY = 66;
    double tipX = neckX + strap * cos;
    double tipY = neckY - strap * sin;
    double armY = 42;
    double low = neckY - neckDepth;
    double reach = 0.55;
    Curve neckline =
        Curve.of(
            new Cubic(
                at(neckX, neckY),
                at(neckX - reach * neckDepth * sin, neckY - reach * neckDepth * cos),
                at(reach * neckX, low),
                at(0, low)));
    Curve arm =
        Curve.of(
            new Cubic(
                at(23, armY),
                at(23 - 4, armY),
                at(tipX - 9 * sin, tipY - 9 * cos),
                at(tipX, tipY)));
    List<Edge> edges = new ArrayList<>();
    edges.add(Edge.of("hem", line(0, 0, 23, 0)).withFinish(hem));
    edges.add(Edge.of("side", line(23, 0, 23, armY)).withFinish(SeamFinish.of(Length.mm(7))));
    edges.add(Edge.of("armhole", arm).withFinish(armhole));
    edges.add(
        Edge.of("shoulder", line(tipX, tipY, neckX, neckY))
            .withFinish(SeamFinish.of(Length.mm(7))));
    edges.add(Edge.of("neck", neckline).withFinish(neck));
    edges.add(Edge.onFold(line(0, low, 0, 0)));
    Collections.rotate(edges, -rotation);
    return Piece.of(name, edges).withCutting(Cutting.onFold(1));
  }

  private Curve line(double x0, double y0, double x1, double y1) {
    return Curve.line(at(x0, y0), at(x1, y1));
  }

  private Point at(double x, double y) {
    return new Point(10 * scale * x, 10 * scale * y);
  }
}
