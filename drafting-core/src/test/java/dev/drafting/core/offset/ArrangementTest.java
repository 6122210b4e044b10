package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Chains of straight strands cut where they cross and linked up again. */
class ArrangementTest {
  private static List<Strand> chain(double... xy) {
    List<Strand> chain = new ArrayList<>();
    for (int i = 0; i + 3 < xy.length; i += 2) {
      Line line = new Line(new Point(xy[i], xy[i + 1]), new Point(xy[i + 2], xy[i + 3]));
      chain.add(Strand.parallel(line, 0, new Origin(line, i / 2, 0, 1)));
    }
    return chain;
  }

  /** The strands of each loop in order. */
  private static List<List<Integer>> loops(
      List<Strand> chain, boolean closed, StrandCrossing... crossings) {
    return new Arrangement(chain, List.of(crossings), closed)
        .loops().stream()
            .map(loop -> loop.stream().map(Arrangement.Piece::strand).toList())
            .toList();
  }

  /** Two squares that touch in (10, 10); the first has a curl at its lower edge. */
  @Test
  void loopsThatTouchAtAPointAreKeptApart() {
    List<Strand> chain =
        chain(
            0, 0, 6, 0, 6, -3, 4, -3, 4, 3, 10, 3, 10, 10, 20, 10, 20, 20, 10, 20, 10, 10, 0, 10, 0,
            0);
    List<List<Integer>> loops =
        loops(
            chain,
            true,
            new StrandCrossing(new Point(4, 0), 0, 4.0 / 6, 3, 0.5),
            new StrandCrossing(new Point(10, 10), 5, 1, 9, 1));
    assertEquals(List.of(List.of(3, 4, 5, 10, 11, 0), List.of(6, 7, 8, 9)), loops);
  }

  @Test
  void aTailThatLeadsToALoopOrAwayFromItIsNoPartOfIt() {
    List<Strand> into = chain(10, -20, 10, 0, 20, 0, 20, 10, 10, 10, 10, 0);
    StrandCrossing joint = new StrandCrossing(new Point(10, 0), 0, 1, 4, 1);
    assertEquals(List.of(List.of(1, 2, 3, 4)), loops(into, false, joint));
    List<Strand> away = chain(10, 0, 10, 10, 0, 10, 0, 0, 10, 0, -20, -5, -20, 60);
    StrandCrossing start = new StrandCrossing(new Point(10, 0), 0, 0, 3, 1);
    assertEquals(List.of(List.of(0, 1, 2, 3)), loops(away, false, start));
  }
}
