package dev.drafting.core.pattern;

import dev.drafting.core.finding.DraftingException;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a patch must be to lie on another piece of its pattern. */
final class PatchCheck {
  private final Pattern pattern;
  private final Patch patch;
  private final Piece laid;
  private final Piece base;

  private PatchCheck(Pattern pattern, Patch patch) {
    this.pattern = pattern;
    this.patch = patch;
    this.laid = pattern.piece(patch.piece());
    this.base = pattern.piece(patch.base());
  }

  static void check(Pattern pattern) {
    Set<String> laid = new HashSet<>();
    for (Patch patch : pattern.patches()) {
      try {
        if (!laid.add(patch.piece())) {
          throw DraftingException.of("the piece is laid on twice")
              .value(patch)
              .accepted("one place for each patch");
        }
        new PatchCheck(pattern, patch).check();
      } catch (DraftingException e) {
        throw e.at("patch " + patch.piece());
      }
    }
  }

  private void check() {
    refusePatchBeneath();
    refuseFoldMismatch();
    refuseOpenFold();
    refuseSewn();
    if (patch.stitchedEdges(pattern).isEmpty()) {
      throw DraftingException.of("no edge holds the patch")
          .value("open at " + String.join(", ", patch.openEdges()))
          .accepted("one stitched edge or more");
    }
  }

  private void refusePatchBeneath() {
    if (pattern.patches().stream().anyMatch(other -> other.piece().equals(patch.base()))) {
      throw DraftingException.of("the piece beneath is a patch itself")
          .value(patch.base())
          .accepted("a piece that is laid on no other");
    }
  }

  private void refuseFoldMismatch() {
    if (laid.isOnFold() && !(base.isOnFold() && patch.at().x() == 0)) {
      throw DraftingException.of("the fold of the patch does not lie on a fold")
          .value(base.isOnFold() ? patch : base.name() + " without a fold")
          .accepted("a piece on the fold beneath, and x = 0");
    }
  }

  private void refuseOpenFold() {
    for (String open : patch.openEdges()) {
      if (laid.edge(open).isOnFold()) {
        throw DraftingException.of("an edge on the fold cannot stay open")
            .value(open)
            .accepted("an edge that is cut");
      }
    }
  }

  private void refuseSewn() {
    for (Seam seam : pattern.seams()) {
      String sewn =
          Stream.concat(seam.first().stream(), seam.second().stream())
              .filter(edge -> edge.piece().equals(patch.piece()))
              .map(EdgeRef::toString)
              .collect(Collectors.joining(", "));
      if (!sewn.isEmpty()) {
        throw DraftingException.of("an edge of the patch is sewn in a seam")
            .value(sewn + " in seam " + seam.name())
            .accepted("a patch that is only stitched down");
      }
    }
  }
}
