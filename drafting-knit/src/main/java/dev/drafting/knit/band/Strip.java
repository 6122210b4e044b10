package dev.drafting.knit.band;

import dev.drafting.core.Experimental;
import dev.drafting.core.Stable;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.assembly.OpeningPart;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.knit.fabric.Fabric;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The strip for one opening: how long and wide it is cut, where it is marked, and what it will do.
 *
 * <p>It is measured along its own seam, the join line of the whole opening, never along a cut edge,
 * so no seam allowance is ever counted. Its length runs along the fabric's greatest stretch.
 *
 * <pre>{@code
 * Draft top = Draft.of(Templates.installed().get("sleeveless-top").pattern()).withFabric("body", Fabric.of("jersey", Structure.JERSEY, 0.4)).withFabric("rib", Fabric.of("rib", Structure.RIB, 0.8));
 * top.strips().get(0).name();  // => armhole (right) binding
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class Strip implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Opening opening;
  private final Opening asCut;
  private final BandFit fit;
  private final boolean apart;

  private Strip(Opening opening, Opening asCut, BandFit fit, boolean apart) {
    this.opening = opening;
    this.asCut = asCut;
    this.fit = fit;
    this.apart = apart;
  }

  /**
   * The strip for an opening.
   *
   * @param opening the opening of the sewn garment
   * @param finish the band or binding that it gets
   * @param fabric what the strip is cut from
   * @param rule how long it is made
   * @return the strip
   * @throws DraftingException if the rule leaves no loop, or the opening has no such place for its
   *     join
   */
  public static Strip of(Opening opening, BandFinish finish, Fabric fabric, StripRule rule) {
    rule.requireJoinOn(opening);
    return new Strip(opening, opening, BandFit.of(opening, finish, fabric, rule), false);
  }

  /**
   * The same strip for pieces that are cut larger, because their cloth has still to be washed. Only
   * the places of its marks on the pieces change: they are measured where the marks are made.
   *
   * @param larger the same opening of the larger pieces, each of which is stretched along its grain
   *     and across it
   * @return the strip
   * @throws DraftingException if it has other edges
   */
  public Strip withOpeningAsCut(Opening larger) {
    if (!edges(larger).equals(edges(opening))) {
      throw DraftingException.of("this is another opening")
          .at(opening.name())
          .value(larger.name())
          .accepted("the same edges in the same order");
    }
    return new Strip(opening, larger, fit, apart);
  }

  /**
   * The same strip cut apart, one piece for each edge: where edges lap, each is bound before.
   *
   * @return the strip in pieces that have ends of their own
   */
  @Experimental
  public Strip cutApart() {
    return new Strip(opening, asCut, fit, true);
  }

  /**
   * Tells whether it is cut apart.
   *
   * @return true if there is a piece for each edge
   */
  @Experimental
  public boolean isCutApart() {
    return apart;
  }

  /**
   * What is cut for it.
   *
   * @return one piece or more, in the order of the opening
   */
  @Experimental
  public List<StripPiece> pieces() {
    if (!apart) {
      return List.of(new StripPiece(name(), lengthOfEach(), lengths()));
    }
    Map<EdgeRef, Length> edges = new LinkedHashMap<>();
    opening.parts().forEach(p -> edges.merge(p.edge(), p.curve().length(), Length::plus));
    return edges.entrySet().stream()
        .map(edge -> piece(edge.getKey(), edge.getValue().ratioTo(opening.length())))
        .toList();
  }

  private StripPiece piece(EdgeRef edge, double share) {
    return new StripPiece(name() + ", " + edge, fit.cutLength(loop().times(share)), 1);
  }

  private static List<EdgeRef> edges(Opening opening) {
    return opening.parts().stream().map(OpeningPart::edge).toList();
  }

  /**
   * The strip's own name.
   *
   * @return such as "neck band" or "armhole (left) binding"
   */
  public String name() {
    return fit.name();
  }

  /**
   * The opening that it goes round.
   *
   * @return the opening
   */
  public Opening opening() {
    return opening;
  }

  /**
   * The band or binding.
   *
   * @return the finish
   */
  public BandFinish finish() {
    return fit.finish();
  }

  /**
   * What it is cut from.
   *
   * @return the fabric
   */
  public Fabric fabric() {
    return fit.fabric();
  }

  /**
   * How long it was to be made.
   *
   * @return the rule
   */
  public StripRule rule() {
    return fit.rule();
  }

  /**
   * The opening measured along the strip's seam, all the way round.
   *
   * @return a length on the garment
   */
  public Length joinLine() {
    return fit.joinLine();
  }

  /**
   * The opening measured along its finished edge, which is the strip's fold.
   *
   * @return a length on the garment
   */
  public Length finishedEdge() {
    return fit.finishedEdge();
  }

  /**
   * The strip joined to a loop, relaxed.
   *
   * @return its length from seam to seam, without allowances
   */
  public Length loop() {
    return fit.loop();
  }

  /**
   * What is sewn in at each of its two ends where it is joined to a loop.
   *
   * @return zero or more
   */
  public Length joinAllowance() {
    return fit.rule().joinAllowance();
  }

  /**
   * How long the strip is cut.
   *
   * @return the loop and the allowance at both ends
   */
  public Length cutLength() {
    return apart
        ? pieces().stream().map(StripPiece::length).reduce(Length.ZERO, Length::plus)
        : fit.cutLength();
  }

  Length cutLength(Length ofLoop) {
    return fit.cutLength(ofLoop);
  }

  /**
   * How wide the strip is cut.
   *
   * @return the whole width with all turnings
   */
  public Length cutWidth() {
    return fit.cutWidth();
  }

  /**
   * How many lengths the strip is pieced from, because its cloth is not wide enough for it. Each
   * seam between them takes the allowance of the join at both its sides.
   *
   * @return 1 where it is cut in one, or where the width of the cloth is not known
   */
  public int lengths() {
    return fit.lengths();
  }

  /**
   * How long each of its lengths is cut.
   *
   * @return the cut length, or a share of it with the allowances of the seams between
   */
  public Length lengthOfEach() {
    return fit.lengthOfEach();
  }

  /**
   * The loops that lie flat.
   *
   * @return the window
   */
  public FlatWindow window() {
    return fit.window();
  }

  /**
   * How far the strip has to stretch to be sewn to its seam: join line / loop - 1.
   *
   * @return a share, 0.15 for 15 %; negative when the loop is longer than its seam
   */
  public double stretchAsked() {
    return fit.stretchAsked();
  }

  /**
   * What the strip will do.
   *
   * @return whether it gapes, lies flat, hugs, draws in, puckers, or cannot be stretched so far
   */
  public Outcome outcome() {
    return fit.outcome();
  }

  /**
   * How far the loop is from the nearest end of what is wanted.
   *
   * @return positive inside: what it may still be wrong by; negative outside: what it is too short
   *     or too long by
   */
  public Length margin() {
    return fit.margin();
  }

  /**
   * How the strip fits its edge: what is wanted, its grain, what it does to the opening.
   *
   * @return the fit that all lengths of this strip come from
   */
  public BandFit fit() {
    return fit;
  }

  /**
   * Where to mark the relaxed loop: at the quarters of its edge, and between them where it meets
   * the seams and centres of the opening, spaced as the rule says. The strip's join lies at the
   * centre back or the side where there is one, or where the rule says. A strip that is left open
   * there begins half of its lap before the first mark.
   *
   * @return the marks in order from the join, which is the first
   */
  public List<StripMark> marks() {
    return marks(rule().marks());
  }

  /**
   * The same marks, spaced in one of the two ways.
   *
   * @param spacing evenly, or closer together on curves, so that the strip is stretched more there
   * @return the marks in order from the join, which is the first
   */
  public List<StripMark> marks(MarkSpacing spacing) {
    StripMarks marks = new StripMarks(this, spacing);
    SeamLine line = marks.line();
    SeamLine cut = asCut.equals(opening) ? line : new SeamLine(asCut, finish().joinDistance());
    CutPlaces places = new CutPlaces(line, cut, marks.start());
    Length before = rule().lapsAtJoin() ? rule().lap().dividedBy(2) : Length.ZERO;
    return marks.marks().stream()
        .map(
            mark ->
                new StripMark(
                    mark.along().times(fit.larger()).plus(before),
                    places.of(mark.onEdge()),
                    mark.label()))
        .toList();
  }

  /**
   * The parts of the strip between its marks, and how far each is stretched while it is sewn.
   *
   * @return the sections in order from the join
   */
  public List<StripSection> sections() {
    return new StripMarks(this, rule().marks()).sections();
  }

  /**
   * What will go wrong with the strip, and what to do about it.
   *
   * @return findings with the opening as their place, empty when it lies flat
   */
  public List<Finding> findings() {
    return fit.findings();
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(
      Opening opening,
      Opening asCut,
      BandFinish finish,
      Fabric fabric,
      StripRule rule,
      boolean apart)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      Strip strip = of(opening, finish, fabric, rule).withOpeningAsCut(asCut);
      return apart ? strip.cutApart() : strip;
    }
  }

  private Object writeReplace() {
    return new Kept(opening, asCut, finish(), fabric(), fit.rule(), apart);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a strip is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Strip
        && ((Strip) other).opening.equals(opening)
        && ((Strip) other).asCut.equals(asCut)
        && ((Strip) other).fit.equals(fit)
        && ((Strip) other).apart == apart;
  }

  @Override
  public int hashCode() {
    return Objects.hash(opening, asCut, fit, apart);
  }

  @Override
  public String toString() {
    return fit.text(cutLength()) + (apart ? ", cut apart" : "");
  }
}
