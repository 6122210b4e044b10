package dev.drafting.knit.sewing;

import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Seam;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Seams that are sewn in one go, on both sides of the garment unless a side is named. */
record SeamTask(List<Seam> seams, String side) {
  private static final String ONE = "one side";
  private static final String OTHER = "other side";

  static SeamTask of(Seam seam) {
    return new SeamTask(List.of(seam), "");
  }

  SeamTask with(Seam seam) {
    List<Seam> more = new ArrayList<>(seams);
    more.add(seam);
    return new SeamTask(List.copyOf(more), side);
  }

  List<SeamTask> bySide() {
    return List.of(new SeamTask(seams, ONE), new SeamTask(seams, OTHER));
  }

  String id() {
    return "seam " + seams.get(0).name() + " " + side;
  }

  List<String> names() {
    return seams.stream().map(Seam::name).toList();
  }

  String title() {
    return String.join(" and ", names());
  }

  List<EdgeRef> edges() {
    return seams.stream()
        .flatMap(seam -> Stream.concat(seam.first().stream(), seam.second().stream()))
        .distinct()
        .toList();
  }

  boolean isCentre() {
    return seams.get(0).isMirrored();
  }

  boolean isLapped() {
    return seams.get(0).isLapped();
  }

  boolean isOneSide() {
    return !side.isEmpty();
  }

  /** Whether it runs over several edges on a side, as a sleeve cap and its armholes do. */
  boolean isChain() {
    return seams.get(0).first().size() > 1 || seams.get(0).second().size() > 1;
  }

  /**
   * Where several seams end in one point: chains before plain seams, and centre seams last; but
   * before a chain, which then goes from side to side in one pass, as at a hood or a yoke.
   */
  boolean comesBefore(SeamTask other) {
    if (isCentre() || other.isCentre()) {
      return isCentre() ? other.isChain() : !isChain() && other.isCentre();
    }
    return isChain() && !other.isChain();
  }
}
