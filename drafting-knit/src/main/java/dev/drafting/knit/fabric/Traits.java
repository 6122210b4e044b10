package dev.drafting.knit.fabric;

import dev.drafting.core.measure.Length;
import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** All that is known of a fabric; changed on a copy only. */
final class Traits implements Serializable {
  private static final long serialVersionUID = 1L;

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
