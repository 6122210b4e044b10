package dev.drafting.knit.size;

import dev.drafting.core.Experimental;
import dev.drafting.core.template.GarmentTemplate;
import java.util.List;

/**
 * A template that knows which measures of the body its dimensions follow, so that the garment can
 * be made to measure. The built-in ones are; one of your own implements this instead of {@link
 * GarmentTemplate}.
 *
 * <pre>{@code
 * FittedTemplate beanie = (FittedTemplate) Templates.installed().get("beanie");
 * beanie.bodyRules().get(0);  // => round: head girth, 20 % of the stretch used
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public interface FittedTemplate extends GarmentTemplate {

  /**
   * Which measure each dimension follows, and how close the garment usually lies there.
   *
   * @return at most one rule for a dimension; dimensions without a rule are taken as usual
   */
  List<BodyRule> bodyRules();
}
