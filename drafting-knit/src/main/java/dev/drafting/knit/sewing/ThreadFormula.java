package dev.drafting.knit.sewing;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;

/**
 * Thread to an inch of seam: a start and, for every stitch, so many times the thickness of the
 * cloth and the width of the stitch.
 */
record ThreadFormula(double start, double perStitch, double thicknesses, double widths) {

  static ThreadFormula of(double start, double perStitch, double thicknesses, double widths) {
    return new ThreadFormula(start, perStitch, thicknesses, widths);
  }

  double perMetre(Length thickness, Length width, Length stitchLength) {
    if (thickness.isNegative() || width.isNegative() || !stitchLength.isPositive()) {
      throw DraftingException.of("a stitch cannot have these measures")
          .value("thickness " + thickness + ", width " + width + ", length " + stitchLength)
          .accepted("thickness and width from zero, length above zero");
    }
    double across = thicknesses * thickness.toMm() + widths * width.toMm();
    return start + perStitch * across / stitchLength.toMm();
  }
}
