package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lines that run straight back over the one before. */
class SpikesTest {
  private static List<Strand> chain(double... xy) {
    List<Strand> chain = new ArrayList<>();
    for (int i = 0; i + 3 < xy.length; i += 2) {
      Line line = new Line(new Point(xy[i], xy[i + 1]), new Point(xy[i + 2], xy[i + 3]));
      chain.add(Strand.join(line, 0));
    }
    return chain;
  }

  private static void assertChain(List<Strand> chain, double... xy) {
    List<Strand> expected = chain(xy);
    assertEquals(expected.size(), chain.size());
    for (int i = 0; i < chain.size(); i++) {
      Point from = chain.get(i).start();
      Point to = chain.get(i).end();
      assertEquals(0, from.distanceTo(expected.get(i).start()).toMm(), 1e-6);
      assertEquals(0, to.distanceTo(expected.get(i).end()).toMm(), 1e-6);
    }
  }

  @Test
  void aChainWithoutSpikesStaysAsItIs() {
    List<Strand> square = chain(0, 0, 40, 0, 40, 40, 0, 40, 0, 0);
    assertEquals(square, Spikes.removed(square, true));
    assertEquals(square, Spikes.removed(square, false));
    List<Strand> onwards = chain(0, 0, 40, 0, 90, 0);
    assertEquals(onwards, Spikes.removed(onwards, false));
  }

  @Test
  void ofALineThatComesPartOfTheWayBackTheRestIsLeft() {
    assertChain(Spikes.removed(chain(0, 0, 40, 0, 25, 0, 25, 30), false), 0, 0, 25, 0, 25, 30);
    assertChain(Spikes.removed(chain(0, 0, 3, 4, -3, -4, -3, 30), false), 0, 0, -3, -4, -3, 30);
  }

  @Test
  void thereAndBackLeavesNothing() {
    assertChain(
        Spikes.removed(chain(0, 0, 40, 0, 40, 25, 40, 0, 90, 0), false), 0, 0, 40, 0, 90, 0);
    assertEquals(List.of(), Spikes.removed(chain(0, 0, 40, 0, 0, 0), false));
  }

  @Test
  void aSpikeOfSeveralLinesGoesStepByStep() {
    assertChain(
        Spikes.removed(chain(0, 0, 40, 0, 40, 10, 40, 30, 40, 10, 40, 0, 90, 0), false),
        0,
        0,
        40,
        0,
        90,
        0);
  }

  @Test
  void aSpikeAcrossTheJointGoesIfTheChainIsClosed() {
    List<Strand> square = chain(40, 0, 60, 0, 60, 60, 0, 60, 0, 0, 60, 0, 40, 0);
    assertChain(Spikes.removed(square, true), 40, 0, 60, 0, 60, 60, 0, 60, 0, 0, 40, 0);
  }

  /** The last line goes up the spike that the first one comes down. */
  @Test
  void whereLastAndFirstLieOnEachOtherBothGo() {
    List<Strand> tag = chain(90, 0, 60, 0, 60, 60, 0, 60, 0, 0, 60, 0, 90, 0);
    List<Strand> kept = Spikes.removed(tag, true);
    assertChain(kept, 60, 0, 60, 60, 0, 60, 0, 0, 60, 0);
    assertEquals(tag, Spikes.removed(tag, false));
  }

  @Test
  void whereTheLastComesDownPartOfTheFirstTheRestIsLeft() {
    List<Strand> tag = chain(90, 0, 60, 0, 60, 60, 0, 60, 0, 0, 90, 0);
    assertChain(Spikes.removed(tag, true), 60, 0, 60, 60, 0, 60, 0, 0, 60, 0);
    List<Strand> other = chain(90, 0, 0, 0, 0, 60, 60, 60, 60, 0, 90, 0);
    assertChain(Spikes.removed(other, true), 0, 0, 0, 60, 60, 60, 60, 0, 0, 0);
  }

  @Test
  void aDartOfSomeWidthIsNoSpike() {
    List<Strand> dart = chain(0, 0, 40, 0, 10, 0.001, 10, 30);
    assertEquals(dart, Spikes.removed(dart, false));
    List<Strand> narrow = chain(0, 0, 400, 0, 0, 0.0001, 10, 30);
    assertEquals(narrow, Spikes.removed(narrow, false));
    List<Strand> square = chain(0, 0, 40, 0, 40, 30);
    assertEquals(square, Spikes.removed(square, false));
  }

  @Test
  void howeverLongASpikeItGoesIfItsWidthIsNextToNothing() {
    assertChain(
        Spikes.removed(chain(0, 0, 400, 0, 100, 5e-7, 100, 30), false), 0, 0, 100, 0, 100, 30);
  }

  @Test
  void aHairSquareToALineIsNoSpike() {
    List<Strand> hair = chain(0, 0, 40, 0, 40, 1e-7, 10, 30);
    assertEquals(hair, Spikes.removed(hair, false));
  }
}
