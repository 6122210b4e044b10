package dev.drafting.export;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Notch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.pattern.SeamFinish;
import dev.drafting.knit.Draft;
import dev.drafting.knit.Wearer;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.band.WrappedBinding;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.hem.TurnedHem;
import java.util.List;

/** A sleeveless vest, 92 cm round the chest and 66 cm long, drawn by rule. */
public final class TestGarment {
  private static final Length ALLOWANCE = Length.mm(7);

  private TestGarment() {}

  /** The vest in jersey with a rib neck band. */
  public static Draft vest(String name) {
    return Draft.of(pattern())
        .withName(name)
        .withFabric("body", Fabric.of("cotton jersey", Structure.JERSEY, 0.3).prewashed())
        .withFabric("rib", Fabric.of("fine rib", Structure.RIB, 0.9).prewashed())
        .withWearer(Wearer.of().withChest(Length.cm(98)).withHead(Length.cm(58)));
  }

  /** Front and back on the fold, joined at shoulder and side. */
  public static Pattern pattern() {
    return Pattern.of(
            "vest",
            List.of(piece("front", 130), piece("back", 40)),
            List.of(seam("shoulder"), seam("side")))
        .withVersion("3");
  }

  private static Seam seam(String name) {
    return Seam.of(name, new EdgeRef("front", name), new EdgeRef("back", name));
  }

  private static Piece piece(String name, double neckDepth) {
    Point underarm = new Point(230, 420);
    Point tip = new Point(155, 634);
    Point neck = new Point(90, 660);
    Point centre = new Point(0, 660 - neckDepth);
    Point hemCentre = new Point(0, 0);
    Point hemSide = new Point(230, 0);
    Curve armhole = Curve.of(new Cubic(underarm, new Point(190, 420), new Point(121, 549), tip));
    Curve neckline =
        Curve.of(
            new Cubic(
                neck,
                new Point(90 - 0.22 * neckDepth, 660 - 0.55 * neckDepth),
                new Point(50, centre.y()),
                centre));
    return Piece.of(
            name,
            List.of(
                Edge.of("hem", Curve.line(hemCentre, hemSide))
                    .withFinish(TurnedHem.once(Length.mm(20))),
                Edge.of("side", Curve.line(hemSide, underarm)).withFinish(SeamFinish.of(ALLOWANCE)),
                Edge.of("armhole", armhole)
                    .withFinish(WrappedBinding.of(Length.mm(10)).withCloth("body")),
                Edge.of("shoulder", Curve.line(tip, neck)).withFinish(SeamFinish.of(ALLOWANCE)),
                Edge.of("neck", neckline).withFinish(FoldedBand.of(Length.mm(13), ALLOWANCE)),
                Edge.onFold(Curve.line(centre, hemCentre))))
        .withCutting(Cutting.onFold(1))
        .withNotch(Notch.of("side", Length.mm(200), "waist"));
  }
}
