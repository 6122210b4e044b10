package dev.drafting.knit.sewing;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.pattern.EdgeRef;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * One step of making up.
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * top.orderOfWork().get(0).title();  // => Prewash
 * }</pre>
 *
 * @since 0.1
 */
@Stable
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

  private final Scene scene;

  /** What a picture of the step shows. */
  public enum Scene {
    /** The pieces, with the edges at which the work is done. */
    EDGES,
    /** Cloth in water. */
    WASHING,
    /** Cloth lying flat on a table. */
    RESTING,
    /** Cloth pulled between two pins, 10 cm apart at rest. */
    STRETCHING,
    /** A printed sheet with its square and a ruler. */
    PRINTING,
    /** Two scraps and a row of stitches. */
    SCRAP,
    /** The finished garment and a tape measure. */
    MEASURING
  }

  private Step(
      int number,
      String title,
      String text,
      String caution,
      List<String> makes,
      List<EdgeRef> edges,
      Scene scene) {
    this.number = number;
    this.title = title;
    this.text = text;
    this.caution = caution;
    this.makes = makes;
    this.edges = edges;
    this.scene = scene;
  }

  static Step of(String title, String text) {
    return new Step(0, title, text, "", List.of(), List.of(), Scene.EDGES);
  }

  Step withCaution(Caution newCaution) {
    return new Step(number, title, text, newCaution.text(), makes, edges, scene);
  }

  Step numbered(int newNumber) {
    return new Step(newNumber, title, text, caution, makes, edges, scene);
  }

  Step making(List<String> newMakes) {
    return new Step(number, title, text, caution, List.copyOf(newMakes), edges, scene);
  }

  Step showing(List<EdgeRef> newEdges) {
    return new Step(number, title, text, caution, makes, List.copyOf(newEdges), scene);
  }

  Step showing(Scene newScene) {
    return new Step(number, title, text, caution, makes, edges, newScene);
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
   * The seams, openings, strips and patches that are done with this step.
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

  /**
   * What a picture of it shows.
   *
   * @return the pieces with the worked edges, or a scene
   */
  public Scene scene() {
    return scene;
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      int number,
      String title,
      String text,
      String caution,
      List<String> makes,
      List<EdgeRef> edges,
      Scene scene)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      if (number < 0) {
        throw DraftingException.of("steps are counted from 1")
            .at(title)
            .value(number)
            .accepted("0 or more");
      }
      return new Step(
          number,
          Objects.requireNonNull(title, "title"),
          Objects.requireNonNull(text, "text"),
          Objects.requireNonNull(caution, "caution"),
          List.copyOf(makes),
          List.copyOf(edges),
          Objects.requireNonNull(scene, "scene"));
    }
  }

  private Object writeReplace() {
    return new Kept(number, title, text, caution, makes, edges, scene);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a step is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Step
        && ((Step) other).number == number
        && ((Step) other).title.equals(title)
        && ((Step) other).text.equals(text)
        && ((Step) other).caution.equals(caution)
        && ((Step) other).makes.equals(makes)
        && ((Step) other).edges.equals(edges)
        && ((Step) other).scene == scene;
  }

  @Override
  public int hashCode() {
    return Objects.hash(number, title, text, caution, makes, edges, scene);
  }

  @Override
  public String toString() {
    return number + ". " + title;
  }
}
