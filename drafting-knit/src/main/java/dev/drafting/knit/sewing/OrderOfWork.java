package dev.drafting.knit.sewing;

import dev.drafting.core.assembly.Opening;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.fabric.Fabric;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * The steps of making up a garment, from washing the cloth to the last hem, as its seams and
 * finishes ask for them.
 *
 * <p>The opening for the head is closed by its own seams and finished while the garment still lies
 * open at the sides; the rest is basted and tried on before any band or hem; the other openings are
 * finished in the round, bands before hems (common practice, no source).
 *
 * @since 0.1
 */
public final class OrderOfWork {
  private OrderOfWork() {}

  /**
   * The order of work.
   *
   * @param pattern the pieces and the seams between them
   * @param openings the openings that are left when all seams are sewn
   * @param strips the strips that go round openings
   * @param fabrics everything that is cut from
   * @param headOpening the name of the opening for the head, such as "neck"; need not exist
   * @return the steps, numbered from 1
   */
  public static List<Step> of(
      Pattern pattern,
      List<Opening> openings,
      List<Strip> strips,
      Collection<Fabric> fabrics,
      String headOpening) {
    List<Step> steps = new ArrayList<>(Preparation.steps(pattern, strips, fabrics));
    steps.addAll(Making.steps(pattern, openings, strips, headOpening));
    steps.add(
        Step.of(
                "Press and measure",
                "Press lightly, let it cool flat, and measure it against the measures of this plan."
                    + " Write down what you would change: the next one starts from there.")
            .withCaution(Cautions.IRON));
    List<Step> numbered = new ArrayList<>();
    for (Step step : steps) {
      numbered.add(step.numbered(numbered.size() + 1));
    }
    return List.copyOf(numbered);
  }
}
