package dev.drafting.export.source;

import java.util.Optional;

/** Tells which paths of a drawing are read, and of which piece and edge they are. */
interface SvgNames {
  /** Called for every element on the way to a path; what it does not have is empty. */
  default void enter(String id, String pieceName) {}

  /** An empty stroke for a path of this id, or nothing if it is not read. */
  Optional<Stroke> stroke(String id, String file, int line);

  /** What has to be in the drawing, in words. */
  String wanted();
}
