package dev.drafting.core.assembly;

import dev.drafting.core.pattern.Corner;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Piece;
import org.jspecify.annotations.Nullable;

/** One copy of a piece in the surface: a run of sides in the order of the drawn outline. */
final class Face {
  final Piece piece;
  final boolean mirrored;
  final int first;
  int count;

  /** How it shows its right side: 1 as drawn, -1 mirrored, 0 not yet known. */
  int seen;

  Face(Piece piece, boolean mirrored, int first) {
    this.piece = piece;
    this.mirrored = mirrored;
    this.first = first;
  }

  int after(int side) {
    return first + (side - first + 1) % count;
  }

  int before(int side) {
    return first + (side - first + count - 1) % count;
  }

  /** A stretch of an edge of one face, and the corner of the face where it starts. */
  static final class Side {
    final Face face;
    final Edge edge;

    /** The corner at its start, or nothing where it starts within an edge. */
    final @Nullable Corner corner;

    /** The angle of the face at its start, in radians. */
    final double angle;

    /** The side it is glued to, or -1. */
    int partner = -1;

    boolean startToStart;

    /** The seam that glues it, or an empty text on the fold. */
    String seam = "";

    /** Whether it lies under a lap and is caught in the seam of another side. */
    boolean caught;

    Side(Face face, Edge edge, @Nullable Corner corner, double angle) {
      this.face = face;
      this.edge = edge;
      this.corner = corner;
      this.angle = angle;
    }

    boolean isFree() {
      return partner < 0 && !caught;
    }

    boolean isGlued() {
      return partner >= 0;
    }
  }
}
