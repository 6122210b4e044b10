package dev.drafting.core.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.JtsBridge;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Corner;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.FacedEdge;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.pattern.Tees;
import dev.drafting.core.pattern.Vests;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What every alteration of every garment leaves as it was. */
class AlterationProperties {
  private static final List<String> ENDS = List.of("front", "back");

  private static double between(Random random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private static Pattern garment(Random random) {
    Vests.Half front =
        new Vests.Half(
            between(random, 12, 30), between(random, -3, 8), between(random, 60, 160), 0);
    Vests.Half back =
        new Vests.Half(
            between(random, 12, 30),
            between(random, -3, 8),
            between(random, 15, 60),
            between(random, 0, 60));
    return random.nextBoolean() ? Vests.of(front, back) : Tees.of(front, back);
  }

  private static Alteration alteration(Random random, Pattern pattern) {
    String piece = ENDS.get(random.nextInt(2));
    Length amount = Length.mm(between(random, -25, 25));
    Length neck = pattern.edge(EdgeRef.parse(piece + " neck")).length();
    return switch (random.nextInt(14)) {
      case 0 -> Alteration.takeIn("side", amount);
      case 1 -> Alteration.takeIn("side", amount, Length.mm(between(random, -25, 25)));
      case 2 -> Alteration.lengthen("side", Length.mm(between(random, 20, 300)), amount.times(4));
      case 3 -> Alteration.lowerNeck(piece + " neck", amount);
      case 4 -> Alteration.widenNeck("shoulder", amount);
      case 5 -> Alteration.widenStrap("shoulder", amount);
      case 6 -> Alteration.deepenArmhole("side", amount);
      case 7 -> Alteration.dropShoulder("shoulder", amount);
      case 8 -> Alteration.flare("side", amount.times(2));
      case 9 -> Alteration.takeOutGape(piece + " neck", amount.abs(), "armhole");
      case 10 -> Alteration.finish(piece + " neck", FacedEdge.of(amount.abs()));
      case 11 ->
          Alteration.reshape(
              piece + " armhole",
              EdgePlace.from("side", neck.times(between(random, 0, 0.3))),
              EdgePlace.from("shoulder", neck.times(between(random, 0.4, 0.6))),
              EdgePlace.at("shoulder"),
              amount.dividedBy(2));
      case 12 ->
          Alteration.reshape(
              piece + " side",
              EdgePlace.from("hem", Length.mm(between(random, 0, 100))),
              EdgePlace.from("armhole", Length.mm(between(random, 100, 200))),
              EdgePlace.at("armhole"),
              amount.dividedBy(2));
      default ->
          Alteration.snip(
              piece + " neck",
              amount,
              EdgePlace.at("fold"),
              EdgePlace.from("shoulder", neck.times(between(random, 0, 0.5))));
    };
  }

  @Property(tries = 5000)
  void seamsStayEqualOutlinesSimpleAndFoldsSquare(@ForAll long seed) {
    Random random = new Random(seed);
    Pattern before = garment(random);
    Alteration alteration = alteration(random, before);
    Pattern after;
    try {
      after = alteration.applyTo(before);
    } catch (DraftingException refusal) {
      assertFalse(refusal.where().isEmpty(), refusal.getMessage());
      assertFalse(refusal.accepted().isEmpty(), refusal.getMessage());
      return;
    }
    for (Seam seam : before.seams()) {
      assertEquals(
          difference(before, seam), difference(after, seam), 0.01, seam + " " + alteration);
    }
    for (Piece piece : after.pieces()) {
      assertTrue(JtsBridge.toPolygon(piece.outline(), Length.mm(0.001)).isValid(), piece.name());
      assertFold(before.piece(piece.name()), piece);
    }
    assertSmooth(before, after, alteration);
    assertFalse(Assembly.of(after).openings().isEmpty());
  }

  /** Where edges run on across shoulder and side, their corners add up to what they did before. */
  private static void assertSmooth(Pattern before, Pattern after, Alteration alteration) {
    for (String seam : List.of("shoulder", "side")) {
      for (boolean start : new boolean[] {true, false}) {
        double was = corner(before, "front", seam, start) + corner(before, "back", seam, start);
        double is = corner(after, "front", seam, start) + corner(after, "back", seam, start);
        assertEquals(was, is, 1e-3, alteration + " at the " + seam);
      }
    }
  }

  private static double corner(Pattern pattern, String piece, String edge, boolean start) {
    return pattern.piece(piece).corners().stream()
        .filter(corner -> (start ? corner.after() : corner.before()).equals(edge))
        .mapToDouble(corner -> corner.interiorAngle().toRadians())
        .sum();
  }

  private static double difference(Pattern pattern, Seam seam) {
    return length(pattern, seam.first()) - length(pattern, seam.second());
  }

  private static double length(Pattern pattern, List<EdgeRef> edges) {
    return edges.stream().mapToDouble(edge -> pattern.edge(edge).length().toMm()).sum();
  }

  private static void assertFold(Piece before, Piece after) {
    for (int i = 0; i < before.corners().size(); i++) {
      Corner corner = before.corners().get(i);
      if (corner.before().equals("fold") || corner.after().equals("fold")) {
        assertEquals(
            corner.interiorAngle().toRadians(),
            after.corners().get(i).interiorAngle().toRadians(),
            1e-9);
      }
    }
    assertEquals(
        before.edges().stream().map(Edge::name).toList(),
        after.edges().stream().map(Edge::name).toList());
  }

  @Property(tries = 100)
  void whatIsUndoneLeavesNoTrace(@ForAll long seed) {
    Random random = new Random(seed);
    Pattern base = garment(random);
    AlterationRecord one = AlterationRecord.of(base).with(alteration(random, base), "first");
    AlterationRecord two = one.with(alteration(random, base), "second");
    assertEquals(one, two.undone());
    assertEquals(base, two.undone().undone().result());
  }

  @Property(tries = 100)
  void independentAlterationsCommute(@ForAll long seed) {
    Random random = new Random(seed);
    Pattern vest = Vests.plain();
    Alteration neck = Alteration.lowerNeck("front neck", Length.mm(between(random, -20, 20)));
    Alteration side = Alteration.flare("side", Length.mm(between(random, -20, 40)));
    Alteration strap = Alteration.widenStrap("shoulder", Length.mm(between(random, -20, 20)));
    Pattern one = strap.applyTo(side.applyTo(neck.applyTo(vest)));
    Pattern other = neck.applyTo(strap.applyTo(side.applyTo(vest)));
    assertEquals(one, other);
  }
}
