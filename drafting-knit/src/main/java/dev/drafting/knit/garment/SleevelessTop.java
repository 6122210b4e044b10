package dev.drafting.knit.garment;

import dev.drafting.core.Experimental;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.template.Dimension;
import dev.drafting.core.template.Dimensions;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.band.WrappedBinding;
import dev.drafting.knit.hem.TurnedHem;
import dev.drafting.knit.size.BodyRule;
import dev.drafting.knit.size.Fit;
import dev.drafting.knit.size.FittedTemplate;
import java.util.List;

/**
 * A vest: front and back on the fold, a band at the neck, bindings at the armholes, a turned hem.
 *
 * <pre>{@code
 * Pattern vest = new SleevelessTop().pattern(Dimensions.of().with("chest", Length.cm(100)).with("length", Length.cm(70)));
 * vest.piece("front").edge("fold").length();  // => 600 mm
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class SleevelessTop implements FittedTemplate {
  private static final long serialVersionUID = 1L;
  private static final Length ALLOWANCE = Length.mm(7);

  /** Makes the template. */
  public SleevelessTop() {}

  @Override
  public String id() {
    return "sleeveless-top";
  }

  @Override
  public String about() {
    return "a vest without sleeves, banded at the neck and bound at the armholes";
  }

  @Override
  public List<Dimension> dimensions() {
    return TopDimensions.of(Length.cm(66), Length.mm(55), Length.mm(75));
  }

  @Override
  public List<BodyRule> bodyRules() {
    return TopDimensions.rules(Fit.stretchUsed(0.15), 0.43);
  }

  @Override
  public void check(Dimensions given) {
    TopHalf.check(given);
  }

  @Override
  public Pattern draw(Dimensions given) {
    return Pattern.of(
            "Sleeveless top",
            List.of(
                new TopHalf(given, "front neck depth").piece("front"),
                new TopHalf(given, "back neck depth").piece("back")),
            List.of(
                Seam.of("shoulder", "front shoulder", "back shoulder"),
                Seam.of("side", "front side", "back side")))
        .withSeamAllowance(ALLOWANCE)
        .withFinish("front neck", FoldedBand.of(Length.mm(15), ALLOWANCE))
        .withFinish("back neck", FoldedBand.of(Length.mm(15), ALLOWANCE))
        .withFinish("front armhole", WrappedBinding.of(Length.mm(10)).withCloth("body"))
        .withFinish("back armhole", WrappedBinding.of(Length.mm(10)).withCloth("body"))
        .withFinish("front hem", TurnedHem.once(Length.mm(20)))
        .withFinish("back hem", TurnedHem.once(Length.mm(20)));
  }
}
