package dev.drafting.core.trace;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/** How much of what a straight line leaves over is a bow, or a bow one way and then the other. */
final class Bow {
  private Bow() {}

  /** The squares that a bow takes away from the distances, in square mm. */
  static double squares(EdgeFit line, Ends ends) {
    int count = line.keptCount();
    int columns = Math.min(4, count);
    double[][] rows = new double[count][];
    double[] off = new double[count];
    int at = 0;
    for (int i = 0; i < line.kept.length; i++) {
      if (line.kept[i]) {
        rows[at] = row(line.fitted.share(i), columns, ends);
        off[at++] = line.fitted.distance(i);
      }
    }
    RealMatrix powers = new Array2DRowRealMatrix(rows, false);
    RealVector left = new ArrayRealVector(off, false);
    QRDecomposition qr = new QRDecomposition(powers);
    RealVector bow =
        qr.getSolver().isNonSingular()
            ? qr.getSolver().solve(left)
            : new SingularValueDecomposition(powers).getSolver().solve(left);
    double rest = left.subtract(powers.operate(bow)).getNorm();
    return left.dotProduct(left) - rest * rest;
  }

  /** A level line may not tilt, so for it the tilt is no bow. */
  private static double[] row(double share, int columns, Ends ends) {
    double t = 2 * share - 1;
    double level = ends.start().isLevel() ? share : 1 - share;
    double[] all =
        ends.hasLevel()
            ? new double[] {1, level * level, level * level * level, 0}
            : new double[] {1, t, t * t, t * t * t};
    int used = ends.hasLevel() ? Math.min(columns, 3) : columns;
    return Arrays.copyOf(all, used);
  }
}
