package dev.drafting.knit.sewing;

import dev.drafting.core.Experimental;
import dev.drafting.core.Stable;
import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.fabric.Fabric;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/**
 * How a garment is sewn on the machines at hand: every line with its stitch, the tapes that keep
 * seams from stretching, the thread by colour, and what the machines cannot do well.
 *
 * <p>A shoulder seam, one that runs across from the opening for the head, gets a tape by itself;
 * the maker may name more.
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * top.sewing().lines().get(0).stitch().type();  // => four-thread overlock (514)
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class SewingPlan implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Assembly sewn;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Strip> strips;

  private final Machines machines;
  private final String headOpening;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<SewnLine> lines;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Finding> findings;

  private SewingPlan(
      Assembly sewn,
      List<Strip> strips,
      Machines machines,
      String headOpening,
      List<SewnLine> lines,
      List<Finding> findings) {
    this.sewn = sewn;
    this.strips = strips;
    this.machines = machines;
    this.headOpening = headOpening;
    this.lines = lines;
    this.findings = findings;
  }

  /**
   * The plan for a garment.
   *
   * @param sewn the garment
   * @param strips the strips that go round its openings
   * @param fabrics the fabric for every cloth of the pattern
   * @param machines what the maker has
   * @param headOpening the name of the opening for the head; need not exist
   * @param taped names of more seams that must not stretch
   * @return the plan
   * @throws DraftingException if a taped seam is not in the pattern
   */
  public static SewingPlan of(
      Assembly sewn,
      List<Strip> strips,
      Function<String, Fabric> fabrics,
      Machines machines,
      String headOpening,
      Collection<String> taped) {
    Set<String> keptShort = KeptShort.seams(sewn, headOpening, taped);
    SewnLines reader = new SewnLines(sewn.pattern(), fabrics, machines);
    List<SewnLine> lines =
        reader.lines(sewn.openings(), strips).stream()
            .map(line -> keptShort.contains(line.name()) ? line.withTape() : line)
            .toList();
    List<Finding> findings =
        new MachineFindings(machines).of(sewn.pattern(), lines, sewn.openings());
    return new SewingPlan(sewn, List.copyOf(strips), machines, headOpening, lines, findings);
  }

  /**
   * Refuses names of seams that a pattern does not have.
   *
   * @param pattern the pattern
   * @param seams names of seams that are to get a tape
   * @throws DraftingException for the first name that no seam has
   */
  public static void requireSeams(Pattern pattern, Collection<String> seams) {
    seams.forEach(seam -> KeptShort.require(pattern, seam));
  }

  /**
   * The machines that it was made for.
   *
   * @return as given
   */
  public Machines machines() {
    return machines;
  }

  /**
   * How far the stitches at an opening can be pulled before a thread breaks.
   *
   * @param opening one of the garment
   * @return the share of the stiffest line that goes round it, or empty if none does
   */
  public OptionalDouble stretchAt(Opening opening) {
    Set<Place> places = new HashSet<>(Set.of(Place.opening(opening.name())));
    strips.stream()
        .filter(strip -> strip.opening().equals(opening))
        .forEach(strip -> places.add(Place.strip(strip.name())));
    return lines.stream()
        .filter(line -> places.contains(line.place()))
        .mapToDouble(line -> line.stitch().type().stretch())
        .min();
  }

  Assembly sewn() {
    return sewn;
  }

  List<Strip> strips() {
    return strips;
  }

  String headOpening() {
    return headOpening;
  }

  /** The line of a seam, a strip or a hem that is known to be there. */
  SewnLine line(String name) {
    return lines.stream().filter(line -> line.name().equals(name)).findFirst().orElseThrow();
  }

  /**
   * Every line that is sewn: the seams, the patches, the strips with their topstitching, the hems.
   *
   * @return an unmodifiable list in the order of the pattern
   */
  public List<SewnLine> lines() {
    return lines;
  }

  /**
   * The tapes that are cut.
   *
   * @return an unmodifiable list
   */
  public List<SeamTape> tapes() {
    return lines.stream().filter(SewnLine::isStabilised).map(SeamTape::of).toList();
  }

  /**
   * The thread for each colour, that is for each fabric, rounded up to 10 m.
   *
   * @return an unmodifiable map from the name of the fabric to the length of thread
   * @throws DraftingException if it is over 100 m, the longest length; {@link #threadMetres} is not
   *     bound by it
   */
  public Map<String, Length> thread() {
    Map<String, Length> thread = new LinkedHashMap<>();
    threadMetres().forEach((cloth, metres) -> thread.put(cloth, Length.mm(1000.0 * metres)));
    return Collections.unmodifiableMap(thread);
  }

  /**
   * The thread for each colour, that is for each fabric, in metres, rounded up to 10 m.
   *
   * @return an unmodifiable map from the name of the fabric to metres of thread
   */
  @Experimental
  public Map<String, Integer> threadMetres() {
    Map<String, Double> millimetres = new LinkedHashMap<>();
    lines.forEach(line -> millimetres.merge(line.cloth(), line.threadMm(), Double::sum));
    Map<String, Integer> metres = new LinkedHashMap<>();
    millimetres.forEach((cloth, mm) -> metres.put(cloth, 10 * (int) Math.ceil(mm / 10_000)));
    return Collections.unmodifiableMap(metres);
  }

  /**
   * What these machines cannot do well on these fabrics.
   *
   * @return an unmodifiable list in the order of the lines
   */
  public List<Finding> findings() {
    return findings;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      Assembly sewn,
      List<Strip> strips,
      Machines machines,
      String headOpening,
      List<SewnLine> lines,
      List<Finding> findings)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return new SewingPlan(
          Objects.requireNonNull(sewn, "sewn"),
          List.copyOf(strips),
          Objects.requireNonNull(machines, "machines"),
          Objects.requireNonNull(headOpening, "headOpening"),
          List.copyOf(lines),
          List.copyOf(findings));
    }
  }

  private Object writeReplace() {
    return new Kept(sewn, strips, machines, headOpening, lines, findings);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a sewing plan is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SewingPlan
        && ((SewingPlan) other).sewn.equals(sewn)
        && ((SewingPlan) other).strips.equals(strips)
        && ((SewingPlan) other).machines.equals(machines)
        && ((SewingPlan) other).headOpening.equals(headOpening)
        && ((SewingPlan) other).lines.equals(lines);
  }

  @Override
  public int hashCode() {
    return Objects.hash(sewn, strips, machines, headOpening, lines);
  }

  @Override
  public String toString() {
    return lines.size() + " lines to sew, " + machines;
  }
}
