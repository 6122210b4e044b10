package dev.drafting.knit.sewing;

import java.io.Serializable;
import java.util.Objects;

/**
 * One step of making up.
 *
 * @since 0.1
 */
public final class Step implements Serializable {
  private static final long serialVersionUID = 1L;

  private final int number;
  private final String title;
  private final String text;
  private final String caution;

  private Step(int number, String title, String text, String caution) {
    this.number = number;
    this.title = title;
    this.text = text;
    this.caution = caution;
  }

  static Step of(String title, String text) {
    return new Step(0, title, text, "");
  }

  Step withCaution(Caution newCaution) {
    return new Step(number, title, text, newCaution.text());
  }

  Step numbered(int newNumber) {
    return new Step(newNumber, title, text, caution);
  }

  /**
   * Its place in the order.
   *
   * @return from 1
   */
  public int number() {
    return number;
  }

  /**
   * What is done, in a few words.
   *
   * @return such as "Sew the shoulder seams"
   */
  public String title() {
    return title;
  }

  /**
   * How it is done.
   *
   * @return some sentences
   */
  public String text() {
    return text;
  }

  /**
   * What to beware of.
   *
   * @return a sentence, or an empty text
   */
  public String caution() {
    return caution;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Step
        && ((Step) other).number == number
        && ((Step) other).title.equals(title)
        && ((Step) other).text.equals(text)
        && ((Step) other).caution.equals(caution);
  }

  @Override
  public int hashCode() {
    return Objects.hash(number, title, text, caution);
  }

  @Override
  public String toString() {
    return number + ". " + title;
  }
}
