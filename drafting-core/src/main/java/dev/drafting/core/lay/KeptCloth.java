package dev.drafting.core.lay;

import dev.drafting.core.measure.Length;
import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is stored in place of a cloth; reading it goes through the checks. */
@SuppressWarnings("serial") // always a collection of the JDK
record KeptCloth(
    Length width,
    Length edge,
    Cloth.Fold fold,
    Length turnedOver,
    @Nullable Length length,
    boolean oneWay,
    Length spacing,
    Length repeatAlong,
    Length repeatAcross,
    List<Cloth.Flaw> flaws)
    implements Serializable {
  private static final long serialVersionUID = 1L;

  static KeptCloth of(Cloth cloth) {
    return new KeptCloth(
        cloth.width(),
        cloth.edge(),
        cloth.fold(),
        cloth.turnedOver(),
        cloth.length().orElse(null),
        cloth.isOneWay(),
        cloth.spacing(),
        cloth.repeatAlong(),
        cloth.repeatAcross(),
        cloth.flaws());
  }

  /** A cloth may have been folded before its selvages were known. */
  private Object readResolve() {
    Cloth cloth = oneWay ? Cloth.of(width) : Cloth.of(width).bothWays();
    cloth = folded(cloth).withEdge(edge);
    cloth = cloth.withSpacing(spacing).withRepeat(repeatAlong, repeatAcross);
    cloth = length == null ? cloth : cloth.withLength(length);
    for (Cloth.Flaw flaw : flaws) {
      cloth = cloth.withFlaw(flaw);
    }
    return cloth;
  }

  private Cloth folded(Cloth cloth) {
    return switch (fold) {
      case SINGLE -> cloth;
      case LENGTHWISE -> cloth.foldedLengthwise();
      case TO_THE_MIDDLE -> cloth.foldedToTheMiddle();
      case PARTLY -> cloth.foldedOver(turnedOver);
      case CROSSWISE -> cloth.foldedCrosswise();
      case TUBULAR -> cloth.tubular();
    };
  }
}
