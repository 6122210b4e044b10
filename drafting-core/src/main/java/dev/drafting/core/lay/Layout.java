package dev.drafting.core.lay;

/** Where every item lies, and turned how. */
final class Layout {
  final int[] turn;
  final double[] x;
  final double[] y;

  Layout(int count) {
    turn = new int[count];
    x = new double[count];
    y = new double[count];
  }

  Layout copy() {
    Layout copy = new Layout(x.length);
    copy.set(this);
    return copy;
  }

  void set(Layout other) {
    System.arraycopy(other.turn, 0, turn, 0, turn.length);
    System.arraycopy(other.x, 0, x, 0, x.length);
    System.arraycopy(other.y, 0, y, 0, y.length);
  }
}
