package dev.drafting.knit;

import dev.drafting.core.Experimental;
import dev.drafting.core.alter.AlterationRecord;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.knit.band.SewnResult;
import dev.drafting.knit.band.StripRule;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Original;
import dev.drafting.knit.sewing.SewingChoices;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Everything that a draft was given, and nothing that follows from it: the pattern as it was first
 * and what was altered, the fabrics, the wearer, the garment that is copied, the maker's rules for
 * strips, what sewn strips have taught, and how it is sewn. {@code Draft.of(draft.brief())} is the
 * same draft again; so a brief is what is kept of a draft.
 *
 * <p>A brief is taken as it is. Rules for openings and tapes for seams that an alteration has done
 * away with stay in it and have no effect.
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * top.brief();  // => Sleeveless top: 0 alterations, 2 fabrics, 0 rules for strips, 0 sewn results
 * Draft.of(top.brief()).equals(top);  // => true
 * }</pre>
 *
 * @since 0.1
 */
@Experimental
public final class Brief implements Serializable {
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
    this.alterations = Objects.requireNonNull(alterations, "alterations");
    this.fabrics = fabrics;
    this.wearer = Objects.requireNonNull(wearer, "wearer");
    this.original = original;
    this.strips = Objects.requireNonNull(strips, "strips");
    this.making = Objects.requireNonNull(making, "making");
  }

  /**
   * A brief of a pattern alone.
   *
   * @param pattern the pieces and the seams between them
   * @return the brief, named like the pattern
   */
  public static Brief of(Pattern pattern) {
    return new Brief(
        pattern.name(),
        AlterationRecord.of(pattern),
        Map.of(),
        Wearer.of(),
        null,
        StripChoices.NONE,
        SewingChoices.of());
  }

  /**
   * The same brief under another name.
   *
   * @param newName not blank
   * @return the brief
   * @throws DraftingException if the name is blank
   */
  public Brief withName(String newName) {
    if (newName.isBlank()) {
      throw DraftingException.of("a draft has no name").accepted("a name that is not blank");
    }
    return new Brief(newName, alterations, fabrics, wearer, original, strips, making);
  }

  /**
   * The same brief with another record of alterations.
   *
   * @param record the pattern as it was first and what was altered
   * @return the brief
   */
  public Brief withAlterations(AlterationRecord record) {
    return new Brief(name, record, fabrics, wearer, original, strips, making);
  }

  /**
   * The same brief with a fabric for one of its cloths.
   *
   * @param cloth the part that the cloth plays in the pattern
   * @param fabric what it is cut from
   * @return the brief
   */
  public Brief withFabric(String cloth, Fabric fabric) {
    return new Brief(
        name, alterations, Cloths.with(fabrics, cloth, fabric), wearer, original, strips, making);
  }

  /**
   * The same brief for another wearer.
   *
   * @param newWearer who will wear it
   * @return the brief
   */
  public Brief withWearer(Wearer newWearer) {
    return new Brief(name, alterations, fabrics, newWearer, original, strips, making);
  }

  /**
   * The same brief of a garment whose fabric is known.
   *
   * @param copied the garment that fits
   * @return the brief
   */
  public Brief withOriginal(Original copied) {
    Objects.requireNonNull(copied, "copied");
    return new Brief(name, alterations, fabrics, wearer, copied, strips, making);
  }

  /**
   * The same brief with a rule for the strip of an opening.
   *
   * @param opening the opening's name; one of both sides' names for both
   * @param rule how long its strip is made
   * @return the brief
   */
  public Brief withStripRule(String opening, StripRule rule) {
    return with(strips.with(opening, rule));
  }

  /**
   * The same brief with what a sewn strip has taught.
   *
   * @param result what was seen
   * @return the brief
   */
  public Brief withSewnResult(SewnResult result) {
    return with(strips.with(result));
  }

  Brief withoutSewnResult(SewnResult result) {
    return with(strips.without(result));
  }

  private Brief with(StripChoices newStrips) {
    return new Brief(name, alterations, fabrics, wearer, original, newStrips, making);
  }

  /**
   * The same brief sewn otherwise. The allowances of the pattern stay as they are.
   *
   * @param newMaking machines, bands in the round or flat, tapes, and what calls for cautions
   * @return the brief
   */
  public Brief withSewing(SewingChoices newMaking) {
    return new Brief(name, alterations, fabrics, wearer, original, strips, newMaking);
  }

  /** The machines set the allowances of all seams of the pattern. */
  Brief sewnAs(SewingChoices newMaking) {
    AlterationRecord set = alterations.on(newMaking.machines().applyTo(alterations.base()));
    return withSewing(newMaking).withAlterations(set);
  }

  /**
   * The draft's name.
   *
   * @return not blank
   */
  public String name() {
    return name;
  }

  /**
   * The pattern as it was first, and what was altered since.
   *
   * @return the record
   */
  public AlterationRecord alterations() {
    return alterations;
  }

  /**
   * The fabrics that were given, by cloth.
   *
   * @return an unmodifiable map in the order of giving
   */
  public Map<String, Fabric> fabrics() {
    return fabrics;
  }

  /**
   * Who will wear it.
   *
   * @return the wearer
   */
  public Wearer wearer() {
    return wearer;
  }

  /**
   * The garment that is copied.
   *
   * @return the garment that fits, or empty when its fabric is not known
   */
  public Optional<Original> original() {
    return Optional.ofNullable(original);
  }

  /**
   * The maker's rules for strips.
   *
   * @return an unmodifiable map from the names of openings, in the order of giving
   */
  public Map<String, StripRule> stripRules() {
    return strips.rules();
  }

  /**
   * What sewn strips have taught.
   *
   * @return an unmodifiable list in the order of recording
   */
  public List<SewnResult> sewnResults() {
    return strips.results();
  }

  /**
   * How the maker sews.
   *
   * @return machines, bands in the round or flat, tapes, and what calls for cautions
   */
  public SewingChoices sewing() {
    return making;
  }

  StripChoices strips() {
    return strips;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      String name,
      AlterationRecord alterations,
      Map<String, Fabric> fabrics,
      Wearer wearer,
      @Nullable Original original,
      StripChoices strips,
      SewingChoices making)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      Brief brief =
          of(alterations.base())
              .withName(name)
              .withAlterations(alterations)
              .withWearer(wearer)
              .withSewing(making)
              .with(strips);
      for (Map.Entry<String, Fabric> cloth : fabrics.entrySet()) {
        brief = brief.withFabric(cloth.getKey(), cloth.getValue());
      }
      return original == null ? brief : brief.withOriginal(original);
    }
  }

  private Object writeReplace() {
    return new Kept(name, alterations, fabrics, wearer, original, strips, making);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a brief is read as it was written");
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

  /** How many there are of each thing that was given. */
  @Override
  public String toString() {
    return name
        + ": "
        + alterations.entries().size()
        + " alterations, "
        + fabrics.size()
        + " fabrics, "
        + strips.rules().size()
        + " rules for strips, "
        + strips.results().size()
        + " sewn results";
  }
}
