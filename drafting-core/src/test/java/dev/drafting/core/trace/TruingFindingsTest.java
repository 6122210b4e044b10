package dev.drafting.core.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.finding.Finding;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What is said and measured of edges whose points lie off them by given distances. */
class TruingFindingsTest {
  private static final Noise ONE = Noise.declared(1);
  private static final Track LINE =
      new Track(Knots.straight(), new double[] {0, 100}, new double[] {7, 7});

  /** Eight points along a line at y = 7, every 10 mm, off it by these distances. */
  private static TracedSide side(String side, boolean[] kept, double... off) {
    double[] x = IntStream.range(0, off.length).mapToDouble(i -> 10 * i).toArray();
    double[] xy = new double[2 * off.length];
    for (int i = 0; i < off.length; i++) {
      xy[2 * i] = x[i];
      xy[2 * i + 1] = 7 + off[i];
    }
    Stroke stroke = Stroke.of(TracedEdge.of("hem", xy));
    GivenFit fitted = new GivenFit(LINE, stroke.samples.share, off);
    return new TracedSide(
        side, stroke, new EdgeFit(stroke.samples, Form.STRAIGHT, fitted, kept, ONE));
  }

  private static FittedEdge edge(
      double atFold, @Nullable Lopsidedness sides, TracedSide... strokes) {
    return new FittedEdge("hem", Ends.FREE, strokes[0].fit(), List.of(strokes), sides, atFold);
  }

  private static List<Finding> said(FittedEdge edge) {
    Outline outline = new Outline("bag", List.of(edge), ONE, Transform.identity(), true, true);
    return new TruingFindings(outline, Length.mm(2)).all();
  }

  private static List<String> reasons(FittedEdge edge) {
    return said(edge).stream().map(Finding::reason).toList();
  }

  @Test
  void eachRunOfSlipsIsSaidByItself() {
    boolean[] kept = {true, true, false, false, true, false, true, false};
    FittedEdge edge = edge(0, null, side("left ", kept, 0, 1, 5, -6, 0, -9, 0, 4));
    assertEquals(
        List.of(
            "2 points of the left hem stand up to 6 mm off, near x 30 mm, y 1 mm of the tracing;"
                + " taken for a slip of the pencil and left out",
            "1 point of the left hem stands 9 mm off, at x 50 mm, y -2 mm of the tracing; taken"
                + " for a slip of the pencil and left out",
            "1 point of the left hem stands 4 mm off, at x 70 mm, y 11 mm of the tracing; taken"
                + " for a slip of the pencil and left out"),
        reasons(edge));
    assertEquals(
        "Look at the garment there. If the edge really bends, trace the left hem again with more"
            + " points.",
        said(edge).get(0).remedies().get(0).text());
    assertEquals("2", said(edge).get(0).remedies().get(0).data().get("trace.points"));
  }

  /** Off by 2 mm each is as far as it may be, 2.1 mm is not. */
  @Test
  void aPencilThatWandersTooFarIsSaid() {
    boolean[] all = EdgeFit.all(4);
    assertEquals(List.of(), said(edge(0, null, side("", all, 2, -2, 2, -2))));
    List<Finding> rough = said(edge(0, null, side("", all, 2.1, -2.1, 2.1, -2.1)));
    assertEquals("trace.rough", rough.get(0).id());
    assertEquals("the pencil wandered 2.1 mm along the hem, more than 2 mm", rough.get(0).reason());
    assertEquals("Trace the hem again.", rough.get(0).remedies().get(0).text());
  }

  @Test
  void whatComesToTheFoldAskewIsSaid() {
    TracedSide even = side("", EdgeFit.all(4), 0, 0, 0, 0);
    assertEquals(List.of(), said(edge(25, null, even)));
    assertEquals(
        List.of(
            "the points of the hem come to the fold 26° off square; it is drawn square, so that"
                + " it does not peak when unfolded"),
        reasons(edge(26, null, even)));
  }

  /** 3 mm, or three times what the pencil wandered. */
  @Test
  void sidesThatDifferAreSaid() {
    TracedSide even = side("", EdgeFit.all(4), 0, 0, 0, 0);
    Point here = new Point(0, 0);
    Length three = Length.mm(3);
    assertEquals(List.of(), said(edge(0, Lopsidedness.of("hem", three, three, here), even)));
    assertEquals(
        List.of("the two sides differ by up to 3.5 mm at the hem: the average is used"),
        reasons(edge(0, Lopsidedness.of("hem", Length.mm(3.5), three, here), even)));
  }

  /** Off a line by 3, 1 and 2 mm; the slip between them is 20 mm off and counts for nothing. */
  @Test
  void anEdgeIsMeasuredByThePointsThatCount() {
    boolean[] kept = {true, false, true, true};
    FittedEdge edge = edge(0, null, side("", kept, 3, 20, -1, 2));
    Transform lower = Transform.translation(new Vector(0, -7));
    EdgeReport report = new Measuring(edge, LINE, lower).report(0.4);
    assertEquals(4, report.points());
    assertEquals(
        List.of(RefusedPoint.of(new Point(10, 27), new Point(10, 20), Length.mm(20))),
        report.refused());
    assertEquals(Math.sqrt(14 / 3.0), report.rms().toMm(), 1e-9);
    assertEquals(3, report.largest().toMm(), 1e-9);
    assertEquals(Math.hypot(20, 4) + Math.hypot(10, 3), report.tracedLength().toMm(), 1e-9);
    assertEquals(100, report.length().toMm(), 1e-9);
    assertEquals(0.4, report.lengthUncertainty().toMm(), 1e-12);
    assertEquals(1, report.noise().toMm(), 1e-12);
  }

  /** Of a whole piece the way is the middle of both, and the left side is laid on the right. */
  @Test
  void bothSidesAreMeasuredOnTheHalf() {
    TracedSide right = side("right ", EdgeFit.all(3), 1, 1, 1);
    Stroke mirrored = Stroke.of(TracedEdge.of("hem", List.of(new Point(0, 9), new Point(-30, 9))));
    TracedSide left =
        new TracedSide(
            "left ",
            mirrored,
            new EdgeFit(
                mirrored.samples,
                Form.STRAIGHT,
                new GivenFit(LINE, mirrored.samples.share, new double[2]),
                EdgeFit.all(2),
                ONE));
    Lopsidedness sides = Lopsidedness.of("hem", Length.mm(1), Length.mm(1), new Point(0, 0));
    EdgeReport report =
        new Measuring(edge(0, sides, right, left), LINE, Transform.identity()).report(0);
    assertEquals(5, report.points());
    assertEquals((20 + 30) / 2.0, report.tracedLength().toMm(), 1e-9);
    assertEquals(2, report.largest().toMm(), 1e-9);
    assertEquals(Math.sqrt((3 * 1 + 2 * 4) / 5.0), report.rms().toMm(), 1e-9);
  }
}
