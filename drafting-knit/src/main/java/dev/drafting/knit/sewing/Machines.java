package dev.drafting.knit.sewing;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.pattern.SeamFinish;
import dev.drafting.knit.hem.TurnedHem;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * The machines that the maker has. They set the stitch of every seam, band and hem and the
 * allowance of every seam at once; single seams and openings may be set otherwise.
 *
 * <p>Allowances are the width that the machine sews: 7 mm on a four-thread overlocker (a textbook
 * says about 7 mm), 6 mm on three threads and 10 mm on a zigzag machine (common practice, no
 * source).
 *
 * <pre>{@code
 * Machines mine = Machines.overlocker(4).withTwinNeedle(Length.mm(4));
 * mine;  // => seams four-thread overlock (514), hems twin needle, seam allowance 7 mm
 * mine.withStitch("shoulder", Stitch.of(StitchType.LOCKSTITCH)).stitchOfSeam("shoulder").type();  // => straight stitch (301)
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Machines implements Serializable {
  private static final long serialVersionUID = 1L;

  /** What a domestic machine sews for a seam that gives. */
  private static final Stitch NARROW =
      Stitch.of(StitchType.ZIGZAG).withLength(Length.mm(2.5)).withWidth(Length.mm(1));

  private final Stitch seams;
  private final Stitch hems;
  private final Length allowance;

  @SuppressWarnings("serial") // always unmodifiable views of LinkedHashMaps
  private final Map<String, Stitch> stitches;

  @SuppressWarnings("serial")
  private final Map<String, Length> allowances;

  private Machines(
      Stitch seams,
      Stitch hems,
      Length allowance,
      Map<String, Stitch> stitches,
      Map<String, Length> allowances) {
    this.seams = seams;
    this.hems = hems;
    this.allowance = allowance;
    this.stitches = stitches;
    this.allowances = allowances;
  }

  private static Machines of(Stitch seams, double allowanceMm) {
    return of(seams, Stitch.of(StitchType.ZIGZAG), Length.mm(allowanceMm));
  }

  /**
   * Machines of one's own.
   *
   * @param seams the stitch for seams
   * @param hems the stitch for hems and for topstitching
   * @param allowance what seams need, 0 to 500 mm
   * @return the machines
   * @throws DraftingException if the allowance is out of range
   */
  public static Machines of(Stitch seams, Stitch hems, Length allowance) {
    return new Machines(
        Objects.requireNonNull(seams, "seams"),
        Objects.requireNonNull(hems, "hems"),
        SeamFinish.of(allowance).allowance(),
        Map.of(),
        Map.of());
  }

  /**
   * The stitch of seams that have none of their own.
   *
   * @return the stitch
   */
  public Stitch seams() {
    return seams;
  }

  /**
   * The stitch of hems and topstitching that have none of their own.
   *
   * @return the stitch
   */
  public Stitch hems() {
    return hems;
  }

  /**
   * The allowance of seams that have none of their own.
   *
   * @return zero or more
   */
  public Length allowance() {
    return allowance;
  }

  /**
   * The stitches that were chosen for seams and openings.
   *
   * @return an unmodifiable map from their names, in the order of choosing
   */
  public Map<String, Stitch> stitches() {
    return stitches;
  }

  /**
   * The allowances that were chosen for seams.
   *
   * @return an unmodifiable map from their names, in the order of choosing
   */
  public Map<String, Length> allowances() {
    return allowances;
  }

  /**
   * One domestic machine with zigzag: seams in a narrow zigzag, hems in a wide one.
   *
   * @return the machine
   */
  public static Machines zigzag() {
    return of(NARROW, 10);
  }

  /**
   * An overlocker for the seams, beside a domestic machine with zigzag for the hems.
   *
   * @param threads 3 or 4
   * @return the machines
   * @throws DraftingException for another number of threads
   */
  public static Machines overlocker(int threads) {
    return switch (threads) {
      case 3 -> of(Stitch.of(StitchType.OVERLOCK_THREE), 6);
      case 4 -> of(Stitch.of(StitchType.OVERLOCK_FOUR), 7);
      default ->
          throw DraftingException.of("an overlocker has another number of threads here")
              .value(threads)
              .accepted("3 or 4");
    };
  }

  /**
   * The same machines and a cover stitch for hems and topstitching.
   *
   * @param gap from needle to needle, usually 3 to 6 mm
   * @return the machines
   * @throws DraftingException if the gap is out of range
   */
  public Machines withCoverstitch(Length gap) {
    return withHems(Stitch.of(StitchType.COVER_TWO).withWidth(gap));
  }

  /**
   * The same machines and a twin needle for hems and topstitching.
   *
   * @param gap from needle to needle, usually 2 to 6 mm
   * @return the machines
   * @throws DraftingException if the gap is out of range
   */
  public Machines withTwinNeedle(Length gap) {
    return withHems(Stitch.of(StitchType.TWIN_NEEDLE).withWidth(gap));
  }

  private Machines withHems(Stitch stitch) {
    return new Machines(seams, stitch, allowance, stitches, allowances);
  }

  /**
   * The same machines with another stitch for one seam or one opening.
   *
   * @param seamOrOpening its name; "armhole" means "armhole (left)" and "armhole (right)" both
   * @param stitch how it is sewn
   * @return the machines
   */
  public Machines withStitch(String seamOrOpening, Stitch stitch) {
    return new Machines(seams, hems, allowance, with(stitches, seamOrOpening, stitch), allowances);
  }

  /**
   * The same machines with another allowance for one seam.
   *
   * @param seam its name
   * @param newAllowance 0 to 500 mm
   * @return the machines
   * @throws DraftingException if the allowance is out of range
   */
  public Machines withAllowance(String seam, Length newAllowance) {
    Length checked = SeamFinish.of(newAllowance).allowance();
    return new Machines(seams, hems, allowance, stitches, with(allowances, seam, checked));
  }

  private static <T> Map<String, T> with(Map<String, T> map, String key, T value) {
    Map<String, T> more = new LinkedHashMap<>(map);
    more.put(Objects.requireNonNull(key, "name"), Objects.requireNonNull(value, "value"));
    return Collections.unmodifiableMap(more);
  }

  /**
   * The stitch of a seam, and of sewing a strip to an opening.
   *
   * @param seamOrOpening its name
   * @return its own stitch if it has one
   */
  public Stitch stitchOfSeam(String seamOrOpening) {
    return own(seamOrOpening, seams);
  }

  /**
   * The stitch that holds a binding before it is wrapped over the edge: a narrow zigzag, since an
   * overlock would cut the edge away.
   *
   * @param opening its name
   * @return its own stitch if it has one
   */
  public Stitch stitchOfBinding(String opening) {
    return own(opening, NARROW);
  }

  /**
   * The stitch of a hem or a row of topstitching.
   *
   * @param opening its name
   * @return its own stitch if it has one
   */
  public Stitch stitchOfHem(String opening) {
    return own(opening, hems);
  }

  private Stitch own(String name, Stitch usual) {
    Stitch own = stitches.get(name);
    return own != null ? own : stitches.getOrDefault(bare(name), usual);
  }

  /** "armhole" of "armhole (left)". */
  static String bare(String opening) {
    return opening.replaceAll(" \\((left|right)\\)$", "");
  }

  /**
   * The allowance of a seam.
   *
   * @param seam its name
   * @return its own allowance if it has one
   */
  public Length allowance(String seam) {
    return allowances.getOrDefault(seam, allowance);
  }

  /**
   * A pattern with the allowances of these machines at all its seams, and with two rows on the hems
   * that are sewn with two needles and are deep enough for them. Everything else stays as it is.
   *
   * @param pattern any pattern
   * @return the pattern with its seams' allowances set
   * @throws DraftingException if an own allowance is for a seam that the pattern does not have
   */
  public Pattern applyTo(Pattern pattern) {
    for (String name : allowances.keySet()) {
      if (pattern.seams().stream().noneMatch(seam -> seam.name().equals(name))) {
        throw DraftingException.of("there is no such seam")
            .at(pattern.name())
            .value(name)
            .accepted(String.join(", ", pattern.seams().stream().map(Seam::name).toList()));
      }
    }
    Pattern set = pattern;
    for (Seam seam : pattern.seams()) {
      SeamFinish finish = SeamFinish.of(allowance(seam.name()));
      for (EdgeRef edge : Stream.concat(seam.first().stream(), seam.second().stream()).toList()) {
        set = set.withFinish(edge, finish);
      }
    }
    return withRows(set);
  }

  private Pattern withRows(Pattern pattern) {
    Pattern set = pattern;
    for (Piece piece : pattern.pieces()) {
      for (Edge edge : piece.edges()) {
        Stitch stitch = stitchOfHem(edge.name());
        if (edge.finish() instanceof TurnedHem hem
            && stitch.hasRows()
            && hem.takesTwinNeedle(stitch.width())) {
          EdgeRef ref = new EdgeRef(piece.name(), edge.name());
          set = set.withFinish(ref, hem.withTwinNeedle(stitch.width()));
        }
      }
    }
    return set;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      Stitch seams,
      Stitch hems,
      Length allowance,
      Map<String, Stitch> stitches,
      Map<String, Length> allowances)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      Machines machines = of(seams, hems, allowance);
      for (Map.Entry<String, Stitch> own : stitches.entrySet()) {
        machines = machines.withStitch(own.getKey(), own.getValue());
      }
      for (Map.Entry<String, Length> own : allowances.entrySet()) {
        machines = machines.withAllowance(own.getKey(), own.getValue());
      }
      return machines;
    }
  }

  private Object writeReplace() {
    return new Kept(seams, hems, allowance, stitches, allowances);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a set of machines is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Machines
        && ((Machines) other).seams.equals(seams)
        && ((Machines) other).hems.equals(hems)
        && ((Machines) other).allowance.equals(allowance)
        && ((Machines) other).stitches.equals(stitches)
        && ((Machines) other).allowances.equals(allowances);
  }

  @Override
  public int hashCode() {
    return Objects.hash(seams, hems, allowance, stitches, allowances);
  }

  @Override
  public String toString() {
    String text =
        "seams "
            + seams.type()
            + ", hems "
            + hems.type()
            + ", seam allowance "
            + Wording.fine(allowance);
    return stitches.isEmpty() && allowances.isEmpty()
        ? text
        : text + ", others at " + String.join(", ", names());
  }

  private Iterable<String> names() {
    return Stream.concat(stitches.keySet().stream(), allowances.keySet().stream())
        .distinct()
        .toList();
  }
}
