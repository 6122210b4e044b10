package dev.drafting.knit.band;

import dev.drafting.core.assembly.Opening;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.measure.Length;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.wording.Wording;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * The strip for one opening: how long and wide it is cut, where it is marked, and what it will do.
 *
 * <p>It is measured along its own seam, the join line of the whole opening, never along a cut edge,
 * so no seam allowance is ever counted. Its length runs along the fabric's greatest stretch.
 *
 * @since 0.1
 */
public final class Strip implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Opening opening;
  private final BandFinish finish;
  private final Fabric fabric;
  private final StripRule rule;
  private final Length joinLine;
  private final Length loop;
  private final FlatWindow window;

  private Strip(Opening opening, BandFinish finish, Fabric fabric, StripRule rule) {
    this.opening = Objects.requireNonNull(opening, "opening");
    this.finish = Objects.requireNonNull(finish, "finish");
    this.fabric = Objects.requireNonNull(fabric, "fabric");
    this.rule = Objects.requireNonNull(rule, "rule");
    this.joinLine = opening.lengthAt(finish.joinDistance());
    this.window = FlatWindow.of(opening, finish, fabric.tension());
    this.loop = rule.loop(joinLine, window, fabric.usableStretch());
  }

  /**
   * The strip for an opening.
   *
   * @param opening the opening of the sewn garment
   * @param finish the band or binding that it gets
   * @param fabric what the strip is cut from
   * @param rule how long it is made
   * @return the strip
   * @throws dev.drafting.core.finding.DraftingException if the rule leaves no loop
   */
  public static Strip of(Opening opening, BandFinish finish, Fabric fabric, StripRule rule) {
    return new Strip(opening, finish, fabric, rule);
  }

  /**
   * The strip's own name.
   *
   * @return such as "neck band" or "armhole (left) binding"
   */
  public String name() {
    return opening.name() + " " + finish.noun();
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
   * The opening measured along the strip's seam, all the way round.
   *
   * @return a length on the garment
   */
  public Length joinLine() {
    return joinLine;
  }

  /**
   * The opening measured along its finished edge, which is the strip's fold.
   *
   * @return a length on the garment
   */
  public Length finishedEdge() {
    return opening.length();
  }

  /**
   * The strip joined to a loop, relaxed.
   *
   * @return its length from seam to seam, without allowances
   */
  public Length loop() {
    return loop;
  }

  /**
   * What is sewn in at each of its two ends where it is joined to a loop.
   *
   * @return zero or more
   */
  public Length joinAllowance() {
    return rule.joinAllowance();
  }

  /**
   * How long the strip is cut.
   *
   * @return the loop and the allowance at both ends
   */
  public Length cutLength() {
    return cutLength(loop);
  }

  Length cutLength(Length ofLoop) {
    return ofLoop.plus(joinAllowance().times(2));
  }

  /**
   * How wide the strip is cut.
   *
   * @return the whole width with all turnings
   */
  public Length cutWidth() {
    return finish.cutWidth();
  }

  /**
   * How many lengths the strip is pieced from, because its cloth is not wide enough for it. Each
   * seam between them takes the allowance of the join at both its sides.
   *
   * @return 1 where it is cut in one, or where the width of the cloth is not known
   */
  public int lengths() {
    return fabric
        .widthAfterWashing()
        .map(wide -> wide.minus(joinAllowance().times(2)).max(Length.cm(1)))
        .map(room -> (int) Math.ceil(loop.ratioTo(room)))
        .orElse(1);
  }

  /**
   * How long each of its lengths is cut.
   *
   * @return the cut length, or a share of it with the allowances of the seams between
   */
  public Length lengthOfEach() {
    return cutLength(loop.dividedBy(lengths()));
  }

  /**
   * The loops that lie flat.
   *
   * @return the window
   */
  public FlatWindow window() {
    return window;
  }

  /**
   * How far the strip has to stretch to be sewn to its seam: join line / loop - 1.
   *
   * @return a share, 0.15 for 15 %; negative when the loop is longer than its seam
   */
  public double stretchAsked() {
    return joinLine.ratioTo(loop) - 1;
  }

  /**
   * What the strip will do.
   *
   * @return whether it gapes, lies flat, puckers, or cannot be stretched so far at all
   */
  public Outcome outcome() {
    return stretchAsked() > fabric.usableStretch() + 1e-9
        ? Outcome.CANNOT_STRETCH
        : window.judge(loop);
  }

  /**
   * How far the loop is from the nearest end of the flat window.
   *
   * @return positive inside the window: what it may still be wrong by; negative outside: what it is
   *     too short or too long by
   */
  public Length margin() {
    return window.margin(loop);
  }

  /**
   * Where to mark the relaxed loop: its quarters, and between them the seams and centres of the
   * opening, all stretched evenly. The strip's join lies at the centre back or the side where there
   * is one.
   *
   * @return the marks in order from the join, which is the first
   */
  public List<StripMark> marks() {
    return StripMarks.of(this);
  }

  /**
   * What will go wrong with the strip, and what to do about it.
   *
   * @return findings with the opening as their place, empty when it lies flat
   */
  public List<Finding> findings() {
    return StripFindings.of(this);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Strip
        && ((Strip) other).opening.equals(opening)
        && ((Strip) other).finish.equals(finish)
        && ((Strip) other).fabric.equals(fabric)
        && ((Strip) other).rule.equals(rule);
  }

  @Override
  public int hashCode() {
    return Objects.hash(opening, finish, fabric, rule);
  }

  @Override
  public String toString() {
    return name()
        + ": cut "
        + Wording.amount(cutLength())
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
