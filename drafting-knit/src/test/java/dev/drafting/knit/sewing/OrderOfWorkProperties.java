package dev.drafting.knit.sewing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.assembly.Opening;
import dev.drafting.core.measure.Length;
import dev.drafting.core.pattern.FacedEdge;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.RawEdge;
import dev.drafting.knit.Draft;
import dev.drafting.knit.Vest;
import dev.drafting.knit.band.BandFinish;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.band.WrappedBinding;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.hem.TurnedHem;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What must come before what, whatever the finishes are (common practice, no source). */
class OrderOfWorkProperties {
  @Provide
  Arbitrary<Finish> finishes() {
    return Arbitraries.of(
        FoldedBand.of(Length.mm(13), Length.mm(7)),
        WrappedBinding.of(Length.mm(10)),
        TurnedHem.once(Length.mm(15)),
        TurnedHem.twice(Length.mm(10), Length.mm(15)),
        FacedEdge.of(Length.mm(7)),
        RawEdge.of());
  }

  private static Draft draft(Finish neck, Finish armhole, Finish hem) {
    Fabric knit = Fabric.of("knit", Structure.INTERLOCK, 0.8);
    return Draft.of(Vest.plain().neck(neck).armhole(armhole).hem(hem).pattern())
        .withFabric("body", knit)
        .withFabric("rib", knit);
  }

  @Property(tries = 60)
  void nothingIsSewnBeforeWhatItNeeds(
      @ForAll("finishes") Finish neck,
      @ForAll("finishes") Finish armhole,
      @ForAll("finishes") Finish hem) {
    List<String> titles =
        draft(neck, armhole, hem).orderOfWork().stream().map(Step::title).toList();
    int shoulders = titles.indexOf("Sew the shoulder seams");
    int sides = titles.indexOf("Sew the side seams");
    int tryOn = titles.indexOf("Try it on");
    assertTrue(titles.indexOf("Cut") < shoulders && shoulders < tryOn && tryOn < sides);
    assertPlace(titles, neck, "neck", at -> at > tryOn && at < sides);
    assertPlace(titles, armhole, "armhole", at -> at > sides);
    assertPlace(titles, hem, "hem", at -> at > sides);
  }

  private static void assertPlace(
      List<String> titles, Finish finish, String opening, IntPredicate right) {
    List<Integer> places =
        IntStream.range(0, titles.size())
            .filter(at -> titles.get(at).contains(" " + opening))
            .boxed()
            .toList();
    assertEquals(finish instanceof RawEdge ? 0 : 1, places.size(), opening + " in " + titles);
    assertTrue(places.stream().allMatch(right::test), opening + " in " + titles);
  }

  @Property(tries = 30)
  void bandsComeBeforeHems(@ForAll("finishes") Finish armhole, @ForAll("finishes") Finish hem) {
    Draft draft = draft(RawEdge.of(), armhole, hem);
    List<String> titles = draft.orderOfWork().stream().map(Step::title).toList();
    boolean armholeBanded = armhole instanceof BandFinish;
    boolean hemBanded = hem instanceof BandFinish;
    if (armholeBanded && !hemBanded && !(hem instanceof RawEdge)) {
      assertTrue(place(titles, "armhole") < place(titles, "hem"), titles.toString());
    }
    if (hemBanded && !armholeBanded && !(armhole instanceof RawEdge)) {
      assertTrue(place(titles, "hem") < place(titles, "armhole"), titles.toString());
    }
    assertEquals(
        draft.openings().stream().filter(OrderOfWorkProperties::isBanded).count(),
        draft.strips().size());
  }

  private static boolean isBanded(Opening opening) {
    return opening.finish() instanceof BandFinish;
  }

  private static int place(List<String> titles, String opening) {
    for (int at = 0; at < titles.size(); at++) {
      if (titles.get(at).contains(" " + opening)) {
        return at;
      }
    }
    throw new AssertionError("no " + opening + " in " + titles);
  }
}
