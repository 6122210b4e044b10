package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which lines are outlines or open lines, however they are turned. */
class SourceCheckTest {
  private static List<OffsetEdge> turned(int degrees, double... xy) {
    OffsetEdge edge = Outlines.line("line", 10, xy);
    Transform turn = Transform.rotation(new Point(0, 0), Angle.degrees(degrees));
    return List.of(
        OffsetEdge.of(
            "line",
            Curve.of(edge.curve().segments().stream().map(s -> s.map(turn)).toList()),
            Length.mm(10)));
  }

  private static void assertOpenLine(List<OffsetEdge> edges) {
    assertEquals(edges, SourceCheck.openLine(edges));
  }

  private static String refused(List<OffsetEdge> edges) {
    return String.valueOf(
        assertThrows(DraftingException.class, () -> SourceCheck.openLine(edges)).getMessage());
  }

  @Test
  void aPointOnALineTouchesItAndALineThroughItCrosses() {
    for (int degrees = 7; degrees < 367; degrees += 15) {
      assertOpenLine(turned(degrees, -50, 0, 50, 0, 50, 40, 0, 0, -50, 30));
      assertTrue(
          refused(turned(degrees, -50, 0, 50, 0, 50, 40, 0, 0, -50, -30))
              .contains("line: the edge crosses itself"));
      assertOpenLine(turned(degrees, -50, 0, 50, 0, 50, -40, 0, 0, -50, -30));
      assertTrue(
          refused(turned(degrees, -50, 0, 50, 0, 50, -40, 0, 0, -50, 30))
              .contains("line: the edge crosses itself"));
    }
  }

  @Test
  void anOpenLineMayEndOrStartOnItself() {
    for (int degrees = 0; degrees < 360; degrees += 15) {
      assertOpenLine(turned(degrees, 0, -30, 20, 0, 100, 0, 100, 50, 50, 50, 50, 0));
      assertOpenLine(turned(degrees, 50, 0, 50, 50, 100, 50, 100, 0, 20, 0, 0, -30));
    }
  }

  @Test
  void anOutlineMayTouchItsOwnStartButNotCrossThere() {
    List<OffsetEdge> touching =
        List.of(Outlines.line("line", 10, 0, 0, 60, -60, 60, 60, 0, 0, -20, 20, -20, -20, 0, 0));
    assertEquals(touching, SourceCheck.outline(touching));
    List<OffsetEdge> crossing =
        List.of(Outlines.line("line", 10, 0, 0, 60, -60, 60, 60, 0, 0, -20, -20, -20, 20, 0, 0));
    assertThrows(DraftingException.class, () -> SourceCheck.outline(crossing));
  }

  @Test
  void theEdgesThatCrossAreNamed() {
    List<OffsetEdge> edges =
        List.of(
            Outlines.line("hem", 10, 0, 0, 100, 0),
            Outlines.line("side", 10, 100, 0, 100, 50),
            Outlines.line("top", 10, 100, 50, 50, 50, 50, -20));
    assertTrue(refused(edges).contains("hem: the edge crosses top"));
    List<OffsetEdge> last =
        List.of(
            Outlines.line("hem", 10, 0, 0, 100, 0),
            Outlines.line("side", 10, 100, 0, 100, 50, 60, 50, 60, 20, 120, 20));
    assertTrue(refused(last).contains("side: the edge crosses itself"));
    List<OffsetEdge> first =
        List.of(
            Outlines.line("side", 10, 100, 0, 100, 50, 60, 50, 60, 20, 120, 20),
            Outlines.line("hem", 10, 120, 20, 200, 20));
    assertTrue(refused(first).contains("side: the edge crosses itself"));
  }

  @Test
  void edgesJoinUpWithinAMillionthOfAMillimetre() {
    OffsetEdge hem = Outlines.line("hem", 10, 0, 0, 100, 0);
    assertOpenLine(List.of(hem, Outlines.line("side", 10, 100, 1e-6, 100, 50)));
    List<OffsetEdge> apart = List.of(hem, Outlines.line("side", 10, 100, 1.1e-6, 100, 50));
    assertTrue(refused(apart).startsWith("hem: the edge does not end where side begins"));
  }

  @Test
  void aLineThereAndBackEnclosesNothing() {
    List<OffsetEdge> edges =
        List.of(Outlines.line("there", 10, 0, 0, 100, 0), Outlines.line("back", 10, 100, 0, 0, 0));
    DraftingException none =
        assertThrows(DraftingException.class, () -> SourceCheck.outline(edges));
    assertTrue(
        String.valueOf(none.getMessage())
            .startsWith("there: the outline runs clockwise or encloses nothing"));
  }
}
