package dev.drafting.knit.fabric;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** All that is known of a fabric; changed on a copy only. */
final class Traits {
  final String name;
  final Structure structure;
  final double stretchAcross;
  double uncertainty = GaugeMean.OF_A_HAND;
  @Nullable Double stretchAlong;
  @Nullable Double recovery;
  Shrinkage shrinkage = Shrinkage.NONE;
  boolean prewashed;
  @Nullable Length width;
  @Nullable Double mass;
  @Nullable Boolean curls;
  boolean oneWay = true;
  double tension = 0.0075;

  Traits(String name, Structure structure, double stretchAcross) {
    this.name = name;
    this.structure = structure;
    this.stretchAcross = stretchAcross;
  }

  /** A share, or the exception that says what it may be. */
  static double share(String name, String what, double share, double most) {
    if (!(share >= 0 && share <= most)) {
      throw DraftingException.of("the " + what + " is out of range")
          .at("fabric " + name)
          .value(share)
          .accepted("a share from 0 to " + most + ", such as 0.05 for 5 %");
    }
    return share + 0.0;
  }

  Traits changed(Consumer<Traits> change) {
    Traits copy = new Traits(name, structure, stretchAcross);
    copy.uncertainty = uncertainty;
    copy.stretchAlong = stretchAlong;
    copy.recovery = recovery;
    copy.shrinkage = shrinkage;
    copy.prewashed = prewashed;
    copy.width = width;
    copy.mass = mass;
    copy.curls = curls;
    copy.oneWay = oneWay;
    copy.tension = tension;
    change.accept(copy);
    return copy;
  }

  private List<@Nullable Object> values() {
    return Arrays.asList(
        name,
        structure.name(),
        stretchAcross,
        uncertainty,
        stretchAlong,
        recovery,
        shrinkage,
        prewashed,
        width,
        mass,
        curls,
        oneWay,
        tension);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Traits && ((Traits) other).values().equals(values());
  }

  @Override
  public int hashCode() {
    return values().hashCode();
  }
}
