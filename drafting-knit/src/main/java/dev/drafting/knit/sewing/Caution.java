package dev.drafting.knit.sewing;

import dev.drafting.core.Stable;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;

/**
 * Something that can hurt the maker or the wearer.
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * top.cautions().get(0).topic();  // => Blades
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Caution implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String topic;
  private final String text;

  private Caution(String topic, String text) {
    this.topic = topic;
    this.text = text;
  }

  static Caution of(String topic, String text) {
    return new Caution(topic, text);
  }

  /**
   * What it is about.
   *
   * @return one or two words, such as "Blades"
   */
  public String topic() {
    return topic;
  }

  /**
   * The caution itself.
   *
   * @return a sentence or two
   */
  public String text() {
    return text;
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(String topic, String text) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return new Caution(
          Objects.requireNonNull(topic, "topic"), Objects.requireNonNull(text, "text"));
    }
  }

  private Object writeReplace() {
    return new Kept(topic, text);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a caution is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Caution
        && ((Caution) other).topic.equals(topic)
        && ((Caution) other).text.equals(text);
  }

  @Override
  public int hashCode() {
    return Objects.hash(topic, text);
  }

  @Override
  public String toString() {
    return topic + ": " + text;
  }
}
