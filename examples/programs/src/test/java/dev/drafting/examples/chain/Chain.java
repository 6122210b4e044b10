package dev.drafting.examples.chain;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.knit.Draft;
import dev.drafting.knit.band.BandFinish;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import java.io.IOException;
import java.util.List;

/**
 * A random garment through the whole chain: traced, trued, finished, assembled, its strips worked
 * out, laid, drawn and measured in the drawing.
 */
public final class Chain {
  private static final Fabric JERSEY = Fabric.of("jersey", Structure.JERSEY, 0.4);
  private static final Fabric RIB = Fabric.of("rib", Structure.RIB, 0.8);

  private Chain() {}

  /**
   * Runs the chain.
   *
   * @param seed which garment, how it is traced
   * @return what is wrong, in words; empty if everything holds
   * @throws IOException if the drawings cannot be drawn
   */
  public static List<String> faults(long seed) throws IOException {
    try {
      return faults(draft(TracedGarment.of(seed)));
    } catch (DraftingException e) {
      return List.of("refused: " + e.getMessage());
    } catch (IllegalStateException e) {
      return List.of(String.valueOf(e.getMessage()));
    }
  }

  /**
   * Judges a draft.
   *
   * @param draft any draft
   * @return what is wrong, in words; empty if everything holds
   * @throws IOException if the drawings cannot be drawn
   */
  public static List<String> faults(Draft draft) throws IOException {
    return GarmentJudge.faults(draft);
  }

  private static Draft draft(Pattern pattern) {
    Draft draft = Draft.of(pattern);
    for (Piece piece : pattern.pieces()) {
      draft = draft.withFabric(piece.cloth(), JERSEY);
    }
    for (Piece piece : pattern.pieces()) {
      for (Edge edge : piece.edges()) {
        if (edge.finish() instanceof BandFinish band) {
          draft = draft.withFabric(band.cloth(), band.cloth().equals("body") ? JERSEY : RIB);
        }
      }
    }
    return draft;
  }
}
