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
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Garments beside the vest, to test with: tee, leggings of one piece, skirt. */
public final class Garments {
  private static final SeamFinish SEAM = SeamFinish.of(Length.mm(7));

  private Garments() {}

  /** The vest with sleeves, sides and underarms as two seams or as one that runs through. */
  public static Pattern tee(Finish neck, Finish sleeveHem, Finish hem, boolean oneSideSeam) {
    Pattern vest = Vest.plain().neck(neck).armhole(SEAM).hem(hem).pattern();
    Piece sleeve = sleeve(sleeveHem);
    double armholes =
        2 * vest.edge(EdgeRef.parse("front armhole")).length().toMm()
            - sleeve.edge("cap").length().toMm();
    Seam cap =
        Seam.of("sleeve", refs("front armhole", "back armhole"), refs("sleeve cap"))
            .endToStart()
            .withEase(Length.mm(armholes));
    List<Piece> pieces = new ArrayList<>(vest.pieces());
    pieces.add(sleeve);
    List<Seam> seams = new ArrayList<>(vest.seams());
    if (oneSideSeam) {
      seams.remove(1);
      seams.add(
          Seam.of(
              "side and sleeve",
              refs("front side", "sleeve underarm front"),
              refs("back side", "sleeve underarm back")));
    } else {
      seams.add(
          Seam.of("underarm", ref("sleeve underarm front"), ref("sleeve underarm back"))
              .endToStart());
    }
    seams.add(cap);
    return Pattern.of("tee", pieces, seams);
  }

  private static Piece sleeve(Finish hem) {
    Point back = new Point(165, 130);
    Point top = new Point(0, 270);
    Point front = new Point(-165, 130);
    Curve cap =
        Curve.of(
            new Cubic(back, new Point(110, 130), new Point(90, 270), top),
            new Cubic(top, new Point(-90, 270), new Point(-110, 130), front));
    return Piece.of(
            "sleeve",
            List.of(
                Edge.of("sleeve hem", line(-120, 0, 120, 0)).withFinish(hem),
                Edge.of("underarm back", line(120, 0, 165, 130)).withFinish(SEAM),
                Edge.of("cap", cap).withFinish(SEAM),
                Edge.of("underarm front", line(-165, 130, -120, 0)).withFinish(SEAM)))
        .withCutting(Cutting.pairs(1));
  }

  /** Leggings of one piece to a leg: inseams, then the crotch. */
  public static Pattern leggings(Finish waist, Finish hem) {
    Piece leg =
        Piece.of(
                "leg",
                List.of(
                    Edge.of("leg hem", line(-120, 0, 120, 0)).withFinish(hem),
                    Edge.of("front inseam", line(120, 0, 200, 700)).withFinish(SEAM),
                    Edge.of("front crotch", line(200, 700, 160, 950)).withFinish(SEAM),
                    Edge.of("waist", line(160, 950, -160, 950)).withFinish(waist),
                    Edge.of("back crotch", line(-160, 950, -200, 700)).withFinish(SEAM),
                    Edge.of("back inseam", line(-200, 700, -120, 0)).withFinish(SEAM)))
            .withCutting(Cutting.pairs(1));
    return Pattern.of(
        "leggings",
        List.of(leg),
        List.of(
            Seam.mirrored("front crotch", ref("leg front crotch")),
            Seam.mirrored("back crotch", ref("leg back crotch")),
            Seam.of("inseam", ref("leg front inseam"), ref("leg back inseam")).endToStart()));
  }

  /** A straight skirt, front and back on the fold. */
  public static Pattern skirt(Finish waist, Finish hem) {
    List<Edge> edges =
        List.of(
            Edge.of("hem", line(0, 0, 260, 0)).withFinish(hem),
            Edge.of("side", line(260, 0, 230, 550)).withFinish(SEAM),
            Edge.of("waist", line(230, 550, 0, 550)).withFinish(waist),
            Edge.onFold(line(0, 550, 0, 0)));
    return Pattern.of(
        "skirt",
        List.of(
            Piece.of("front", edges).withCutting(Cutting.onFold(1)),
            Piece.of("back", edges).withCutting(Cutting.onFold(1))),
        List.of(Seam.of("side", ref("front side"), ref("back side"))));
  }

  private static Curve line(double x0, double y0, double x1, double y1) {
    return Curve.line(new Point(x0, y0), new Point(x1, y1));
  }

  private static EdgeRef ref(String text) {
    return EdgeRef.parse(text);
  }

  private static List<EdgeRef> refs(String... texts) {
    return Arrays.stream(texts).map(EdgeRef::parse).toList();
  }
}
