package dev.drafting.core.pattern;

import static dev.drafting.core.Values.differ;
import static dev.drafting.core.pattern.Refusals.refusal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.CornerTreatment;
import java.util.List;
import org.junit.jupiter.api.Test;

class PatternValuesTest {
  private static final Length NINE = Length.mm(9);
  private static final Piece FRONT = Vests.piece("front", Vests.FRONT);

  @Test
  void finishesDifferByTheirSettings() {
    differ(SeamFinish.of(NINE), SeamFinish.of(NINE), SeamFinish.of(Length.mm(8)), RawEdge.of());
    differ(
        FacedEdge.of(NINE),
        FacedEdge.of(NINE),
        FacedEdge.of(Length.mm(8)),
        FacedEdge.of(NINE).withTopstitch(Length.mm(2)),
        SeamFinish.of(NINE));
    differ(RawEdge.of(), RawEdge.of(), FoldEdge.of());
    differ(
        SeamFinish.of(NINE).profile(),
        SeamFinish.of(NINE).profile(),
        FacedEdge.of(NINE).profile(),
        RawEdge.of().profile());
    assertEquals(2, SeamFinish.of(NINE).profile().lines().size());
  }

  @Test
  void finishesTellTheirSettings() {
    assertEquals("raw {} raw edge, cut on the finished line", told(RawEdge.of()));
    assertEquals("fold {} on the fold of the cloth", told(FoldEdge.of()));
    assertEquals("seam {allowance=9 mm} seam with 9 mm allowance", told(SeamFinish.of(NINE)));
    assertEquals("faced {allowance=9 mm} faced with 9 mm allowance", told(FacedEdge.of(NINE)));
    FacedEdge stitched = FacedEdge.of(NINE).withTopstitch(Length.mm(2));
    assertEquals(
        "faced {allowance=9 mm, topstitch=2 mm} faced with 9 mm allowance, topstitched 2 mm from"
            + " the edge",
        told(stitched));
    assertEquals(NINE, stitched.allowance());
    assertEquals(NINE, SeamFinish.of(NINE).allowance());
  }

  private static String told(Finish finish) {
    assertEquals(finish.describe(), finish.toString());
    return finish.id() + " " + finish.settings() + " " + finish;
  }

  @Test
  void whatLiesOnAPieceDiffersByAllThatItSays() {
    Notch notch = Notch.of("side", NINE, "hip");
    differ(
        notch,
        Notch.of("side", NINE, "hip"),
        Notch.of("hem", NINE, "hip"),
        Notch.of("side", Length.mm(8), "hip"),
        Notch.of("side", NINE, "waist"));
    Curve line = Curve.line(new Point(0, 0), new Point(50, 0));
    differ(
        MarkingLine.of("pocket", line),
        MarkingLine.of("pocket", line),
        MarkingLine.of("dart", line),
        MarkingLine.of("pocket", line.reversed()));
    assertEquals(
        "a marking line has no label. Accepted: a few words.",
        refusal(() -> MarkingLine.of(" ", line)));
    differ(
        SharedPaper.of("both", "front", "back"),
        SharedPaper.of("both", "front", "back"),
        SharedPaper.of("one", "front", "back"),
        SharedPaper.of("both", "front", "lining"),
        SharedPaper.of("both", "lining", "back"));
    differ(Cutting.pairs(1), Cutting.pairs(1), Cutting.pairs(2), Cutting.single(1));
    assertEquals(1000, Cutting.single(1000).times());
    assertTrue(refusal(() -> Cutting.single(1001)).endsWith("Accepted: 1 to 1000."));
    assertTrue(refusal(() -> Cutting.single(0)).endsWith("Accepted: 1 to 1000."));
  }

  @Test
  void cornersDifferByAllThatTheySay() {
    Corner corner = FRONT.corner("hem", "side");
    differ(
        corner,
        Vests.piece("front", Vests.FRONT).corner("hem", "side"),
        FRONT.corner("side", "armhole"),
        FRONT.withPointedCorner("hem", "side").corner("hem", "side"),
        FRONT.withCorner("hem", "side", CornerTreatment.bevel()).corner("hem", "side"));
    assertEquals(FRONT.edge("hem").curve().end(), corner.at());
    String words = corner.toString();
    assertEquals(
        words + ", pointed",
        FRONT.withPointedCorner("hem", "side").corner("hem", "side").toString());
    assertEquals(
        words + ", " + CornerTreatment.bevel(),
        FRONT.withCorner("hem", "side", CornerTreatment.bevel()).corner("hem", "side").toString());
  }

  @Test
  void edgesAndPiecesDifferByAllThatTheySay() {
    Edge hem = FRONT.edge("hem");
    differ(
        hem,
        Vests.piece("front", Vests.FRONT).edge("hem"),
        FRONT.edge("side"),
        hem.withFinish(SeamFinish.of(NINE)),
        Edge.of("foot", hem.curve()),
        Edge.of("hem", hem.curve().reversed()));
    Edge side = Edge.of("side", List.of(new Point(0, 0), new Point(30, 40)));
    assertEquals(
        "side, 50 mm, seam with 9 mm allowance", side.withFinish(SeamFinish.of(NINE)).toString());
    differ(
        FRONT,
        Vests.piece("front", Vests.FRONT),
        Vests.piece("back", Vests.FRONT),
        FRONT.withFinish("hem", SeamFinish.of(NINE)),
        FRONT.withNotch(Notch.of("side", NINE, "hip")),
        FRONT.withCloth("lining"));
  }

  private static Seam seam() {
    return Seam.of("side", "front side", "back side");
  }

  @Test
  void seamsDifferByAllThatTheySay() {
    Seam eased = seam().withEase(NINE);
    differ(
        seam(),
        seam(),
        Seam.of("flank", "front side", "back side"),
        Seam.of("side", "front hem", "back side"),
        Seam.of("side", "front side", "back hem"),
        eased,
        seam().endToStart(),
        Seam.lapped("side", "front side", "back side"));
    differ(eased, seam().withEase(NINE), eased.drawnIn(Fullness.gathered()));
    for (Seam one :
        List.of(
            eased.drawnIn(Fullness.pleats(3)),
            seam().endToStart(),
            Seam.lapped("lap", "front side", "back side"),
            Seam.mirrored("centre", EdgeRef.parse("front side")))) {
      assertEquals(one, SerialCopy.of(one));
    }
  }

  @Test
  void seamsReadWell() {
    Seam eased = seam().withEase(NINE);
    assertEquals("side: front / side to back / side", seam().toString());
    assertEquals("side: front / side to back / side, ease 9 mm", eased.toString());
    assertEquals(
        "side: front / side to back / side, ease 9 mm, gathered",
        eased.drawnIn(Fullness.gathered()).toString());
    assertEquals(
        "side: front / side to back / side, ease 9 mm in 1 pleat",
        eased.drawnIn(Fullness.pleats(1)).toString());
    assertEquals("side: front / side to back / side, end to start", seam().endToStart().toString());
    assertEquals(
        "lap: front / side over back / side",
        Seam.lapped("lap", "front side", "back side").toString());
    assertEquals(
        "centre: front / side to its mirror image",
        Seam.mirrored("centre", EdgeRef.parse("front side")).toString());
    EdgeRef side = EdgeRef.parse("front side");
    assertTrue(refusal(() -> Seam.of("side", List.of(), List.of(side))).contains("no edge on one"));
    assertTrue(refusal(() -> Seam.of("side", List.of(side), List.of())).contains("no edge on one"));
    assertTrue(refusal(() -> Seam.of("side", side, side)).contains("appears twice in one seam"));
  }

  /** 30 mm in 3 pleats: each takes 10, and is half as deep. */
  @Test
  void pleatsTakeTheEaseInEqualParts() {
    assertEquals(Length.mm(5), Fullness.pleats(3).depth(Length.mm(30)));
    assertEquals(Length.mm(5), Fullness.pleats(3).depth(Length.mm(-30)));
    assertEquals(Length.ZERO, Fullness.eased().depth(Length.mm(30)));
    assertEquals(Length.ZERO, Fullness.gathered().depth(Length.mm(30)));
    for (Fullness how : List.of(Fullness.eased(), Fullness.gathered(), Fullness.pleats(100))) {
      assertEquals(how, Fullness.parse(how.toString()));
    }
    assertEquals(Fullness.pleats(1), Fullness.parse("1 pleat"));
    differ(Fullness.pleats(2), Fullness.pleats(2), Fullness.pleats(3), Fullness.eased());
    assertTrue(refusal(() -> Fullness.pleats(0)).endsWith("Accepted: 1 to 100."));
    assertTrue(refusal(() -> Fullness.pleats(101)).endsWith("Accepted: 1 to 100."));
  }

  /** Sixty letters are a name, and a letter may carry an accent of its own. */
  @Test
  void namesAreShortAndPlain() {
    assertEquals("x".repeat(60), Notch.of("side", NINE, "x".repeat(60)).label());
    assertTrue(refusal(() -> Notch.of("side", NINE, "x".repeat(61))).contains("1 to 60 letters"));
    assertEquals("a\u0301b 1.,'-+&()", Notch.of("side", NINE, "a\u0301b 1.,'-+&()").label());
    for (String name : List.of("", " ", " a", "a ", "a/b", "a\tb")) {
      assertTrue(refusal(() -> Notch.of("side", NINE, name)).contains("the name of a notch"), name);
    }
  }

  @Test
  void reshapingsDifferByAllThatTheySay() {
    EdgeRef hem = EdgeRef.parse("front hem");
    EdgeRef side = EdgeRef.parse("front side");
    Reshaping none = Reshaping.of(Vests.plain());
    Vector right = new Vector(1, 0);
    Length from = Length.ZERO;
    differ(
        none,
        Reshaping.of(Vests.plain()),
        Reshaping.of(Vests.seamed()),
        none.moved(hem, right),
        none.shifted(side, from, Length.mm(50), Length.mm(100), NINE),
        none.scaled("front", 1.1, 1),
        none.yielding(hem),
        none.keepingAnglesTo(hem),
        none.evened(NINE),
        none.withLength(hem, NINE));
    assertEquals(
        "vest reshaped: 1 piece scaled, 1 corner moved, 1 moved sideways, seams evened up to 9 mm",
        none.moved(hem, right)
            .scaled("front", 1.1, 1)
            .shifted(side, from, Length.mm(50), Length.mm(100), NINE)
            .evened(NINE)
            .toString());
    assertEquals(
        "vest reshaped: 2 pieces scaled, 2 corners moved",
        none.moved(hem, right)
            .moved(side, right)
            .scaled("front", 1.1, 1)
            .scaled("back", 1.1, 1)
            .toString());
  }

  @Test
  void patternsDifferByAllThatTheySay() {
    Pattern vest = Vests.plain();
    differ(
        vest,
        Vests.plain(),
        vest.withVersion("2"),
        vest.withSharedPaper(SharedPaper.of("both", "back", "front")),
        Pattern.of("top", vest.pieces(), vest.seams()),
        Pattern.of("vest", vest.pieces(), List.of()),
        vest.withCrossingTolerance(Angle.degrees(1)),
        vest.withPiece(vest.piece("front").withCloth("lining")));
    assertEquals(
        Angle.degrees(180), vest.withCrossingTolerance(Angle.degrees(180)).crossingTolerance());
    assertEquals(Angle.ZERO, vest.withCrossingTolerance(Angle.ZERO).crossingTolerance());
    assertTrue(refusal(() -> vest.withCrossingTolerance(Angle.degrees(180.1))).contains("180"));
    assertTrue(refusal(() -> vest.withCrossingTolerance(Angle.degrees(-1))).contains("180"));
  }
}
