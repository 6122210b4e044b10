package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Parallels of whole outlines, worked by hand. */
class OffsetTest {
  private static double area(List<OffsetEdge> edges) {
    return Offset.of(edges).result().outline().areaSquareMm();
  }

  @Test
  void everySideOfARectangleMovesByItsOwnDistance() {
    OffsetResult result = Offset.of(Outlines.rectangle(100, 50, 10, 7, 0, -5)).result();
    assertEquals((100 + 7 - 5) * (50 + 10), result.outline().areaSquareMm(), 1e-9);
    assertEquals(102, result.length("bottom").toMm(), 1e-12);
    assertEquals(60, result.length("right").toMm(), 1e-12);
    assertEquals(4, result.parts().size());
    assertEquals(new Point(5, -10), result.outline().start());
    assertTrue(result.trimmings().isEmpty());
  }

  @Test
  void equalDistancesInside() {
    assertEquals(80 * 30, area(Outlines.rectangle(100, 50, -10, -10, -10, -10)), 1e-9);
  }

  @Test
  void anEdgeInsideEndsOnItsNeighbourAtZero() {
    // join line of a straight neck 8 mm inside, beside a fold and a shoulder that leans
    List<OffsetEdge> edges =
        List.of(
            Outlines.line("neck", -8, 60, 100, 0, 100),
            Outlines.line("fold", 0, 0, 100, 0, 0),
            Outlines.line("hem", 0, 0, 0, 100, 0),
            Outlines.line("shoulder", 0, 100, 0, 60, 100));
    OffsetResult result = Offset.of(edges).result();
    Curve neck = result.parts("neck").get(0).curve();
    assertEquals(92, neck.start().y(), 1e-12);
    assertEquals(60 + 8 * 40.0 / 100, neck.start().x(), 1e-12);
    assertEquals(0, neck.end().x(), 1e-12);
    assertEquals(92, neck.end().y(), 1e-12);
    assertEquals(63.2, result.length("neck").toMm(), 1e-12);
  }

  @Test
  void aVestKeepsOnePartForEachEdge() {
    OffsetResult result = Offset.of(Outlines.vest(25, 7, -6, 7, -6, 0)).result();
    assertEquals(6, result.parts().size(), result.toString());
    for (String name : List.of("hem", "side", "armhole", "shoulder", "neck", "fold")) {
      assertEquals(1, result.parts(name).size(), result.toString());
    }
    assertEquals(Length.ZERO, result.parts("hem").get(0).from());
    assertTrue(result.trimmings().isEmpty(), result.toString());
  }

  @Test
  void aJoinLineEndsExactlyOnTheFoldWhetherTheNeckIsSquareOrPointed() {
    double w = 13;
    for (double control : new double[] {470, 500, 440}) {
      List<OffsetEdge> edges =
          List.of(
              Outlines.line("hem", 0, 0, 0, 240, 0),
              Outlines.line("side", 0, 240, 0, 200, 560),
              Outlines.line("shoulder", 0, 200, 560, 96, 588),
              Outlines.edge("neck", -w, Outlines.cubic(96, 588, 80, 500, 50, control, 0, 470)),
              Outlines.line("fold", 0, 0, 470, 0, 0));
      OffsetResult result = Offset.of(edges).result();
      Curve neck = result.parts("neck").get(0).curve();
      assertEquals(0, neck.end().x(), 1e-9);
      Curve shoulder = edges.get(2).curve();
      assertEquals(0, shoulder.nearest(neck.start()).distance().toMm(), 1e-9);
      // where the neck rises towards the fold it is continued, where it dips it is cut short
      double slope = Math.atan2(control - 470, 50);
      if (slope >= 0) {
        assertEquals(470 - w / Math.cos(slope), neck.end().y(), 1e-9);
      } else {
        assertEquals(13, edges.get(3).curve().nearest(neck.end()).distance().toMm(), 0.01);
      }
    }
  }

  @Test
  void resultsAreValuesThatReadWell() throws Exception {
    Offset offset = Offset.of(Outlines.rectangle(100, 50, 10, 7, 0, -5));
    OffsetResult result = offset.withCorner(0, CornerTreatment.bevel()).result();
    assertEquals(
        "Offset of bottom at 10 mm, right at 7 mm, top at 0 mm, left at -5 mm", offset.toString());
    assertEquals("EDGE bottom, 95 mm, from 5 mm to 100 mm", result.parts().get(0).toString());
    assertEquals("JOIN after bottom, 12.21 mm", result.parts().get(1).toString());
    assertTrue(result.toString().length() < 1000);
    OffsetResult again = offset.withCorner(0, CornerTreatment.bevel()).result();
    assertEquals(result, again);
    assertEquals(result.hashCode(), again.hashCode());
    var bytes = new java.io.ByteArrayOutputStream();
    try (var out = new java.io.ObjectOutputStream(bytes)) {
      out.writeObject(result);
      out.writeObject(offset);
    }
    try (var in =
        new java.io.ObjectInputStream(new java.io.ByteArrayInputStream(bytes.toByteArray()))) {
      assertEquals(result, in.readObject());
      assertEquals(offset, in.readObject());
    }
  }
}
