package dev.drafting.core.assembly;

import dev.drafting.core.assembly.Face.Side;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The cloth of a garment as a surface: every copy of every piece is a face with its sides in the
 * drawn order, and sides are glued where they are sewn or lie on the fold.
 *
 * <p>Both copies of a piece are described as it is drawn; that one of them is a mirror image shows
 * only in the way it is glued, start to start.
 */
final class Surface {
  private final List<Face> faces;
  private final List<Side> sides;
  private final Set<String> twisted = new LinkedHashSet<>();

  Surface(List<Face> faces, List<Side> sides) {
    this.faces = faces;
    this.sides = sides;
    turnRightSideUp();
  }

  /**
   * Decides which faces are seen as drawn and which mirrored, so that all show their right side.
   */
  private void turnRightSideUp() {
    for (Face start : faces) {
      if (start.seen == 0) {
        start.seen = 1;
        turnNeighbours(start);
      }
    }
  }

  private void turnNeighbours(Face start) {
    Deque<Face> open = new ArrayDeque<>(List.of(start));
    while (!open.isEmpty()) {
      Face face = open.remove();
      for (Side side : sides.subList(face.first, face.first + face.count)) {
        if (!side.isGlued()) {
          continue;
        }
        Face next = sides.get(side.partner).face;
        int seen = side.startToStart ? -face.seen : face.seen;
        if (next.seen == 0) {
          next.seen = seen;
          open.add(next);
        } else if (next.seen != seen) {
          twisted.add(side.seam);
        }
      }
    }
  }

  /** The seams at which the right side would meet the wrong side. */
  Set<String> twisted() {
    return twisted;
  }

  Side side(int index) {
    return sides.get(index);
  }

  int after(int side) {
    return sides.get(side).face.after(side);
  }

  int before(int side) {
    return sides.get(side).face.before(side);
  }

  /** Vertices less edges plus faces. */
  int eulerCharacteristic() {
    Groups corners = new Groups(sides.size()); // each side stands for the corner at its start
    int glued = 0;
    for (int i = 0; i < sides.size(); i++) {
      Side side = sides.get(i);
      if (!side.isGlued()) {
        continue;
      }
      glued++;
      corners.join(i, side.startToStart ? side.partner : after(side.partner));
      corners.join(after(i), side.startToStart ? after(side.partner) : side.partner);
    }
    return corners.count() - (sides.size() - glued / 2) + faces.size();
  }

  /** The boundary loops in the order of their first sides. */
  List<List<LoopStep>> loops() {
    boolean[] visited = new boolean[sides.size()];
    List<List<LoopStep>> loops = new ArrayList<>();
    for (int i = 0; i < sides.size(); i++) {
      if (sides.get(i).isFree() && !visited[i]) {
        List<LoopStep> loop = loopFrom(i);
        loop.forEach(step -> visited[step.side] = true);
        loops.add(loop);
      }
    }
    return loops;
  }

  private List<LoopStep> loopFrom(int start) {
    List<LoopStep> loop = new ArrayList<>();
    int side = start;
    boolean asDrawn = sides.get(start).face.seen > 0;
    do {
      LoopStep step = new LoopStep(side, asDrawn);
      asDrawn = step.turn(this);
      loop.add(step);
      side = step.next;
    } while (side != start);
    return loop;
  }
}
