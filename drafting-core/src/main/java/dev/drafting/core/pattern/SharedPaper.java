package dev.drafting.core.pattern;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * Two pieces that are the same but for some edges, such as a front and a back with two necklines,
 * and share one piece of paper. The paper is cut along the outer piece; what differs on the inner
 * one is a marking line to transfer.
 *
 * <pre>{@code
 * SharedPaper.of("front and back", "back", "front");  // => front and back: front marked on back
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class SharedPaper implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final String outerPiece;
  private final String innerPiece;

  private SharedPaper(String name, String outerPiece, String innerPiece) {
    this.name = name;
    this.outerPiece = outerPiece;
    this.innerPiece = innerPiece;
  }

  /**
   * One paper for two pieces.
   *
   * @param name what the paper piece is called: "front and back"
   * @param outerPiece the name of the piece that reaches further out
   * @param innerPiece the name of the piece that lies within it
   * @return the shared paper
   * @throws DraftingException if a name cannot be used or a piece is to share with itself
   */
  public static SharedPaper of(String name, String outerPiece, String innerPiece) {
    Names.check("a shared paper", name);
    Names.check("a piece", outerPiece);
    Names.check("a piece", innerPiece);
    if (outerPiece.equals(innerPiece)) {
      throw DraftingException.of("a piece cannot share paper with itself")
          .at(name)
          .value(outerPiece)
          .accepted("two pieces");
    }
    return new SharedPaper(name, outerPiece, innerPiece);
  }

  /**
   * What the paper piece is called.
   *
   * @return its name
   */
  public String name() {
    return name;
  }

  /**
   * The piece whose outline the paper has.
   *
   * @return the piece's name
   */
  public String outerPiece() {
    return outerPiece;
  }

  /**
   * The piece that is marked within it.
   *
   * @return the piece's name
   */
  public String innerPiece() {
    return innerPiece;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(String name, String outerPiece, String innerPiece) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return of(name, outerPiece, innerPiece);
    }
  }

  private Object writeReplace() {
    return new Kept(name, outerPiece, innerPiece);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a shared paper is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SharedPaper
        && ((SharedPaper) other).name.equals(name)
        && ((SharedPaper) other).outerPiece.equals(outerPiece)
        && ((SharedPaper) other).innerPiece.equals(innerPiece);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, outerPiece, innerPiece);
  }

  @Override
  public String toString() {
    return name + ": " + innerPiece + " marked on " + outerPiece;
  }
}
