package dev.drafting.examples.damage;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.export.source.Garment;
import dev.drafting.export.source.GarmentFolder;
import dev.drafting.export.store.StoredDraft;
import dev.drafting.knit.Draft;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** A stored draft; without its check sum, which would tell of any damage. */
final class DraftDoor implements Door {
  private final String sound;

  private DraftDoor(String sound) {
    this.sound = sound;
  }

  /** The sound one is the first make of a garment, with its tracings and a lay. */
  static DraftDoor of(Path garment) {
    Garment read = GarmentFolder.read(garment);
    Draft draft = read.makes().values().iterator().next();
    String json =
        StoredDraft.of(draft)
            .withTracings(read.tracings())
            .withLay("body", draft.lay("body").plan(1, 0))
            .toJson();
    return new DraftDoor(json.substring(0, json.lastIndexOf(",\n")) + "\n}\n");
  }

  @Override
  public String name() {
    return "stored draft";
  }

  @Override
  public byte[] sound() {
    return sound.getBytes(StandardCharsets.UTF_8);
  }

  @Override
  public byte[] damaged(long seed) {
    return new Mutations(seed).damage(sound);
  }

  @Override
  public boolean takes(byte[] sent) {
    try {
      StoredDraft stored = StoredDraft.parse(new String(sent, StandardCharsets.UTF_8));
      Door.require(!stored.findings().isEmpty(), "a draft without its check sum passes in silence");
      for (Finding finding : stored.draft().findings()) {
        Door.require(!finding.reason().isBlank(), "a finding without a reason");
      }
      return true;
    } catch (DraftingException e) {
      Door.requireHelpful(e);
      return false;
    }
  }
}
