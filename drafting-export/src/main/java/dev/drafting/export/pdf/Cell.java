package dev.drafting.export.pdf;

/** The place of a sheet among those of its piece. */
record Cell(int row, int column) {
  /** "A1" is the sheet at the top left; after "Z" comes "AA". */
  String label() {
    StringBuilder letters = new StringBuilder();
    for (int rest = row + 1; rest > 0; rest = (rest - 1) / 26) {
      letters.insert(0, (char) ('A' + (rest - 1) % 26));
    }
    return letters.toString() + (column + 1);
  }

  Cell right() {
    return new Cell(row, column + 1);
  }

  Cell left() {
    return new Cell(row, column - 1);
  }

  Cell below() {
    return new Cell(row + 1, column);
  }

  Cell above() {
    return new Cell(row - 1, column);
  }
}
