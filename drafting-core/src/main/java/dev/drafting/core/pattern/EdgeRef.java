package dev.drafting.core.pattern;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import java.io.Serializable;

/**
 * An edge by the name of its piece and its own name.
 *
 * <pre>{@code
 * EdgeRef.parse("front neck");  // => front / neck
 * EdgeRef.parse("under sleeve / cap").piece();  // => under sleeve
 * }</pre>
 *
 * @param piece the piece's name
 * @param edge the edge's name
 * @since 0.1
 */
@Stable
public record EdgeRef(String piece, String edge) implements Serializable {

  /**
   * Refuses names that no piece or edge can have.
   *
   * @param piece the piece's name
   * @param edge the edge's name
   * @throws DraftingException if a name cannot be used
   */
  public EdgeRef {
    Names.check("a piece", piece);
    Names.check("an edge", edge);
  }

  /**
   * Reads the first word as the piece and the rest as the edge; a stroke between spaces separates
   * names of several words.
   *
   * @param text "front neck" or "under sleeve / cap"
   * @return the reference
   * @throws DraftingException if the text does not hold two names
   */
  public static EdgeRef parse(String text) {
    String separator = text.contains(" / ") ? " / " : " ";
    String trimmed = text.strip();
    int at = trimmed.indexOf(separator);
    if (at < 0) {
      throw DraftingException.of("an edge is named by its piece and its own name")
          .value(text)
          .accepted("two names, such as \"front neck\"");
    }
    return new EdgeRef(
        trimmed.substring(0, at).strip(), trimmed.substring(at + separator.length()).strip());
  }

  @Override
  public String toString() {
    return piece + " / " + edge;
  }
}
