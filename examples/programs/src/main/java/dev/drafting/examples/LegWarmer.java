package dev.drafting.examples;

import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.template.Dimension;
import dev.drafting.core.template.Dimensions;
import dev.drafting.core.template.GarmentTemplate;
import dev.drafting.knit.band.FoldedBand;
import java.util.List;

/** The garment of README's chapter on templates, which shows it as it stands here. */
class LegWarmer implements GarmentTemplate {
  private static final long serialVersionUID = 1L;

  @Override
  public String id() {
    return "leg-warmer";
  }

  @Override
  public String about() {
    return "leg warmers with a shaped seam at the back and rib at both ends";
  }

  @Override
  public List<Dimension> dimensions() {
    return List.of(
        Dimension.girth(
            "ankle", "round the lower end", Length.cm(18), Length.cm(26), Length.cm(34)),
        Dimension.girth("calf", "round the upper end", Length.cm(24), Length.cm(36), Length.cm(54)),
        Dimension.length("height", "end to end", Length.cm(24), Length.cm(40), Length.cm(60)));
  }

  @Override
  public Pattern draw(Dimensions given) {
    double ankle = given.length("ankle").toMm() / 2;
    double calf = given.length("calf").toMm() / 2;
    double height = given.length("height").toMm();
    Point heel = new Point(ankle, 0);
    Point knee = new Point(calf, height);
    Point shin = new Point(0, 0);
    Point top = new Point(0, height);
    Curve shaped = // upright at both ends, so that these run on smoothly across the seam
        Curve.of(new Cubic(heel, new Point(ankle, height / 2), new Point(calf, height / 2), knee));
    Piece leg =
        Piece.of(
                "leg",
                List.of(
                    Edge.of("lower end", Curve.line(shin, heel)),
                    Edge.of("back", shaped),
                    Edge.of("upper end", Curve.line(knee, top)),
                    Edge.onFold(Curve.line(top, shin))))
            .withCutting(Cutting.onFold(2));
    Seam back = Seam.mirrored("back", EdgeRef.parse("leg / back"));
    return Pattern.of("Leg warmers", List.of(leg), List.of(back))
        .withSeamAllowance(Length.mm(7))
        .withFinish("leg / lower end", FoldedBand.cuff(Length.mm(50), Length.mm(7)))
        .withFinish("leg / upper end", FoldedBand.cuff(Length.mm(50), Length.mm(7)));
  }
}
