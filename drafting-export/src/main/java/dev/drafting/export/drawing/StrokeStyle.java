package dev.drafting.export.drawing;

import dev.drafting.core.Experimental;
import dev.drafting.core.Stable;
import dev.drafting.core.measure.Length;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * What a line means, and with it how it is drawn. Every style can be told apart in black and white;
 * {@link #FINDING} alone also has a colour.
 *
 * <pre>{@code
 * StrokeStyle.CUT_LINE.weight();  // => 0.7 mm
 * StrokeStyle.JOIN_LINE.dashes();  // => [3 mm, 0.75 mm]
 * StrokeStyle.JOIN_LINE;  // => join line
 * }</pre>
 *
 * @since 0.1
 */
@Stable
@SuppressWarnings("ImmutableEnumChecker") // lengths and copied lists are immutable
public enum StrokeStyle {
  /** Cut here: the heaviest line. */
  CUT_LINE("cut here", 0.7),
  /** Sew the seam here: light and dashed. */
  JOIN_LINE("sew here; the allowance lies outside it", 0.25, 12, 3),
  /** Fold here, or lay on the fold of the cloth: long dashes and dots. */
  FOLD("fold; FOLD OF THE CLOTH: lay the edge there, do not cut it", 0.35, 24, 3, 1, 3),
  /** A row of stitches that stays visible: fine short dashes. */
  TOPSTITCH("a row of stitches that stays visible", 0.25, 5, 4),
  /** The arrows of grain and greatest stretch. */
  GRAIN("long arrow: grain; double arrow: greatest stretch", 0.35),
  /** A slit at the cut line that meets another one when the seam is pinned. */
  NOTCH("notch: snip no deeper than drawn, match when pinning", 0.5),
  /** A line to be marked on the cloth, not cut. */
  MARKING("mark on the cloth, do not cut", 0.35),
  /** The finished edge after a change; only in the pictures of changes. */
  FINISHED_EDGE("the finished edge", 0.5),
  /** The finished edge as it was before a change. */
  BEFORE("the finished edge before", 0.25, 8, 6),
  /** What the pencil drew; only in the pictures of tracings. */
  TRACED("what was traced", 0.18),
  /** The finished edge of the first size of a run; only in pictures of sizes. */
  SIZE_1("", 0.35),
  /** The second size of a run: long dashes. */
  SIZE_2("", 0.35, 24, 4),
  /** The third size of a run: short dashes. */
  SIZE_3("", 0.35, 8, 5),
  /** The fourth size of a run: dots. */
  SIZE_4("", 0.35, 2, 4),
  /** The fifth size of a run: dashes and dots. */
  SIZE_5("", 0.35, 18, 4, 2, 4),
  /** The sixth size of a run: dashes and pairs of dots. */
  SIZE_6("", 0.35, 18, 4, 2, 4, 2, 4),
  /** The edge at which a step of the work is done; only in the pictures of steps. */
  WORKED("", 0.5),
  /** Edges of sheets, test squares and other furniture of the page. */
  FRAME("", 0.18),
  /** Where another sheet is laid on: thin, short dashes. */
  OVERLAP("", 0.18, 8, 8),
  /** Where something was found that will not sew well; the only style with a colour. */
  FINDING("something to look at: see the making-up sheet", 0.5);

  private final String meaning;
  private final Length weight;
  private final List<Length> dashes;

  StrokeStyle(String meaning, double weight, int... dashesInWeights) {
    this.meaning = meaning;
    this.weight = Length.mm(weight);
    this.dashes = Arrays.stream(dashesInWeights).mapToObj(n -> this.weight.times(n)).toList();
  }

  /**
   * The line of one size of a run, by which it is told from its neighbours.
   *
   * @param number the place of the size in the run, from 0; after the sixth the lines begin again
   * @return a line of its own among six that follow each other
   */
  @Experimental
  public static StrokeStyle ofSize(int number) {
    List<StrokeStyle> sizes = List.of(SIZE_1, SIZE_2, SIZE_3, SIZE_4, SIZE_5, SIZE_6);
    return sizes.get(Math.floorMod(number, sizes.size()));
  }

  /**
   * What to do where this line is, for a legend.
   *
   * @return words for the maker; empty for furniture of the page
   */
  public String meaning() {
    return meaning;
  }

  /**
   * How thick the line is.
   *
   * @return the width of the line
   */
  public Length weight() {
    return weight;
  }

  /**
   * How the line is broken.
   *
   * @return dash, gap, dash, gap ...; empty for a whole line
   */
  public List<Length> dashes() {
    return dashes;
  }

  /**
   * The name of the line in the trade's words.
   *
   * @return for instance "cut line"
   */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
