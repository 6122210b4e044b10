package dev.drafting.core.pattern;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A finish in section: the lines that follow an edge, each at a signed distance from the finished
 * edge. Outward is positive, so an allowance lies at a positive distance and the seam of a band
 * that is set into the piece at a negative one.
 *
 * <pre>{@code
 * SeamFinish.of(Length.mm(7)).profile();  // => CUT +7 mm, JOIN 0 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Profile implements Serializable {
  private static final long serialVersionUID = 1L;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<ProfileLine> lines;

  private Profile(List<ProfileLine> lines) {
    this.lines = lines;
  }

  /**
   * A profile with these lines.
   *
   * @param lines at most one to cut and at most one to join; as many as needed to fold and
   *     topstitch
   * @return the profile
   * @throws DraftingException if there is more than one line to cut or to join
   */
  public static Profile of(ProfileLine... lines) {
    Profile profile = new Profile(List.of(lines));
    profile.refuseMoreThanOne(LineRole.CUT);
    profile.refuseMoreThanOne(LineRole.JOIN);
    return profile;
  }

  private void refuseMoreThanOne(LineRole role) {
    int found = at(role).size();
    if (found > 1) {
      throw DraftingException.of("an edge has more than one " + role + " line")
          .value(found)
          .accepted("one at most");
    }
  }

  private List<Length> at(LineRole role) {
    List<Length> distances = new ArrayList<>();
    for (ProfileLine line : lines) {
      if (line.role() == role) {
        distances.add(line.distance());
      }
    }
    return List.copyOf(distances);
  }

  /**
   * All lines in the order given.
   *
   * @return an unmodifiable list
   */
  public List<ProfileLine> lines() {
    return lines;
  }

  /**
   * Where the cloth is cut.
   *
   * @return its distance, or empty where nothing is cut, as on a fold
   */
  public Optional<Length> cut() {
    return at(LineRole.CUT).stream().findFirst();
  }

  /**
   * Where the edge is sewn to something else.
   *
   * @return its distance, or empty where it is not
   */
  public Optional<Length> join() {
    return at(LineRole.JOIN).stream().findFirst();
  }

  /**
   * Where it is folded.
   *
   * @return the distances in the order given
   */
  public List<Length> folds() {
    return at(LineRole.FOLD);
  }

  /**
   * Where rows of stitching show.
   *
   * @return the distances in the order given
   */
  public List<Length> topstitch() {
    return at(LineRole.TOPSTITCH);
  }

  /**
   * How much cloth is added beyond the line that is sewn or turned: what a maker calls the
   * allowance. It is measured from the join line where there is one, otherwise from the finished
   * edge; it is none where the cut edge lies inside a fold of other cloth, as under a wrapped
   * binding.
   *
   * @return zero or more
   */
  public Length allowance() {
    Length cut = cut().orElse(Length.ZERO);
    boolean enclosed = folds().stream().anyMatch(fold -> fold.compareTo(cut) >= 0);
    if (enclosed) {
      return Length.ZERO;
    }
    return cut.minus(join().orElse(Length.ZERO)).max(Length.ZERO);
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(List<ProfileLine> lines) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return of(lines.toArray(ProfileLine[]::new));
    }
  }

  private Object writeReplace() {
    return new Kept(lines);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a profile is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Profile && ((Profile) other).lines.equals(lines);
  }

  @Override
  public int hashCode() {
    return Objects.hashCode(lines);
  }

  @Override
  public String toString() {
    return lines.stream().map(ProfileLine::toString).collect(Collectors.joining(", "));
  }
}
