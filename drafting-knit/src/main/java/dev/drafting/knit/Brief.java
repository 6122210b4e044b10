package dev.drafting.knit;

import dev.drafting.core.alter.AlterationRecord;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.knit.band.SewnResult;
import dev.drafting.knit.band.StripRule;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Original;
import dev.drafting.knit.sewing.SewingChoices;
import java.io.Serializable;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What the maker said beside the pattern: in which fabrics, for whom, how it is made. */
final class Brief implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final AlterationRecord alterations;

  @SuppressWarnings("serial") // always unmodifiable views of LinkedHashMaps
  private final Map<String, Fabric> fabrics;

  private final Wearer wearer;
  private final @Nullable Original original;
  private final StripChoices strips;
  private final SewingChoices making;

  private Brief(
      String name,
      AlterationRecord alterations,
      Map<String, Fabric> fabrics,
      Wearer wearer,
      @Nullable Original original,
      StripChoices strips,
      SewingChoices making) {
    this.name = name;
    this.alterations = alterations;
    this.fabrics = fabrics;
    this.wearer = Objects.requireNonNull(wearer, "wearer");
    this.original = original;
    this.strips = strips;
    this.making = Objects.requireNonNull(making, "making");
  }

  static Brief of(Pattern pattern) {
    return new Brief(
        pattern.name(),
        AlterationRecord.of(pattern),
        Map.of(),
        Wearer.of(),
        null,
        StripChoices.NONE,
        SewingChoices.of());
  }

  Brief withName(String newName) {
    if (newName.isBlank()) {
      throw DraftingException.of("a draft has no name").accepted("a name that is not blank");
    }
    return new Brief(newName, alterations, fabrics, wearer, original, strips, making);
  }

  Brief withAlterations(AlterationRecord record) {
    return new Brief(name, record, fabrics, wearer, original, strips, making);
  }

  Brief withFabric(String cloth, Fabric fabric) {
    return new Brief(
        name, alterations, Cloths.with(fabrics, cloth, fabric), wearer, original, strips, making);
  }

  Brief withWearer(Wearer newWearer) {
    return new Brief(name, alterations, fabrics, newWearer, original, strips, making);
  }

  Brief withOriginal(Original copied) {
    Objects.requireNonNull(copied, "copied");
    return new Brief(name, alterations, fabrics, wearer, copied, strips, making);
  }

  Brief withStripRule(String opening, StripRule rule) {
    return with(strips.with(opening, rule));
  }

  Brief withSewnResult(SewnResult result) {
    return with(strips.with(result));
  }

  Brief withoutSewnResult(SewnResult result) {
    return with(strips.without(result));
  }

  private Brief with(StripChoices newStrips) {
    return new Brief(name, alterations, fabrics, wearer, original, newStrips, making);
  }

  Brief withSewing(SewingChoices newMaking) {
    return new Brief(name, alterations, fabrics, wearer, original, strips, newMaking);
  }

  String name() {
    return name;
  }

  AlterationRecord alterations() {
    return alterations;
  }

  Map<String, Fabric> fabrics() {
    return fabrics;
  }

  Wearer wearer() {
    return wearer;
  }

  @Nullable Original original() {
    return original;
  }

  StripChoices strips() {
    return strips;
  }

  SewingChoices making() {
    return making;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Brief
        && ((Brief) other).name.equals(name)
        && ((Brief) other).alterations.equals(alterations)
        && ((Brief) other).fabrics.equals(fabrics)
        && ((Brief) other).wearer.equals(wearer)
        && Objects.equals(((Brief) other).original, original)
        && ((Brief) other).strips.equals(strips)
        && ((Brief) other).making.equals(making);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, alterations, fabrics, wearer, original, strips, making);
  }
}
