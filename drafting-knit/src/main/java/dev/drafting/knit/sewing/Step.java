package dev.drafting.knit.sewing;

import dev.drafting.core.pattern.EdgeRef;
import java.io.Serializable;
import java.util.List;
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

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<String> makes;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<EdgeRef> edges;

  private Step(
      int number,
      String title,
      String text,
      String caution,
      List<String> makes,
      List<EdgeRef> edges) {
    this.number = number;
    this.title = title;
    this.text = text;
    this.caution = caution;
    this.makes = makes;
    this.edges = edges;
  }

  static Step of(String title, String text) {
    return new Step(0, title, text, "", List.of(), List.of());
  }

  Step withCaution(Caution newCaution) {
    return new Step(number, title, text, newCaution.text(), makes, edges);
  }

  Step numbered(int newNumber) {
    return new Step(newNumber, title, text, caution, makes, edges);
  }

  Step making(List<String> newMakes) {
    return new Step(number, title, text, caution, List.copyOf(newMakes), edges);
  }

  Step showing(List<EdgeRef> newEdges) {
    return new Step(number, title, text, caution, makes, List.copyOf(newEdges));
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

  /**
   * The seams, openings and strips that are done with this step.
   *
   * @return their names; empty for a step that sews none
   */
  public List<String> makes() {
    return makes;
  }

  /**
   * The edges at which the work is done, for a picture.
   *
   * @return an unmodifiable list; empty for a step that is not about edges
   */
  public List<EdgeRef> edges() {
    return edges;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Step
        && ((Step) other).number == number
        && ((Step) other).title.equals(title)
        && ((Step) other).text.equals(text)
        && ((Step) other).caution.equals(caution)
        && ((Step) other).makes.equals(makes)
        && ((Step) other).edges.equals(edges);
  }

  @Override
  public int hashCode() {
    return Objects.hash(number, title, text, caution, makes, edges);
  }

  @Override
  public String toString() {
    return number + ". " + title;
  }
}
