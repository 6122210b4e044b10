package dev.drafting.core.trace;

import static dev.drafting.core.Values.differ;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.measure.Length;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TruingValuesTest {
  private static Object read(Object written) throws IOException, ClassNotFoundException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(written);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      return in.readObject();
    }
  }

  @Test
  void everythingIsReadBackAsItWasWritten() throws Exception {
    Tracing tracing = new Vest.Pencil(2, 1, 15).whole(Transform.identity());
    Truing truing =
        Truing.of(tracing)
            .withSmoothing(Length.mm(1.5))
            .withCurved("side")
            .withStraight("shoulder")
            .withPointedCorner("neck");
    TruedPiece trued = truing.result();
    for (Object value : List.of(tracing, truing, trued, trued.report())) {
      Object read = read(value);
      assertEquals(value, read);
      assertEquals(value.hashCode(), read.hashCode());
      assertTrue(value.toString().length() < 1000, value.toString());
    }
    assertEquals(trued, ((Truing) read(truing)).result());
  }

  @Test
  void everySettingMakesAnotherValue() {
    Truing plain = Truing.of(new Vest.Pencil(2, 1, 15).half());
    assertNotEquals(plain, plain.withSmoothing(Length.mm(2)));
    assertNotEquals(plain, plain.withStraight("neck"));
    assertNotEquals(plain.withCurved("neck"), plain.withStraight("neck"));
    assertNotEquals(plain, plain.withPointedCorner("neck"));
    assertEquals(plain.withCurved("neck"), plain.withStraight("neck").withCurved("neck"));
    assertEquals(Optional.empty(), plain.smoothing());
    assertEquals(Optional.of(Length.mm(2)), plain.withSmoothing(Length.mm(2)).smoothing());
  }

  @Test
  void valuesReadWell() {
    TracedEdge shoulder = TracedEdge.of("shoulder", List.of(new Point(1, 2), new Point(3, 4)));
    assertEquals("shoulder, 2 points", shoulder.toString());
    Tracing half = new Vest.Pencil(1, 0, 10).half();
    assertEquals(
        "front, half on the fold: hem 25 points, side 38 points, armhole 26 points, "
            + "shoulder 9 points, neck 20 points",
        half.toString());
    assertEquals("Truing of front, smoothing judged from the points", Truing.of(half).toString());
    TruingReport report = Truing.of(half).result().report();
    assertEquals(
        "front, the pencil wandered 0 mm, findings 0\n"
            + "  hem: curved, 1 cubic, 241.5 mm; 25 points, 0 refused, RMS 0 mm, largest 0 mm\n"
            + "  side: straight, 371.2 mm; 38 points, 0 refused, RMS 0 mm, largest 0 mm\n"
            + "  armhole: curved, 1 cubic, 246.6 mm; 26 points, 0 refused, RMS 0 mm, "
            + "largest 0 mm\n"
            + "  shoulder: straight, 77.6 mm; 9 points, 0 refused, RMS 0 mm, largest 0 mm\n"
            + "  neck: curved, 1 cubic, 189.1 mm; 20 points, 0 refused, RMS 0 mm, largest 0 mm",
        report.toString());
    assertEquals(
        "front: no such edge was traced. Found: sleeve. "
            + "Accepted: hem, side, armhole, shoulder, neck.",
        assertThrows(DraftingException.class, () -> report.edge("sleeve")).getMessage());
  }

  @Test
  void whatWasTracedDiffersByNameAndPoints() {
    TracedEdge hem = TracedEdge.of("hem", 0, 0, 50, 0, 100, 0);
    TracedEdge back = TracedEdge.of("back", 100, 0, 100, 80, 0, 80, 0, 0);
    differ(
        hem,
        TracedEdge.of("hem", 0, 0, 50, 0, 100, 0),
        TracedEdge.of("foot", 0, 0, 50, 0, 100, 0),
        TracedEdge.of("hem", 0, 0, 51, 0, 100, 0),
        hem.reordered());
    assertEquals("hem, 3 points, put in order", hem.reordered().toString());
    Tracing tracing = Tracing.of("pocket", Extent.WHOLE, List.of(hem, back));
    differ(
        tracing,
        Tracing.of("pocket", Extent.WHOLE, List.of(hem, back)),
        Tracing.of("patch", Extent.WHOLE, List.of(hem, back)),
        Tracing.of("pocket", Extent.AS_IT_LIES, List.of(hem, back)),
        Tracing.of("pocket", Extent.WHOLE, List.of(hem.reordered(), back)));
    assertEquals("pocket, whole: hem 3 points, back 4 points", tracing.toString());
    assertThrows(DraftingException.class, () -> Tracing.of(" ", Extent.WHOLE, List.of(hem, back)));
    Truing truing = Truing.of(tracing);
    differ(
        truing,
        Truing.of(tracing),
        truing.withSmoothing(Length.mm(2)),
        truing.withTracedOutside("hem", Length.mm(2)),
        truing.withPointedCorner("hem"),
        truing.withStraight("hem"),
        Truing.of(Tracing.of("patch", Extent.WHOLE, List.of(hem, back))));
  }

  @Test
  void smoothingIsATenthToFiftyMillimetres() {
    Truing truing = Truing.of(new Vest.Pencil(1, 0, 10).half());
    assertEquals(Length.mm(0.1), truing.withSmoothing(Length.mm(0.1)).smoothing().orElseThrow());
    assertEquals(Length.mm(50), truing.withSmoothing(Length.mm(50)).smoothing().orElseThrow());
    assertThrows(DraftingException.class, () -> truing.withSmoothing(Length.mm(0.09)));
    assertThrows(DraftingException.class, () -> truing.withSmoothing(Length.mm(50.1)));
  }

  @Test
  void truedPiecesDifferByOutlineAndReport() {
    TruedPiece plain = Truing.of(new Vest.Pencil(1, 0, 10).half()).result();
    differ(
        plain,
        Truing.of(new Vest.Pencil(1, 0, 10).half()).result(),
        Truing.of(new Vest.Pencil(2, 1, 10).half()).result());
  }

  @Test
  void whatIsReportedDiffersByAllThatItSays() {
    Point here = new Point(1, 2);
    Point there = new Point(3, 4);
    Length one = Length.mm(1);
    Length two = Length.mm(2);
    differ(
        RefusedPoint.of(here, there, one),
        RefusedPoint.of(here, there, one),
        RefusedPoint.of(there, there, one),
        RefusedPoint.of(here, here, one),
        RefusedPoint.of(here, there, two));
    assertEquals("(1, 2), 1 mm off", RefusedPoint.of(here, there, one).toString());
    Lopsidedness side = Lopsidedness.of("side", two, one, here);
    differ(
        side,
        Lopsidedness.of("side", two, one, here),
        Lopsidedness.of("hem", two, one, here),
        Lopsidedness.of("side", one, one, here),
        Lopsidedness.of("side", two, two, here),
        side.lowered(5));
    assertEquals(new Point(1, -3), side.lowered(5).where());
    assertEquals("side: left and right differ by up to 2 mm, RMS 1 mm", side.toString());
    Tracing first = new Vest.Pencil(1, 1, 15).half();
    Tracing second = new Vest.Pencil(2, 1, 15).half();
    differ(
        RepeatedTracing.of(first, second),
        RepeatedTracing.of(first, second),
        RepeatedTracing.of(second, first),
        RepeatedTracing.of(first, first));
    TruingReport report = Truing.of(first).result().report();
    differ(report, Truing.of(first).result().report(), Truing.of(second).result().report());
  }
}
