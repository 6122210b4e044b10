package dev.drafting.core.pattern;

import dev.drafting.core.Experimental;
import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * Two edges, or two chains of edges, that are sewn together.
 *
 * <p>The start of the one is sewn to the start of the other, as when one piece lies on the other,
 * right sides together; {@link #endToStart()} says otherwise. A chain is named in the order in
 * which it is sewn, and its edges must follow one another on the garment.
 *
 * <p>The drawn copies of two pieces are joined to each other, and the mirrored copies to each
 * other. A piece on the fold has a drawn half and a mirrored half; of a pair, one is drawn and the
 * other mirrored.
 *
 * <pre>{@code
 * Seam.of("shoulder", EdgeRef.parse("front shoulder"), EdgeRef.parse("back shoulder"));
 * // => shoulder: front / shoulder to back / shoulder
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Seam implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<EdgeRef> a;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<EdgeRef> b;

  private final Length ease;
  private final boolean endToStart;
  private final boolean lapped;
  private final Fullness fullness;

  private Seam(
      String name,
      List<EdgeRef> a,
      List<EdgeRef> b,
      Length ease,
      boolean endToStart,
      boolean lapped,
      Fullness fullness) {
    this.name = name;
    this.a = a;
    this.b = b;
    this.ease = ease;
    this.endToStart = endToStart;
    this.lapped = lapped;
    this.fullness = fullness;
  }

  /**
   * One edge sewn to another.
   *
   * @param name what the maker calls the seam: "shoulder", "side"
   * @param a the one edge
   * @param b the other edge
   * @return the seam, without ease
   * @throws DraftingException if the name cannot be used or an edge is to be sewn to itself
   */
  public static Seam of(String name, EdgeRef a, EdgeRef b) {
    return of(name, List.of(a), List.of(b));
  }

  /**
   * One edge sewn to another, by the words for them: {@code Seam.of("side", "front side", "back
   * side")}.
   *
   * @param name what the maker calls the seam
   * @param a the one edge, as {@link EdgeRef#parse} reads it
   * @param b the other edge
   * @return the seam, without ease
   * @throws DraftingException if the name cannot be used, or the words name no edge or the same one
   */
  public static Seam of(String name, String a, String b) {
    return of(name, EdgeRef.parse(a), EdgeRef.parse(b));
  }

  /**
   * A chain of edges sewn to another chain, such as a sleeve cap to the armholes of front and back.
   *
   * @param name what the maker calls the seam
   * @param a the one chain, in the order of sewing
   * @param b the other chain
   * @return the seam, without ease
   * @throws DraftingException if the name cannot be used, a chain is empty or an edge appears twice
   */
  public static Seam of(String name, List<EdgeRef> a, List<EdgeRef> b) {
    Names.check("a seam", name);
    if (a.isEmpty() || b.isEmpty()) {
      throw DraftingException.of("a seam has no edge on one side")
          .at(name)
          .accepted("one edge or more on either side");
    }
    List<EdgeRef> all = new ArrayList<>(a);
    all.addAll(b);
    if (all.stream().distinct().count() < all.size()) {
      throw DraftingException.of("an edge appears twice in one seam")
          .at(name)
          .value(all)
          .accepted("every edge once; Seam.mirrored joins an edge to its mirror image");
    }
    return new Seam(
        name, List.copyOf(a), List.copyOf(b), Length.ZERO, false, false, Fullness.eased());
  }

  /**
   * The drawn copy of a piece sewn to its mirrored copy along one edge, such as the centre back
   * seam of a pair of backs.
   *
   * @param name what the maker calls the seam
   * @param centre the edge
   * @return the seam
   * @throws DraftingException if the name cannot be used
   */
  public static Seam mirrored(String name, EdgeRef centre) {
    Names.check("a seam", name);
    return new Seam(
        name, List.of(centre), List.of(centre), Length.ZERO, false, false, Fullness.eased());
  }

  /**
   * One edge laid over another, both right side up, and basted; the seam in which the upper one is
   * sewn catches both. So the shoulders of an envelope neck lie on each other at the armhole.
   *
   * <pre>{@code
   * Seam.lapped("lap", "front lap", "back lap").endToStart();  // => lap: front / lap over back / lap, end to start
   * }</pre>
   *
   * @param name what the maker calls the lap
   * @param over the edge that lies on top, and is sewn in another seam
   * @param under the edge beneath it, which is sewn in no other
   * @return the lap
   * @throws DraftingException if the name cannot be used, or the words name no edge or the same one
   */
  @Experimental
  public static Seam lapped(String name, String over, String under) {
    Seam seam = of(name, over, under);
    return new Seam(name, seam.a, seam.b, Length.ZERO, false, true, Fullness.eased());
  }

  /**
   * Says that the first side is meant to be longer and is eased or gathered in.
   *
   * @param firstLongerBy how much longer the first side is; negative if it is shorter
   * @return the seam with this ease
   * @throws DraftingException if the seam joins an edge to its own mirror image
   */
  public Seam withEase(Length firstLongerBy) {
    if (isMirrored()) {
      throw DraftingException.of("an edge is as long as its mirror image").at(name);
    }
    return new Seam(
        name, a, b, Objects.requireNonNull(firstLongerBy), endToStart, lapped, fullness);
  }

  /**
   * Says how the longer side is made as short as the other one.
   *
   * @param how eased in unless set; gathered, or laid in pleats
   * @return the seam drawn in so
   * @throws DraftingException if the seam joins an edge to its own mirror image
   */
  @Experimental
  public Seam drawnIn(Fullness how) {
    if (isMirrored()) {
      throw DraftingException.of("an edge is as long as its mirror image").at(name);
    }
    return new Seam(name, a, b, ease, endToStart, lapped, Objects.requireNonNull(how, "how"));
  }

  /**
   * Sews the end of the first side to the start of the second, as when the two lie side by side
   * with the right side up.
   *
   * @return the seam joined this way
   * @throws DraftingException if the seam joins an edge to its own mirror image
   */
  public Seam endToStart() {
    if (isMirrored()) {
      throw DraftingException.of("an edge meets its mirror image start to start").at(name);
    }
    return new Seam(name, a, b, ease, true, lapped, fullness);
  }

  /**
   * What the maker calls the seam.
   *
   * @return its name
   */
  public String name() {
    return name;
  }

  /**
   * The first side.
   *
   * @return its edges in the order of sewing
   */
  public List<EdgeRef> first() {
    return a;
  }

  /**
   * The second side.
   *
   * @return its edges in the order of sewing
   */
  public List<EdgeRef> second() {
    return b;
  }

  /**
   * How much longer the first side is meant to be.
   *
   * @return the ease, zero unless set
   */
  public Length ease() {
    return ease;
  }

  /**
   * How the longer side is made as short as the other one.
   *
   * @return eased in unless set
   */
  @Experimental
  public Fullness fullness() {
    return fullness;
  }

  /**
   * Tells which ends meet.
   *
   * @return true if the end of the first side meets the start of the second
   */
  public boolean isEndToStart() {
    return endToStart;
  }

  /**
   * Tells whether an edge is joined to its own mirror image.
   *
   * @return true for {@link #mirrored}
   */
  public boolean isMirrored() {
    return a.equals(b);
  }

  /**
   * Tells whether the first side only lies over the second.
   *
   * @return true for {@link #lapped}
   */
  @Experimental
  public boolean isLapped() {
    return lapped;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      String name,
      List<EdgeRef> a,
      List<EdgeRef> b,
      Length ease,
      boolean endToStart,
      boolean lapped,
      Fullness fullness)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      if (a.size() == 1 && a.equals(b)) {
        return mirrored(name, a.get(0));
      }
      Seam seam = of(name, a, b).withEase(ease).drawnIn(fullness);
      return new Seam(name, seam.a, seam.b, ease, endToStart, lapped, fullness);
    }
  }

  private Object writeReplace() {
    return new Kept(name, a, b, ease, endToStart, lapped, fullness);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a seam is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Seam
        && ((Seam) other).name.equals(name)
        && ((Seam) other).a.equals(a)
        && ((Seam) other).b.equals(b)
        && ((Seam) other).ease.equals(ease)
        && ((Seam) other).endToStart == endToStart
        && ((Seam) other).lapped == lapped
        && ((Seam) other).fullness.equals(fullness);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, a, b, ease, endToStart, lapped, fullness);
  }

  @Override
  public String toString() {
    String sides =
        isMirrored()
            ? a.get(0) + " to its mirror image"
            : chain(a) + (lapped ? " over " : " to ") + chain(b);
    return name
        + ": "
        + sides
        + (endToStart ? ", end to start" : "")
        + (ease.isZero() ? "" : ", ease " + Text.mm(ease) + drawn());
  }

  private String drawn() {
    if (fullness.pleatCount() > 0) {
      return " in " + fullness;
    }
    return fullness.isGathered() ? ", gathered" : "";
  }

  private static String chain(List<EdgeRef> edges) {
    return edges.stream().map(EdgeRef::toString).collect(Collectors.joining(" + "));
  }
}
