package dev.drafting.knit.band;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A band that shows 20 mm is sewn 20 mm inside its finished edge: what lies opposite what. */
class SeamLineTest {
  private static final Length JOIN = Length.mm(-20);

  private static Piece half(String name, double low, Curve neck) {
    return Piece.of(
        name,
        List.of(
            Edge.of("hem", Curve.line(new Point(0, 0), new Point(200, 0))),
            Edge.of("side", Curve.line(new Point(200, 0), new Point(200, 600))),
            Edge.of("shoulder", Curve.line(new Point(200, 600), new Point(60, 600))),
            Edge.of("neck", neck),
            Edge.onFold(Curve.line(new Point(0, low), new Point(0, 0)))));
  }

  private static SeamLine line(double low, Curve neck) {
    Opening opening =
        Assembly.of(
                Pattern.of(
                    "top",
                    List.of(half("front", low, neck), half("back", low, neck)),
                    List.of(
                        Seam.of("shoulder", "front shoulder", "back shoulder"),
                        Seam.of("side", "front side", "back side"))))
            .opening("neck");
    return new SeamLine(opening, JOIN);
  }

  /** Where the first part leads away from a shoulder, so far along; else counted from its end. */
  private static double seamAt(SeamLine line, double fromShoulder) {
    boolean away = line.parts().get(0).curve().start().y() > 550;
    double whole = line.parts().get(0).curve().length().toMm();
    double seam = line.seamAt(0, away ? fromShoulder : whole - fromShoulder);
    double back = line.edgeAt(seam);
    assertEquals(away ? fromShoulder : whole - fromShoulder, back, 0.02, "and back again");
    return away ? seam : line.stations().get(1) - seam;
  }

  /**
   * A U: 100 mm straight down from the shoulder, then a quarter of a circle of 60 mm to the fold.
   * Its seam is as long where it is straight, and 80 / 60 as long round the bend: 94.2 mm of edge
   * lie on 125.7 mm.
   */
  @ParameterizedTest
  @CsvSource({"0,0", "50,50", "100,100", "147.1239,162.8319", "194.2478,225.6637"})
  void onlyWhereTheEdgeBendsTheSeamIsLonger(double edge, double seam) {
    Line down = new Line(new Point(60, 600), new Point(60, 500));
    Arc bend = Arc.of(new Point(0, 500), Length.mm(60), Angle.ZERO, Angle.degrees(-90));
    SeamLine line = line(440, Curve.of(down, bend));
    assertEquals(seam, seamAt(line, edge), 1, "to the width of a chalk line");
    assertEquals(4 * 225.6637, line.length(), 0.01);
    assertEquals(4 * 194.2478, line.edgeLength(), 0.01);
  }

  /**
   * A hole like a square on its corner, 84.85 mm to a side: from each corner, at shoulders and
   * folds, the seam goes on for 20 mm, and in between it is as long as its edge.
   */
  @ParameterizedTest
  @CsvSource({"0,0", "10,30", "40,60", "84.8528,104.8528"})
  void roundACornerTheSeamGoesOn(double edge, double seam) {
    SeamLine line = line(540, Curve.line(new Point(60, 600), new Point(0, 540)));
    assertEquals(4 * (84.8528 + 2 * 20), line.length(), 0.01);
    assertEquals(4 * 84.8528, line.edgeLength(), 0.01);
    boolean away = line.parts().get(0).curve().start().y() > 550;
    double along = away ? edge : 84.8528 - edge;
    double placed = line.seamAt(0, along);
    assertEquals(seam, away || edge == 0 ? placed : 124.8528 - placed, 0.02);
  }
}
