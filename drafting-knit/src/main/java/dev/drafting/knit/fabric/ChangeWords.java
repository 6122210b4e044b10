package dev.drafting.knit.fabric;

import dev.drafting.core.measure.Length;
import dev.drafting.knit.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a change of fabric does to the pattern, in figures. */
final class ChangeWords {
  private final FabricChange change;

  private ChangeWords(FabricChange change) {
    this.change = change;
  }

  static List<String> of(FabricChange change) {
    ChangeWords words = new ChangeWords(change);
    List<String> said = new ArrayList<>();
    said.add(words.beside());
    said.addAll(change.before().map(words::known).orElseGet(words::unknown));
    return List.copyOf(said);
  }

  private String beside() {
    return capital(change.comparison().verdict().plainName())
        + ", beside "
        + change.original().name()
        + ", which the original is made of: "
        + change.candidate().name()
        + " "
        + (change.comparison().reasons().isEmpty()
            ? "behaves like it."
            : String.join("; ", change.comparison().reasons()) + ".");
  }

  private static String capital(String word) {
    return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
  }

  private List<String> unknown() {
    return List.of(
        "The wearer's girth is not known: the pattern stays as wide as it is."
            + change
                .bounds()
                .map(bounds -> " To fit alike it would be " + bounds + " round.")
                .orElse(""));
  }

  private List<String> known(Ease before) {
    Length girth = change.girth().orElse(before.garment());
    if (before.extension() == 0) {
      return List.of(
          "The garment is "
              + Wording.amount(before.garment())
              + " round and its wearer "
              + Wording.amount(before.body())
              + ": it hangs loose, its stretch is not used, and it stays as wide as it is.");
    }
    String used =
        "Worn, the original is stretched "
            + Wording.percent(before.extension())
            + ", which is "
            + Wording.percent(before.shareOfStretch(change.original()))
            + " of what its fabric gives.";
    return List.of(used, becomes(before, girth) + where(girth.minus(before.garment())));
  }

  private String becomes(Ease before, Length girth) {
    boolean capped = WornStretch.isCapped(before, change.original(), change.candidate());
    String keeping =
        capped
            ? "As far as " + change.candidate().name() + " comes back, it is stretched "
            : "With the same share of " + change.candidate().name() + " it is stretched ";
    return keeping
        + Wording.percent(Ease.of(before.body(), girth).extension())
        + " and "
        + Wording.amount(girth)
        + " round instead of "
        + Wording.amount(before.garment())
        + ".";
  }

  private String where(Length difference) {
    Optional<Length> each = Optional.of(difference).filter(d -> !d.isZero());
    if (each.isEmpty()) {
      return " Nothing is changed.";
    }
    String amount = Wording.fine(difference.abs());
    String way = difference.isPositive() ? " go in " : " come off ";
    return change.garment().includesShoulders()
        ? " The " + amount + way + "in proportion over the whole width."
        : " The "
            + amount
            + way
            + "at the side and underarm seams and fade to nothing at the shoulder; shoulders and"
            + " neck stay.";
  }
}
