package dev.drafting.knit.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.assembly.OpeningPart;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Reshaping;
import dev.drafting.knit.Draft;
import dev.drafting.knit.Vest;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Marks are made on the cut piece, before the wash: that is where their places are measured. */
class CutPlacesTest {
  private static final Fabric RIB = Fabric.of("rib", Structure.RIB, 1.0);
  private static final double ACROSS = 1 / (1 - 0.03);
  private static final double ALONG = 1 / (1 - 0.05);
  private static final int STEPS = 4000;

  private static Strip strip(BandFinish finish, String opening) {
    Pattern vest = Vest.plain().neck(finish).armhole(finish).pattern();
    Opening edge = Assembly.of(vest).opening(opening);
    return Strip.of(edge, finish, RIB, StripRule.recommended());
  }

  private static Opening asCut(BandFinish finish, String opening) {
    Pattern vest = Vest.plain().neck(finish).armhole(finish).pattern();
    Pattern larger =
        Reshaping.of(vest).scaled("front", ACROSS, ALONG).scaled("back", ACROSS, ALONG).result();
    return Assembly.of(larger).opening(opening);
  }

  /** A strip turned in is sewn along the finished edge: its places are arcs of the scaled edge. */
  @Test
  void placesAlongTheEdgeAreLengthsOfTheScaledEdge() {
    FacedStrip finish = FacedStrip.of(Length.mm(15), Length.mm(7));
    for (String name : List.of("neck", "armhole (left)")) {
      Strip finished = strip(finish, name);
      List<StripMark> marks = finished.withOpeningAsCut(asCut(finish, name)).marks();
      double start = start(finished);
      for (int i = 0; i < marks.size(); i++) {
        double expected = scaled(finished.opening(), start, finished.marks().get(i).onEdge());
        assertEquals(expected, marks.get(i).onEdge().toMm(), 0.05, marks.get(i).label());
        assertEquals(finished.marks().get(i).along(), marks.get(i).along());
      }
    }
  }

  private static double start(Strip strip) {
    String join = strip.marks().get(0).label().replace("join: ", "");
    return strip.opening().stations().stream()
        .filter(station -> station.label().equals(join))
        .findFirst()
        .orElseThrow()
        .at()
        .toMm();
  }

  /** Chords of the scaled edge from one place of the loop over a distance on the finished edge. */
  private static double scaled(Opening opening, double start, Length distance) {
    List<double[]> chords = new ArrayList<>();
    for (int round = 0; round < 2; round++) {
      for (OpeningPart part : opening.parts()) {
        double whole = part.curve().length().toMm();
        Point last = part.curve().start();
        for (int i = 1; i <= STEPS; i++) {
          Point next =
              part.curve().pointAt(Length.mm(whole * i / STEPS).min(part.curve().length()));
          double dx = (next.x() - last.x()) * ACROSS;
          double dy = (next.y() - last.y()) * ALONG;
          chords.add(new double[] {whole / STEPS, Math.hypot(dx, dy)});
          last = next;
        }
      }
    }
    double at = 0;
    double sum = 0;
    for (double[] chord : chords) {
      double from = Math.max(at, start);
      double to = Math.min(at + chord[0], start + distance.toMm());
      sum += to > from ? chord[1] * (to - from) / chord[0] : 0;
      at += chord[0];
    }
    return sum;
  }

  /** Seams and centres lie where the seam line of the larger opening has them. */
  @Test
  void seamsAndCentresLieOnTheLargerSeamLine() {
    FoldedBand finish = FoldedBand.of(Length.mm(20), Length.mm(7));
    Opening larger = asCut(finish, "neck");
    Strip finished = strip(finish, "neck");
    Strip cut = finished.withOpeningAsCut(larger);
    Length seam = larger.lengthAt(finish.joinDistance());
    assertTrue(seam.ratioTo(finished.joinLine()) > 1.03);
    for (StripMark mark : cut.marks()) {
      if (mark.label().endsWith("centre front")) {
        assertEquals(seam.toMm() / 2, mark.onEdge().toMm(), 1e-6, "front and back are symmetrical");
      }
    }
    assertEquals(finished.loop(), cut.loop());
    assertEquals(finished.sections(), cut.sections());
  }

  /** A garment that is cut washed and one that is not: the latter's quarters are 3 to 5 % on. */
  @Test
  void aDraftMeasuresPlacesOnThePiecesAsTheyAreCut() {
    Fabric jersey = Fabric.of("jersey", Structure.JERSEY, 0.3).withShrinkage(0.03, 0.05);
    Draft unwashed =
        Draft.of(Vest.plain().pattern()).withFabric("body", jersey).withFabric("rib", RIB);
    Draft washed = unwashed.withFabric("body", jersey.prewashed());
    StripMark larger = unwashed.strips().get(0).marks().get(2);
    StripMark smaller = washed.strips().get(0).marks().get(2);
    double ratio = larger.onEdge().ratioTo(smaller.onEdge());
    assertTrue(ratio > ACROSS && ratio < ALONG, String.valueOf(ratio));
  }

  @Test
  void anotherOpeningIsRefused() {
    FoldedBand finish = FoldedBand.of(Length.mm(20), Length.mm(7));
    Strip neck = strip(finish, "neck");
    Opening other = asCut(finish, "armhole (left)");
    String message =
        assertThrows(DraftingException.class, () -> neck.withOpeningAsCut(other)).getMessage();
    assertEquals(
        "neck: this is another opening. Found: armhole (left). Accepted: the same edges in the same"
            + " order.",
        message);
  }
}
