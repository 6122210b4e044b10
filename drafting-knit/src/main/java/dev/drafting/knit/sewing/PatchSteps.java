package dev.drafting.knit.sewing;

import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.Patch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.RawEdge;
import dev.drafting.knit.hem.TurnedHem;
import java.util.List;
import java.util.stream.Collectors;

/**
 * How a piece is laid on another one and stitched down, in words: its open edges first, while it
 * lies flat (common practice, no source).
 */
final class PatchSteps {
  private PatchSteps() {}

  /** The name of the line that holds a patch. */
  static String line(Patch patch) {
    return patch.piece() + " on " + patch.base();
  }

  static List<EdgeRef> openEdges(Patch patch) {
    return patch.openEdges().stream().map(edge -> new EdgeRef(patch.piece(), edge)).toList();
  }

  static Step stitchOn(Patch patch, SewingPlan plan) {
    List<EdgeRef> stitched = patch.stitchedEdges(plan.sewn().pattern());
    String text =
        openEdges(patch).stream().map(edge -> finish(edge, plan)).collect(Collectors.joining())
            + pressing(stitched, plan.sewn().pattern())
            + "Transfer its place to the right side of the "
            + patch.base()
            + ", lay it there right side up, and stitch it down close to the "
            + names(stitched)
            + ", in "
            + plan.line(line(patch)).stitch().type().plainName()
            + "."
            + ends(patch)
            + others(plan.sewn().pattern().piece(patch.piece()).cutting().pieces());
    return Step.of("Stitch the " + patch.piece() + " on the " + patch.base(), text)
        .making(List.of(patch.piece()))
        .showing(stitched)
        .withCaution(Cautions.IRON);
  }

  private static String finish(EdgeRef edge, SewingPlan plan) {
    Finish finish = plan.sewn().pattern().edge(edge).finish();
    if (finish instanceof RawEdge) {
      return "";
    }
    String how =
        finish instanceof TurnedHem hem
            ? FinishSteps.hem(hem, plan.line(edge.toString()).stitch())
            : SeamSteps.capital(finish.describe()) + ".";
    return "Finish the " + edge.edge() + " first. " + how + " ";
  }

  private static String pressing(List<EdgeRef> stitched, Pattern pattern) {
    List<EdgeRef> turned =
        stitched.stream()
            .filter(edge -> !(pattern.edge(edge).finish() instanceof RawEdge))
            .toList();
    return turned.isEmpty()
        ? ""
        : "Press the allowances of the " + names(turned) + " to the wrong side. ";
  }

  private static String ends(Patch patch) {
    return patch.openEdges().isEmpty()
        ? ""
        : " Leave the "
            + names(openEdges(patch))
            + " open, and sew back and forth where the opening ends.";
  }

  private static String others(int pieces) {
    return pieces == 1 ? "" : " All " + pieces + " are stitched on alike.";
  }

  /** The edges by their own names: bottom, side and top. */
  private static String names(List<EdgeRef> edges) {
    List<String> names = edges.stream().map(EdgeRef::edge).toList();
    int last = names.size() - 1;
    return last == 0
        ? names.get(0)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }
}
