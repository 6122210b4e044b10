package dev.drafting.core.finding;

import dev.drafting.core.Stable;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * What to do about a {@link Finding}: a sentence for the maker, and named settings for a program
 * that offers to do it.
 *
 * <pre>{@code
 * Remedy.of("Cut the strip 14 mm longer.").with("strip.longer-by", "14 mm");  // => Cut the strip 14 mm longer.
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Remedy implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String text;

  @SuppressWarnings("serial") // always an unmodifiable view of a LinkedHashMap
  private final Map<String, String> data;

  private Remedy(String text, Map<String, String> data) {
    this.text = text;
    this.data = Collections.unmodifiableMap(data);
  }

  /**
   * Makes a remedy that is a sentence alone.
   *
   * @param text one sentence, with its amounts
   * @return the remedy
   */
  public static Remedy of(String text) {
    return new Remedy(Objects.requireNonNull(text, "text"), new LinkedHashMap<>());
  }

  /**
   * Adds one setting that carries the same advice as data.
   *
   * @param key what to set, such as "strip.longer-by"
   * @param value the value as text, lengths with their unit
   * @return a remedy with this setting after the others
   */
  public Remedy with(String key, String value) {
    Map<String, String> more = new LinkedHashMap<>(data);
    more.put(Objects.requireNonNull(key, "key"), Objects.requireNonNull(value, "value"));
    return new Remedy(text, more);
  }

  /**
   * The advice in words.
   *
   * @return one sentence
   */
  public String text() {
    return text;
  }

  /**
   * The advice as named settings.
   *
   * @return an unmodifiable map in the order of adding
   */
  public Map<String, String> data() {
    return data;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(String text, Map<String, String> data) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      Remedy remedy = of(text);
      for (Map.Entry<String, String> setting : data.entrySet()) {
        remedy = remedy.with(setting.getKey(), setting.getValue());
      }
      return remedy;
    }
  }

  private Object writeReplace() {
    return new Kept(text, data);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a remedy is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Remedy that && that.text.equals(text) && that.data.equals(data);
  }

  @Override
  public int hashCode() {
    return Objects.hash(text, data);
  }

  @Override
  public String toString() {
    return text;
  }
}
