package dev.drafting.knit.fabric;

import dev.drafting.knit.wording.Wording;

/** A fabric in one line: all that is known about it. */
final class FabricText {
  private FabricText() {}

  static String of(Fabric fabric) {
    StringBuilder text = new StringBuilder(fabric.name());
    text.append(": ").append(fabric.structure().plainName());
    text.append(", stretch ").append(Wording.percent(fabric.stretchAcross()));
    fabric
        .stretchAlong()
        .ifPresent(
            along -> text.append(" across and ").append(Wording.percent(along)).append(" along"));
    text.append(" (").append(fabric.stretchClass().plainName()).append(')');
    fabric.recovery().ifPresent(back -> text.append(", recovery ").append(Wording.percent(back)));
    if (!fabric.shrinkage().isNone()) {
      text.append(", shrinks ").append(fabric.shrinkage());
    }
    if (fabric.isPrewashed()) {
      text.append(", prewashed");
    }
    fabric
        .width()
        .ifPresent(wide -> text.append(", ").append(Wording.amount(wide)).append(" wide"));
    fabric.mass().ifPresent(mass -> text.append(", ").append(Math.round(mass)).append(" g/m2"));
    return text.toString();
  }
}
