package dev.drafting.core.offset;

import dev.drafting.core.geometry.Point;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Points by number, where points that are next to each other are one. They are found by the square
 * cell of the plane that holds them.
 */
final class Nodes {
  private static final double SAME = 1e-6;
  private static final double CELL = 8 * SAME;

  private final List<Point> points = new ArrayList<>();
  private final Map<Cell, List<Integer>> cells = new HashMap<>();

  private record Cell(long column, long row) {}

  /** The number of the node at a point: the first one that is near, or a new one. */
  int number(Point point) {
    int first = Integer.MAX_VALUE;
    for (long column = cell(point.x() - SAME); column <= cell(point.x() + SAME); column++) {
      for (long row = cell(point.y() - SAME); row <= cell(point.y() + SAME); row++) {
        for (int known : cells.getOrDefault(new Cell(column, row), List.of())) {
          if (known < first && areSame(points.get(known), point)) {
            first = known;
          }
        }
      }
    }
    return first < Integer.MAX_VALUE ? first : add(point);
  }

  private int add(Point point) {
    Cell cell = new Cell(cell(point.x()), cell(point.y()));
    cells.computeIfAbsent(cell, empty -> new ArrayList<>(1)).add(points.size());
    points.add(point);
    return points.size() - 1;
  }

  private static long cell(double coordinate) {
    return (long) Math.floor(coordinate / CELL);
  }

  private static boolean areSame(Point a, Point b) {
    return Math.abs(a.x() - b.x()) < SAME && Math.abs(a.y() - b.y()) < SAME;
  }

  Point point(int number) {
    return points.get(number);
  }
}
