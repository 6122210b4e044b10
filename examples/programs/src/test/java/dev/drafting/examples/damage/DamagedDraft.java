package dev.drafting.examples.damage;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.export.source.Garment;
import dev.drafting.export.source.GarmentFolder;
import dev.drafting.export.store.StoredDraft;
import dev.drafting.knit.Draft;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** A stored draft that is damaged, again and again; without its check sum, which would tell. */
public final class DamagedDraft {
  private final String text;

  private DamagedDraft(String text) {
    this.text = text;
  }

  /**
   * Stores a sound draft.
   *
   * @param garment the folder of a garment; its first make is stored, with its tracings and a lay
   * @return the stored draft, nothing damaged yet
   */
  public static DamagedDraft of(Path garment) {
    Garment read = GarmentFolder.read(garment);
    Draft draft = read.makes().values().iterator().next();
    String json =
        StoredDraft.of(draft)
            .withTracings(read.tracings())
            .withLay("body", draft.lay("body").plan(1, 0))
            .toJson();
    return new DamagedDraft(json.substring(0, json.lastIndexOf(",\n")) + "\n}\n");
  }

  /**
   * Damages the file and reads what is left of it.
   *
   * @param seed says how it is damaged
   * @return whether it is still a draft; else it was refused with what is wrong and what would be
   *     accepted
   */
  public boolean isDrafted(long seed) {
    String damaged = new String(new Mutations(seed).damage(text), StandardCharsets.UTF_8);
    try {
      StoredDraft stored = StoredDraft.parse(damaged);
      require(!stored.findings().isEmpty(), "a draft without its check sum passes in silence");
      for (Finding finding : stored.draft().findings()) {
        require(!finding.reason().isBlank(), "a finding without a reason");
      }
      return true;
    } catch (DraftingException e) {
      require(!e.what().isEmpty() && !e.accepted().isEmpty(), "a refusal that does not help: " + e);
      return false;
    }
  }

  private static void require(boolean holds, String otherwise) {
    if (!holds) {
      throw new AssertionError(otherwise);
    }
  }
}
