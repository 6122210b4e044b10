package dev.drafting.core.lay;

/**
 * Where the origin of one item may lie across the cloth, and on which lines if it has to meet a
 * repeat of the cloth.
 *
 * @param type which shape it is
 * @param low the lowest y of the shape's foot
 * @param high the highest y of its head
 * @param onFold whether its fold, at y = 0 of the shape, lies on {@code low} or {@code high}
 *     exactly
 * @param along the repeat along the cloth, 0 for none
 * @param alongPhase where on the repeat the shape's origin lies
 * @param across the repeat across the cloth, 0 for none
 * @param acrossPhase where on that repeat the shape's origin lies
 */
record Room(
    int type,
    double low,
    double high,
    boolean onFold,
    double along,
    double alongPhase,
    double across,
    double acrossPhase) {

  private static final double HAIR = 1e-9;

  static Room anywhere(int type, double height) {
    return new Room(type, 0, height, false, 0, 0, 0, 0);
  }

  /** The nearest x that keeps the shape within the length and on the repeat. */
  double x(TurnedShape shape, double x, double length) {
    return within(x, -shape.minX, length - shape.maxX, along, alongPhase);
  }

  /** The nearest y that keeps the shape within its room and on the repeat. */
  double y(TurnedShape shape, double y) {
    if (onFold) {
      return isFoldBelow(shape) ? low : high;
    }
    return within(y, low - shape.minY, high - shape.maxY, across, acrossPhase);
  }

  private static boolean isFoldBelow(TurnedShape shape) {
    return shape.maxY > -shape.minY;
  }

  boolean fits(TurnedShape shape, double length) {
    return shape.maxY - shape.minY <= high - low + HAIR
        && shape.maxX - shape.minX <= length
        && meetsRepeatAcross(shape);
  }

  /** Whether a line of the repeat lies where the shape could. */
  private boolean meetsRepeatAcross(TurnedShape shape) {
    if (across == 0) {
      return true;
    }
    double least = low - shape.minY;
    double lowest = Math.ceil((least - acrossPhase) / across) * across + acrossPhase;
    return lowest <= high - shape.maxY;
  }

  private static double within(
      double place, double least, double most, double repeat, double phase) {
    double clamped = Math.max(least, Math.min(most, place));
    if (repeat == 0) {
      return clamped;
    }
    double on = Math.rint((clamped - phase) / repeat) * repeat + phase;
    if (on > most) {
      on -= repeat;
    }
    return on < least ? on + repeat : on;
  }
}
