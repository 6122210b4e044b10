package dev.drafting.knit.band;

import dev.drafting.core.Stable;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.wording.Wording;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * How a strip fits its edge: which loops do what is meant, how long this one is made and cut, and
 * what it will do. The edge is an opening of a draft, or known by tape measure alone.
 *
 * <pre>{@code
 * TapedEdge neck = TapedEdge.alongSeam("neck", Length.cm(64), TapedEdge.turningOfNeck(Angle.degrees(20)));
 * Fabric rib = Fabric.of("rib", Structure.RIB, 0.8);
 * FoldedBand band = FoldedBand.of(Length.mm(13), Length.mm(7));
 * BandFit.of(neck, band, rib, StripRule.shorterBy(Length.cm(5)));  // => neck band: cut 61 cm x 40 mm, loop 59 cm on a seam of 64 cm, lies flat, margin 18 mm
 * BandFit.of(neck, band, rib, StripRule.shorterBy(Length.cm(7))).outcome();  // => PUCKERS
 * }</pre>
 *
 * @since 0.1
 */
@Stable
public final class BandFit implements Serializable {
  private static final long serialVersionUID = 1L;

  private final BandEdge edge;
  private final BandFinish finish;
  private final Fabric fabric;
  private final StripRule rule;
  private final StripGrain grain;
  private final double usableStretch;
  private final Length joinLine;
  private final Length finishedEdge;
  private final Length furthestSewn;
  private final FlatWindow window;
  private final transient Wanted wanted;
  private final double larger;
  private final Length loop;

  private BandFit(BandEdge edge, BandFinish finish, Fabric fabric, StripRule rule) {
    this.edge = Objects.requireNonNull(edge, "edge");
    this.finish = Objects.requireNonNull(finish, "finish");
    this.fabric = Objects.requireNonNull(fabric, "fabric");
    this.rule = Objects.requireNonNull(rule, "rule");
    this.grain = StripGrain.of(fabric);
    Fabric turned = grain.greatestAcross(fabric);
    Length seam = finish.joinDistance();
    this.usableStretch = turned.usableStretch();
    this.joinLine = edge.lengthAt(seam, seam);
    this.finishedEdge = edge.lengthAt(Length.ZERO, seam);
    this.furthestSewn =
        seam.isZero() ? joinLine.max(edge.lengthAt(finish.showing().negated(), seam)) : joinLine;
    this.window = FlatWindow.of(edge, finish, fabric.tension());
    this.wanted = new Wanted(finish.intent(), window, finishedEdge, turned.stretchClass());
    this.larger = grain.larger(fabric.shrinkageToCome());
    Length byRule = rule.loop(joinLine, wanted.range(), furthestSewn.dividedBy(1 + usableStretch));
    this.loop = rule.isAlreadyCut() ? byRule.dividedBy(larger) : byRule;
  }

  /**
   * The fit of a strip at an opening of the sewn garment, measured on its outline.
   *
   * @param opening the opening
   * @param finish the band or binding that it gets
   * @param fabric what the strip is cut from
   * @param rule how long it is made
   * @return the fit
   * @throws dev.drafting.core.finding.DraftingException if the rule leaves no loop
   */
  public static BandFit of(Opening opening, BandFinish finish, Fabric fabric, StripRule rule) {
    return new BandFit(new BandEdge.OnOutline(opening), finish, fabric, rule);
  }

  /**
   * The fit of a strip at an edge that was measured with a tape.
   *
   * @param edge the edge
   * @param finish the band or binding that it gets
   * @param fabric what the strip is cut from
   * @param rule how long it is made
   * @return the fit
   * @throws dev.drafting.core.finding.DraftingException if the rule leaves no loop, or the strip is
   *     too wide for the edge
   */
  public static BandFit of(TapedEdge edge, BandFinish finish, Fabric fabric, StripRule rule) {
    return new BandFit(edge, finish, fabric, rule);
  }

  /**
   * What the edge is called.
   *
   * @return such as "neck"
   */
  public String edgeName() {
    return edge.name();
  }

  /**
   * The strip's own name.
   *
   * @return such as "neck band"; the edge's name alone if that ends in the strip's noun
   */
  public String name() {
    String noun = finish.noun();
    return edge.name().endsWith(noun) ? edge.name() : edge.name() + " " + noun;
  }

  /**
   * How far the edge turns on its way round.
   *
   * @return positive where it is convex
   */
  public Angle turning() {
    return edge.turning();
  }

  /**
   * The band or binding.
   *
   * @return the finish
   */
  public BandFinish finish() {
    return finish;
  }

  /**
   * What it is cut from.
   *
   * @return the fabric
   */
  public Fabric fabric() {
    return fabric;
  }

  /**
   * How long it was to be made.
   *
   * @return the rule
   */
  public StripRule rule() {
    return rule;
  }

  /**
   * Which way its length runs on the cloth.
   *
   * @return along the greatest stretch
   */
  public StripGrain grain() {
    return grain;
  }

  /**
   * How far it gives in use, along its length.
   *
   * @return a share, 0.64 for a rib that gives 80 % on the gauge
   */
  public double usableStretch() {
    return usableStretch;
  }

  /**
   * The edge measured along the strip's seam, all the way round.
   *
   * @return a length on the garment
   */
  public Length joinLine() {
    return joinLine;
  }

  /**
   * The edge measured where the finished garment ends.
   *
   * @return a length on the garment
   */
  public Length finishedEdge() {
    return finishedEdge;
  }

  /**
   * The strip joined to a loop, relaxed, after its wash.
   *
   * @return its length from seam to seam, without allowances
   */
  public Length loop() {
    return loop;
  }

  /**
   * How much longer its loop is cut than finished, because its cloth still shrinks.
   *
   * @return a factor from 1
   */
  double larger() {
    return larger;
  }

  /**
   * How long the strip is cut: its loop, drawn larger where its cloth still shrinks, what laps at a
   * placket, and the allowance at both ends.
   *
   * @return a length of unwashed cloth unless that is prewashed
   */
  public Length cutLength() {
    return cutLength(loop);
  }

  Length cutLength(Length ofLoop) {
    return ofLoop.times(larger).plus(rule.lap()).plus(rule.joinAllowance().times(2));
  }

  /**
   * How wide the strip is cut: as its finish says, drawn larger where its cloth still shrinks, but
   * for what is sewn in.
   *
   * @return the whole width with all turnings
   */
  public Length cutWidth() {
    double wider = grain.other().larger(fabric.shrinkageToCome());
    Length sewnIn = finish.sewnIn();
    return finish.cutWidth().minus(sewnIn).times(wider).plus(sewnIn);
  }

  /**
   * How many lengths the strip is pieced from, because its cloth is not wide enough for it. Each
   * seam between them takes the allowance of the join at both its sides.
   *
   * @return 1 where it is cut in one, or along the cloth, or where the width of the cloth is not
   *     known
   */
  public int lengths() {
    if (grain == StripGrain.ALONG) {
      return 1;
    }
    return fabric
        .widthToCut()
        .map(wide -> wide.minus(rule.joinAllowance().times(2)).max(Length.cm(1)))
        .map(room -> (int) Math.ceil(loop.times(larger).plus(rule.lap()).ratioTo(room)))
        .orElse(1);
  }

  /**
   * How long each of its lengths is cut.
   *
   * @return the cut length, or a share of it with the allowances of the seams between
   */
  public Length lengthOfEach() {
    Length ends = rule.joinAllowance().times(2);
    return cutLength().minus(ends).dividedBy(lengths()).plus(ends);
  }

  /**
   * The loops that lie flat, whatever the strip is meant to do.
   *
   * @return the window
   */
  public FlatWindow window() {
    return window;
  }

  /**
   * The loops that do what the strip is meant to do.
   *
   * @return the window for a strip that lies flat, shorter loops for one that hugs or draws in
   */
  public LoopRange wanted() {
    return wanted.range();
  }

  /**
   * How far the strip has to stretch to be sewn on: seam / loop - 1. A strip that is turned in must
   * also reach the line where its inner edge is stitched down.
   *
   * @return a share, 0.15 for 15 %; negative when the loop is longer than its seam
   */
  public double stretchAsked() {
    return furthestSewn.ratioTo(loop) - 1;
  }

  Length furthestSewn() {
    return furthestSewn;
  }

  /**
   * What the strip will do.
   *
   * @return whether it gapes, lies flat, hugs, draws in, puckers, or cannot be stretched so far
   */
  public Outcome outcome() {
    return stretchAsked() > usableStretch + 1e-9 ? Outcome.CANNOT_STRETCH : wanted.judge(loop);
  }

  /**
   * Tells whether the strip does what it is meant to do.
   *
   * @return true where the outcome is the intent
   */
  public boolean isAsMeant() {
    return outcome() != Outcome.CANNOT_STRETCH && wanted.range().contains(loop);
  }

  /**
   * How far the loop is from the nearest end of what is wanted.
   *
   * @return positive inside: what it may still be wrong by; negative outside: what it is too short
   *     or too long by
   */
  public Length margin() {
    return wanted.range().margin(loop);
  }

  /**
   * The finished opening when nothing pulls at it.
   *
   * @return the finished edge, or the loop where that is shorter and draws it in
   */
  public Length relaxedOpening() {
    return finishedEdge.min(loop);
  }

  /**
   * How far the strip lets the opening go.
   *
   * @return the loop stretched as far as it gives in use
   */
  public Length stretchesTo() {
    return loop.times(1 + usableStretch);
  }

  /**
   * What will go wrong with the strip, and what to do about it.
   *
   * @return findings with the opening as their place, empty when it does what it is meant to
   */
  public List<Finding> findings() {
    return StripFindings.of(this);
  }

  /** What is stored in its place; reading it goes through the checks. */
  private record Kept(BandEdge edge, BandFinish finish, Fabric fabric, StripRule rule)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    private Object readResolve() {
      return new BandFit(edge, finish, fabric, rule);
    }
  }

  private Object writeReplace() {
    return new Kept(edge, finish, fabric, rule);
  }

  private void readObject(ObjectInputStream in) throws InvalidObjectException {
    throw new InvalidObjectException("a fit of a band is read as it was written");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof BandFit
        && ((BandFit) other).edge.equals(edge)
        && ((BandFit) other).finish.equals(finish)
        && ((BandFit) other).fabric.equals(fabric)
        && ((BandFit) other).rule.equals(rule);
  }

  @Override
  public int hashCode() {
    return Objects.hash(edge, finish, fabric, rule);
  }

  @Override
  public String toString() {
    return text(cutLength());
  }

  /** In words, with the length that is cut in all. */
  String text(Length cut) {
    return name()
        + ": cut "
        + Wording.amount(cut)
        + " x "
        + Wording.fine(cutWidth())
        + ", loop "
        + Wording.amount(loop)
        + " on a seam of "
        + Wording.amount(joinLine)
        + ", "
        + outcome().plainName()
        + ", margin "
        + Wording.amount(margin());
  }
}
