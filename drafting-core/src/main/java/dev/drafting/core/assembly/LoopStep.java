package dev.drafting.core.assembly;

import dev.drafting.core.assembly.Face.Side;
import dev.drafting.core.pattern.Corner;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** A free side on a boundary loop, and what the loop meets at the end of it. */
final class LoopStep {
  final int side;
  final boolean asDrawn;

  /** The corners of pieces that lie together at the end of the side. */
  final List<PieceCorner> corners = new ArrayList<>();

  /** The seams that the loop crosses there. */
  final Set<String> seams = new LinkedHashSet<>();

  /** The pieces whose fold the loop crosses there. */
  final Set<String> folds = new LinkedHashSet<>();

  /** The angle of the garment there, in radians. */
  double angle;

  /** The next free side. */
  int next;

  /** A corner and the piece it belongs to. */
  record PieceCorner(String piece, Corner corner) {}

  LoopStep(int side, boolean asDrawn) {
    this.side = side;
    this.asDrawn = asDrawn;
  }

  /**
   * Turns about the end of the side, from face to face, until the next free side. What lies under a
   * lap is passed by, and the edge of the garment ends there and goes on without a corner.
   *
   * @return whether the loop follows that side as drawn
   */
  boolean turn(Surface surface) {
    int arrival = side;
    boolean forward = asDrawn;
    boolean lapped = false;
    while (true) {
      pass(surface.side(forward ? surface.after(arrival) : arrival));
      int beyond = forward ? surface.after(arrival) : surface.before(arrival);
      Side side = surface.side(beyond);
      if (side.isFree()) {
        next = beyond;
        angle = lapped ? Math.PI : angle;
        return forward;
      }
      cross(side);
      if (side.caught) {
        lapped = true;
        arrival = beyond;
        continue;
      }
      boolean atStartOfPartner = forward == side.startToStart;
      arrival = side.partner;
      forward = !atStartOfPartner;
    }
  }

  private void pass(Side starting) {
    angle += starting.angle;
    if (starting.corner != null) {
      corners.add(new PieceCorner(starting.face.piece.name(), starting.corner));
    }
  }

  private void cross(Side side) {
    if (side.edge.isOnFold()) {
      folds.add(side.face.piece.name());
    } else {
      seams.add(side.seam);
    }
  }

  /** Tells whether the edge of the garment goes on in another copy of a piece. */
  boolean crosses() {
    return !seams.isEmpty() || !folds.isEmpty();
  }
}
