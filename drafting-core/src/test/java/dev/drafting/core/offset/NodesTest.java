package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Points nearer than a millionth of a millimetre are one node, others are not. */
class NodesTest {
  @Test
  void numbersAreGivenInOrderAndKept() {
    Nodes nodes = new Nodes();
    Point hem = new Point(10, -20);
    Point neck = new Point(-30, 40);
    assertEquals(0, nodes.number(hem));
    assertEquals(1, nodes.number(neck));
    assertEquals(0, nodes.number(hem));
    assertEquals(1, nodes.number(neck));
    assertEquals(hem, nodes.point(0));
    assertEquals(neck, nodes.point(1));
  }

  @Test
  void aPointNextToANodeIsThatNodeOnEverySide() {
    for (double x : new double[] {0, 8e-6, -16e-6, 12.5, -700}) {
      Nodes nodes = new Nodes();
      assertEquals(0, nodes.number(new Point(x, -x)));
      for (double off : new double[] {9e-7, -9e-7}) {
        assertEquals(0, nodes.number(new Point(x + off, -x)));
        assertEquals(0, nodes.number(new Point(x, -x + off)));
      }
      assertEquals(1, nodes.number(new Point(x + 1.1e-6, -x)));
      assertEquals(2, nodes.number(new Point(x - 1.1e-6, -x)));
      assertEquals(3, nodes.number(new Point(x, -x + 1.1e-6)));
      assertEquals(4, nodes.number(new Point(x, -x - 1.1e-6)));
    }
  }

  @Test
  void justAMillionthAwayIsAnotherNode() {
    Nodes nodes = new Nodes();
    assertEquals(0, nodes.number(new Point(0, 0)));
    assertEquals(1, nodes.number(new Point(1e-6, 0)));
    assertEquals(2, nodes.number(new Point(0, 1e-6)));
  }

  @Test
  void betweenTwoNodesTheFirstIsMeant() {
    Nodes nodes = new Nodes();
    assertEquals(0, nodes.number(new Point(1.5e-6, 0)));
    assertEquals(1, nodes.number(new Point(0, 0)));
    assertEquals(0, nodes.number(new Point(0.8e-6, 0)));
  }

  /** The same numbers as if every node were asked in turn. */
  @Test
  void theCellsLeadToTheNodeThatASearchOfAllFinds() {
    Random random = new Random(5);
    Nodes nodes = new Nodes();
    List<Point> known = new ArrayList<>();
    for (int i = 0; i < 1500; i++) {
      Point point = new Point(4e-5 * random.nextDouble() - 2e-5, 4e-5 * random.nextDouble() - 2e-5);
      int expected = 0;
      while (expected < known.size() && !near(known.get(expected), point)) {
        expected++;
      }
      if (expected == known.size()) {
        known.add(point);
      }
      assertEquals(expected, nodes.number(point));
    }
  }

  private static boolean near(Point a, Point b) {
    return Math.max(Math.abs(a.x() - b.x()), Math.abs(a.y() - b.y())) < 1e-6;
  }
}
