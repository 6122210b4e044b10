package dev.drafting.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.geometry.Box;
import org.junit.jupiter.api.Test;

class TilingTest {
  /** 900 x 1100 mm on A4, margins and overlap 10 mm: ceil(890/180) = 5, ceil(1090/267) = 5. */
  @Test
  void coversAKnownBoxWithTwentyFiveSheets() {
    Tiling tiling = new Tiling(new Box(0, 0, 900, 1100), 190, 277, 10);
    assertEquals(5, tiling.columns());
    assertEquals(5, tiling.rows());
  }

  @Test
  void oneWindowIsEnoughForABoxOfItsSize() {
    Tiling tiling = new Tiling(new Box(0, 0, 190, 277), 190, 277, 10);
    assertEquals(1, tiling.columns() * tiling.rows());
    assertEquals(new Box(0, 0, 190, 277), tiling.window(new Cell(0, 0)));
  }

  @Test
  void rowsHaveLettersFromTheTop() {
    assertEquals("A1", new Cell(0, 0).label());
    assertEquals("C12", new Cell(2, 11).label());
    assertEquals("Z1", new Cell(25, 0).label());
    assertEquals("AA1", new Cell(26, 0).label());
  }
}
