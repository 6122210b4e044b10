package dev.drafting.export.source;

import dev.drafting.core.Experimental;
import dev.drafting.core.Stable;
import dev.drafting.core.assembly.TruedPattern;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.trace.Tracing;
import dev.drafting.core.trace.TruedPiece;
import dev.drafting.knit.Draft;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A garment as it was read from its folder: the trued pieces, the pattern made of them and a draft
 * for each make. Immutable; may be shared between threads.
 *
 * <pre>{@code
 * Garment vest = GarmentFolder.read(Path.of("examples/programs/garments/vest"));
 * vest.makes().keySet();  // => [A cotton jersey, B interlock, C pique]
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Garment implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String about;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Tracing> tracings;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Finding> findings;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<TruedPiece> trued;

  private final TruedPattern together;
  private final Pattern pattern;

  @SuppressWarnings("serial") // always an unmodifiable view of a LinkedHashMap
  private final Map<String, Draft> makes;

  Garment(
      String about,
      List<Tracing> tracings,
      List<Finding> findings,
      List<TruedPiece> trued,
      TruedPattern together,
      Pattern pattern,
      Map<String, Draft> makes) {
    this.about = about;
    this.tracings = List.copyOf(tracings);
    this.findings = List.copyOf(findings);
    this.trued = List.copyOf(trued);
    this.together = together;
    this.pattern = pattern;
    this.makes = Collections.unmodifiableMap(new LinkedHashMap<>(makes));
  }

  /**
   * What the garment is called.
   *
   * @return the name
   */
  public String name() {
    return pattern.name();
  }

  /**
   * What its maker wrote about it.
   *
   * @return some words, or nothing
   */
  public String about() {
    return about;
  }

  /**
   * The pieces as they were traced, their edges named.
   *
   * @return unmodifiable, in the order of the description
   */
  public List<Tracing> tracings() {
    return tracings;
  }

  /**
   * What was seen before the pieces were trued: a sheet beside them that lay askew, a tracing of
   * the other side, a piece that was stretched as it lay.
   *
   * @return unmodifiable, empty if every piece was traced once and no sheet lay beside them
   */
  @Experimental
  public List<Finding> findings() {
    return findings;
  }

  /**
   * The pieces as they were trued, each with the report of what was seen in the tracing.
   *
   * @return unmodifiable, in the order of the description
   */
  public List<TruedPiece> trued() {
    return trued;
  }

  /**
   * The pieces with their finishes, and the seams between them.
   *
   * @return the pattern that all makes have in common
   */
  public Pattern pattern() {
    return pattern;
  }

  /**
   * What it took to true the pieces together: how far their edges moved so that seams match and
   * edges run smoothly across them, and what was left as it was.
   *
   * @return the pieces sewn together, before patches and plackets, with their moves and findings
   */
  @Experimental
  public TruedPattern together() {
    return together;
  }

  /**
   * The pattern in the fabrics of each make, for the wearer. Each draft is called after the garment
   * and its make.
   *
   * @return the drafts by the names of the makes; unmodifiable, in the order of the description, at
   *     least one
   */
  public Map<String, Draft> makes() {
    return makes;
  }

  /**
   * The draft of one make.
   *
   * @param make its name
   * @return the draft
   * @throws DraftingException if there is no such make
   */
  public Draft make(String make) {
    Draft draft = makes.get(make);
    if (draft == null) {
      throw DraftingException.of("there is no such make")
          .at(name())
          .value(make)
          .accepted(String.join(", ", makes.keySet()));
    }
    return draft;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      String about,
      List<Tracing> tracings,
      List<Finding> findings,
      List<TruedPiece> trued,
      TruedPattern together,
      Pattern pattern,
      Map<String, Draft> makes)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return new Garment(
          Objects.requireNonNull(about, "about"),
          tracings,
          findings,
          trued,
          Objects.requireNonNull(together, "together"),
          Objects.requireNonNull(pattern, "pattern"),
          makes);
    }
  }

  private Object writeReplace() {
    return new Kept(about, tracings, findings, trued, together, pattern, makes);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a garment is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Garment
        && ((Garment) other).about.equals(about)
        && ((Garment) other).tracings.equals(tracings)
        && ((Garment) other).findings.equals(findings)
        && ((Garment) other).trued.equals(trued)
        && ((Garment) other).together.equals(together)
        && ((Garment) other).pattern.equals(pattern)
        && ((Garment) other).makes.equals(makes);
  }

  @Override
  public int hashCode() {
    return Objects.hash(about, tracings, findings, trued, together, pattern, makes);
  }

  /** The name, the pieces and the makes, the first eight of each. */
  @Override
  public String toString() {
    return name()
        + ": pieces "
        + String.join(", ", trued.stream().limit(8).map(piece -> piece.piece().name()).toList())
        + "; makes "
        + String.join(", ", makes.keySet().stream().limit(8).toList());
  }
}
