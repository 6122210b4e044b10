package dev.drafting.core.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import dev.drafting.core.SerialCopy;
import java.io.IOException;
import org.junit.jupiter.api.Test;

class DraftingExceptionTest {
  @Test
  void saysWhatWhereValueAndWhatWouldBeAccepted() {
    DraftingException refusal =
        DraftingException.of("edge has one point")
            .value(1)
            .accepted("two points or more")
            .at("neck");
    assertEquals(
        "neck: edge has one point. Found: 1. Accepted: two points or more.", refusal.getMessage());
    assertEquals("edge has one point", refusal.what());
    assertEquals("neck", refusal.where());
    assertEquals("1", refusal.value());
    assertEquals("two points or more", refusal.accepted());
  }

  @Test
  void whatIsNotGivenIsNotSaid() {
    DraftingException bare = DraftingException.of("no paper");
    assertEquals("no paper.", bare.getMessage());
    assertEquals("", bare.where() + bare.value() + bare.accepted());
  }

  @Test
  void outerPlacesStandInFront() {
    assertEquals(
        "tracing.csv, line 12: front: neck: no length.",
        DraftingException.of("no length")
            .at("neck")
            .at("front")
            .at("tracing.csv, line 12")
            .getMessage());
  }

  @Test
  void longValuesAreShortenedAndControlCharactersTakenOut() {
    String shown = DraftingException.of("long").value("x".repeat(500)).value();
    assertEquals(80, shown.length());
    assertEquals("...", shown.substring(77));
    assertEquals("x".repeat(80), DraftingException.of("fits").value("x".repeat(80)).value());
    assertEquals("a?b", DraftingException.of("bell").value("a\u0007b").value());
  }

  @Test
  void theFaultUnderneathAndTheTraceAreKept() {
    IOException fault = new IOException("disk");
    DraftingException first = DraftingException.of("cannot be read");
    DraftingException refusal = first.because(fault).at("a.csv").value(2).accepted("a file");
    assertSame(fault, refusal.getCause());
    assertEquals(first.getStackTrace()[0], refusal.getStackTrace()[0]);
  }

  @Test
  void comesBackFromStorage() {
    DraftingException refusal = DraftingException.of("no length").at("neck").value(0).accepted("1");
    DraftingException back = SerialCopy.of(refusal);
    assertEquals(refusal.getMessage(), back.getMessage());
    assertEquals(refusal.where(), back.where());
  }
}
