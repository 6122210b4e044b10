package dev.drafting.core.alter;

import static dev.drafting.core.Values.differ;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.pattern.SeamFinish;
import dev.drafting.core.pattern.Vests;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class AlterationValuesTest {
  private static final Length TEN = Length.mm(10);
  private static final Length SIXTY = Length.mm(60);
  private final Pattern vest = Vests.plain();

  private static void reads(String words, String settings, Alteration alteration) {
    assertEquals(words, alteration.describe());
    assertEquals(words, alteration.toString());
    assertEquals(settings, alteration.id() + " " + alteration.settings());
    assertEquals(alteration, SerialCopy.of(alteration));
  }

  @Test
  void alterationsOfSeamsTellWhatTheyDo() {
    reads(
        "let out 10 mm at the side seam",
        "seam-move {seam=side, at lower end=-10 mm, at upper end=-10 mm}",
        Alteration.letOut("side", TEN));
    reads(
        "take in 10 mm at the lower end of the side seam, nothing at its upper end",
        "seam-move {seam=side, at lower end=10 mm, at upper end=0 mm}",
        Alteration.takeIn("side", TEN, Length.ZERO));
    reads(
        "shorten by 10 mm, 60 mm up the side seam",
        "lengthen {seam=side, up=60 mm, amount=-10 mm}",
        Alteration.shorten("side", SIXTY, TEN));
    reads(
        "shorten the shoulder seam at its inner end by 10 mm",
        "seam-end {seam=shoulder, end=inner, inwards=10 mm}",
        Alteration.widenNeck("shoulder", TEN));
    reads(
        "raise the outer end of the shoulder seam by 10 mm",
        "seam-swing {seam=shoulder, end=outer, amount=-10 mm}",
        Alteration.raiseShoulder("shoulder", TEN));
    reads(
        "add 10 mm of flare at the side seam",
        "seam-swing {seam=side, end=lower, amount=10 mm}",
        Alteration.flare("side", TEN));
  }

  @Test
  void alterationsOfEdgesTellWhatTheyDo() {
    reads(
        "raise front / neck by 10 mm",
        "neck-depth {edge=front / neck, lower=-10 mm}",
        Alteration.raiseNeck("front neck", TEN));
    EdgePlace low = EdgePlace.at("side");
    EdgePlace mid = EdgePlace.from("side", SIXTY);
    EdgePlace high = EdgePlace.from("shoulder", TEN);
    reads(
        "move front / armhole out by 10 mm 60 mm from the side, fading to nothing at the side and"
            + " 10 mm from the shoulder",
        "reshape {edge=front / armhole, from=0 mm from side, at=60 mm from side, to=10 mm from"
            + " shoulder, outward=10 mm}",
        Alteration.reshape("front armhole", low, mid, high, TEN));
    reads(
        "snip 10 mm off the raw edge of front / armhole at the side, fading to nothing 60 mm from"
            + " the side",
        "snip {edge=front / armhole, from=0 mm from side, at=0 mm from side, to=60 mm from side,"
            + " outward=-10 mm}",
        Alteration.snip("front armhole", TEN, low, mid));
    Alteration gape = Alteration.takeOutGape("front neck", TEN, "side");
    assertEquals(
        "gape {edge=front / neck, amount=10 mm, pivot=side}", gape.id() + " " + gape.settings());
    Alteration seam = Alteration.finish("front neck", SeamFinish.of(TEN));
    assertEquals("finish", seam.id());
    assertEquals("finish front / neck as seam with 10 mm allowance", seam.describe());
    assertEquals(seam.describe(), seam.toString());
  }

  /** Raised by as much as it was lowered, a neck or a shoulder lies where it was. */
  @Test
  void whatIsLoweredAndRaisedIsAsBefore() {
    Pattern neck = Alteration.lowerNeck("front neck", TEN).applyTo(vest);
    Pattern again = Alteration.raiseNeck("front neck", TEN).applyTo(neck);
    assertEquals(List.of(), EdgeChange.between(vest, again));
    Pattern dropped = Alteration.dropShoulder("shoulder", TEN).applyTo(vest);
    double before = vest.piece("front").corner("armhole", "shoulder").at().y();
    double after = dropped.piece("front").corner("armhole", "shoulder").at().y();
    assertTrue(before > after, before + " to " + after);
    Pattern raised = Alteration.raiseShoulder("shoulder", TEN).applyTo(vest);
    assertTrue(raised.piece("front").corner("armhole", "shoulder").at().y() > before);
    Pattern nothing = Alteration.dropShoulder("shoulder", Length.ZERO).applyTo(vest);
    assertEquals(vest, nothing);
  }

  private static String refused(Executable alteration) {
    return String.valueOf(assertThrows(DraftingException.class, alteration).getMessage());
  }

  @Test
  void whatCannotBeMeantIsRefused() {
    Length side = vest.edge(EdgeRef.parse("front side")).length();
    assertTrue(
        refused(() -> Alteration.lengthen("side", Length.ZERO, TEN).applyTo(vest))
            .contains("Found: 0 mm"));
    assertTrue(
        refused(() -> Alteration.lengthen("side", side, TEN).applyTo(vest))
            .contains("Found: " + side));
    assertEquals(
        "side: a place lies before its edge. Found: -10 mm. Accepted: zero or more.",
        refused(() -> EdgePlace.from("side", TEN.negated())));
    EdgePlace far = EdgePlace.from("side", Length.mm(900));
    EdgePlace near = EdgePlace.at("side");
    assertTrue(
        refused(() -> Alteration.snip("front armhole", TEN, near, far).applyTo(vest))
            .contains("the place lies beyond the end of the edge"));
    EdgePlace elsewhere = EdgePlace.at("hem");
    assertTrue(
        refused(() -> Alteration.snip("front armhole", TEN, near, elsewhere).applyTo(vest))
            .contains("the edge does not meet this one. Found: hem. Accepted: side, shoulder"));
    assertEquals(
        "there is no such alteration",
        assertThrows(
                DraftingException.class,
                () -> AlterationRecord.of(vest).with(Alteration.flare("side", TEN)).without(2))
            .what());
    assertTrue(
        refused(() -> AlterationRecord.of(vest).undone()).contains("nothing was altered yet"));
  }

  /** A seam that joins one edge to two has no one end to move. */
  @Test
  void aSeamOfSeveralEdgesIsNotMovedAsOne() {
    Piece base = rectangle("base", 200);
    Piece one = rectangle("one", 120);
    Piece two = rectangle("two", 80);
    Pattern pattern =
        Pattern.of(
            "apron",
            List.of(base, one, two),
            List.of(
                Seam.of(
                    "yoke",
                    List.of(EdgeRef.parse("base top")),
                    List.of(EdgeRef.parse("one hem"), EdgeRef.parse("two hem")))));
    assertTrue(
        refused(() -> Alteration.takeIn("yoke", TEN).applyTo(pattern))
            .startsWith("seam yoke: a seam of several edges cannot be moved as one."));
  }

  private static Piece rectangle(String name, double width) {
    Point b = new Point(width, 0);
    Point c = new Point(width, 300);
    Point d = new Point(0, 300);
    return Piece.of(
        name,
        List.of(
            Edge.of("hem", Curve.line(new Point(0, 0), b)),
            Edge.of("right", Curve.line(b, c)),
            Edge.of("top", Curve.line(c, d)),
            Edge.of("left", Curve.line(d, new Point(0, 0)))));
  }

  /** A girth is let out at all copies: twice for a half on the fold, once for a single piece. */
  @Test
  void aGirthIsSharedByAllCopiesOfTheSeam() {
    Pattern tube =
        Pattern.of(
            "tube",
            List.of(rectangle("front", 200), rectangle("back", 200)),
            List.of(
                Seam.of("right", "front right", "back left").endToStart(),
                Seam.of("left", "front left", "back right").endToStart()));
    WantedMeasure girth = WantedMeasure.girth("right", Length.mm(400), Length.mm(420));
    assertEquals("let out 10 mm at the right seam", girth.proposal(tube).orElseThrow().describe());
    Pattern paired =
        Pattern.of(
            "tube",
            List.of(
                rectangle("front", 200).withCutting(Cutting.pairs(1)),
                rectangle("back", 200).withCutting(Cutting.pairs(1))),
            List.of(Seam.of("right", "front right", "back left").endToStart()));
    assertEquals("let out 5 mm at the right seam", girth.proposal(paired).orElseThrow().describe());
    assertTrue(WantedMeasure.girth("right", TEN, TEN).proposal(tube).isEmpty());
  }

  @Test
  void whatDiffersIsNotEqual() {
    differ(
        EdgePlace.from("side", TEN),
        EdgePlace.from("side", TEN),
        EdgePlace.from("hem", TEN),
        EdgePlace.at("side"));
    WantedMeasure girth = WantedMeasure.girth("side", TEN, SIXTY);
    differ(
        girth,
        WantedMeasure.girth("side", TEN, SIXTY),
        WantedMeasure.length("side", TEN, SIXTY),
        WantedMeasure.girth("hem", TEN, SIXTY),
        WantedMeasure.girth("side", SIXTY, SIXTY),
        WantedMeasure.girth("side", TEN, TEN));
    assertEquals("side: 10 mm measured, 60 mm wanted", girth.toString());
    assertTrue(
        refused(() -> WantedMeasure.girth("side", Length.ZERO, TEN)).contains("more than 0 mm"));
    assertTrue(
        refused(() -> WantedMeasure.girth("side", TEN, Length.ZERO)).contains("more than 0 mm"));
    AlterationRecord none = AlterationRecord.of(vest);
    AlterationRecord one = none.with(Alteration.flare("side", TEN));
    differ(
        one,
        none.with(Alteration.flare("side", TEN)),
        none,
        none.with(Alteration.flare("side", SIXTY)),
        none.with(Alteration.flare("side", TEN), "as tried on"),
        one.on(Vests.seamed()));
    assertEquals(1, one.entries().size());
    AlterationRecord many = none;
    for (int i = 0; i < 8; i++) {
      many = many.with(Alteration.flare("side", TEN));
    }
    assertTrue(many.toString().endsWith("flare at the side seam"), many.toString());
    assertTrue(many.with(Alteration.flare("side", TEN)).toString().endsWith("; and 1 more"));
  }
}
