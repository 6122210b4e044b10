package dev.drafting.examples.damage;

import dev.drafting.core.finding.DraftingException;
import dev.drafting.export.source.SizeTable;
import dev.drafting.knit.garment.TShirt;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A table of sizes, of which a T-shirt is made. */
final class SizesDoor implements Door {
  private static final String SOUND =
      """
      size,chest,length,neck width
      XS,94 cm,59 cm,
      S,98 cm,60 cm,16 cm
      M,102 cm,62 cm,16 cm
      L,"106.5 cm",64 cm,17 cm
      XL,43 1/2 in,26 in,170 mm
      second L,108 cm,64 cm,
      """;

  private final Path file;

  private SizesDoor(Path file) {
    this.file = file;
  }

  static SizesDoor of(Path folder) {
    return new SizesDoor(folder.resolve("sizes.csv"));
  }

  @Override
  public String name() {
    return String.valueOf(file.getFileName());
  }

  @Override
  public byte[] sound() {
    return SOUND.getBytes(StandardCharsets.UTF_8);
  }

  @Override
  public byte[] damaged(long seed) {
    return new Mutations(seed).damage(SOUND);
  }

  @Override
  public boolean takes(byte[] sent) throws IOException {
    Files.write(file, sent);
    try {
      return !SizeTable.read(file).patterns(new TShirt()).isEmpty();
    } catch (DraftingException e) {
      Door.requireHelpful(e);
      return false;
    }
  }
}
