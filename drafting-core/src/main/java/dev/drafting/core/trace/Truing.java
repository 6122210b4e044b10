package dev.drafting.core.trace;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Tidies up a tracing: straight where the points say straight, elsewhere as few cubics as the
 * wandering of the pencil allows, corners where neighbouring edges cross, square at the fold, and,
 * for a whole piece, symmetrical about its best fold line.
 *
 * <p>How far the pencil wandered is judged from the points themselves, so exact points give exact
 * edges and rough ones calm edges. An edge is straight unless a bow stands out of that wandering at
 * one false alarm in a hundred. A few points well off an edge are a slip of the pencil: they are
 * refused (Tukey's biweight) and reported.
 *
 * <pre>{@code
 * Tracing pocket = Tracing.of("pocket", Extent.HALF_ON_FOLD, List.of(
 *     TracedEdge.of("top", List.of(new Point(0, 120), new Point(60, 120))),
 *     TracedEdge.of("side", List.of(new Point(61, 119), new Point(60, 0))),
 *     TracedEdge.of("bottom", List.of(new Point(0, 0), new Point(59, 0)))));
 * TruedPiece trued = Truing.of(pocket).result();
 * trued.report().edge("top");  // => top: straight, 61 mm; 2 points, 0 refused, RMS 0 mm, largest 0 mm
 * trued.piece().edge("fold").length().text(LengthUnit.MM);  // => 120 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Truing implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final Length FINEST = Length.mm(0.1);
  private static final Length COARSEST = Length.mm(50);
  private static final Length ROUGH = Length.mm(3);
  private static final Length FARTHEST_OUTSIDE = Length.mm(100);

  private final Tracing tracing;
  private final @Nullable Length smoothing;

  @SuppressWarnings("serial") // always an unmodifiable map of the JDK
  private final Map<String, Straightness> forms;

  @SuppressWarnings("serial") // always an unmodifiable set of the JDK
  private final Set<String> pointed;

  @SuppressWarnings("serial") // always an unmodifiable map of the JDK
  private final Map<String, Length> outside;

  private Truing(
      Tracing tracing,
      @Nullable Length smoothing,
      Map<String, Straightness> forms,
      Set<String> pointed,
      Map<String, Length> outside) {
    this.outside = Collections.unmodifiableMap(outside);
    this.tracing = tracing;
    this.smoothing = smoothing;
    this.forms = Collections.unmodifiableMap(forms);
    this.pointed = Collections.unmodifiableSet(pointed);
  }

  /**
   * Truing with everything judged from the points.
   *
   * @param tracing what was traced
   * @return the truing, ready for {@link #result()}
   */
  public static Truing of(Tracing tracing) {
    return new Truing(
        Objects.requireNonNull(tracing, "tracing"),
        null,
        new TreeMap<>(),
        new TreeSet<>(),
        new TreeMap<>());
  }

  /**
   * Says how far the pencil wandered, instead of judging it from the points: waves and bows about
   * this size are the hand's, not the garment's. More gives calmer edges of fewer cubics, less
   * follows the points more closely.
   *
   * <p>An edge along which the pencil wandered more than this, and more than 3 mm, is reported as
   * rough.
   *
   * @param wandering 0.1 to 50 mm; half of the points lie within two thirds of it
   * @return a truing with this setting
   * @throws DraftingException if it is out of range
   */
  public Truing withSmoothing(Length wandering) {
    if (wandering.compareTo(FINEST) < 0 || wandering.compareTo(COARSEST) > 0) {
      throw DraftingException.of("smoothing is how far the pencil wandered")
          .at("smoothing")
          .value(wandering)
          .accepted("0.1 to 50 mm");
    }
    return new Truing(tracing, wandering, forms, pointed, outside);
  }

  /**
   * Declares an edge straight, whatever its points say.
   *
   * @param edge the name of a traced edge
   * @return a truing with this edge straight
   * @throws DraftingException if no such edge was traced
   */
  public Truing withStraight(String edge) {
    return withForm(edge, Straightness.STRAIGHT);
  }

  /**
   * Declares an edge curved, even if its points could lie on a straight line.
   *
   * @param edge the name of a traced edge
   * @return a truing with this edge curved
   * @throws DraftingException if no such edge was traced
   */
  public Truing withCurved(String edge) {
    return withForm(edge, Straightness.CURVED);
  }

  private Truing withForm(String edge, Straightness form) {
    checkTraced(edge);
    Map<String, Straightness> more = new TreeMap<>(forms);
    more.put(edge, form);
    return new Truing(tracing, smoothing, more, pointed, outside);
  }

  /**
   * Declares that an edge comes to a point at the fold, as a V neck or a pointed hem does, instead
   * of crossing it squarely.
   *
   * @param edge the name of a traced edge that ends on the fold
   * @return a truing with this point
   * @throws DraftingException if no such edge was traced
   */
  public Truing withPointedCorner(String edge) {
    checkTraced(edge);
    Set<String> more = new TreeSet<>(pointed);
    more.add(edge);
    return new Truing(tracing, smoothing, forms, more, outside);
  }

  /**
   * Says that what was traced along an edge lies outside its finished edge: an old cut edge, with
   * its allowance; the silhouette of a garment whose seam has rolled to the other side. The piece
   * is drawn inside it; the report tells of the traced line.
   *
   * @param edge the name of a traced edge
   * @param distance how far outside; inside if negative, as a seam that shows on the piece; at most
   *     100 mm
   * @return a truing with this edge drawn at a distance from its tracing
   * @throws DraftingException if no such edge was traced, or the distance is out of range
   */
  public Truing withTracedOutside(String edge, Length distance) {
    checkTraced(edge);
    if (distance.abs().compareTo(FARTHEST_OUTSIDE) > 0) {
      throw DraftingException.of("what was traced lies too far from the finished edge")
          .at(edge)
          .at(tracing.piece())
          .value(distance)
          .accepted("100 mm outside to 100 mm inside");
    }
    Map<String, Length> more = new TreeMap<>(outside);
    more.put(edge, distance);
    return new Truing(tracing, smoothing, forms, pointed, more);
  }

  private void checkTraced(String edge) {
    if (tracing.edges().stream().noneMatch(traced -> traced.name().equals(edge))) {
      throw DraftingException.of("no such edge was traced")
          .at(tracing.piece())
          .value(edge)
          .accepted(
              tracing.edges().stream()
                  .map(TracedEdge::name)
                  .distinct()
                  .collect(Collectors.joining(", ")));
    }
  }

  /**
   * What is trued.
   *
   * @return the tracing
   */
  public Tracing tracing() {
    return tracing;
  }

  /**
   * How far the pencil wandered in the maker's own words.
   *
   * @return empty when it is judged from the points
   */
  public Optional<Length> smoothing() {
    return Optional.ofNullable(smoothing);
  }

  /**
   * Trues the tracing.
   *
   * @return the piece, half on the fold, and the report
   * @throws DraftingException if the edges do not join up, a half does not end at the fold, the two
   *     sides of a whole piece do not answer to each other, an edge does not reach as far inside
   *     its tracing as it should lie, or thousands of points lie along no edge
   */
  public TruedPiece result() {
    return TracedOutside.taken(outside, new Assembling(outline(), roughness()).result());
  }

  private Outline outline() {
    return switch (tracing.extent()) {
      case HALF_ON_FOLD -> HalfOutline.of(this);
      case WHOLE -> WholeOutline.of(this);
      case AS_IT_LIES -> LyingOutline.of(this);
    };
  }

  /** The noise of the whole tracing: as said, or as judged from its strokes. */
  Noise noise(List<Stroke> strokes) {
    return smoothing == null
        ? Noise.of(strokes.stream().map(stroke -> stroke.samples).collect(Collectors.toList()))
        : Noise.declared(smoothing.toMm());
  }

  /** What fits an edge that was drawn in these strokes. */
  EdgeFitter fitter(String edge, Noise noise, List<Samples> strokes) {
    Noise own = smoothing == null ? noise.orOwn(strokes) : noise;
    int points = strokes.stream().mapToInt(Samples::size).sum();
    Effort effort = new Effort(tracing.piece() + " / " + edge, points);
    return new EdgeFitter(own, forms.getOrDefault(edge, Straightness.JUDGED), effort);
  }

  /** What is asked of an edge that starts or ends on the fold. */
  Ends ends(String edge, boolean starts, boolean ends) {
    End fold = isPointed(edge) ? End.POINTED_ON_FOLD : End.SQUARE_ON_FOLD;
    return new Ends(starts ? fold : End.FREE, ends ? fold : End.FREE);
  }

  boolean isPointed(String edge) {
    return pointed.contains(edge);
  }

  /** Beyond this an edge was traced roughly. */
  private Length roughness() {
    return smoothing == null ? ROUGH : smoothing.max(ROUGH);
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      Tracing tracing,
      @Nullable Length smoothing,
      Map<String, Straightness> forms,
      Set<String> pointed,
      Map<String, Length> outside)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      Truing truing = smoothing == null ? of(tracing) : of(tracing).withSmoothing(smoothing);
      for (Map.Entry<String, Straightness> form : forms.entrySet()) {
        truing = truing.withForm(form.getKey(), Objects.requireNonNull(form.getValue(), "form"));
      }
      for (String edge : pointed) {
        truing = truing.withPointedCorner(edge);
      }
      for (Map.Entry<String, Length> line : outside.entrySet()) {
        truing = truing.withTracedOutside(line.getKey(), line.getValue());
      }
      return truing;
    }
  }

  private Object writeReplace() {
    return new Kept(tracing, smoothing, forms, pointed, outside);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a truing is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Truing that
        && tracing.equals(that.tracing)
        && Objects.equals(smoothing, that.smoothing)
        && forms.equals(that.forms)
        && pointed.equals(that.pointed)
        && outside.equals(that.outside);
  }

  @Override
  public int hashCode() {
    return Objects.hash(tracing, smoothing, forms, pointed, outside);
  }

  @Override
  public String toString() {
    String wandering = smoothing == null ? "judged from the points" : smoothing.toString();
    return "Truing of " + tracing.piece() + ", smoothing " + wandering;
  }
}
