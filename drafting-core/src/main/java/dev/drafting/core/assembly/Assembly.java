package dev.drafting.core.assembly;

import dev.drafting.core.Experimental;
import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.pattern.Pattern;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A pattern with its pieces opened out and its seams closed: its openings, the lengths of its seams
 * against each other, and what will not sew well.
 *
 * <pre>{@code
 * Point a = new Point(0, 0), b = new Point(600, 0), c = new Point(600, 300), d = new Point(0, 300);
 * Piece tube = Piece.of("tube", List.of(Edge.of("foot", List.of(a, b)), Edge.of("right", List.of(b, c)), Edge.of("top", List.of(c, d)), Edge.of("left", List.of(d, a))));
 * Seam back = Seam.of("back seam", EdgeRef.parse("tube right"), EdgeRef.parse("tube left")).endToStart();
 * Assembly sewn = Assembly.of(Pattern.of("tube", List.of(tube), List.of(back)));
 * sewn;  // => tube: openings foot, top; 0 findings
 * sewn.opening("top").lengthAt(Length.mm(-20));  // => 600 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Assembly implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Pattern pattern;
  private final int eulerCharacteristic;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Opening> openings;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Junction> junctions;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<SeamCheck> seamChecks;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Finding> findings;

  private Assembly(Pattern pattern) {
    SewingDirections directions = SewingDirections.of(pattern);
    Surface surface = SurfaceBuilder.build(pattern, directions.seams());
    OpeningReader reader = new OpeningReader(pattern, surface);
    this.pattern = pattern;
    this.eulerCharacteristic = surface.eulerCharacteristic();
    this.openings = reader.openings();
    this.junctions = JunctionReader.read(pattern, directions);
    this.seamChecks = SeamChecks.of(pattern);
    this.findings = new AssemblyFindings(pattern, seamChecks).of(surface, reader);
  }

  /**
   * Sews a pattern together.
   *
   * @param pattern the pattern
   * @return the assembled garment
   * @throws DraftingException if the edges named for one side of a seam do not follow one another
   */
  public static Assembly of(Pattern pattern) {
    try {
      return new Assembly(pattern);
    } catch (DraftingException e) {
      throw e.at(pattern.name());
    }
  }

  /**
   * A pattern with notches where gathers are shared out and pleats are laid: quarters on both sides
   * of a gathered seam; both ends of every pleat on the longer side, and its place on the shorter
   * one. Sides of several edges are counted through.
   *
   * @param pattern the pattern
   * @return the same with the notches of all its seams
   * @throws DraftingException if the edges named for one side of a seam do not follow one another
   */
  @Experimental
  public static Pattern withSeamMarks(Pattern pattern) {
    return FullnessMarks.on(pattern);
  }

  /**
   * The pattern.
   *
   * @return as given
   */
  public Pattern pattern() {
    return pattern;
  }

  /**
   * The openings, in the order of the pieces and edges at which they begin.
   *
   * @return an unmodifiable list
   */
  public List<Opening> openings() {
    return openings;
  }

  /**
   * One opening.
   *
   * @param name its name, such as "neck" or "armhole (left)"
   * @return the opening
   * @throws DraftingException if there is no such opening
   */
  public Opening opening(String name) {
    return openings.stream()
        .filter(o -> o.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                DraftingException.of("there is no such opening")
                    .at(pattern.name())
                    .value(name)
                    .accepted(
                        openings.stream().map(Opening::name).collect(Collectors.joining(", "))));
  }

  /**
   * The places where seams end.
   *
   * @return an unmodifiable list in the order of the seams
   */
  public List<Junction> junctions() {
    return junctions;
  }

  /**
   * The two sides of every seam measured against each other.
   *
   * @return an unmodifiable list in the order of the seams
   */
  public List<SeamCheck> seamChecks() {
    return seamChecks;
  }

  /**
   * How the cloth hangs together: 1 for a flat piece, 0 for a tube, -1 for trousers, -2 for a vest.
   * With all seams sewn flat, the turnings of all openings add up to -360 degrees times this
   * number.
   *
   * @return corners less edges plus pieces of the joined surface
   */
  public int eulerCharacteristic() {
    return eulerCharacteristic;
  }

  /**
   * What will sew badly: seams of unequal length or with a twist, edges that bend where they cross
   * a seam or the fold, outlines that cross themselves.
   *
   * @return an unmodifiable list in the order of the pattern
   */
  public List<Finding> findings() {
    return findings;
  }

  /**
   * Draws the edges of the openings smoothly across seams and folds, as after pieces were traced
   * apart: the neck across the shoulder seam, the hem across the side seam. The edges turn at their
   * ends, both sides of a seam alike; if one is straight the curved one gives alone, and two
   * straight ones become gentle curves only where they bend by more than the pattern tolerates. No
   * corner moves, and no seam changes its length. Corners that are meant to be points stay so.
   *
   * <p>{@link PatternTruing} makes seams match at the same time, and lets corners give way.
   *
   * @param most edges that bend by more are kept as they are: that is no wandering of a pencil; 0
   *     to 90 degrees
   * @return the pattern with smooth crossings
   * @throws DraftingException if it is out of range, or an edge turned so crosses another
   */
  public Pattern smoothed(Angle most) {
    return PatternTruing.of(pattern).smoothed(most).withCornersHeld().result().pattern();
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(Pattern pattern) implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return of(pattern);
    }
  }

  private Object writeReplace() {
    return new Kept(pattern);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("an assembly is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Assembly && ((Assembly) other).pattern.equals(pattern);
  }

  @Override
  public int hashCode() {
    return pattern.hashCode();
  }

  @Override
  public String toString() {
    return pattern.name()
        + ": openings "
        + openings.stream().limit(12).map(Opening::name).collect(Collectors.joining(", "))
        + "; "
        + findings.size()
        + (findings.size() == 1 ? " finding" : " findings");
  }
}
