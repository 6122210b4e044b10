package dev.drafting.core.finding;

import dev.drafting.core.Stable;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * Where on the garment a {@link Finding} is, by names.
 *
 * <pre>{@code
 * Place.edge("front", "neck");  // => front / neck
 * Place.opening("armhole (left)").kind();  // => opening
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Place implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String kind;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<String> names;

  private Place(String kind, String... names) {
    this.kind = kind;
    this.names = List.of(names);
  }

  /**
   * The whole garment.
   *
   * @return the place "draft"
   */
  public static Place draft() {
    return new Place("draft");
  }

  /**
   * A pattern piece.
   *
   * @param piece its name
   * @return the place
   */
  public static Place piece(String piece) {
    return new Place("piece", piece);
  }

  /**
   * One edge of a piece.
   *
   * @param piece the piece's name
   * @param edge the edge's name
   * @return the place
   */
  public static Place edge(String piece, String edge) {
    return new Place("edge", piece, edge);
  }

  /**
   * The corner where two edges of a piece meet.
   *
   * @param piece the piece's name
   * @param before the edge that arrives at the corner, counter-clockwise
   * @param after the edge that leaves it
   * @return the place
   */
  public static Place corner(String piece, String before, String after) {
    return new Place("corner", piece, before, after);
  }

  /**
   * A seam.
   *
   * @param seam its name
   * @return the place
   */
  public static Place seam(String seam) {
    return new Place("seam", seam);
  }

  /**
   * An opening of the sewn garment, such as the neck.
   *
   * @param opening its name
   * @return the place
   */
  public static Place opening(String opening) {
    return new Place("opening", opening);
  }

  /**
   * A cloth that the garment is cut from.
   *
   * @param fabric its name
   * @return the place
   */
  public static Place fabric(String fabric) {
    return new Place("fabric", fabric);
  }

  /**
   * A band or binding strip.
   *
   * @param strip its name
   * @return the place
   */
  public static Place strip(String strip) {
    return new Place("strip", strip);
  }

  /**
   * What sort of place this is.
   *
   * @return draft, piece, edge, corner, seam, opening, fabric or strip
   */
  public String kind() {
    return kind;
  }

  /**
   * The names, outermost first: the piece before its edge.
   *
   * @return an unmodifiable list, empty for the whole draft
   */
  public List<String> names() {
    return names;
  }

  private static Place checked(String kind, List<String> names) {
    int expected =
        switch (kind) {
          case "draft" -> 0;
          case "corner" -> 3;
          case "edge" -> 2;
          case "piece", "seam", "opening", "fabric", "strip" -> 1;
          default -> -1;
        };
    if (names.size() != expected) {
      throw DraftingException.of("there is no such place")
          .value(kind + " " + names)
          .accepted("a draft, piece, edge, corner, seam, opening, fabric or strip");
    }
    return new Place(kind, names.toArray(String[]::new));
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(String kind, List<String> names) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return checked(kind, names);
    }
  }

  private Object writeReplace() {
    return new Kept(kind, names);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a place is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Place that && that.kind.equals(kind) && that.names.equals(names);
  }

  @Override
  public int hashCode() {
    return Objects.hash(kind, names);
  }

  @Override
  public String toString() {
    return names.isEmpty() ? kind : String.join(" / ", names);
  }
}
