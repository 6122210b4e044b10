package dev.drafting.core.pattern;

import static dev.drafting.core.pattern.Refusals.refusal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import dev.drafting.core.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The sections of the finishes; what is added where is common practice, no source. */
class FinishTest {

  @Test
  void aSeamIsCutBeyondItsJoinLine() {
    Profile profile = SeamFinish.of(Length.mm(7)).profile();
    assertEquals("CUT +7 mm, JOIN 0 mm", profile.toString());
    assertEquals(Length.mm(7), profile.cut().orElseThrow());
    assertEquals(Length.ZERO, profile.join().orElseThrow());
    assertEquals(Length.mm(7), profile.allowance());
  }

  @Test
  void aFacedEdgeIsFoldedWhereItIsJoined() {
    FacedEdge faced = FacedEdge.of(Length.mm(6)).withTopstitch(Length.mm(3));
    assertEquals("CUT +6 mm, JOIN 0 mm, FOLD 0 mm, TOPSTITCH -3 mm", faced.profile().toString());
    assertEquals(Length.mm(6), faced.profile().allowance());
    assertEquals("{allowance=6 mm, topstitch=3 mm}", faced.settings().toString());
    assertEquals("faced with 6 mm allowance, topstitched 3 mm from the edge", faced.toString());
  }

  @Test
  void aRawEdgeIsCutWhereItIsSeenAndAFoldIsNotCut() {
    assertEquals("CUT 0 mm", RawEdge.of().profile().toString());
    assertTrue(FoldEdge.of().profile().cut().isEmpty());
    assertEquals(List.of(Length.ZERO), FoldEdge.of().profile().folds());
  }

  @Test
  void aHemHasItsDepthForAllowance() {
    Profile hem =
        Profile.of(
            new ProfileLine(LineRole.CUT, Length.mm(30)),
            new ProfileLine(LineRole.FOLD, Length.ZERO),
            new ProfileLine(LineRole.FOLD, Length.mm(20)));
    assertEquals(Length.mm(30), hem.allowance());
  }

  @Test
  void aBandSetIntoThePieceHasItsSeamForAllowance() {
    Profile band =
        Profile.of(
            new ProfileLine(LineRole.CUT, Length.mm(-6)),
            new ProfileLine(LineRole.JOIN, Length.mm(-13)));
    assertEquals(Length.mm(7), band.allowance());
  }

  @Test
  void anEdgeWrappedInBindingHasNoAllowance() {
    Profile wrapped =
        Profile.of(
            new ProfileLine(LineRole.CUT, Length.mm(-1)),
            new ProfileLine(LineRole.JOIN, Length.mm(-10)),
            new ProfileLine(LineRole.FOLD, Length.ZERO));
    assertEquals(Length.ZERO, wrapped.allowance());
  }

  @Test
  void twoCutLinesAreRefused() {
    ProfileLine cut = new ProfileLine(LineRole.CUT, Length.ZERO);
    assertEquals(
        "an edge has more than one CUT line. Found: 2. Accepted: one at most.",
        refusal(() -> Profile.of(cut, cut)));
  }

  @Test
  void allowancesOutOfRangeAreRefused() {
    assertEquals(
        "the seam allowance is out of range. Found: -1 mm. Accepted: a length from 0 mm to 500 mm.",
        refusal(() -> SeamFinish.of(Length.mm(-1))));
    assertTrue(refusal(() -> FacedEdge.of(Length.mm(501))).contains("facing allowance"));
    assertTrue(
        refusal(() -> FacedEdge.of(Length.mm(6)).withTopstitch(Length.mm(-3)))
            .contains("distance of the topstitching"));
  }

  @Test
  void finishesAreValues() {
    List<Finish> finishes =
        List.of(
            SeamFinish.of(Length.mm(7)),
            SeamFinish.of(Length.mm(6)),
            FacedEdge.of(Length.mm(7)),
            FacedEdge.of(Length.mm(7)).withTopstitch(Length.mm(2)),
            RawEdge.of(),
            FoldEdge.of());
    for (Finish one : finishes) {
      assertEquals(one, SerialCopy.of(one));
      assertEquals(one.hashCode(), SerialCopy.of(one).hashCode());
      assertEquals(one.profile(), SerialCopy.of(one.profile()));
    }
    assertEquals(finishes.size(), finishes.stream().distinct().count());
  }
}
