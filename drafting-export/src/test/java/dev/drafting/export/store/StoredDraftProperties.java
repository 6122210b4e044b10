package dev.drafting.export.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.export.store.sample.RandomDraft;
import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;

/** What is kept comes back, and nothing else does. */
class StoredDraftProperties {
  private static final String SOUND = RandomDraft.of(1).toJson();

  @Property(tries = 300)
  void aDraftComesBackToTheLastBit(@ForAll long seed) {
    StoredDraft kept = RandomDraft.of(seed);
    String json = kept.toJson();
    StoredDraft read = StoredDraft.parse(json);
    assertEquals(List.of(), read.findings());
    assertEquals(kept, read);
    assertEquals(json, read.toJson());
  }

  @Property(tries = 500)
  void aFlippedBitIsToldOrRefused(
      @ForAll @DoubleRange(min = 0, max = 1, maxIncluded = false) double where,
      @ForAll @LongRange(min = 0, max = 7) long bit) {
    byte[] bytes = SOUND.getBytes(StandardCharsets.UTF_8);
    bytes[(int) (where * bytes.length)] ^= (byte) (1 << bit);
    isToldOrRefused(new String(bytes, StandardCharsets.UTF_8));
  }

  @Property(tries = 200)
  void aTruncatedFileIsRefused(
      @ForAll @DoubleRange(min = 0, max = 1, maxIncluded = false) double share) {
    String part = SOUND.substring(0, (int) (share * (SOUND.length() - 2)));
    assertThrows(DraftingException.class, () -> StoredDraft.parse(part));
  }

  private static void isToldOrRefused(String damaged) {
    try {
      assertTrue(
          !StoredDraft.parse(damaged).findings().isEmpty(), "a damaged file passes in silence");
    } catch (DraftingException e) {
      assertTrue(!e.what().isEmpty() && !e.accepted().isEmpty(), () -> "not helpful: " + e);
    }
  }
}
