package dev.drafting.knit.garment;

import dev.drafting.core.Experimental;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.template.Choice;
import dev.drafting.core.template.Dimension;
import dev.drafting.core.template.Dimensions;
import dev.drafting.knit.size.BodyMeasure;
import dev.drafting.knit.size.BodyRule;
import dev.drafting.knit.size.Fit;
import dev.drafting.knit.size.FittedTemplate;
import java.util.List;

/**
 * The T-shirt for children from a height of about 86 to 146 cm: drawn as that for adults, with
 * dimensions of about two thirds.
 *
 * <pre>{@code
 * Body child = BodySizes.children().body("116");
 * MadeToMeasure tee = MadeToMeasure.of(new ChildsTShirt(), child, Fabric.of("jersey", Structure.JERSEY, 0.40));
 * tee.dimensions().length("chest");  // => 671 mm
 * Draft.of(tee.pattern()).withWearer(Wearer.of(child)).cautions().get(4).topic();  // => Nightwear
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class ChildsTShirt implements FittedTemplate {
  private static final long serialVersionUID = 1L;
  private static final double SHARE = 0.68;
  private static final TShirt ADULTS = new TShirt();

  /** Makes the template. */
  public ChildsTShirt() {}

  @Override
  public String id() {
    return "childs-t-shirt";
  }

  @Override
  public String about() {
    return "a child's T-shirt with sleeves set in, banded at the neck";
  }

  /** Those of an adult's made smaller, to the millimetre within. */
  @Override
  public List<Dimension> dimensions() {
    return ADULTS.dimensions().stream()
        .map(
            adult ->
                new Dimension(
                    adult.name(),
                    adult.meaning(),
                    Length.mm(Math.ceil(SHARE * adult.least().toMm())),
                    Length.mm(Math.rint(SHARE * adult.usual().toMm())),
                    Length.mm(Math.floor(SHARE * adult.most().toMm())),
                    adult.girth()))
        .toList();
  }

  @Override
  public List<Choice> choices() {
    return ADULTS.choices();
  }

  /** Shares and lengths of the project's own, no source. */
  @Override
  public List<BodyRule> bodyRules() {
    return List.of(
        BodyRule.girth("chest", Fit.ease(0.1), BodyMeasure.CHEST_GIRTH, BodyMeasure.BUST_GIRTH),
        BodyRule.length("length", BodyMeasure.CERVICAL_TO_WAIST).plus(Length.cm(16)),
        BodyRule.length("shoulder", BodyMeasure.SHOULDER_LENGTH).times(0.66),
        BodyRule.length("neck width", BodyMeasure.NECK_BASE_GIRTH).times(0.2).plus(Length.cm(7)),
        BodyRule.length("armhole depth", BodyMeasure.SCYE_DEPTH).plus(Length.cm(1.8)),
        BodyRule.length("cap height", BodyMeasure.SCYE_DEPTH).times(0.49),
        BodyRule.length("sleeve length", BodyMeasure.ARM_LENGTH).times(0.25));
  }

  @Override
  public void check(Dimensions given) {
    ADULTS.check(given);
  }

  @Override
  public Pattern draw(Dimensions given) {
    return ADULTS.draw("Child's T-shirt", given);
  }
}
