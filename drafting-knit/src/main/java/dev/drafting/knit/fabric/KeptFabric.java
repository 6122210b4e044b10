package dev.drafting.knit.fabric;

import dev.drafting.core.measure.Length;
import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/** What is stored in place of a fabric; reading it goes through the checks. */
record KeptFabric(
    String name,
    Structure structure,
    double stretchAcross,
    double uncertainty,
    @Nullable Double stretchAlong,
    @Nullable Double recovery,
    Shrinkage shrinkage,
    boolean prewashed,
    @Nullable Length width,
    @Nullable Double mass,
    @Nullable Boolean curls,
    boolean oneWay,
    double tension)
    implements Serializable {
  private static final long serialVersionUID = 1L;

  static KeptFabric of(Traits traits) {
    return new KeptFabric(
        traits.name,
        traits.structure,
        traits.stretchAcross,
        traits.uncertainty,
        traits.stretchAlong,
        traits.recovery,
        traits.shrinkage,
        traits.prewashed,
        traits.width,
        traits.mass,
        traits.curls,
        traits.oneWay,
        traits.tension);
  }

  private Object readResolve() {
    Fabric fabric = Fabric.of(name, structure, stretchAcross).withUncertainty(uncertainty);
    fabric = fabric.withShrinkage(shrinkage).withTension(tension);
    fabric = stretchAlong == null ? fabric : fabric.withStretchAlong(stretchAlong);
    fabric = recovery == null ? fabric : fabric.withRecovery(recovery);
    fabric = width == null ? fabric : fabric.withWidth(width);
    fabric = mass == null ? fabric : fabric.withMass(mass);
    fabric = curls == null ? fabric : fabric.withCurl(curls);
    fabric = prewashed ? fabric.prewashed() : fabric;
    return oneWay ? fabric : fabric.bothWays();
  }
}
