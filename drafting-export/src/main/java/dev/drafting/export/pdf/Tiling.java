package dev.drafting.export.pdf;

import dev.drafting.core.geometry.Box;

/**
 * A box covered by windows of equal size that overlap. Rows count from the top, columns from the
 * left, both from 0; the box lies in the middle of the windows.
 */
final class Tiling {
  private final double windowWidth;
  private final double windowHeight;
  private final double overlap;
  private final int columns;
  private final int rows;
  private final double left;
  private final double top;

  Tiling(Box box, double windowWidth, double windowHeight, double overlap) {
    this.windowWidth = windowWidth;
    this.windowHeight = windowHeight;
    this.overlap = overlap;
    columns = count(box.width().toMm(), windowWidth);
    rows = count(box.height().toMm(), windowHeight);
    left = box.centre().x() - across(columns, windowWidth) / 2;
    top = box.centre().y() + across(rows, windowHeight) / 2;
  }

  private int count(double length, double window) {
    return (int) Math.max(1, Math.ceil((length - overlap) / (window - overlap)));
  }

  private double across(int windows, double window) {
    return windows * (window - overlap) + overlap;
  }

  int columns() {
    return columns;
  }

  int rows() {
    return rows;
  }

  double overlap() {
    return overlap;
  }

  /** Whether sheets are laid edge to edge instead of on each other. */
  boolean isButt() {
    return overlap == 0;
  }

  /** What a sheet shows, in the drawing's millimetres. */
  Box window(Cell cell) {
    double x = left + cell.column() * (windowWidth - overlap);
    double y = top - cell.row() * (windowHeight - overlap);
    return new Box(x, y - windowHeight, x + windowWidth, y);
  }

  /** What of a sheet is still seen once its neighbours to the right and below lie on it. */
  Box visible(Cell cell) {
    Box window = window(cell);
    double right = cell.column() < columns - 1 ? overlap : 0;
    double bottom = cell.row() < rows - 1 ? overlap : 0;
    return new Box(window.minX(), window.minY() + bottom, window.maxX() - right, window.maxY());
  }
}
