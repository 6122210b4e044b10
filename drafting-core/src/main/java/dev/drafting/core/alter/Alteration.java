package dev.drafting.core.alter;

import dev.drafting.core.Stable;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.Pattern;
import java.io.Serializable;
import java.util.List;
import java.util.Map;

/**
 * One change of a pattern: what, at which named place, by how much. It can be asked what it would
 * change before it is made, and is the same value for every pattern that has the place.
 *
 * <p>Seams are named as in the pattern, and have one edge on either side; their ends are told apart
 * by the grain: the upper end is farther along it. Edges are named by their piece and their own
 * name, {@code "front neck"}.
 *
 * <pre>{@code
 * Point a = new Point(0, 0), b = new Point(200, 0), c = new Point(200, 300), d = new Point(0, 300);
 * Piece half = Piece.of("front", List.of(Edge.of("hem", Curve.line(a, b)), Edge.of("side", Curve.line(b, c)), Edge.of("top", Curve.line(c, d)), Edge.onFold(Curve.line(d, a))));
 * Pattern tube = Pattern.of("tube", List.of(half, Piece.of("back", half.edges())), List.of(Seam.of("side", "front side", "back side")));
 * Alteration narrower = Alteration.takeIn("side", Length.mm(10));  // => take in 10 mm at the side seam
 * narrower.changes(tube).get(0);  // => front / hem: 200 mm, then 190 mm; moves by up to 10 mm
 * narrower.applyTo(tube).piece("back");  // => back: hem 190 mm, side 300 mm, top 190 mm, fold 300 mm; cut 1 on the fold
 * }</pre>
 *
 * <p>An alteration of one's own implements this interface: a stable id, settings that say all there
 * is to say, and a function that gives the same pattern for the same pattern.
 *
 * @since 0.1
 */
@Stable
public interface Alteration extends Serializable {

  /**
   * The name of this kind of alteration, the same in all versions.
   *
   * @return a word such as {@code seam-move}
   */
  String id();

  /**
   * What was set, by name.
   *
   * @return an unmodifiable map in a fixed order
   */
  Map<String, String> settings();

  /**
   * What it does, in words.
   *
   * @return a clause such as "take in 10 mm at the side seam"
   */
  String describe();

  /**
   * Makes the change.
   *
   * @param pattern what is altered
   * @return the altered pattern, its seams as well matched as before
   * @throws DraftingException if the pattern has no such place, or it cannot be drawn so
   */
  Pattern applyTo(Pattern pattern);

  /**
   * What it would change, edge by edge.
   *
   * @param pattern what would be altered
   * @return the edges that would change, in the order of the pattern
   * @throws DraftingException as {@link #applyTo} does
   */
  default List<EdgeChange> changes(Pattern pattern) {
    return EdgeChange.between(pattern, applyTo(pattern));
  }

  /**
   * Takes in both sides of a seam alike, measured square to the grain where the seam runs along it,
   * and along the grain where it runs across. Two side seams taken in by 10 mm make the garment 40
   * mm less round.
   *
   * @param seam the seam's name
   * @param amount what each edge gives up; lets out if negative
   * @return the alteration
   */
  static Alteration takeIn(String seam, Length amount) {
    return new SeamMove(seam, amount, amount);
  }

  /**
   * Takes in a seam by different amounts at its ends.
   *
   * @param seam the seam's name
   * @param atLower what each edge gives up at the lower end; lets out if negative
   * @param atUpper what it gives up at the upper end
   * @return the alteration
   */
  static Alteration takeIn(String seam, Length atLower, Length atUpper) {
    return new SeamMove(seam, atLower, atUpper);
  }

  /**
   * Lets out both sides of a seam alike.
   *
   * @param seam the seam's name
   * @param amount what each edge gains
   * @return the alteration
   */
  static Alteration letOut(String seam, Length amount) {
    return new SeamMove(seam, amount.negated(), amount.negated());
  }

  /**
   * Lengthens the pieces at a seam along a line square to their grain.
   *
   * @param seam the seam that the line crosses
   * @param up where it crosses, along the seam from its lower end
   * @param amount what is put in; what is taken out if negative
   * @return the alteration
   */
  static Alteration lengthen(String seam, Length up, Length amount) {
    return new Lengthening(seam, up, amount);
  }

  /**
   * Shortens the pieces at a seam along a line square to their grain.
   *
   * @param seam the seam that the line crosses
   * @param up where it crosses, along the seam from its lower end
   * @param amount what is taken out
   * @return the alteration
   */
  static Alteration shorten(String seam, Length up, Length amount) {
    return new Lengthening(seam, up, amount.negated());
  }

  /**
   * Lowers a neck at its centre; it fades to nothing at its other end, and stays square to the
   * fold.
   *
   * @param edge the neck edge of one piece: "front neck"
   * @param amount how far; raises if negative
   * @return the alteration
   */
  static Alteration lowerNeck(String edge, Length amount) {
    return new NeckDepth(EdgeRef.parse(edge), amount);
  }

  /**
   * Raises a neck at its centre.
   *
   * @param edge the neck edge of one piece
   * @param amount how far
   * @return the alteration
   */
  static Alteration raiseNeck(String edge, Length amount) {
    return lowerNeck(edge, amount.negated());
  }

  /**
   * Widens the neck: the inner ends of the shoulder seam move out along it.
   *
   * @param shoulder the shoulder seam's name
   * @param amount how far on each side; narrows if negative
   * @return the alteration
   */
  static Alteration widenNeck(String shoulder, Length amount) {
    return new SeamEndMove(shoulder, SeamEnd.INNER, amount);
  }

  /**
   * Makes straps wider at the armhole: the outer ends of the shoulder seam move out along it.
   *
   * @param shoulder the shoulder seam's name
   * @param amount by how much; narrower if negative
   * @return the alteration
   */
  static Alteration widenStrap(String shoulder, Length amount) {
    return new SeamEndMove(shoulder, SeamEnd.OUTER, amount.negated());
  }

  /**
   * Deepens the armhole: the upper ends of the side seam move down along it.
   *
   * @param side the side seam's name
   * @param amount how far; raises the underarm if negative
   * @return the alteration
   */
  static Alteration deepenArmhole(String side, Length amount) {
    return new SeamEndMove(side, SeamEnd.UPPER, amount);
  }

  /**
   * Drops the shoulder: the outer ends of the shoulder seam swing down about the inner ones, so
   * that the shoulder stays as long as it was.
   *
   * @param shoulder the shoulder seam's name
   * @param amount how far, along the grain; raises if negative
   * @return the alteration
   */
  static Alteration dropShoulder(String shoulder, Length amount) {
    return new SeamSwing(shoulder, SeamEnd.OUTER, amount);
  }

  /**
   * Raises the shoulder.
   *
   * @param shoulder the shoulder seam's name
   * @param amount how far, along the grain
   * @return the alteration
   */
  static Alteration raiseShoulder(String shoulder, Length amount) {
    return dropShoulder(shoulder, amount.negated());
  }

  /**
   * Adds flare: the lower ends of a seam swing out about the upper ones, so that the seam stays as
   * long as it was.
   *
   * @param seam the seam's name
   * @param amount how far, square to the grain; takes flare away if negative
   * @return the alteration
   */
  static Alteration flare(String seam, Length amount) {
    return new SeamSwing(seam, SeamEnd.LOWER, amount);
  }

  /**
   * Draws an edge anew between two places, smoothly. An edge that is sewn takes its partner with
   * it.
   *
   * @param edge the edge: "front armhole"
   * @param from where it begins to move
   * @param at where it moves most: between the two, or at an end of the edge
   * @param to where it ends to move
   * @param outward how far it moves; inward if negative
   * @return the alteration
   */
  static Alteration reshape(
      String edge, EdgePlace from, EdgePlace at, EdgePlace to, Length outward) {
    return new EdgeReshaping(EdgeRef.parse(edge), List.of(from, at, to), outward, false);
  }

  /**
   * What was snipped off at the try-on, measured on the raw edge of the half-sewn garment, from its
   * seams: the finished edge moves as the cut edge did.
   *
   * @param edge the edge: "front neck"
   * @param amount what was cut off at the deepest place
   * @param at the deepest place, at an end of the edge: {@code EdgePlace.at("fold")} for the centre
   * @param fading where the cut ends
   * @return the alteration
   */
  static Alteration snip(String edge, Length amount, EdgePlace at, EdgePlace fading) {
    return snip(edge, amount, at, at, fading);
  }

  /**
   * What was snipped off at the try-on somewhere along a raw edge, fading to both sides.
   *
   * @param edge the edge: "front armhole"
   * @param amount what was cut off at the deepest place
   * @param from where the cut begins
   * @param at the deepest place, between the two
   * @param to where the cut ends
   * @return the alteration
   */
  static Alteration snip(String edge, Length amount, EdgePlace from, EdgePlace at, EdgePlace to) {
    return new EdgeReshaping(EdgeRef.parse(edge), List.of(from, at, to), amount.negated(), true);
  }

  /**
   * Takes out a gape: a fold is pinched in the cloth at an edge, running to nothing at another edge
   * of the piece, and taken out of the paper.
   *
   * @param edge the edge that gapes: "front neck"
   * @param amount how much shorter it becomes
   * @param pivot the edge in whose middle the fold runs to nothing: "armhole"
   * @return the alteration
   */
  static Alteration takeOutGape(String edge, Length amount, String pivot) {
    return new Gape(EdgeRef.parse(edge), amount, pivot);
  }

  /**
   * Gives edges another finish. The finished edge stays where it is; what is cut follows.
   *
   * @param edge the edge: "front neck"
   * @param finish its new finish
   * @return the alteration
   */
  static Alteration finish(String edge, Finish finish) {
    return new FinishSwap(EdgeRef.parse(edge), finish);
  }
}
