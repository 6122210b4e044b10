package dev.drafting.knit.garment;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.template.Dimensions;
import dev.drafting.core.trace.TapedHalf;

/**
 * Half of a front or a back on the fold, with the measures of a garment that lies flat. A flared
 * side is as long as a straight one.
 */
final class TopHalf {
  /** How much farther out than the tip of the shoulder the underarm lies, at least. */
  private static final double OUTWARDS = 1.02;

  private final TapedHalf measures;

  TopHalf(Dimensions given, String neckDepth) {
    Length chest = given.length("chest");
    Length armholeDepth = given.length("armhole depth");
    Length side = given.length("length").minus(armholeDepth);
    Length flare = given.length("flare");
    double sin = flare.ratioTo(side);
    Length rise = side.times(1 - Math.sqrt(1 - sin * sin));
    this.measures =
        TapedHalf.of("half", given.length("length"))
            .withHem(chest.times(0.5).plus(flare.times(2)), rise)
            .withUnderarm(chest.times(0.5), armholeDepth)
            .withShoulder(given.length("shoulder"), given.length("shoulder drop"))
            .withNeck(given.length("neck width"), given.length(neckDepth));
  }

  /** The armhole has to run outwards, from the tip of the shoulder to the underarm. */
  static void check(Dimensions given) {
    double shoulder = given.length("shoulder").toMm();
    double drop = given.length("shoulder drop").toMm();
    double tip =
        given.length("neck width").toMm() / 2 + Math.sqrt(shoulder * shoulder - drop * drop);
    double least = 4 * OUTWARDS * tip;
    if (given.length("chest").toMm() < least) {
      throw DraftingException.of("the shoulders reach beyond the underarm")
          .at("chest")
          .value(given.length("chest").text(LengthUnit.CM, 1))
          .accepted(
              Length.mm(least).text(LengthUnit.CM, 1)
                  + " or more with these shoulders and this neck, or a shorter shoulder");
    }
  }

  Piece piece(String name) {
    return measures.piece(name);
  }

  /** How long the armhole is. */
  Length armholeLength() {
    return measures.piece().edge("armhole").length();
  }
}
