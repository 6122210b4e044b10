package dev.drafting.knit;

import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Reshaping;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.FabricChange;
import dev.drafting.knit.fabric.Original;
import dev.drafting.knit.fabric.Shrinkage;
import dev.drafting.knit.wording.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What becomes of a pattern in given fabrics: made to fit alike, and cut larger to wash to size.
 */
final class FabricFitting {
  private final Pattern pattern;
  private final Map<String, Fabric> fabrics;
  private final Wearer wearer;
  private final @Nullable Original original;

  FabricFitting(
      Pattern pattern, Map<String, Fabric> fabrics, Wearer wearer, @Nullable Original original) {
    this.pattern = pattern;
    this.fabrics = fabrics;
    this.wearer = wearer;
    this.original = original;
  }

  /** The change from the original's fabric, if both are known. */
  Optional<FabricChange> change() {
    Optional<Original> copied = Optional.ofNullable(original);
    Optional<Fabric> body = Optional.ofNullable(fabrics.get(pattern.pieces().get(0).cloth()));
    return copied.flatMap(garment -> body.map(fabric -> change(garment, fabric)));
  }

  private FabricChange change(Original garment, Fabric fabric) {
    FabricChange change = FabricChange.of(garment, fabric);
    Optional<Length> girth = garment.girth().or(() -> Measures.chestGirth(pattern));
    if (girth.isEmpty()) {
      return change;
    }
    return wearer
        .chest()
        .map(chest -> change.withGirth(chest, girth.get()))
        .orElseGet(() -> change.withGarment(girth.get()));
  }

  /** The pattern to the finished outline, as it is worn and washed. */
  Pattern finished() {
    return change().map(change -> change.applyTo(pattern)).orElse(pattern);
  }

  /** A finished pattern as it is cut, before any allowance. */
  Pattern cut(Pattern finished) {
    Reshaping larger = Reshaping.of(finished);
    boolean same = true;
    for (Piece piece : finished.pieces()) {
      Shrinkage loss = loss(piece.cloth());
      if (!loss.isNone()) {
        larger = larger.scaled(piece.name(), loss.factorAcross(), loss.factorAlong());
        same = false;
      }
    }
    return same ? finished : larger.result();
  }

  private Shrinkage loss(String cloth) {
    return Optional.ofNullable(fabrics.get(cloth))
        .map(Fabric::shrinkageToCome)
        .orElse(Shrinkage.NONE);
  }

  /** What was done, in sentences. */
  List<String> said() {
    List<String> said = new ArrayList<>();
    change().ifPresent(change -> said.addAll(change.explanation()));
    Map<Fabric, Shrinkage> losses = new LinkedHashMap<>();
    for (Fabric fabric : fabrics.values()) {
      if (!fabric.shrinkageToCome().isNone()) {
        losses.put(fabric, fabric.shrinkageToCome());
      }
    }
    losses.forEach(
        (fabric, loss) ->
            said.add(
                "What is cut from "
                    + fabric.name()
                    + " is drawn larger for the wash: "
                    + larger(loss.factorAcross())
                    + " across and "
                    + larger(loss.factorAlong())
                    + " along, before allowances. Cut it unwashed."));
    return said;
  }

  private static String larger(double factor) {
    return Wording.percent(factor - 1);
  }
}
