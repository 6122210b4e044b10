package dev.drafting.core.pattern;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import java.util.ArrayList;
import java.util.List;

/** The vest with sleeves, to test with: caps to armholes, underarm seams along the sleeves. */
public final class Tees {
  private Tees() {}

  /** A tee whose sleeves' caps are eased in by what they happen to be longer. */
  public static Pattern of(Vests.Half front, Vests.Half back) {
    Pattern vest = Vests.of(front, back);
    List<Piece> pieces = new ArrayList<>(vest.pieces());
    pieces.add(sleeve());
    Seam cap =
        Seam.of(
                "cap",
                List.of(EdgeRef.parse("front armhole"), EdgeRef.parse("back armhole")),
                List.of(EdgeRef.parse("sleeve cap")))
            .endToStart();
    double armholes =
        vest.edge(EdgeRef.parse("front armhole")).length().toMm()
            + vest.edge(EdgeRef.parse("back armhole")).length().toMm();
    cap = cap.withEase(Length.mm(armholes).minus(sleeve().edge("cap").length()));
    Seam underarm =
        Seam.of(
                "underarm",
                EdgeRef.parse("sleeve underarm front"),
                EdgeRef.parse("sleeve underarm back"))
            .endToStart();
    List<Seam> seams = new ArrayList<>(vest.seams());
    seams.add(cap);
    seams.add(underarm);
    return Pattern.of("tee", pieces, seams);
  }

  private static Piece sleeve() {
    Point foot = new Point(-120, 0);
    Point otherFoot = new Point(120, 0);
    Point front = new Point(165, 130);
    Point top = new Point(0, 270);
    Point back = new Point(-168, 132);
    Curve cap =
        Curve.of(
            new Cubic(front, new Point(110, 130), new Point(90, 270), top),
            new Cubic(top, new Point(-90, 270), new Point(-100, 132), back));
    return Piece.of(
            "sleeve",
            List.of(
                Edge.of("hem", Curve.line(foot, otherFoot)),
                Edge.of("underarm front", Curve.line(otherFoot, front)),
                Edge.of("cap", cap),
                Edge.of("underarm back", Curve.line(back, foot))))
        .withCutting(Cutting.pairs(1));
  }
}
