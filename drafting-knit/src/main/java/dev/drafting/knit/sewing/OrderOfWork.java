package dev.drafting.knit.sewing;

import dev.drafting.core.Stable;
import dev.drafting.core.assembly.Assembly;
import dev.drafting.knit.fabric.Fabric;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;

/**
 * The steps of making up a garment, from washing the cloth to the last hem, as its seams and
 * finishes ask for them.
 *
 * <p>The opening for the head is closed by its own seams and finished while the garment still lies
 * open at the sides; the rest is basted and tried on before any band or hem; the other openings are
 * finished in the round, bands before hems (common practice, no source).
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * OrderOfWork.of(top.sewing(), top.fabrics().values(), Construction.FLAT).get(0).title();  // => Prewash
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class OrderOfWork {
  private OrderOfWork() {}

  /**
   * The order of work.
   *
   * @param plan how the garment is sewn
   * @param fabrics everything that is cut from
   * @param construction whether bands are sewn as loops or flat
   * @return the steps, numbered from 1
   */
  public static List<Step> of(
      SewingPlan plan, Collection<Fabric> fabrics, Construction construction) {
    List<Step> steps =
        new ArrayList<>(Preparation.steps(plan.sewn().pattern(), plan.strips(), fabrics));
    steps.addAll(new Making(plan.sewn(), plan.headOpening(), construction).steps(plan));
    steps.add(
        Step.of(
                "Press and measure",
                "Press lightly, let it cool flat, and measure it against the measures of this plan."
                    + " Write down what you would change: the next one starts from there.")
            .withCaution(Cautions.IRON)
            .showing(Step.Scene.MEASURING));
    List<Step> numbered = new ArrayList<>();
    for (Step step : steps) {
      numbered.add(step.numbered(numbered.size() + 1));
    }
    return List.copyOf(numbered);
  }

  /**
   * Where strips that are sewn flat begin and end: the seam that is still open then and runs
   * through the strip afterwards.
   *
   * @param sewn the garment
   * @param headOpening the name of the opening for the head; need not exist
   * @param construction whether bands are sewn as loops or flat
   * @return names of seams by names of openings; empty for bands in the round
   */
  public static Map<String, String> openSeams(
      Assembly sewn, String headOpening, Construction construction) {
    return Map.copyOf(new Making(sewn, headOpening, construction).openSeams());
  }
}
