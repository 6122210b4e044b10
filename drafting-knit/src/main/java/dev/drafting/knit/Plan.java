package dev.drafting.knit;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.cut.CutItem;
import dev.drafting.core.cut.CutPlan;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.band.StripPiece;
import dev.drafting.knit.sewing.SeamTape;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A finished pattern sewn together, and what is cut for it. What was computed is shared by all
 * drafts that have the same plan, and left behind when a draft is stored.
 */
final class Plan {
  private final Assembly assembly;
  private final Pattern cut;
  private volatile @Nullable CutPlan cutPlan;
  private volatile @Nullable Assembly cutAssembly;

  private Plan(Assembly assembly, Pattern cut) {
    this.assembly = assembly;
    this.cut = cut;
  }

  static Plan of(Pattern finished) {
    return new Plan(Assembly.of(finished), finished);
  }

  /** The plan in given fabrics; this one if they change nothing. */
  Plan in(FabricFitting fitting) {
    Pattern finished = fitting.finished();
    Pattern larger = fitting.cut(finished);
    if (finished.equals(finished()) && larger.equals(cut)) {
      return this;
    }
    return new Plan(finished.equals(finished()) ? assembly : Assembly.of(finished), larger);
  }

  Pattern finished() {
    return assembly.pattern();
  }

  Assembly assembly() {
    return assembly;
  }

  /** An opening as it lies on the cut pieces, which are larger where their cloth is unwashed. */
  Opening asCut(Opening opening) {
    if (cut.equals(finished())) {
      return opening;
    }
    Assembly known = cutAssembly;
    if (known == null) {
      known = Assembly.of(cut);
      cutAssembly = known;
    }
    return known.opening(opening.name());
  }

  CutPlan cutPlan() {
    CutPlan known = cutPlan;
    if (known == null) {
      known = CutPlan.of(cut);
      cutPlan = known;
    }
    return known;
  }

  /** Everything that is cut: the pieces, then the strips, elastics and tapes. */
  List<CutItem> cutList(List<Strip> strips, List<SeamTape> tapes) {
    List<CutItem> items = new ArrayList<>(cutPlan().cutList());
    for (Strip strip : strips) {
      for (StripPiece piece : strip.pieces()) {
        items.add(
            CutItem.ofStrip(
                    piece.name(),
                    strip.finish().cloth(),
                    piece.length(),
                    strip.cutWidth(),
                    strip.fit().grain().howToCut())
                .withCount(piece.count()));
      }
    }
    assembly.openings().forEach(opening -> Elastics.cutItem(opening).ifPresent(items::add));
    tapes.forEach(tape -> items.add(SewingGoods.cutItem(tape)));
    return List.copyOf(items);
  }
}
