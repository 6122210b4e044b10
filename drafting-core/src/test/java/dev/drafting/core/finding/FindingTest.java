package dev.drafting.core.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.SerialCopy;
import java.util.List;
import org.junit.jupiter.api.Test;

class FindingTest {
  private static final Finding DIFFER =
      Finding.warning("seam.lengths-differ", Place.seam("side"), "front is 6 mm longer than back");
  private static final Remedy EASE = Remedy.of("Ease 6 mm in.").with("ease", "6 mm");

  @Test
  void saysHowMuchItMattersWhereAndWhy() {
    assertEquals(Severity.WARNING, DIFFER.severity());
    assertEquals("seam.lengths-differ", DIFFER.id());
    assertEquals(Place.seam("side"), DIFFER.place());
    assertEquals("front is 6 mm longer than back", DIFFER.reason());
    assertEquals("WARNING side: front is 6 mm longer than back", DIFFER.toString());
    assertEquals(Severity.NOTE, Finding.note("a", Place.draft(), "b").severity());
    assertEquals(Severity.PROBLEM, Finding.problem("a", Place.draft(), "b").severity());
  }

  @Test
  void remediesStandInTheOrderInWhichToTryThem() {
    Finding twice = DIFFER.withRemedy(EASE).withRemedy(Remedy.of("Trim the front."));
    assertEquals(List.of("Ease 6 mm in.", "Trim the front."), texts(twice));
    assertEquals(List.of(), DIFFER.remedies());
    assertThrows(
        UnsupportedOperationException.class, () -> twice.remedies().remove(0), "unmodifiable");
  }

  private static List<String> texts(Finding finding) {
    return finding.remedies().stream().map(Remedy::text).toList();
  }

  @Test
  void aRemedyIsASentenceAndDataInOrder() {
    Remedy two = EASE.with("along", "40 mm");
    assertEquals("{ease=6 mm, along=40 mm}", two.data().toString());
    assertEquals("{ease=6 mm}", EASE.data().toString());
    assertEquals("Ease 6 mm in.", two.toString());
    assertThrows(UnsupportedOperationException.class, () -> EASE.data().clear());
  }

  @Test
  void placesHaveAKindAndNames() {
    assertEquals("draft", Place.draft().toString());
    assertEquals("front", Place.piece("front").toString());
    assertEquals("front / neck", Place.edge("front", "neck").toString());
    assertEquals("front / neck / shoulder", Place.corner("front", "neck", "shoulder").toString());
    assertEquals("armhole (left)", Place.opening("armhole (left)").toString());
    assertEquals(List.of("front", "neck"), Place.edge("front", "neck").names());
    List<String> kinds =
        List.of(
            Place.draft().kind(),
            Place.piece("a").kind(),
            Place.edge("a", "b").kind(),
            Place.corner("a", "b", "c").kind(),
            Place.seam("a").kind(),
            Place.opening("a").kind(),
            Place.fabric("a").kind(),
            Place.strip("a").kind());
    assertEquals(
        List.of("draft", "piece", "edge", "corner", "seam", "opening", "fabric", "strip"), kinds);
    assertNotEquals(Place.seam("side"), Place.piece("side"));
  }

  @Test
  void areValuesThatComeBackFromStorage() {
    Finding finding = DIFFER.withRemedy(EASE);
    Object back = SerialCopy.of(finding);
    assertEquals(finding, back);
    assertEquals(finding.hashCode(), back.hashCode());
    assertNotEquals(DIFFER, finding);
    assertNotEquals(
        DIFFER, Finding.note(DIFFER.id(), DIFFER.place(), DIFFER.reason()), "severity counts");
    assertTrue(EASE.equals(Remedy.of("Ease 6 mm in.").with("ease", "6 mm")));
    assertNotEquals(EASE, Remedy.of("Ease 6 mm in."));
    assertNotEquals(DIFFER.hashCode(), finding.hashCode());
    assertNotEquals(EASE.hashCode(), Remedy.of("Ease 6 mm in.").hashCode());
    assertNotEquals(Place.seam("side").hashCode(), Place.piece("side").hashCode());
  }
}
