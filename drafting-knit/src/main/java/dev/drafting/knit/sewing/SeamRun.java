package dev.drafting.knit.sewing;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.util.List;

/** Which way a line runs in the cloth, and how far the cloth gives that way. */
final class SeamRun {
  /** Jersey and interlock give about twice as far across as along (knit-structure notes, CV-4). */
  private static final double ALONG_TO_ACROSS = 0.5;

  private SeamRun() {}

  static boolean isAcross(Pattern pattern, Seam seam) {
    return isAcross(pattern, seam.first());
  }

  /** Whether edges run more across the grain than along it, from end to end of each. */
  static boolean isAcross(Pattern pattern, List<EdgeRef> edges) {
    double across = 0;
    double along = 0;
    for (EdgeRef edge : edges) {
      Piece piece = pattern.piece(edge.piece());
      Curve curve = pattern.edge(edge).curve();
      Vector chord = curve.end().minus(curve.start());
      Angle toGrain = chord.angle().minus(piece.grain());
      across += chord.length().toMm() * Math.abs(Math.sin(toGrain.toRadians()));
      along += chord.length().toMm() * Math.abs(Math.cos(toGrain.toRadians()));
    }
    return across > along;
  }

  static double stretch(Fabric fabric, boolean across) {
    if (across) {
      return fabric.stretchAcross();
    }
    boolean halfAsFar =
        fabric.structure() == Structure.JERSEY || fabric.structure() == Structure.INTERLOCK;
    double unmeasured = fabric.stretchAcross() * (halfAsFar ? ALONG_TO_ACROSS : 1);
    return fabric.stretchAlong().orElse(unmeasured);
  }
}
