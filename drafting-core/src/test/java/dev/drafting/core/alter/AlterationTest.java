package dev.drafting.core.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.cut.CutPlan;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.Offset;
import dev.drafting.core.offset.OffsetEdge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.FacedEdge;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.LineRole;
import dev.drafting.core.pattern.Notch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Profile;
import dev.drafting.core.pattern.ProfileLine;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.pattern.SeamFinish;
import dev.drafting.core.pattern.Tees;
import dev.drafting.core.pattern.Vests;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class AlterationTest {
  private static final Length TEN = Length.mm(10);
  private final Pattern vest = Vests.plain();

  /** As a folded band 13 mm wide, sewn with 7 mm. */
  private record Band() implements Finish {
    @Override
    public String id() {
      return "band";
    }

    @Override
    public Map<String, String> settings() {
      return Map.of();
    }

    @Override
    public Profile profile() {
      return Profile.of(
          new ProfileLine(LineRole.CUT, Length.mm(-6)),
          new ProfileLine(LineRole.JOIN, Length.mm(-13)));
    }

    @Override
    public String describe() {
      return "band";
    }
  }

  /** The names of a finish's own settings do not get into the way of those of the alteration. */
  @Test
  void aFinishKeepsItsSettingsApart() {
    Alteration swap = Alteration.finish("front neck", SeamFinish.of(Length.mm(7)));
    assertEquals(
        "{edge=front / neck, finish=seam, finish allowance=7 mm}", swap.settings().toString());
  }

  @Test
  void aPlaceOnAnEdgeIsReadFromItsSetting() {
    EdgePlace place = EdgePlace.from("shoulder", Length.mm(60.123456789));
    assertEquals(place, EdgePlace.parse("60.123456789 mm from shoulder"));
    Alteration reshape =
        Alteration.reshape("front armhole", place, place, EdgePlace.at("side"), Length.mm(4));
    assertEquals("60.123456789 mm from shoulder", reshape.settings().get("from"));
    assertThrows(DraftingException.class, () -> EdgePlace.parse("at the shoulder"));
    assertThrows(DraftingException.class, () -> EdgePlace.parse("60 mm from "));
  }

  private static Point end(Pattern pattern, String edge) {
    return pattern.edge(EdgeRef.parse(edge)).curve().end();
  }

  private static double length(Pattern pattern, String edge) {
    return pattern.edge(EdgeRef.parse(edge)).length().toMm();
  }

  private static void assertAt(double x, double y, Point found) {
    assertEquals(x, found.x(), 1e-9, found.toString());
    assertEquals(y, found.y(), 1e-9, found.toString());
  }

  @Test
  void takesTheSameOffBothSidesOfASeam() {
    Pattern narrower = Alteration.takeIn("side", TEN).applyTo(vest);
    for (String piece : List.of("front", "back")) {
      Point hem = end(vest, piece + " hem");
      assertAt(205, 350, end(narrower, piece + " side"));
      assertAt(hem.x() - 10, hem.y(), end(narrower, piece + " hem"));
      assertEquals(350, length(narrower, piece + " side"), 1e-9);
    }
    assertEquals(
        vest.edge(EdgeRef.parse("front neck")), narrower.edge(EdgeRef.parse("front neck")));
    assertEquals(vest, Alteration.letOut("side", Length.ZERO).applyTo(vest));
  }

  @Test
  void takesInByDifferentAmountsAtTheEnds() {
    Pattern shaped = Alteration.takeIn("side", Length.ZERO, Length.mm(-6)).applyTo(vest);
    assertAt(221, 350, end(shaped, "front side"));
    assertEquals(end(vest, "front hem"), end(shaped, "front hem"));
  }

  @Test
  void lengthensBothPiecesAtALineAcrossASeam() {
    Pattern longer = Alteration.lengthen("side", Length.mm(150), Length.mm(40)).applyTo(vest);
    assertEquals(length(vest, "front side"), length(longer, "front side") - 40, 0.2);
    assertEquals(length(longer, "front side"), length(longer, "back side"), 1e-6);
    assertAt(0, -90, end(longer, "back fold"));
    assertEquals(end(vest, "front armhole"), end(longer, "front armhole"));
    assertEquals(
        "shorten by 40 mm, 150 mm up the side seam",
        Alteration.shorten("side", Length.mm(150), Length.mm(40)).describe());
  }

  @Test
  void lowersANeckSquareToTheFold() {
    Pattern lower = Alteration.lowerNeck("front neck", Length.mm(15)).applyTo(vest);
    assertAt(0, 475, end(lower, "front neck"));
    assertEquals(end(vest, "front shoulder"), end(lower, "front shoulder"));
    assertEquals(90, lower.piece("front").corner("neck", "fold").interiorAngle().toDegrees(), 1e-9);
    assertEquals(
        vest.piece("front").corner("shoulder", "neck").interiorAngle().toDegrees(),
        lower.piece("front").corner("shoulder", "neck").interiorAngle().toDegrees(),
        1e-9);
    assertTrue(length(lower, "front neck") > length(vest, "front neck"));
  }

  @Test
  void widensANeckAndAStrapAlongTheShoulder() {
    Pattern wide = Alteration.widenNeck("shoulder", Length.mm(12)).applyTo(vest);
    assertEquals(78, length(wide, "front shoulder"), 1e-9);
    assertEquals(
        12, end(vest, "back shoulder").distanceTo(end(wide, "back shoulder")).toMm(), 1e-9);
    Pattern strap = Alteration.widenStrap("shoulder", Length.mm(12)).applyTo(vest);
    assertEquals(102, length(strap, "back shoulder"), 1e-9);
    assertEquals(end(vest, "back shoulder"), end(strap, "back shoulder"));
  }

  @Test
  void deepensTheArmholeAlongTheSide() {
    Pattern deeper = Alteration.deepenArmhole("side", Length.mm(20)).applyTo(vest);
    assertEquals(330, length(deeper, "front side"), 1e-9);
    assertEquals(330, length(deeper, "back side"), 1e-9);
  }

  @Test
  void dropsAShoulderThatStaysAsLong() {
    Pattern dropped = Alteration.dropShoulder("shoulder", Length.mm(15)).applyTo(vest);
    assertEquals(90, length(dropped, "front shoulder"), 1e-9);
    assertEquals(end(vest, "front armhole").y() - 15, end(dropped, "front armhole").y(), 1e-9);
    assertEquals(end(vest, "front shoulder"), end(dropped, "front shoulder"));
  }

  @Test
  void flaresASideThatStaysAsLong() {
    Pattern flared = Alteration.flare("side", Length.mm(25)).applyTo(vest);
    assertEquals(350, length(flared, "back side"), 1e-9);
    assertEquals(end(vest, "front hem").x() + 25, end(flared, "front hem").x(), 1e-9);
  }

  /** A snip at the centre moves cut edge and finished edge alike, and nothing beyond its end. */
  @Test
  void aSnipOnTheRawEdgeMovesTheFinishedEdge() {
    Pattern banded = vest.withFinish("front neck", new Band());
    Alteration snip =
        Alteration.snip(
            "front neck",
            Length.mm(8),
            EdgePlace.at("fold"),
            EdgePlace.from("shoulder", Length.cm(6)));
    Pattern snipped = snip.applyTo(banded);
    assertEquals(
        "snip 8 mm off the raw edge of front / neck at the fold, fading to nothing 60 mm from the shoulder",
        snip.toString());
    Curve before = CutPlan.of(banded).pieces().get(0).cutLine();
    Curve after = CutPlan.of(snipped).pieces().get(0).cutLine();
    assertAt(0, 482, end(snipped, "front neck"));
    assertEquals(0, before.nearest(new Point(0, 484)).distance().toMm(), 0.02);
    assertEquals(0, after.nearest(new Point(0, 476)).distance().toMm(), 0.02);
    Curve raw =
        Offset.ofOpen(
                List.of(
                    OffsetEdge.of(
                        "neck", banded.edge(EdgeRef.parse("front neck")).curve(), Length.mm(-6))))
            .result()
            .outline();
    Point untouched = raw.pointAt(Length.mm(55));
    assertEquals(0, before.nearest(untouched).distance().toMm(), 0.02);
    assertEquals(0, after.nearest(untouched).distance().toMm(), 0.02);
    Point cutAway = raw.pointAt(Length.mm(90));
    assertTrue(after.nearest(cutAway).distance().toMm() > 0.5);
  }

  @Test
  void reshapesAnEdgeBetweenTwoPlaces() {
    Alteration scoop =
        Alteration.reshape(
            "front armhole",
            EdgePlace.at("side"),
            EdgePlace.from("shoulder", Length.mm(120)),
            EdgePlace.at("shoulder"),
            Length.mm(-5));
    Pattern scooped = scoop.applyTo(vest);
    Curve before = vest.edge(EdgeRef.parse("front armhole")).curve();
    Curve after = scooped.edge(EdgeRef.parse("front armhole")).curve();
    Point deepest = before.pointAt(before.length().minus(Length.mm(120)));
    assertEquals(5, after.nearest(deepest).distance().toMm(), 0.05);
    assertEquals(before.start(), after.start());
    assertEquals(before.end(), after.end());
    assertEquals(
        vest.piece("front").corner("side", "armhole").interiorAngle(),
        scooped.piece("front").corner("side", "armhole").interiorAngle());
  }

  /** Whichever side is named, 100 mm above the hem both move out by 5 mm. */
  @Test
  void reshapesBothSidesOfASeamAlike() {
    for (String edge : List.of("front side", "back side")) {
      Pattern hipped = hipped(edge, "hem", "armhole").applyTo(vest);
      for (String side : List.of("front side", "back side")) {
        assertHip(vest.edge(EdgeRef.parse(side)).curve(), hipped, side, 100);
      }
    }
  }

  /** Where the one side is sewn end to start, it is 100 mm above the hem from its other end. */
  @Test
  void reshapesASideThatRunsTheOtherWay() {
    Piece front = Vests.plain().piece("front").unfolded();
    Pattern whole =
        Pattern.of(
            "vest",
            List.of(front, Piece.of("back", front.edges())),
            List.of(Seam.of("side", "front side (right)", "back side (left)").endToStart()));
    Curve right = whole.edge(EdgeRef.parse("front side (right)")).curve();
    Curve left = whole.edge(EdgeRef.parse("back side (left)")).curve();
    for (Alteration alteration :
        List.of(
            hipped("front side (right)", "hem", "armhole (right)"),
            hipped("back side (left)", "hem", "armhole (left)"))) {
      Pattern hipped = alteration.applyTo(whole);
      assertHip(right, hipped, "front side (right)", 100);
      assertHip(left, hipped, "back side (left)", left.length().toMm() - 100);
    }
  }

  private static Alteration hipped(String edge, String below, String above) {
    return Alteration.reshape(
        edge,
        EdgePlace.at(below),
        EdgePlace.from(below, Length.mm(100)),
        EdgePlace.at(above),
        Length.mm(5));
  }

  private static void assertHip(Curve before, Pattern hipped, String edge, double along) {
    Curve after = hipped.edge(EdgeRef.parse(edge)).curve();
    Vector outward = before.directionAt(Length.mm(along)).left().times(-5);
    Point out = before.pointAt(Length.mm(along)).plus(outward);
    assertEquals(0, after.nearest(out).distance().toMm(), 0.05, edge);
  }

  @Test
  void takesAGapeOutOfANeck() {
    Pattern closed = Alteration.takeOutGape("front neck", Length.mm(12), "armhole").applyTo(vest);
    assertEquals(length(vest, "front neck") - 12, length(closed, "front neck"), 1e-6);
    assertEquals(90, length(closed, "front shoulder"), 1e-9);
    assertEquals(end(vest, "front neck"), end(closed, "front neck"));
    assertEquals(end(vest, "front side"), end(closed, "front side"));
  }

  @Test
  void swapsAFinishAndSaysSo() {
    Alteration faced = Alteration.finish("front neck", FacedEdge.of(Length.mm(7)));
    EdgeChange change = faced.changes(vest).get(0);
    assertEquals(Length.ZERO, change.farthest());
    assertEquals("faced with 7 mm allowance", change.refinished());
    assertEquals(
        "{edge=front / neck, finish=faced, finish allowance=7 mm}", faced.settings().toString());
  }

  @Test
  void notchesKeepTheirShareAndSleevesFollow() {
    Pattern tee = Tees.of(Vests.FRONT, Vests.BACK);
    Piece front = tee.piece("front");
    Length half = front.edge("side").length().dividedBy(2);
    Pattern notched = tee.withPiece(front.withNotch(Notch.of("side", half, "waist")));
    Pattern altered = Alteration.deepenArmhole("side", Length.mm(10)).applyTo(notched);
    Piece after = altered.piece("front");
    assertEquals(
        after.edge("side").length().toMm() / 2, after.notches().get(0).along().toMm(), 1e-9);
    assertTrue(!altered.piece("sleeve").equals(tee.piece("sleeve")));
  }

  @Test
  void saysWhatItChangesEdgeByEdge() {
    List<String> changes =
        Alteration.takeIn("side", TEN).changes(vest).stream().map(EdgeChange::toString).toList();
    assertEquals(6, changes.size());
    assertEquals(
        List.of("front / hem", "front / side", "front / armhole"),
        Alteration.takeIn("side", TEN).changes(vest).stream()
            .limit(3)
            .map(change -> change.edge().toString())
            .toList());
    assertTrue(
        changes.get(1).endsWith("350 mm, then 350 mm; moves by up to 10 mm"), changes.get(1));
  }

  @Test
  void refusesWhatCannotBe() {
    refused("crotch", "there is no such seam", Alteration.takeIn("crotch", TEN));
    refused("front", "would cross itself", Alteration.lowerNeck("front neck", Length.mm(600)));
    refused(
        "front / neck",
        "does not meet",
        Alteration.snip("front neck", TEN, EdgePlace.at("hem"), EdgePlace.at("shoulder")));
    refused(
        "front / neck",
        "beyond the end",
        Alteration.snip(
            "front neck", TEN, EdgePlace.at("fold"), EdgePlace.from("shoulder", Length.cm(60))));
    refused(
        "front / neck",
        "would jump",
        Alteration.reshape(
            "front neck",
            EdgePlace.from("fold", TEN),
            EdgePlace.from("fold", TEN),
            EdgePlace.at("shoulder"),
            TEN));
    refused(
        "front / side", "does not cross the seam", Alteration.lengthen("side", Length.cm(60), TEN));
    refused(
        "front / neck",
        "cannot give up so much",
        Alteration.takeOutGape("front neck", Length.mm(400), "armhole"));
    refused("front / shoulder", "too short", Alteration.dropShoulder("shoulder", Length.mm(300)));
  }

  private void refused(String where, String why, Alteration alteration) {
    DraftingException refusal =
        assertThrows(DraftingException.class, () -> alteration.applyTo(vest));
    assertTrue(refusal.what().contains(why), refusal.getMessage());
    assertTrue((refusal.where() + refusal.value()).contains(where), refusal.getMessage());
    assertTrue(!refusal.accepted().isEmpty(), refusal.getMessage());
  }

  @Test
  void isAValue() {
    Alteration one = Alteration.takeIn("side", TEN);
    assertEquals(one, SerialCopy.of(one));
    assertEquals(one, Alteration.letOut("side", TEN.negated()));
    assertEquals("seam-move", one.id());
    assertEquals("{seam=side, at lower end=10 mm, at upper end=10 mm}", one.settings().toString());
    assertEquals("10 mm from the fold", EdgePlace.from("fold", TEN).toString());
    assertEquals(EdgePlace.at("fold"), SerialCopy.of(EdgePlace.at("fold")));
  }
}
