package dev.drafting.core.pattern;

import dev.drafting.core.Experimental;
import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A garment's pattern: its pieces, and the seams that join them.
 *
 * <p>What is not said has the usual value: no version, and the tolerances of a traced garment.
 *
 * <pre>{@code
 * Pattern top = Templates.installed().get("sleeveless-top").pattern();
 * top;  // => Sleeveless top: pieces front, back; seams shoulder, side
 * top.seamTolerance();  // => 3 mm
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Pattern implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final String version;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Piece> pieces;

  @SuppressWarnings("serial") // always an unmodifiable list of the JDK
  private final List<Seam> seams;

  private final Details details;
  private final Tolerances tolerances;

  private Pattern(
      String name,
      String version,
      List<Piece> pieces,
      List<Seam> seams,
      Details details,
      Tolerances tolerances) {
    this.name = name;
    this.version = version;
    this.pieces = pieces;
    this.seams = seams;
    this.details = details;
    this.tolerances = tolerances;
  }

  /** What is said of pieces beside their seams. */
  @SuppressWarnings("serial") // always unmodifiable lists of the JDK
  private record Details(
      List<SharedPaper> sharedPapers, List<Patch> patches, List<Placket> plackets)
      implements Serializable {
    private static final long serialVersionUID = 1L;
    static final Details NONE = new Details(List.of(), List.of(), List.of());

    private Details {
      sharedPapers = List.copyOf(sharedPapers);
      patches = List.copyOf(patches);
      plackets = List.copyOf(plackets);
    }
  }

  /** How far a pattern may be off before it is worth a finding. */
  private record Tolerances(Length seam, Angle crossing) implements Serializable {}

  /**
   * A pattern.
   *
   * @param name what the maker calls the garment
   * @param pieces its pieces, each with a name of its own
   * @param seams its seams, each with a name of its own
   * @return the pattern, with the tolerances of a traced garment
   * @throws DraftingException if names repeat, a seam names an edge that is not there or lies on
   *     the fold, or an edge is sewn twice
   */
  public static Pattern of(String name, List<Piece> pieces, List<Seam> seams) {
    Names.check("a pattern", name);
    Tolerances traced = new Tolerances(Length.mm(3), Angle.degrees(10));
    return checked(
        new Pattern(name, "", List.copyOf(pieces), List.copyOf(seams), Details.NONE, traced));
  }

  private static Pattern checked(Pattern pattern) {
    try {
      PatternCheck.check(pattern);
      return pattern;
    } catch (DraftingException e) {
      throw e.at(pattern.name);
    }
  }

  /**
   * What the maker calls the garment.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * What tells this pattern from an earlier one.
   *
   * @return the version, or an empty text
   */
  public String version() {
    return version;
  }

  /**
   * The pieces.
   *
   * @return an unmodifiable list in the order given
   */
  public List<Piece> pieces() {
    return pieces;
  }

  /**
   * One piece.
   *
   * @param piece its name
   * @return the piece
   * @throws DraftingException if there is no such piece
   */
  public Piece piece(String piece) {
    return pieces.get(indexOf(piece));
  }

  private int indexOf(String piece) {
    for (int i = 0; i < pieces.size(); i++) {
      if (pieces.get(i).name().equals(piece)) {
        return i;
      }
    }
    throw DraftingException.of("there is no such piece")
        .at(name)
        .value(piece)
        .accepted(pieces.stream().map(Piece::name).collect(Collectors.joining(", ")));
  }

  /**
   * The seams.
   *
   * @return an unmodifiable list in the order given
   */
  public List<Seam> seams() {
    return seams;
  }

  /**
   * One edge of one piece.
   *
   * @param ref the names of piece and edge
   * @return the edge
   * @throws DraftingException if there is no such piece or edge
   */
  public Edge edge(EdgeRef ref) {
    return piece(ref.piece()).edge(ref.edge());
  }

  /**
   * The papers that two pieces share.
   *
   * @return an unmodifiable list in the order of adding
   */
  public List<SharedPaper> sharedPapers() {
    return details.sharedPapers();
  }

  /**
   * The pieces that are laid on others.
   *
   * @return an unmodifiable list in the order of adding
   */
  @Experimental
  public List<Patch> patches() {
    return details.patches();
  }

  /**
   * The openings that are cut into pieces and closed by strips.
   *
   * @return an unmodifiable list in the order of adding
   */
  @Experimental
  public List<Placket> plackets() {
    return details.plackets();
  }

  /**
   * How much the two sides of a seam may differ, ease apart, before it is worth a finding.
   *
   * @return 3 mm unless set
   */
  public Length seamTolerance() {
    return tolerances.seam();
  }

  /**
   * How much the angle of an edge of the garment may differ from straight where it runs across a
   * seam or the fold, before it is worth a finding.
   *
   * @return 10 degrees unless set
   */
  public Angle crossingTolerance() {
    return tolerances.crossing();
  }

  /**
   * Replaces the piece of the same name.
   *
   * @param piece the new piece
   * @return the pattern with this piece
   * @throws DraftingException if there is no piece of this name, or a seam names an edge that it
   *     does not have
   */
  public Pattern withPiece(Piece piece) {
    List<Piece> changed = new ArrayList<>(pieces);
    changed.set(indexOf(piece.name()), piece);
    return checked(new Pattern(name, version, List.copyOf(changed), seams, details, tolerances));
  }

  /**
   * Finishes one edge in another way.
   *
   * @param ref the names of piece and edge
   * @param finish how it is finished
   * @return the pattern with this finish
   * @throws DraftingException if there is no such piece or edge
   */
  public Pattern withFinish(EdgeRef ref, Finish finish) {
    return withPiece(piece(ref.piece()).withFinish(ref.edge(), finish));
  }

  /**
   * Finishes one edge in another way, by the words for it: {@code withFinish("front hem", hem)}.
   *
   * @param edge piece and edge, as {@link EdgeRef#parse} reads them
   * @param finish how it is finished
   * @return the pattern with this finish
   * @throws DraftingException if there is no such piece or edge
   */
  public Pattern withFinish(String edge, Finish finish) {
    return withFinish(EdgeRef.parse(edge), finish);
  }

  /**
   * Gives an allowance to every edge that is sewn in a seam or stitched down with a patch, and is
   * still raw; edges that have another finish keep it.
   *
   * @param allowance cloth beyond the join line, 0 to 500 mm
   * @return the pattern with these allowances
   * @throws DraftingException if the allowance is wider or negative
   */
  public Pattern withSeamAllowance(Length allowance) {
    SeamFinish finish = SeamFinish.of(allowance);
    Pattern pattern = this;
    Stream<EdgeRef> inSeams =
        seams.stream()
            .flatMap(seam -> Stream.concat(seam.first().stream(), seam.second().stream()));
    Stream<EdgeRef> stitched =
        patches().stream().flatMap(patch -> patch.stitchedEdges(this).stream());
    List<EdgeRef> sewn = Stream.concat(inSeams, stitched).toList();
    for (EdgeRef ref : sewn) {
      if (pattern.edge(ref).finish() instanceof RawEdge) {
        pattern = pattern.withFinish(ref, finish);
      }
    }
    return pattern;
  }

  /**
   * Lets two pieces share one paper.
   *
   * @param sharedPaper which two, and what the paper is called
   * @return the pattern with this shared paper
   * @throws DraftingException if there is no such piece, or a piece shares two papers
   */
  public Pattern withSharedPaper(SharedPaper sharedPaper) {
    List<SharedPaper> more = new ArrayList<>(sharedPapers());
    more.add(sharedPaper);
    return with(new Details(more, patches(), plackets()));
  }

  /**
   * Lays a piece on another one. It is no part of the garment's seams and openings any more, and
   * the piece beneath is marked where it lies.
   *
   * @param patch which piece on which, and where; a patch that reaches beyond the piece beneath is
   *     a finding when the pattern is cut
   * @return the pattern with this patch
   * @throws DraftingException if there is no such piece or open edge, the piece is laid on twice or
   *     on another patch, is sewn in a seam, is held by no edge, or has a fold that lies on none
   */
  @Experimental
  public Pattern withPatch(Patch patch) {
    List<Patch> more = new ArrayList<>(patches());
    more.add(patch);
    return withPatches(more);
  }

  Pattern withPatches(List<Patch> changed) {
    return with(new Details(sharedPapers(), changed, plackets()));
  }

  /**
   * Cuts an opening into a piece, which two strips close. Where the garment is worn closed, its
   * openings stay as they are; the strips are cut with the pattern's pieces.
   *
   * @param placket where, how long and how wide; one that reaches beyond its piece is a finding
   *     when the pattern is cut
   * @return the pattern with this placket
   * @throws DraftingException if there is no such piece or edge, the edge is sewn in a seam or too
   *     short, the piece has a placket already, or another piece is called as its strips are
   */
  @Experimental
  public Pattern withPlacket(Placket placket) {
    List<Placket> more = new ArrayList<>(plackets());
    more.add(placket);
    return withPlackets(more);
  }

  Pattern withPlackets(List<Placket> changed) {
    return with(new Details(sharedPapers(), patches(), changed));
  }

  private Pattern with(Details changed) {
    return checked(new Pattern(name, version, pieces, seams, changed, tolerances));
  }

  /**
   * Tells this pattern from an earlier one; printed on every piece.
   *
   * @param newVersion for instance "2, longer tail"; empty for none
   * @return the pattern with this version
   */
  public Pattern withVersion(String newVersion) {
    return new Pattern(
        name, Objects.requireNonNull(newVersion), pieces, seams, details, tolerances);
  }

  /**
   * Sets how much the two sides of a seam may differ.
   *
   * @param tolerance zero or more; 3 mm suits a traced garment, 0.01 mm a computed one
   * @return the pattern with this tolerance
   * @throws DraftingException if it is negative
   */
  public Pattern withSeamTolerance(Length tolerance) {
    if (tolerance.isNegative()) {
      throw DraftingException.of("the seam tolerance is negative")
          .at(name)
          .value(tolerance)
          .accepted("zero or more");
    }
    return withTolerances(new Tolerances(tolerance, tolerances.crossing()));
  }

  /**
   * Sets how much an edge of the garment may bend where it runs across a seam or the fold.
   *
   * @param tolerance 0 to 180 degrees
   * @return the pattern with this tolerance
   * @throws DraftingException if it is out of range
   */
  public Pattern withCrossingTolerance(Angle tolerance) {
    if (tolerance.compareTo(Angle.ZERO) < 0 || tolerance.compareTo(Angle.degrees(180)) > 0) {
      throw DraftingException.of("the crossing tolerance is out of range")
          .at(name)
          .value(tolerance)
          .accepted("0 to 180 degrees");
    }
    return withTolerances(new Tolerances(tolerances.seam(), tolerance));
  }

  private Pattern withTolerances(Tolerances newTolerances) {
    return new Pattern(name, version, pieces, seams, details, newTolerances);
  }

  /**
   * The same pattern with marking lines where patches are stitched to the pieces beneath them.
   *
   * @return the pattern with the places of all its patches
   */
  @Experimental
  public Pattern withPatchMarks() {
    Pattern marked = this;
    for (Patch patch : patches()) {
      marked = marked.withPiece(patch.marked(marked));
    }
    return marked;
  }

  /**
   * The same pattern with what is cut for its plackets: marking lines on the pieces that are
   * opened, and the strips after the other pieces.
   *
   * @return the pattern with the lines and strips of all its plackets, and no more plackets to cut
   */
  @Experimental
  public Pattern withPlacketPieces() {
    List<Piece> all = new ArrayList<>(pieces);
    for (Placket placket : plackets()) {
      all.set(indexOf(placket.edge().piece()), placket.marked(this));
      all.addAll(placket.strips(this));
    }
    Details cut = new Details(sharedPapers(), patches(), List.of());
    return checked(new Pattern(name, version, List.copyOf(all), seams, cut, tolerances));
  }

  /** What is stored in its place; reading it goes through the checks. */
  @SuppressWarnings("serial") // always collections of the JDK
  private record Kept(
      String name,
      String version,
      List<Piece> pieces,
      List<Seam> seams,
      Details details,
      Tolerances tolerances)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      Pattern pattern =
          of(name, pieces, seams)
              .withVersion(version)
              .withSeamTolerance(tolerances.seam())
              .withCrossingTolerance(tolerances.crossing());
      return pattern.with(details);
    }
  }

  private Object writeReplace() {
    return new Kept(name, version, pieces, seams, details, tolerances);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a pattern is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Pattern
        && ((Pattern) other).name.equals(name)
        && ((Pattern) other).version.equals(version)
        && ((Pattern) other).pieces.equals(pieces)
        && ((Pattern) other).seams.equals(seams)
        && ((Pattern) other).details.equals(details)
        && ((Pattern) other).tolerances.equals(tolerances);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, version, pieces, seams, details, tolerances);
  }

  @Override
  public String toString() {
    return name
        + (version.isEmpty() ? "" : " (" + version + ")")
        + ": pieces "
        + pieces.stream().limit(8).map(Piece::name).collect(Collectors.joining(", "))
        + (pieces.size() > 8 ? " and " + (pieces.size() - 8) + " more" : "")
        + "; seams "
        + seams.stream().limit(6).map(Seam::name).collect(Collectors.joining(", "))
        + (seams.size() > 6 ? " and " + (seams.size() - 6) + " more" : "")
        + (patches().isEmpty() ? "" : "; patches ")
        + patches().stream().map(Patch::piece).collect(Collectors.joining(", "))
        + (plackets().isEmpty() ? "" : "; plackets ")
        + plackets().stream().map(p -> p.edge().toString()).collect(Collectors.joining(", "));
  }
}
