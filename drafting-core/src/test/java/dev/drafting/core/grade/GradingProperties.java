package dev.drafting.core.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Corner;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** What holds for any rules and any step. */
class GradingProperties {
  private static final String[][] CORNERS = {
    {"fold", "hem"}, {"hem", "side"}, {"side", "armhole"},
    {"armhole", "shoulder"}, {"shoulder", "neck"}, {"neck", "fold"}
  };

  @Provide
  Arbitrary<List<GradeRule>> rules() {
    return Combinators.combine(moves(), moves()).as(GradingProperties::rules);
  }

  private static Arbitrary<List<Double>> moves() {
    return Arbitraries.doubles().between(-4, 4).list().ofSize(CORNERS.length);
  }

  private static List<GradeRule> rules(List<Double> across, List<Double> along) {
    List<GradeRule> rules = new ArrayList<>();
    for (String piece : List.of("front", "back")) {
      for (int i = 0; i < CORNERS.length; i++) {
        boolean onFold = i == 0 || i == CORNERS.length - 1;
        double x = onFold ? 0 : across.get(i);
        rules.add(VestRules.rule(piece, CORNERS[i][0], CORNERS[i][1], x, along.get(i)));
      }
    }
    return rules;
  }

  private static Pattern sized(List<GradeRule> rules, double step) {
    return Grading.of(VestRules.vest(), "M", rules).with("other", step).pattern("other");
  }

  @Property(tries = 200)
  void everyCornerMovesByItsRule(
      @ForAll("rules") List<GradeRule> rules,
      @ForAll @DoubleRange(min = 0.1, max = 3) double step) {
    Pattern sized = sized(rules, step);
    for (int i = 0; i < CORNERS.length; i++) {
      Point was = VestRules.vest().piece("front").corner(CORNERS[i][0], CORNERS[i][1]).at();
      Corner is = sized.piece("front").corner(CORNERS[i][0], CORNERS[i][1]);
      Vector move = is.at().minus(was);
      assertEquals(step * rules.get(i).across().toMm(), move.dx(), 1e-9);
      assertEquals(step * rules.get(i).along().toMm(), move.dy(), 1e-9);
    }
  }

  /** Whole patterns are symmetrical because halves are mirrored at x = 0, exactly. */
  @Property(tries = 200)
  void theFoldStaysTheFold(
      @ForAll("rules") List<GradeRule> rules,
      @ForAll @DoubleRange(min = 0.1, max = 3) double step) {
    Curve fold = sized(rules, step).piece("front").edge("fold").curve();
    assertEquals(0, fold.start().x(), 0);
    assertEquals(0, fold.end().x(), 0);
  }

  @Property(tries = 200)
  void edgesKeepTheirCharacter(
      @ForAll("rules") List<GradeRule> rules,
      @ForAll @DoubleRange(min = 0.1, max = 3) double step) {
    Piece was = VestRules.vest().piece("front");
    Piece is = sized(rules, step).piece("front");
    for (Edge edge : was.edges()) {
      Curve before = edge.curve();
      Curve after = is.edge(edge.name()).curve();
      boolean straight = before.segments().stream().allMatch(Line.class::isInstance);
      if (straight) {
        assertTrue(after.segments().stream().allMatch(Line.class::isInstance), edge.name());
      } else {
        assertEquals(0, angle(before, after, true), 1e-9, edge.name());
        assertEquals(0, angle(before, after, false), 1e-9, edge.name());
      }
    }
  }

  private static double angle(Curve before, Curve after, boolean atStart) {
    Vector one = before.directionAt(atStart ? Length.ZERO : before.length());
    Vector other = after.directionAt(atStart ? Length.ZERO : after.length());
    return Math.atan2(one.cross(other), one.dot(other));
  }

  /** From size to size every end of every segment moves by the same amount. */
  @Property(tries = 200)
  void sizesNestEvenly(
      @ForAll("rules") List<GradeRule> rules,
      @ForAll @DoubleRange(min = 0.1, max = 2) double step) {
    List<Point> one = ends(sized(rules, step));
    List<Point> two = ends(sized(rules, 2 * step));
    List<Point> none = ends(VestRules.vest());
    for (int i = 0; i < one.size(); i++) {
      Vector first = one.get(i).minus(none.get(i));
      Vector second = two.get(i).minus(one.get(i));
      assertEquals(0, first.minus(second).length().toMm(), 1e-9);
    }
  }

  private static List<Point> ends(Pattern pattern) {
    List<Point> ends = new ArrayList<>();
    for (Piece piece : pattern.pieces()) {
      for (Edge edge : piece.edges()) {
        edge.curve().segments().stream().map(Segment::end).forEach(ends::add);
      }
    }
    return ends;
  }

  /** Straight edges that start alike and whose ends move alike are equally long in every size. */
  @Property(tries = 200)
  void likeRulesKeepSeamsEqual(
      @ForAll("rules") List<GradeRule> rules,
      @ForAll @DoubleRange(min = 0.1, max = 3) double step) {
    Grading grading = Grading.of(VestRules.vest(), "M", rules).with("up", step).with("down", -step);
    assertEquals(List.of(), grading.findings());
    grading.growths().forEach(growth -> assertEquals(0, growth.difference().toMm(), 1e-9));
  }
}
