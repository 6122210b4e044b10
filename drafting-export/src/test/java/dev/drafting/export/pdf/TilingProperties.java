package dev.drafting.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Box;
import dev.drafting.core.measure.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class TilingProperties {
  @Property
  void windowsCoverTheBoxAndOverlapByTheStripAndNoRowOrColumnIsIdle(
      @ForAll @DoubleRange(min = 1, max = 4000) double width,
      @ForAll @DoubleRange(min = 1, max = 4000) double height,
      @ForAll @DoubleRange(min = 8, max = 30) double overlap) {
    Box box = new Box(-50, 20, -50 + width, 20 + height);
    Tiling tiling = new Tiling(box, 190, 277, overlap);
    Box first = tiling.window(new Cell(0, 0));
    Box last = tiling.window(new Cell(tiling.rows() - 1, tiling.columns() - 1));
    Box all = first.union(last);
    assertTrue(all.widened(Length.mm(1e-9)).union(box).equals(all.widened(Length.mm(1e-9))));
    assertEquals(tiling.columns() * (190 - overlap) + overlap, all.width().toMm(), 1e-9);
    assertEquals(tiling.rows() * (277 - overlap) + overlap, all.height().toMm(), 1e-9);
    assertTrue(tiling.columns() == 1 || all.width().toMm() - (190 - overlap) < width + 1e-9);
    assertTrue(tiling.rows() == 1 || all.height().toMm() - (277 - overlap) < height + 1e-9);
    Box right = tiling.window(new Cell(0, 0).right());
    assertEquals(overlap, first.maxX() - right.minX(), 1e-9);
    Box below = tiling.window(new Cell(0, 0).below());
    assertEquals(overlap, below.maxY() - first.minY(), 1e-9);
  }
}
