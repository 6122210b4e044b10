package dev.drafting.core.trace;

import dev.drafting.core.geometry.Point;
import org.jspecify.annotations.Nullable;

/** What is asked of an edge where it ends. */
final class End {
  /** Nothing: the edge ends where its points end. */
  static final End FREE = new End(null, false, false, Double.NaN);

  /** It ends on the fold and crosses it squarely. */
  static final End SQUARE_ON_FOLD = new End(null, true, true, Double.NaN);

  /** It ends on the fold at a point, as a V neck does. */
  static final End POINTED_ON_FOLD = new End(null, true, false, Double.NaN);

  private final @Nullable Point corner;
  private final boolean onFold;
  private final boolean level;
  private final double handle;

  private End(@Nullable Point corner, boolean onFold, boolean level, double handle) {
    this.corner = corner;
    this.onFold = onFold;
    this.level = level;
    this.handle = handle;
  }

  /** The same end, at this corner. */
  End at(Point newCorner) {
    return new End(newCorner, onFold, level, handle);
  }

  /** The same level end, running level at least for this long, in mm. */
  End withHandle(double newHandle) {
    return new End(corner, onFold, level, newHandle);
  }

  @Nullable Point corner() {
    return corner;
  }

  boolean hasHandle() {
    return !Double.isNaN(handle);
  }

  /** How far from the fold the control point beside it lies, in mm; not a number when open. */
  double handle() {
    return handle;
  }

  boolean isFree() {
    return corner == null && !onFold;
  }

  boolean isOnFold() {
    return onFold;
  }

  /** Whether the edge runs level, square to the fold, as it ends. */
  boolean isLevel() {
    return level;
  }
}
